import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { defaultPolicy } from '../../src/audit/model/policy.ts';
import { verdictWords } from '../../src/audit/model/verdictWords.ts';
import { isResultSheet } from '../../src/audit/read/tables/resultSheet.ts';
import type { Report } from '../../src/audit/model/report.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import type { ModelCell, ModelValue, SheetModel } from '../../src/sheets/model.ts';
import { finish } from '../../src/audit/model/steps.ts';
import { modelFingerprint } from '../../src/sheets/evidence/resultsFingerprint.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';
import { hostile, plant } from './plant.ts';
import { sheetOf, workbookOf, type Listed } from './tables.ts';
import { objections } from '../hosts/file/write/validator.ts';

const now = new Date('2025-03-14T08:05:00Z');
const reportOf = (listed: readonly Listed[]): Report => audit(workbookOf(listed), { now });

function sheet(
  report: Report,
  name: string,
): { model: SheetModel; rows: readonly (readonly (ModelCell | undefined)[])[] } {
  const model = resultSheets(report).find((entry) => entry.name === name);
  if (!model) throw new Error(`no sheet ${name}`);
  return { model, rows: [...model.rows()].map((row) => row.cells) };
}

const valuesOf = (rows: readonly (readonly (ModelCell | undefined)[])[]): ModelValue[][] =>
  rows.map((row) => row.map((cell) => cell?.value ?? null));

/** The texts of a sheet, one line a row. */
const textOf = (report: Report, name: string): string =>
  valuesOf(sheet(report, name).rows)
    .map((row) => row.filter((value) => value !== null).join(' | '))
    .join('\n');

const healthy: Listed = { tag: 'V-1', measured: 200, configured: 200, alert: 3, danger: 5 };

// What must stand where is the project's own design, and what other programs hold to the Open XML SDK's validator.
describe('the four result sheets', () => {
  const report = reportOf(plant);
  const models = resultSheets(report);

  it('are named, and known again as no input of a later audit', () => {
    expect(models.map((model) => model.name)).toEqual([
      'Audit summary',
      'Audit results',
      'Audit groups',
      'Audit problems',
    ]);
    const book = readWorkbook('again.xlsx', newWorkbook(models));
    expect(book.sheets.map(isResultSheet)).toEqual([true, true, true, true]);
    const again = audit({ name: 'again', sheets: [...workbookOf(plant).sheets, ...book.sheets] }, { now });
    expect(again.summary).toEqual(report.summary);
    expect(again.problems.filter((problem) => problem.rule === 'earlier-result')).toHaveLength(4);
  });

  it('keep their word on rows, styles, formulas and areas, and carry the caution and the footer', () => {
    for (const model of models) {
      const rows = [...model.rows()];
      expect(rows).toHaveLength(model.rowCount);
      expect([...model.rows()]).toEqual(rows);
      for (const { cells } of rows) {
        expect(cells.length).toBeLessThanOrEqual(model.widths.length);
        for (const cell of cells) {
          if (!cell) continue;
          expect(Object.keys(model.styles)).toContain(cell.style);
          if (cell.formula !== undefined) expect(model.formulas[cell.formula]).toBeDefined();
        }
      }
      expect(textOf(report, model.name)).toContain(report.caution);
      expect(model.print).toMatchObject({
        landscape: true,
        footer: expect.stringMatching(/^Advisory only/) as string,
      });
      for (const area of [...(model.merges ?? []), ...(model.shades ?? []).map((shade) => shade.area)]) {
        expect(area.bottom).toBeLessThanOrEqual(model.rowCount);
        expect(area.bottom).toBeGreaterThanOrEqual(area.top);
      }
    }
  });

  it('satisfy the validator, filled and empty', () => {
    const empty = reportOf([healthy]);
    const none = audit(workbookOf([]), { now });
    for (const sheets of [models, resultSheets(empty), resultSheets(none)]) {
      expect(objections(newWorkbook(sheets))).toEqual([]);
    }
  });

  it('leave numbers unrounded and give every threshold a row in the report’s order', () => {
    const { rows } = sheet(report, 'Audit results');
    const header = valuesOf(rows)[5]!;
    const at = (name: string) => header.indexOf(name);
    const wanted = report.channels.flatMap(({ tag, thresholds }) =>
      thresholds.map(({ name, effective, verdict, setpoint, panel }) => [
        tag,
        name,
        verdictWords[verdict],
        setpoint,
        effective,
        panel,
      ]),
    );
    const found = valuesOf(rows)
      .slice(6)
      .map((row) =>
        ['Tag', 'Threshold', 'Verdict', 'Setpoint S', 'Really acts at T', 'Panel reading to treat as S'].map(
          (name) => row[at(name)] ?? null,
        ),
      );
    expect(found).toEqual(wanted);
    expect(new Set(header).size).toBe(header.length - 1); // “Row” of either table
  });

  it('have no formula in a row that could not be worked out, only the word', () => {
    const { rows } = sheet(report, 'Audit results');
    const incomplete = rows.filter((row) =>
      row.some((cell) => cell?.value === 'not known' && cell.style === 'verdict'),
    );
    expect(incomplete).toHaveLength(
      report.channels
        .flatMap((channel) => channel.thresholds)
        .filter((threshold) => threshold.verdict === 'incomplete').length,
    );
    expect(incomplete.length).toBeGreaterThan(0);
    expect(incomplete.flat().filter((cell) => cell?.formula !== undefined)).toEqual([]);
  });

  it('lose no finding and no problem', () => {
    const rows = valuesOf(sheet(report, 'Audit problems').rows).slice(3);
    expect(report.notRead).toEqual([]);
    const wanted = [...report.channels.flatMap((channel) => channel.findings), ...report.problems];
    expect(rows.map((row) => row[2]).sort()).toEqual(wanted.map((finding) => finding.message).sort());
    const order = ['critical', 'warning', 'note'];
    const severities = rows.map((row) => order.indexOf(String(row[0])));
    expect(severities).toEqual([...severities].sort());
  });

  it('tell what is wrong with a multiplied setpoint from what is with the plain one', () => {
    const rows = valuesOf(sheet(report, 'Audit results').rows);
    const [header, ...lines] = rows.slice(5);
    const wrong = header!.indexOf('What is wrong');
    const own = lines.filter((row) => row[0] === '31-VT-4101X' && row[wrong] !== '');
    expect(own.map((row) => row[header!.indexOf('Multiplier m')])).toContain(3);
    for (const row of own)
      expect(String(row[wrong]).includes('× 3 at start-up')).toBe(row[header!.indexOf('Multiplier m')] === 3);
  });
});
