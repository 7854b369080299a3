/// <reference lib="dom" />
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import type { FrameLocator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { Workbook } from '../../src/cells/sheet.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { describeWithChromium } from '../chromium.ts';
import { sheetOf } from '../hosts/file/write/model.ts';
import { hostileTags } from '../pane/pages/workbooks.ts';
import { type BenchVisit, eachVisits } from './openPage.ts';

const demo = join(import.meta.dirname, '..', '..', 'workbooks', 'harbour-station.xlsx');

describeWithChromium('the bench', () => {
  let visit: BenchVisit;
  let page: Page;
  let pane: FrameLocator;

  eachVisits((begun) => {
    visit = begun;
    ({ page, pane } = visit);
  });

  it('shows the demo as the file reader reads it', async () => {
    const { sheets } = readWorkbook('harbour-station.xlsx', readFileSync(demo));
    const { sheets: inGrid } = await visit.read();
    for (const sheet of sheets) {
      const { rows: found } = inGrid.find(({ name }) => name === sheet.name)!;
      const plain = (cells: Workbook['sheets'][number]['rows']) =>
        cells.map((row) => Array.from(row, (cell) => JSON.stringify(cell)));
      const last = sheet.rows.findLastIndex((row) => row.some((cell) => cell !== null));
      expect(plain(found)).toEqual(plain(sheet.rows.slice(0, last + 1)));
    }
    expect(sheets.length).toBeGreaterThan(3);
  });

  it('calculates functions live, a column from one formula', async () => {
    // 5·200/160 = 6.25, 5·200/198 = 5.0505…, 5·200/231 = 4.3290… by hand; the last channel has no measurement.
    const acts = async () => (await visit.rows('Try it')).slice(5, 9).map((row) => row[4]);
    await expect
      .poll(acts)
      .toEqual([6.25, expect.closeTo(1000 / 198, 10), expect.closeTo(1000 / 231, 10), { code: '#VALUE!' }]);
    // Beside it: shift Kc/Km − 1, verdict at ±5 % with U = 3 %, and what the panel shows at 5 mil, 5·Km/Kc; by hand.
    const beside = (await visit.rows('Try it')).slice(5, 9).map((row) => row.slice(5, 8));
    const missing = { code: '#VALUE!' };
    const percent = (value: number) => ({ percent: expect.closeTo(value, 8) as number });
    expect(beside).toEqual([
      [percent(25), 'late', 4],
      [percent(200 / 198), 'within', expect.closeTo(4.95, 12)],
      [percent(-3100 / 231), 'early', expect.closeTo(5.775, 12)],
      [missing, missing, missing],
    ]);
    await visit.type('Try it', 9, 4, '125');
    await expect.poll(async () => (await acts())[3]).toBe(8);
    expect((await visit.rows('Try it'))[8]?.slice(5, 8)).toEqual([percent(60), 'late', 3.125]);
  });

  it('says why a cell shows an error', async () => {
    await visit.select('Try it', 9, 5);
    await expect.poll(() => page.locator('#note').textContent()).toContain('Measured');
  });

  it('answers from the selected numbers and inserts the formula', async () => {
    await visit.select('Try it', 6, 2, 4);
    await pane.getByRole('button', { name: 'Take from selection' }).click();
    await pane.getByText('Danger 5 mil really trips at 6.25 mil: 1.25 mil (25 %) late.').waitFor();
    await visit.select('Try it', 16, 2);
    await pane
      .getByRole('button', { name: /Insert/ })
      .first()
      .click();
    await expect.poll(async () => (await visit.rows('Try it'))[15]?.[1]).toBe(6.25);
  });

  it('audits, says of a machine what to correct first and how late it was, shows the row of a late channel, and hears of changes', async () => {
    await visit.audit();
    await pane.getByRole('treeitem').filter({ hasText: 'K-101' }).first().click();
    const machine = pane.getByRole('article', { name: 'Machine' });
    await machine.getByText(/^If you can correct only one: K101-1X \(leaves /u).waitFor();
    await machine.getByText(/danger groups acts later than its limit.* by the measurement alone/u).waitFor();
    const runUp = pane.getByRole('region', { name: 'Run-ups' });
    await runUp.getByText(/^K101-2Y danger: would not have acted/u).waitFor();
    await runUp.getByRole('combobox').selectOption({ index: 1 });
    await runUp.getByText(/^K101-2X danger: acts at [\d,]+ r\/min instead of [\d,]+ r\/min/u).waitFor();
    await pane
      .getByRole('region', { name: 'Replay' })
      .getByText(/^K101-1X danger: \d+ min \d+ s late/u)
      .waitFor();
    const whatIf = pane.locator('details', { has: page.locator('summary', { hasText: /^What if$/u }) });
    await whatIf.locator('summary').click();
    await whatIf.getByLabel('K101-1X').waitFor();
    await pane.getByRole('button', { name: /^\d+ late$/u }).click();
    await pane.locator('.channel-line').first().click();
    await expect.poll(async () => (await visit.selection()).sheet).toBe('Channels');
    const { area, sheet } = await visit.selection();
    expect(area.top).toBe(area.bottom);
    const tag = await pane.getByRole('treeitem', { selected: true }).locator('b').textContent();
    expect((await visit.rows(sheet))[area.top - 1]).toContain(tag);
    await visit.type('Channels', 6, 7, '150');
    await pane.getByText('changed since this audit').waitFor();
  });

  it('writes the result sheets with their colours, and takes all of them back at once', async () => {
    const before = (await visit.read()).sheets.map(({ name }) => name);
    await visit.audit();
    await pane.getByRole('button', { name: 'Write result sheets' }).first().click();
    await expect
      .poll(async () => (await visit.read()).sheets.length, { timeout: 30_000 })
      .toBe(before.length + 9);
    await page.evaluate(() => {
      window.tripdriftBench!.grid.api.getActiveWorkbook()!.undo();
    });
    await expect.poll(async () => (await visit.read()).sheets.map(({ name }) => name)).toEqual(before);
  });

  it('gives blank cells as null or as 0, as one chooses', async () => {
    const cells = async () => (await visit.rows('Try it')).slice(19, 21).map((row) => row[1]);
    await visit.type('Try it', 20, 2, '=TRIPDRIFT.VERDICT(200,160,0.05,J1)');
    await expect.poll(cells).toEqual(['late']);
    await visit.type('Try it', 21, 2, '=TRIPDRIFT.EFFECTIVE(5,200,160,J1)');
    // A multiplier left blank is 1; 0 is none.
    await expect.poll(cells).toEqual(['late', 6.25]);
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByRole('radio', { name: '0, as in Excel for desktop' }).check();
    await expect.poll(cells).toEqual(['late', { code: '#VALUE!' }]);
  });

  it('saves a copy that the file reader reads as the grid shows it', async () => {
    await visit.type('Channels', 6, 7, '150');
    await visit.type('Channels', 60, 2, '=TRIPDRIFT.EFFECTIVE(5,200,160)');
    await visit.type('Try it', 16, 2, '0012x');
    await visit.audit();
    await pane.getByRole('button', { name: 'Write result sheets' }).click();
    await expect.poll(async () => (await visit.read()).sheets.length, { timeout: 30_000 }).toBe(21);
    const bytes = await visit.saved();
    const copy = readWorkbook('copy.xlsx', bytes);
    const inGrid = (await visit.read()).sheets;
    expect(copy.sheets.map(({ name }) => name).toSorted()).toEqual(inGrid.map(({ name }) => name).toSorted());
    expect(copy.sheets[0]?.rows[5]?.[6]).toBe(150);
    expect(copy.sheets[0]?.rows[59]?.[1]).toBe(6.25);
    // The grid calculates result sheets anew, which may change the last digits of a number.
    const plain = (cell: unknown): unknown =>
      typeof cell === 'object' && cell !== null && 'percent' in cell ? cell.percent : cell;
    const same = (inFile: unknown, inCell: unknown): boolean => {
      const [one, other] = [plain(inFile), plain(inCell)];
      return typeof one === 'number' && typeof other === 'number'
        ? Math.abs(one - other) <= 1e-9 * Math.abs(one) + 1e-12
        : JSON.stringify(one ?? null) === JSON.stringify(other ?? null);
    };
    const different = copy.sheets.flatMap(({ name, rows: cells }) => {
      const shownRows = inGrid.find((sheet) => sheet.name === name)!.rows;
      return shownRows.flatMap((row, at) =>
        Array.from(row, (cell, column) => [name, at, column, cells[at]?.[column], cell]).filter(
          ([, , , inFile, inCell]) => !same(inFile, inCell),
        ),
      );
    });
    expect(different).toEqual([]);
    // Stored as spreadsheet programs store calls of add-in functions, and the chart's part as it was.
    const parts = unzipSync(bytes);
    const markup = Object.entries(parts)
      .filter(([part]) => /sheet\d+\.xml$/.test(part))
      .map(([, part]) => strFromU8(part))
      .join('');
    expect(markup).toContain('<f>_xldudf_TRIPDRIFT_EFFECTIVE(5,200,160)</f>');
    expect(markup).toMatch(
      /<f t="array"[^>]*ref="E6:E9"[^>]*>_xldudf_TRIPDRIFT_EFFECTIVE\(B6:B9,C6:C9,D6:D9\)/,
    );
    const before = unzipSync(readFileSync(demo));
    const charts = Object.keys(before).filter((part) => part.includes('chart'));
    expect(charts.length).toBeGreaterThan(0);
    for (const part of charts) expect(parts[part]).toEqual(before[part]);
    await visit.open('copy.xlsx', bytes);
    await visit.shown('copy.xlsx');
    await expect.poll(async () => (await visit.rows('Try it'))[5]?.[4]).toBe(6.25);
  });

  it('shows hostile texts as texts', async () => {
    const sheet = sheetOf('<b>Ch</b>', [
      ['Tag', 'Measured sensitivity (mV/mil)'],
      ...hostileTags.map((tag) => [tag, 160]),
    ]);
    await visit.open('<img src=x onerror="document.title=1">.xlsx', newWorkbook([sheet]));
    await page.waitForFunction(() => window.tripdriftBench?.file.view.sheets[0]?.name.startsWith('<b>'));
    expect((await visit.read()).sheets[0]?.rows.slice(1).map((row) => row[0])).toEqual(hostileTags);
    expect(await page.locator('#bar img, #grid script, #note img').count()).toBe(0);
    expect(await page.title()).not.toBe('1');
  });

  it('opens a table of plain text, and refuses what is none', async () => {
    await visit.open(
      'list.csv',
      new TextEncoder().encode('Tag;Danger (mil)\nV-1;4,5\n0012;=1+1\n'),
      'text/csv',
    );
    await visit.shown('list.csv');
    expect((await visit.read()).sheets[0]?.rows).toEqual([
      ['Tag', 'Danger (mil)'],
      ['V-1', '4,5'],
      ['0012', '=1+1'],
    ]);
    expect((await visit.read()).sheets[0]?.plainText).toEqual({ decimal: ',' });
    await visit.open('broken.xlsx', new TextEncoder().encode('no workbook'));
    await expect.poll(() => page.locator('#note').textContent()).not.toBe('');
    expect((await visit.read()).name).toBe('list.csv');
  });

  it('asks before unsaved changes are left', async () => {
    let asked = '';
    page.on('dialog', (dialog) => {
      asked = dialog.type();
      void dialog.accept();
    });
    await visit.type('Try it', 20, 2, '1');
    await page.reload();
    expect(asked).toBe('beforeunload');
  });

  it('has no fault of accessibility in its frame and in the pane', async () => {
    expect(page.frames()).toHaveLength(2);
    expect(await visit.violations()).toEqual([]);
  });
});
