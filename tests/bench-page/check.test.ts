import type { FrameLocator } from 'playwright-core';
import { expect, it } from 'vitest';
import { isClean } from '../../src/evidence/verification.ts';
import { verify } from '../../src/evidence/verify.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { describeWithChromium } from '../chromium.ts';
import { type BenchVisit, eachVisits } from './openPage.ts';

describeWithChromium('result sheets in the bench', () => {
  let visit: BenchVisit;
  let pane: FrameLocator;

  eachVisits((begun) => {
    visit = begun;
    ({ pane } = visit);
  });

  const check = async (words: string): Promise<void> => {
    await pane.getByRole('button', { name: 'Check results' }).click();
    await pane.getByText(words).waitFor();
  };

  /** Clicks into the middle of a cell of a sheet that is not scrolled. */
  const clickCell = async (
    sheet: string,
    row: number,
    column: number,
    button: 'left' | 'right' = 'left',
  ): Promise<void> => {
    await visit.select(sheet, row, column);
    const canvas = visit.page.locator('#grid canvas[id^=univer-sheet-main-canvas]');
    const position = await visit.page.evaluate(
      ([down, right]) => {
        const front = window.tripdriftBench!.grid.api.getActiveWorkbook()!.getActiveSheet();
        const { left, top, width, height } = front.getRange(down - 1, right - 1).getCellRect();
        return { x: left + width / 2, y: top + height / 2 };
      },
      [row, column] as const,
    );
    await canvas.click({ position, button });
  };
  const selected = async (): Promise<unknown> => {
    const { sheet, area } = await visit.selection();
    return { sheet, row: area.top, column: area.left };
  };

  it('are as audited once written, in the grid and in the saved copy; tags lead to their cells; edits are named and linked', async () => {
    await pane.getByRole('tab', { name: 'Audit' }).click();
    await check('There are no result sheets to check');
    await visit.audit();
    await pane.getByRole('button', { name: 'Write result sheets' }).click();
    await pane.getByText('Written:').waitFor();
    await check('Nothing was edited since this audit.');
    const copy = verify(readWorkbook('copy.xlsx', await visit.saved()));
    expect(isClean(copy), JSON.stringify(copy)).toBe(true);

    // A click on a tag leads to its row, one for the menu stays.
    const rows = await visit.rows('Audit results');
    const header = rows.findIndex((cells) => cells.includes('Tag'));
    const column = rows[header]!.indexOf('Tag');
    const tag = rows[header + 1]![column]!;
    const linked = { sheet: 'Audit results', row: header + 2, column: column + 1 };
    await clickCell(linked.sheet, linked.row, linked.column);
    const source = (await visit.rows('Channels')).findIndex((cells) => cells.includes(tag)) + 1;
    expect(source).toBeGreaterThan(0);
    await expect.poll(selected).toEqual({ sheet: 'Channels', row: source, column: 1 });
    await clickCell(linked.sheet, linked.row, linked.column, 'right');
    await visit.page.keyboard.press('Escape');
    expect(await selected()).toEqual(linked);

    // The check that is shown turns red by itself.
    await visit.type('Channels', 6, 7, '150');
    await pane.getByRole('alert').filter({ hasText: 'Inputs changed since the audit.' }).waitFor();
    expect(await pane.getByText('Nothing was edited since this audit.').count()).toBe(0);
    await pane.getByText('The workbook was changed since this audit.').waitFor();
    await check('Inputs changed since the audit.');
    const link = pane.getByRole('button', { name: 'Channels!G6' });
    await link.click();
    await expect.poll(async () => (await visit.selection()).area).toMatchObject({ top: 6, left: 7 });
    expect(await visit.violations()).toEqual([]);
  });
});
