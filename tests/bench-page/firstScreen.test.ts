/// <reference lib="dom" />
import type { FrameLocator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeWithChromium } from '../chromium.ts';
import { type BenchVisit, eachVisits } from './openPage.ts';

describeWithChromium('the first screen of the bench', () => {
  let visit: BenchVisit;
  let page: Page;
  let pane: FrameLocator;

  eachVisits((begun) => {
    visit = begun;
    ({ page, pane } = visit);
  });

  const story = async (): Promise<unknown[]> =>
    (await visit.rows('Try it')).slice(1, 3).map((row) => row[0] ?? null);
  const focused = (): Promise<string> =>
    page.evaluate(() => {
      const outer = document.activeElement;
      if (outer instanceof HTMLIFrameElement) {
        return `pane: ${outer.contentDocument?.activeElement?.textContent ?? ''}`;
      }
      return outer?.closest('#grid') ? 'grid' : `page: ${outer?.textContent ?? ''}`;
    });

  it('shows a late trip and the cell that causes it, and what changes when that is edited', async () => {
    // 5·200/160 = 6.25 mil, 5·200/250 = 4 mil, by hand.
    await expect
      .poll(story)
      .toEqual([
        'K1-1X is set to trip at 5 mil. It really trips at 6.25 mil: too late.',
        'D6 causes it: the probe chain gives 160 mV/mil, the monitor counts on 200. Type 200 into D6 and see what changes.',
      ]);
    expect((await visit.selection()).area).toEqual({ top: 6, left: 4, bottom: 6, right: 4 });
    await pane.getByText('Danger 5 mil really trips at 6.25 mil: 1.25 mil (25 %) late.').waitFor();
    await pane.getByText('from Try it!D6').waitFor();
    await visit.type('Try it', 6, 4, '250');
    await pane.getByText('Danger 5 mil really trips at 4 mil: 1 mil (20 %) early.').waitFor();
    expect((await story())[0]).toBe('K1-1X is set to trip at 5 mil. It really trips at 4 mil: too early.');
    await visit.type('Try it', 6, 4, '200');
    await pane.getByText('really trips at 5 mil, as intended').waitFor();
  });

  it('says so in the pane where the cells it goes by moved', async () => {
    await pane.getByText('from Try it!D6').waitFor();
    await page.evaluate(() => {
      window.tripdriftBench!.grid.api.getActiveWorkbook()!.getActiveSheet().insertRowBefore(5);
    });
    await visit.type('Try it', 6, 1, 'K9');
    await pane.getByText('these numbers are not from them any more').waitFor();
  });

  it('has no switch for tests and no menu without its button in the bar', async () => {
    const names = await page.locator('#bar button:visible').allTextContents();
    expect(names).toEqual(['Open…', 'Save a copy', 'Share…', 'Settings']);
    expect(await page.locator('#bar select').count()).toBe(0);
    expect(await page.locator('#bar input:visible').count()).toBe(0);
    await page.getByRole('button', { name: 'Share…' }).click();
    expect(await page.getByRole('radio').count()).toBe(2);
    expect(await visit.violations()).toEqual([]);
    await page.keyboard.press('Escape');
    expect(await page.getByRole('radio').count()).toBe(0);
    expect(await focused()).toBe('page: Share…');
  });

  it('leads the keyboard out of the grid by Escape, around the page by F6, and past all of it by a link', async () => {
    await visit.focusGrid();
    expect(await focused()).toBe('grid');
    await page.keyboard.press('Escape');
    expect(await focused()).toBe('pane: Quick answer');
    await page.keyboard.press('Shift+F6');
    expect(await focused()).toBe('grid');
    await page.keyboard.press('F6');
    expect(await focused()).toBe('pane: Quick answer');
    await page.keyboard.press('F6');
    expect(await focused()).toBe('page: Open…');
    await page.keyboard.press('Shift+Tab');
    expect(await focused()).toBe('page: Skip to the task pane (F6)');
    await page.keyboard.press('Enter');
    expect(await focused()).toBe('pane: Quick answer');
  });

  it('leaves Escape to a cell that is being edited', async () => {
    await visit.focusGrid();
    await visit.select('Try it', 20, 2);
    await page.keyboard.type('12');
    await page.keyboard.press('Escape');
    expect(await focused()).toBe('grid');
    expect((await visit.rows('Try it'))[19]?.[1] ?? null).toBeNull();
  });

  it('gives the reason of an error on its card, and breaks no word of a function’s help', async () => {
    const cells = page.locator('#grid canvas[id^=univer-sheet-main-canvas]');
    const box = (await cells.boundingBox())!;
    const heights = await page.evaluate(() => {
      const sheet = window.tripdriftBench!.grid.api.getActiveWorkbook()!.getActiveSheet();
      return Array.from({ length: 9 }, (_, row) => sheet.getRowHeight(row));
    });
    const down = 20 + heights.slice(0, 8).reduce((sum, height) => sum + height, 0) + 8;
    await page.mouse.move(box.x + 400, box.y + down);
    await page.mouse.move(box.x + 446, box.y + down + 1);
    await page.getByText('Why this cell shows an error').waitFor();
    await page.getByText('Measured is blank: enter a number above 0.').last().waitFor();

    await visit.focusGrid();
    await visit.select('Try it', 20, 2);
    await page.keyboard.type('=TRIPDRIFT.EFFECTIVE(');
    const word = page.getByText('configured', { exact: true }).last();
    await word.waitFor();
    expect(await word.evaluate((element) => element.getClientRects().length)).toBe(1);
    await page.keyboard.press('Escape');
  });

  it('outlines over the grid where a file may be dropped', async () => {
    const overlay = () =>
      page.evaluate(() => {
        const style = getComputedStyle(document.getElementById('grid')!, '::after');
        return [style.content, style.borderTopStyle, style.zIndex];
      });
    expect((await overlay())[0]).toBe('none');
    await page.evaluate(() => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File(['x'], 'x.xlsx'));
      document
        .getElementById('grid')!
        .dispatchEvent(new DragEvent('dragover', { bubbles: true, cancelable: true, dataTransfer }));
    });
    expect(await overlay()).toEqual(['"Drop the workbook to open it"', 'dashed', '1500']);
  });
});
