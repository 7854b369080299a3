import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { defaultPolicy } from '../../src/audit/model/policy.ts';
import { isResultSheet } from '../../src/audit/read/tables/resultSheet.ts';
import type { Report } from '../../src/audit/model/report.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import type { ModelCell, ModelValue, SheetModel } from '../../src/sheets/model.ts';
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
      thresholds.map(({ name, effective, verdict, setpoint }) => [tag, name, verdict, setpoint, effective]),
    );
    const found = valuesOf(rows)
      .slice(6)
      .map((row) =>
        ['Tag', 'Threshold', 'Verdict', 'Setpoint S', 'Acts at T'].map((name) => row[at(name)] ?? null),
      );
    expect(found).toEqual(wanted);
    expect(new Set(header).size).toBe(header.length - 1); // “Row” of either table
  });

  it('have no formula in a row that could not be worked out, only the word', () => {
    const { rows } = sheet(report, 'Audit results');
    const incomplete = rows.filter((row) => row.some((cell) => cell?.value === 'incomplete'));
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
    const wanted = [...report.channels.flatMap((channel) => channel.findings), ...report.problems];
    expect(rows.map((row) => row[2]).sort()).toEqual(wanted.map((finding) => finding.message).sort());
    const order = ['critical', 'warning', 'note'];
    const severities = rows.map((row) => order.indexOf(String(row[0])));
    expect(severities).toEqual([...severities].sort());
    const results = textOf(report, 'Audit results');
    for (const { message } of report.channels[0]!.findings) expect(results).toContain(message);
  });

  it('tell findings of a multiplied setpoint from those of the plain one', () => {
    const rows = valuesOf(sheet(report, 'Audit results').rows);
    const [header, ...lines] = rows.slice(5);
    const findings = header!.findIndex((text) => String(text).startsWith('Findings'));
    const own = lines.filter((row) => row[0] === '31-VT-4101X');
    expect(own).toHaveLength(4);
    for (const row of own)
      expect(String(row[findings]).includes('at start-up')).toBe(row[header!.indexOf('Multiplier m')] === 3);
  });
});

describe('the summary', () => {
  it('says how things stand, what to act on, what was left out and why', () => {
    const text = textOf(reportOf(plant), 'Audit summary');
    expect(text).toContain(
      'Of 15 channels, 4 can’t be relied on to act, 3 act late, 2 can’t be told, 1 acts early and 3 could not be audited. 2 voting groups cannot trip.',
    );
    expect(text).toContain(
      'Acts only at 6.25 mil instead of 5 mil: 1.25 mil (25 %) late. Beyond the machine’s limit of 6 mil.',
    );
    expect(text).toContain('15 mil is above the full scale of 10 mil');
    expect(text).toContain('31-VT-4131X | Fan E | Non-drive end, X | ');
    expect(text).toMatch(/31-VT-4132X.*measured sensitivity is missing.*Channels, row 15/);
    expect(text).toContain('channel list | Channels | 1 | G | Uncertainty (%) | % | uncertainty');
    expect(text).toContain('2025-03-14 08:05 UTC');
    const verdicts = text
      .split('\n')
      .filter((line) => /^(unreachable|late|undetermined|early|incomplete|within) /.test(line));
    expect(verdicts.map((line) => line.split(' | ')[1])).toEqual(['4', '3', '2', '1', '3', '2']);
  });

  it('lists a danger beyond its limit though it is within the tolerance', () => {
    const text = textOf(reportOf([{ ...healthy, measured: 195, limit: 5.05 }]), 'Audit summary');
    expect(text).toMatch(
      /V-1 \| danger \| within \| 5 \| 5\.128205\d* \| mil \| Acts at 5\.128 mil, set for 5 mil\. Beyond the machine’s limit of 5\.05 mil\./,
    );
    expect(textOf(reportOf([{ ...healthy, limit: 5.2 }]), 'Audit summary')).toContain(
      'Nothing, as far as could be audited.',
    );
  });

  it('does not say “nothing” of what is late as left alone, and names the sheet that shows it', () => {
    const text = textOf(reportOf([{ ...healthy, asLeft: 160 }]), 'Audit summary');
    expect(text).toContain('Nothing as found, as far as could be audited.');
    expect(text).toContain(
      'As left, 1 channel is late, unreachable or undetermined: see the sheet “As found and as left”.',
    );
    const still = textOf(reportOf([{ ...healthy, measured: 160, asLeft: 160 }]), 'Audit summary');
    expect(still).toContain('As left, 1 channel is late');
    expect(textOf(reportOf([{ ...healthy, asLeft: 200 }]), 'Audit summary')).not.toContain('As left, ');
  });

  it('shows at most 25 things to act on and says how many more there are', () => {
    const many = Array.from({ length: 20 }, (_, index): Listed => ({
      ...healthy,
      tag: `V-${index}`,
      measured: 150,
    }));
    const text = textOf(reportOf(many), 'Audit summary');
    expect(text.split('\n').filter((line) => line.includes('Acts only at'))).toHaveLength(25);
    expect(text).toContain('And 15 more');
    const order = text
      .split('\n')
      .filter((line) => line.includes('Acts only at'))
      .map((line) => line.split(' | ')[1]);
    expect(order).toEqual([...Array<string>(20).fill('danger'), ...Array<string>(5).fill('alert')]);
  });

  it('states every part of the policy', () => {
    const leaves = (part: unknown): number =>
      typeof part !== 'object' || part === null || 'value' in part
        ? 1
        : Object.values(part).reduce((sum: number, inner) => sum + leaves(inner), 0);
    const text = textOf(reportOf([healthy]), 'Audit summary');
    const policy = text.slice(text.indexOf('Policy that was applied'), text.indexOf('Evidence\n'));
    expect(policy.trim().split('\n')).toHaveLength(leaves(defaultPolicy) + 2);
    for (const value of [
      '5 %',
      'guarded',
      '730 days',
      '200 mV/mil',
      '100 mV/(in/s)',
      '80 mil',
      '−18 V',
      '3 s',
    ])
      expect(policy).toContain(value);
  });
});

