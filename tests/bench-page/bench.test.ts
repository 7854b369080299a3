/// <reference lib="dom" />
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import type { AxeResults } from 'axe-core';
import type { Browser, BrowserContext, FrameLocator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import type { Workbook } from '../../src/cells/sheet.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { describeWithChromium, startChromium } from '../chromium.ts';
import { sheetOf } from '../hosts/file/write/model.ts';
import { hostileTags } from '../pane/pages/workbooks.ts';
import { type ServedBench, serveBench } from './openPage.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const demo = join(import.meta.dirname, '..', '..', 'workbooks', 'harbour-station.xlsx');
const xlsx = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

describeWithChromium('the bench', () => {
  let served: ServedBench;
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;
  let pane: FrameLocator;
  /** Requests that would have left the origin, faults of scripts, and what the content policy refused. */
  let faults: string[];

  beforeAll(async () => {
    [served, browser] = await Promise.all([serveBench(), startChromium()]);
  });
  afterAll(async () => {
    await browser.close();
    await served.close();
  });
  beforeEach(async () => {
    faults = [];
    context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
    await context.route('**', (route) => {
      if (route.request().url().startsWith(`${served.origin}/`)) return route.continue();
      faults.push(`request to ${route.request().url()}`);
      return route.abort();
    });
    page = await context.newPage();
    page.setDefaultTimeout(20_000);
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') faults.push(message.text());
    });
    await page.goto(`${served.origin}/`);
    pane = page.frameLocator('#side iframe');
    await shown('harbour-station.xlsx');
  });
  afterEach(async () => {
    await context.close();
    expect(faults).toEqual([]);
  });

  const shown = async (name: string): Promise<void> => {
    await page.waitForFunction((file) => window.tripdriftBench?.file.view.name === file, name);
    await pane.getByRole('tab', { name: 'Quick answer' }).waitFor();
  };
  const open = async (name: string, bytes: Uint8Array, mimeType = xlsx): Promise<void> => {
    await page.locator('input[type=file]').setInputFiles({ name, mimeType, buffer: Buffer.from(bytes) });
  };
  const read = (): Promise<Workbook> => page.evaluate(() => window.tripdriftBench!.port.readWorkbook());
  const rows = async (sheet: string) => (await read()).sheets.find(({ name }) => name === sheet)?.rows ?? [];
  const selection = () => page.evaluate(() => window.tripdriftBench!.port.readSelection());
  const select = (sheet: string, row: number, from: number, to = from): Promise<void> =>
    page.evaluate(([name, ...place]) => window.tripdriftBench!.port.selectRow(name, ...place), [
      sheet,
      row,
      from,
      to,
    ] as const);
  const auditAll = async (): Promise<void> => {
    await pane.getByRole('tab', { name: 'Audit' }).click();
    await pane.getByRole('button', { name: 'Run audit' }).first().click();
    await pane.getByRole('listbox').waitFor();
  };

  it('shows the demo as the file reader reads it', async () => {
    const { sheets } = readWorkbook('harbour-station.xlsx', readFileSync(demo));
    const { sheets: inGrid } = await read();
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
    const acts = async () => (await rows('Try it')).slice(5, 9).map((row) => row[4]);
    await expect
      .poll(acts)
      .toEqual([6.25, expect.closeTo(1000 / 198, 10), expect.closeTo(1000 / 231, 10), { code: '#VALUE!' }]);
    await select('Try it', 9, 4);
    await page.keyboard.type('125');
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await acts())[3]).toBe(8);
  });

  it('says why a cell shows an error', async () => {
    await select('Try it', 9, 5);
    await expect.poll(() => page.locator('#note').textContent()).toContain('Measured');
  });

  it('answers from the selected numbers and inserts the formula', async () => {
    await select('Try it', 6, 2, 4);
    await pane.getByRole('button', { name: 'Take from selection' }).click();
    await pane.getByText('6.25', { exact: false }).first().waitFor();
    await select('Try it', 16, 2);
    await pane
      .getByRole('button', { name: /Insert/ })
      .first()
      .click();
    await expect.poll(async () => (await rows('Try it'))[15]?.[1]).toBe(6.25);
  });

  it('audits, shows the row of a late channel, and hears of changes', async () => {
    await auditAll();
    await pane.locator('.channel-line', { hasText: /late/i }).first().click();
    await expect.poll(async () => (await selection()).sheet).toBe('Channels');
    const { area, sheet } = await selection();
    expect(area.top).toBe(area.bottom);
    const tag = await pane.getByRole('option', { selected: true }).locator('b').textContent();
    expect((await rows(sheet))[area.top - 1]).toContain(tag);
    await select('Channels', 6, 7);
    await page.keyboard.type('150');
    await page.keyboard.press('Enter');
    await pane
      .getByText(/changed|stale/i)
      .first()
      .waitFor();
  });

  it('writes the result sheets with their colours, and takes all of them back at once', async () => {
    const before = (await read()).sheets.map(({ name }) => name);
    await auditAll();
    await pane.getByRole('button', { name: 'Write result sheets' }).first().click();
    await expect.poll(async () => (await read()).sheets.length).toBe(before.length + 4);
    await page.evaluate(() => {
      window.tripdriftBench!.grid.api.getActiveWorkbook()!.undo();
    });
    await expect.poll(async () => (await read()).sheets.map(({ name }) => name)).toEqual(before);
  });

  it('gives blank cells as null or as 0, as one chooses', async () => {
    await select('Try it', 20, 2);
    await page.keyboard.type('=TRIPDRIFT.VERDICT(200,160,0.05,J1)');
    await page.keyboard.press('Enter');
    await select('Try it', 21, 2);
    await page.keyboard.type('=TRIPDRIFT.EFFECTIVE(5,200,160,J1)');
    await page.keyboard.press('Enter');
    const cells = async () => (await rows('Try it')).slice(19, 21).map((row) => row[1]);
    // A multiplier left blank is 1; 0 is none.
    await expect.poll(cells).toEqual(['late', 6.25]);
    await page.getByLabel('Blank cells as').selectOption('0');
    await expect.poll(cells).toEqual(['late', { code: '#VALUE!' }]);
  });

  it('saves a copy that the file reader reads as the grid shows it', async () => {
    await select('Channels', 6, 7);
    await page.keyboard.type('150');
    await page.keyboard.press('Enter');
    await select('Channels', 60, 2);
    await page.keyboard.type('=TRIPDRIFT.EFFECTIVE(5,200,160)');
    await page.keyboard.press('Enter');
    await select('Try it', 16, 2);
    await page.keyboard.type('0012x');
    await page.keyboard.press('Enter');
    await auditAll();
    await pane.getByRole('button', { name: 'Write result sheets' }).click();
    await expect.poll(async () => (await read()).sheets.length).toBe(10);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save a copy' }).click(),
    ]);
    const bytes = readFileSync(await download.path());
    const copy = readWorkbook('copy.xlsx', bytes);
    const inGrid = (await read()).sheets;
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
    await open('copy.xlsx', bytes);
    await shown('copy.xlsx');
    await expect.poll(async () => (await rows('Try it'))[5]?.[4]).toBe(6.25);
  });

  it('shows hostile texts as texts', async () => {
    const sheet = sheetOf('<b>Ch</b>', [
      ['Tag', 'Measured sensitivity (mV/mil)'],
      ...hostileTags.map((tag) => [tag, 160]),
    ]);
    await open('<img src=x onerror="document.title=1">.xlsx', newWorkbook([sheet]));
    await page.waitForFunction(() => window.tripdriftBench?.file.view.sheets[0]?.name.startsWith('<b>'));
    expect((await read()).sheets[0]?.rows.slice(1).map((row) => row[0])).toEqual(hostileTags);
    expect(await page.locator('#bar img, #grid script, #note img').count()).toBe(0);
    expect(await page.title()).not.toBe('1');
  });

  it('opens a table of plain text, and refuses what is none', async () => {
    await open('list.csv', new TextEncoder().encode('Tag;Danger (mil)\nV-1;4,5\n0012;=1+1\n'), 'text/csv');
    await shown('list.csv');
    expect((await read()).sheets[0]?.rows).toEqual([
      ['Tag', 'Danger (mil)'],
      ['V-1', '4,5'],
      ['0012', '=1+1'],
    ]);
    expect((await read()).sheets[0]?.plainText).toEqual({ decimal: ',' });
    await open('broken.xlsx', new TextEncoder().encode('no workbook'));
    await expect.poll(() => page.locator('#note').textContent()).not.toBe('');
    expect((await read()).name).toBe('list.csv');
  });

  it('asks before unsaved changes are left', async () => {
    let asked = '';
    page.on('dialog', (dialog) => {
      asked = dialog.type();
      void dialog.accept();
    });
    await select('Try it', 20, 2);
    await page.keyboard.type('1');
    await page.keyboard.press('Enter');
    await page.reload();
    expect(asked).toBe('beforeunload');
  });

  it('has no fault of accessibility in its frame and in the pane', async () => {
    const check = async (frame: Pick<Page, 'evaluate'>): Promise<unknown> => {
      await frame.evaluate(axe);
      const found = await frame.evaluate(
        // Inside the grid the library's own controls are not ours.
        () =>
          (window as never as { axe: { run(context: object): Promise<AxeResults> } }).axe.run({
            include: ['body'],
            exclude: ['#grid > *', '#side > iframe'],
          }),
      );
      return found.violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)]);
    };
    expect(await check(page)).toEqual([]);
    const [, inner] = page.frames();
    expect(await check(inner!)).toEqual([]);
  });
});
