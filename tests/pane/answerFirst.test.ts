import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { harbourStation } from '../../src/tools/demo/harbourStation.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { describeWithChromium } from '../chromium.ts';
import { visits } from './visit.ts';

const demo = readWorkbook('demo.xlsx', harbourStation()).sheets.map(({ name, rows }) => ({ name, rows }));

describeWithChromium('the answer in the task pane', () => {
  const visit = visits();
  let page: Page;

  async function audited(): Promise<void> {
    page = await visit('workbook=given', {}, demo);
    await page.getByRole('tree').waitFor();
  }
  const top = (selector: string): Promise<number> =>
    page
      .locator(selector)
      .first()
      .evaluate((element) => element.getBoundingClientRect().top + window.scrollY);

  it('comes first, then the list, then the buttons, with the first machine in view', async () => {
    await audited();
    const places = [
      await top('.headline'),
      await top('.counts'),
      await top('.channel-list'),
      await top('#view-audit .deed > .button'),
    ];
    expect(places).toEqual(places.toSorted((one, other) => one - other));
    expect(await top('.machine-line')).toBeLessThan(900 - 72);
    // Which channel's run-up or recorded readings to see is all that is chosen from a menu.
    const menus = page.locator('select:visible');
    const ofRecorded = page.locator('section[aria-label=Replay], section[aria-label=Run-ups]');
    expect(await menus.count()).toBe(await ofRecorded.locator('select:visible').count());
  });

  it('is reached by keys in two steps from where the audit ends: the link to the list, and the list', async () => {
    page = await visit('workbook=given', {}, demo);
    await page.getByRole('tree').waitFor();
    await page.getByRole('button', { name: 'Run audit again' }).focus();
    await page.keyboard.press('Enter');
    const focused = () =>
      page.evaluate(() => [
        document.activeElement?.textContent,
        document.activeElement?.getAttribute('role'),
      ]);
    await expect.poll(focused).toEqual(['Result', null]);
    await page.keyboard.press('Tab');
    expect((await focused())[0]).toBe('Go to the list');
    await page.keyboard.press('Enter');
    expect((await focused())[1]).toBe('tree');
  });

  it('opens machines by keys, and shows what still trips the machine that is chosen', async () => {
    await audited();
    await page.getByRole('tree').focus();
    const lines = page.locator('.channel-line');
    expect(await lines.count()).toBe(0);
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => lines.count()).toBeGreaterThan(0);
    await page.keyboard.press('ArrowLeft');
    await expect.poll(() => lines.count()).toBe(0);
    await page.keyboard.press('Enter');
    await page.getByText('What still trips it').waitFor();
    await page
      .getByText(
        'K101 brg 1 (either of two): trips late, at 4.97 mil (between 4.87 and 5.06 mil) by K101-1Y.',
      )
      .waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    // K101-1X: danger 4 mil at 200 configured and 160 measured, 4·200/160 = 5 mil by hand.
    await page
      .locator('.channel-detail')
      .getByText('Set 4, really trips at 5 mil.', { exact: true })
      .waitFor();
    expect(await page.locator('.channel-detail svg text').allTextContents()).toEqual(
      expect.arrayContaining(['4', '5']),
    );
    await page.keyboard.press('ArrowLeft');
    expect(await page.locator('.channel-active').getAttribute('aria-level')).toBe('1');
  });

  it('keeps filter, opened machines and choice when audited again', async () => {
    await audited();
    await page.getByLabel('Search').fill('K-101');
    await page.locator('.channel-line', { hasText: 'K101-2X' }).click();
    const before = await top('.counts');
    await page.evaluate(() => {
      window.portLog.change('Channels');
    });
    await page.getByText('The workbook was changed since this audit.').waitFor();
    await page.getByRole('button', { name: 'Run audit again' }).click();
    await page.getByText('The workbook was changed since this audit.').waitFor({ state: 'detached' });
    expect(await page.getByLabel('Search').inputValue()).toBe('K-101');
    expect(await page.locator('.channel-detail h3 bdi').textContent()).toBe('K101-2X');
    expect(await top('.counts')).toBe(before);
  });

  it('moves within the filter by arrows, as one stop of the Tab key', async () => {
    await audited();
    const counts = page.getByRole('toolbar');
    await counts.getByRole('button').first().focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    await page.getByText('6 of 59 channels').waitFor();
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('INPUT');
  });
});