describe('text from cells', () => {
  it('stays the text it is on every sheet', () => {
    const listed = hostile.flatMap((tag, index): Listed[] => [
      {
        tag,
        machine: tag,
        location: tag,
        measured: 150,
        configured: 200,
        alert: 3,
        danger: 5,
        group: tag,
        voting: '1oo1',
      },
      { tag: `B-${index}`, machine: tag, configured: 200, alert: 3, danger: 5 },
    ]);
    const report = reportOf(listed);
    expect(report.channels.map((channel) => channel.tag).sort()).toEqual(listed.map((one) => one.tag).sort());
    const models = resultSheets(report);
    const book = readWorkbook('hostile.xlsx', newWorkbook(models));
    for (const model of models) {
      const sheetRead = book.sheets.find((entry) => entry.name === model.name);
      [...model.rows()].forEach((row, index) => {
        row.cells.forEach((cell, column) => {
          if (typeof cell?.value !== 'string' || cell.value === '' || cell.value.length > 32_767) return;
          expect(sheetRead?.rows[index]?.[column]).toBe(cell.value);
        });
      });
    }
    for (const name of ['Audit results', 'Audit groups']) {
      const texts = new Set(valuesOf(sheet(report, name).rows).flat());
      for (const text of hostile) expect(texts).toContain(text);
    }
  });

  it('cannot pass for the title of a result sheet elsewhere', () => {
    expect(isResultSheet(sheetOf('Channels', [['Tripdrift audits we had'], ['Tag']]))).toBe(true);
    expect(isResultSheet(sheetOf('Channels', [['Audit by Tripdrift'], ['Tag']]))).toBe(false);
  });
});

describe('groups', () => {
  it('show each member with where it acts, or why it cannot', () => {
    const values = valuesOf(sheet(reportOf(plant), 'Audit groups').rows);
    const row = values.find((entry) => entry[0] === 'Compressor B NDE' && entry[3] === 'danger');
    expect(row?.slice(1, 10)).toEqual(['2oo3', 2, 'danger', 'mil', 4, null, 'cannot trip', null, 4.1]);
    expect(row?.slice(12)).toEqual([
      '31-VT-4102X',
      800 / 190,
      '31-VT-4102Y',
      'in bypass',
      '31-VT-4102Z',
      'out of the linear reach',
      4,
      4,
      4,
    ]);
  });

  it('of more members than columns are shown as worked out, without formulas', () => {
    const many = Array.from({ length: 30 }, (_, index): Listed => ({
      ...healthy,
      tag: `V-${index}`,
      group: 'All',
      voting: '2oo30',
    }));
    const { model, rows } = sheet(reportOf(many), 'Audit groups');
    const danger = rows[4]!;
    expect(danger.filter((cell) => cell?.formula !== undefined)).toEqual([]);
    expect(danger.slice(0, 12).map((cell) => cell?.value ?? null)).toEqual([
      'All',
      '2oo30',
      2,
      'danger',
      'mil',
      5,
      5,
      'yes',
      many.map((one) => one.tag).join(', '),
      null,
      null,
      6,
    ]);
    expect(model.widths).toHaveLength(12 + 3 * 24);
  });

  it('are said to be none where none is named', () => {
    expect(textOf(reportOf([healthy]), 'Audit groups')).toContain('No voting group is named');
  });
});

describe('the rows of a large audit', () => {
  it('come one at a time', () => {
    const listed = Array.from({ length: 3000 }, (_, index): Listed => ({ ...healthy, tag: `V-${index}` }));
    const { model } = { model: resultSheets(reportOf(listed))[1]! };
    expect(model.rowCount).toBe(6 + 2 * 3000);
    const rows = model.rows()[Symbol.iterator]();
    expect(rows.next().value).not.toBe(rows.next().value);
    expect(Array.isArray(model.rows())).toBe(false);
  });
});
