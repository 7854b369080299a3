import { unzipSync } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { audit, auditInSteps } from '../../src/audit/audit.ts';
import type { Report } from '../../src/audit/model/report.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { viewWorkbook } from '../../src/hosts/file/view/viewWorkbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { FileRefused } from '../../src/hosts/file/zip/refused.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';
import { stationSheets } from '../bench/station.ts';
import { describeWithChromium, startChromium } from '../chromium.ts';
import { type LargeRun, largeRun, steps } from './largeRun.ts';
import { type ServedBench, serveBench } from './openPage.ts';

/** Milliseconds of a task's own time that auditing and writing never come near; the figures themselves are measured by `npm run bench`. */
const farTooLong = 1_000;

describeWithChromium('a workbook of 20,000 channels in the bench', () => {
  let served: ServedBench;
  let browser: Browser;
  let page: Page;
  let report: Report;
  let run: LargeRun;
  const faults: string[] = [];

  beforeAll(async () => {
    const bytes = newWorkbook(stationSheets(20_000));
    report = audit(readWorkbook('station.xlsx', bytes));
    [served, browser] = await Promise.all([serveBench(), startChromium()]);
    page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    page.setDefaultTimeout(120_000);
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') faults.push(message.text());
    });
    run = await largeRun(page, served.origin, bytes);
    for (const step of steps) {
      const { seconds, longest } = run.figures[step];
      console.info(`${step}: ${seconds.toFixed(1)} s, longest task ${longest.toFixed(0)} ms`);
    }
  }, 300_000);
  afterAll(async () => {
    await browser.close();
    await served.close();
    expect(faults).toEqual([]);
  });

  it('says that it reads the file', () => {
    expect(run.said).toBe('Reading station.xlsx…');
  });

  it('is audited with the counts of the audit itself', async () => {
    const { channels, late, early, undetermined, unreachable, within } = report.summary;
    const counts = page.frameLocator('#side iframe').locator('.counts');
    const said = (await counts.getByRole('button').allTextContents()).map((text) =>
      text.replaceAll(/\s+/g, ' '),
    );
    for (const count of [
      `${channels} All`,
      `${late} late`,
      `${early} early`,
      `${undetermined} uncertain`,
      `${unreachable} cannot act`,
      `${within} OK`,
    ])
      expect(said).toContainEqual(expect.stringContaining(count));
  });

  it('has its result sheets in the grid, as values', async () => {
    const inGrid = await page.evaluate(() =>
      window
        .tripdriftBench!.grid.api.getActiveWorkbook()!
        .getWorkbook()
        .getSheets()
        .slice(2)
        .map((sheet) => {
          const cells = sheet.getCellMatrix();
          const formulas: unknown[] = [];
          cells.forValue((_, __, cell) => {
            if (typeof cell?.f === 'string') formulas.push(cell.f);
          });
          const lastRow = cells.getLength();
          return { name: sheet.getName(), lastRow, last: cells.getValue(lastRow - 1, 1)?.v, formulas };
        }),
    );
    const expected = resultSheets(report).map((model) => {
      const lastValue = [...model.rows()].at(-1)?.cells[1]?.value;
      const last = lastValue === null || lastValue === '' ? undefined : lastValue;
      return { name: model.name, lastRow: model.rowCount, last, formulas: [] };
    });
    expect(inGrid).toEqual(expected);
    expect(report.channels.length).toBe(20_000);
    expect(run.saidOfSheets).toMatch(/shows their results.*every formula/);
  });

  it('is saved with every formula of the result sheets', () => {
    const parts = unzipSync(run.copy, { filter: ({ name }) => /sheet\d+\.xml$/.test(name) });
    const found = (markup: Buffer, text: string): number => {
      let count = 0;
      for (let at = markup.indexOf(text); at !== -1; at = markup.indexOf(text, at + 1)) count++;
      return count;
    };
    // A formula of its own, or one that is shared down the rows.
    const formulasIn = (part: Uint8Array): number =>
      found(Buffer.from(part), '<f>') + found(Buffer.from(part), '<f ');
    const wanted = resultSheets(report).map((model) => {
      let formulas = 0;
      for (const { cells } of model.rows())
        for (const cell of cells) if (cell?.formula !== undefined) formulas++;
      return formulas;
    });
    expect(wanted.map((_, index) => formulasIn(parts[`xl/worksheets/sheet${index + 3}.xml`]!))).toEqual(
      wanted,
    );
    expect(wanted[1]).toBeGreaterThan(20_000);
  });

  it('never holds the page up for long while it is audited and its sheets are written', () => {
    for (const step of ['audit', 'write'] as const)
      expect(run.figures[step].longest, step).toBeLessThan(farTooLong);
  });

  it('leaves a file that is none refused in the words of the file reader', async () => {
    const bytes = new TextEncoder().encode('no workbook');
    const refusal = (): unknown => viewWorkbook('broken.xlsx', bytes);
    expect(refusal).toThrow(FileRefused);
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'broken.xlsx', mimeType: '', buffer: Buffer.from(bytes) });
    const note = page.locator('#note');
    await expect.poll(() => note.textContent()).not.toBe('Reading broken.xlsx…');
    const said = (await note.textContent()) ?? '';
    expect(said).not.toBe('');
    expect(said.startsWith('broken.xlsx: ')).toBe(true);
    expect(refusal).toThrow(new FileRefused(said.slice('broken.xlsx: '.length)));
  });
});

describe('the audit of a large workbook', () => {
  it('gives way while it looks for tables and while it joins groups', () => {
    const channels = 3_000;
    const steps = [...auditInSteps(readWorkbook('station.xlsx', newWorkbook(stationSheets(channels))))];
    expect(steps).toEqual(steps.toSorted((a, b) => a - b));
    expect([steps[0], steps.at(-1)]).toEqual([0, 1]);
    // Two tables with 3,000 rows each, of which 500 are searched at a time; 2,700 of the channels vote, 250 at a time.
    expect(steps.filter((part) => part === 0).length).toBeGreaterThan(12);
    expect(new Set(steps.filter((part) => part > 0.8 && part < 1)).size).toBeGreaterThan(10);
  });
});
