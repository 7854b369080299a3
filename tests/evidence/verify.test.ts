import { describe, expect, it } from 'vitest';
import { audit, type AuditOptions } from '../../src/audit/audit.ts';
import { defaultPolicy } from '../../src/audit/model/policy.ts';
import { snapshotOf } from '../../src/audit/since/fromReport.ts';
import { columnLetters } from '../../src/cells/address.ts';
import { DateCell, ErrorCell, PercentCell, type Cell } from '../../src/cells/cell.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import { isClean, type Verification } from '../../src/evidence/verification.ts';
import { titleOfSheet } from '../../src/evidence/runs.ts';
import { verify } from '../../src/evidence/verify.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { handoverSheets } from '../../src/sheets/handover/handoverSheets.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';
import { hostile, plant } from '../sheets/plant.ts';
import { sheetOf, workbookOf, type Listed } from '../sheets/tables.ts';
import { demoBytes, edited, now, typed, withResults } from './written.ts';

const hostileList = hostile.map((text, index): Listed => ({
  ...plant[0],
  tag: `${text} ${index}`,
  machine: text,
  group: text,
}));
const written = readWorkbook('out.xlsx', withResults(demoBytes));
/** A number of many digits: one that was worked out. */
const isResult = (cell: Cell): cell is number =>
  typeof cell === 'number' && cell > 1 && String(cell).length > 12;
const states = ({ inputs, policy, results }: Verification): string =>
  [inputs, policy, results].map(({ state }) => state).join(', ');
const [asAudited, onlyResults] = ['as audited, as audited, as audited', 'as audited, as audited, edited'];

/** Rows inserted above the cells of a sheet; merged areas and hidden rows move with them, as a spreadsheet moves them. */
function lowered(workbook: Workbook, name: string, by: number): Workbook {
  const lower = edited(workbook, name, (rows) => [...Array.from({ length: by }, () => []), ...rows]);
  const sheets = lower.sheets.map((sheet) =>
    sheet.name === name
      ? {
          ...sheet,
          merged: (sheet.merged ?? []).map((area) => ({
            ...area,
            top: area.top + by,
            bottom: area.bottom + by,
          })),
          hiddenRows: new Set([...sheet.hiddenRows].map((row) => row + by)),
        }
      : sheet,
  );
  return { ...lower, sheets };
}

/** A workbook in memory with the result sheets of its audit, through a file. */
function audited(workbook: Workbook, at = now, options: AuditOptions = {}): Workbook {
  const sheets = resultSheets(audit(workbook, { now: at, ...options }));
  return { ...workbook, sheets: [...workbook.sheets, ...readWorkbook('r.xlsx', newWorkbook(sheets)).sheets] };
}

describe('the station with its results', () => {
  it('is as audited, whatever order its sheets stand in, what they are called and what is filtered', () => {
    expect(states(verify(written))).toBe(asAudited);
    expect(isClean(verify(written))).toBe(true);
    const turned = { ...written, name: 'renamed.xlsx', sheets: written.sheets.toReversed() };
    const renamed = {
      ...written,
      sheets: written.sheets.map((sheet) => ({
        ...sheet,
        name: sheet.name.replace('Audit', 'Audited'),
        hiddenRows: new Set([5, 6, 7]),
      })),
    };
    const more = { ...written, sheets: [sheetOf('Notes', [['Nothing', 5]]), ...written.sheets] };
    for (const book of [turned, renamed, more]) expect(states(verify(book))).toBe(asAudited);
  });

  it('an input that was typed over is named with its cell', () => {
    const { book, row, column } = typed(
      written,
      'Channels',
      (cell, cells) => cell === 160 && cells.includes('K101-1X'),
      161,
    );
    const { inputs, policy, results } = verify(book);
    expect(inputs.state).toBe('edited');
    expect(inputs.cells).toEqual([
      { sheet: 'Channels', row, column: columnLetters(column), stands: '161', should: '160' },
    ]);
    expect([policy.state, results.state]).toEqual(['as audited', 'as audited']);
  });

  it('an input that no result sheet shows is found all the same', () => {
    const day = (cell: Cell): cell is DateCell => cell instanceof DateCell;
    const { book } = typed(written, 'Channels', day, new DateCell(20_000));
    const { inputs } = verify(book);
    expect(inputs.state).toBe('edited');
    expect(inputs.said.join(' ')).toContain('No input on the results sheet differs');
  });

  it.each<[string, string, (cell: Cell, cells: readonly Cell[]) => boolean, (cell: Cell) => Cell]>([
    ['a result', 'Audit results', isResult, (cell) => Number(cell) * 1.000_000_01],
    ['a verdict', 'Audit results', (cell) => cell === 'late', () => 'OK'],
    ['an input on the results sheet', 'Audit results', (cell) => cell === 160, () => 200],
    [
      'the tolerance on the results sheet',
      'Audit results',
      (cell) => cell instanceof PercentCell,
      () => new PercentCell(6),
    ],
    ['a count', 'Audit summary', (_, cells) => cells[0] === 'late', () => 'early'],
    ['a line of the policy', 'Audit summary', (cell) => cell === '5 %', () => '6 %'],
    [
      'a sentence',
      'Audit summary',
      (cell) => typeof cell === 'string' && cell.startsWith('Of '),
      (cell) => (typeof cell === 'string' ? cell.replace('Of', 'of') : cell),
    ],
    ['a finding', 'Audit problems', (cell) => cell === 'critical', () => 'note'],
    ['a group', 'Audit groups', (cell) => cell === 'yes', () => 'no'],
    ['a number turned into an error', 'Audit results', isResult, () => new ErrorCell('#N/A')],
    ['a number turned into its text', 'Audit results', isResult, String],
  ])('%s that was typed over is found at its cell', (_what, sheet, at, to) => {
    const before = written.sheets.find(({ name }) => name === sheet)?.rows ?? [];
    const cell = before.flatMap((cells) => cells.filter((one) => at(one, cells)))[0] ?? null;
    const { book, row, column } = typed(written, sheet, at, to(cell));
    const verification = verify(book);
    expect(states(verification)).toBe(onlyResults);
    expect(verification.results.cells).toHaveLength(1);
    expect(verification.results.cells[0]).toMatchObject({ sheet, row, column: columnLetters(column) });
  });

  it('a policy that was edited is told from edited results', () => {
    const json = (cell: Cell): boolean => typeof cell === 'string' && cell.startsWith('{"tolerance"');
    const { book } = typed(
      written,
      'Audit summary',
      json,
      JSON.stringify({ ...defaultPolicy, tolerance: 0.06 }),
    );
    expect(verify(book).policy.state).toBe('edited');
    const broken = typed(written, 'Audit summary', json, '{"tolerance": 7').book;
    expect(verify(broken).policy).toMatchObject({
      state: 'edited',
      said: [expect.stringContaining('no longer readable')],
    });
  });

  it.each([
    'Fingerprint of inputs',
    'Fingerprint of policy',
    'Fingerprint of results',
    'Fingerprints of sheets',
    'Time of the audit',
    'Rules version',
    'Workbook',
    'Column map as JSON',
    'State as JSON',
  ])('the line “%s” of the evidence can’t be edited unseen', (label) => {
    const { book } = typed(
      written,
      'Audit summary',
      (cell, cells) => cells[0] === label && typeof cell === 'string' && cell !== label,
      label === 'State as JSON'
        ? '{"textTables":[],"hiddenSheets":["Elsewhere"],"hiddenRows":{},"earlierResults":[]}'
        : label === 'Column map as JSON'
          ? '{"channels":{}}'
          : '2026-08-31T08:05:00.000Z',
    );
    expect(isClean(verify(book)), JSON.stringify(verify(book))).toBe(false);
  });

  it('a sentence that was edited at its end is quoted where it was', () => {
    const isSentence = (cell: Cell): cell is string =>
      typeof cell === 'string' && cell.startsWith('Advisory only');
    const sentence = written.sheets
      .find(({ name }) => name === 'Audit summary')
      ?.rows.flat()
      .find(isSentence);
    const { book } = typed(written, 'Audit summary', isSentence, `${sentence ?? ''} All is well.`);
    const [difference] = verify(book).results.cells;
    expect(difference?.stands).toMatch(/^….{20} All is well\.$/u);
    expect(`${difference?.should ?? ''} All is well.`).toBe(difference?.stands);
  });

  it.each(['Fingerprint of results', 'Fingerprints of sheets'])(
    'a text put beside the line “%s” is found',
    (label) => {
      const book = edited(written, 'Audit summary', (rows) =>
        rows.map((cells) => (cells[0] === label ? [...cells.slice(0, 3), null, 'All is well'] : cells)),
      );
      expect(verify(book).results).toMatchObject({
        state: 'edited',
        cells: [{ column: 'E', stands: 'All is well', should: '' }],
      });
    },
  );

  it('rows or columns that came beside the tables: that no result was edited is said', () => {
    const lower = lowered(written, 'Channels', 2);
    const right = edited(written, 'Monitor settings', (rows) => rows.map((cells) => [null, ...cells]));
    for (const book of [lower, right]) {
      const { inputs, results } = verify(book);
      expect(inputs.state).toBe('as audited');
      expect(results.said).toEqual([expect.stringContaining('none was edited')]);
    }
    const both = edited(lower, 'Audit groups', (rows) => [...rows, ['G-9', '1oo2']]);
    expect(verify(both).results.said.join()).not.toContain('none was edited');
  });

  it('rows and sheets that were taken away or added are told', () => {
    const without = edited(written, 'Audit results', (rows) => rows.filter((_, index) => index !== 9));
    const removed = verify(without).results;
    expect(removed.said).toEqual([expect.stringMatching(/^Sheet 'Audit results' lacks row 10: “/u)]);
    expect(removed.cells).toEqual([]);
    const twice = edited(written, 'Audit problems', (rows) => [
      ...rows.slice(0, 6),
      ['note', 'X-1', 'fine'],
      ...rows.slice(6),
    ]);
    expect(verify(twice).results.said).toEqual([
      "Sheet 'Audit problems' has more than the audit wrote: row 7.",
    ]);
    const below = edited(written, 'Audit groups', (rows) => [...rows, ['G-9', '1oo2']]);
    expect(states(verify(below))).toBe(onlyResults);
    const gone = { ...written, sheets: written.sheets.filter(({ name }) => name !== 'Audit groups') };
    expect(verify(gone).results.said).toEqual([expect.stringContaining("('Audit groups') is missing")]);
    const headless = { ...written, sheets: written.sheets.filter(({ name }) => name !== 'Audit summary') };
    expect(states(verify(headless))).toBe('not known, not known, edited');
    const copied = {
      ...written,
      sheets: [
        ...written.sheets,
        ...written.sheets
          .filter(({ name }) => name === 'Audit groups')
          .map((sheet) => ({ ...sheet, name: 'Copy' })),
      ],
    };
    expect(verify(copied).results.said).toEqual([
      expect.stringContaining("Sheet 'Copy' carries a title of this audit"),
    ]);
    const untitled = edited(written, 'Audit groups', ([, ...rows]) => [['Our groups'], ...rows]);
    expect(verify(untitled).results.state).toBe('edited');
  });

  it('a row of the tables that came, went or moved, and a table that is no longer one', () => {
    const first =
      written.sheets
        .find(({ name }) => name === 'Channels')
        ?.rows.findIndex((cells) => cells.includes('K101-1X')) ?? 0;
    const swapped = edited(written, 'Channels', (rows) =>
      rows.map(
        (cells, index) => rows[index === first ? first + 1 : index === first + 1 ? first : index] ?? cells,
      ),
    );
    const removed = edited(written, 'Channels', (rows) => rows.filter((_, index) => index !== first));
    const cleared = edited(written, 'Channels', () => [['Nothing']]);
    for (const book of [swapped, removed, cleared]) {
      expect(states(verify(book))).toBe('edited, as audited, as audited');
    }
    expect(verify(cleared).inputs.said.join()).toContain('The tables can no longer be told');
  });

  it('rules of another version: the sheets are compared by fingerprint, and that is said', () => {
    const aged = typed(
      written,
      'Audit summary',
      (cell, cells) => cells[0] === 'Rules version' && typeof cell === 'string' && cell !== cells[0],
      '0.1.0',
    ).book;
    const { results, inputs } = verify(aged);
    expect(inputs.state).toBe('as audited');
    expect(results.said[0]).toContain('made by rules version 0.1.0');
    const [, ...others] = results.said;
    expect(others).toEqual(["Sheet 'Audit summary' was edited: its fingerprint is another."]);
  });
});

describe('sheets to hand over beside the results', () => {
  const report = audit(readWorkbook('station.xlsx', demoBytes), { now });
  const handOver = readWorkbook('h.xlsx', newWorkbook(handoverSheets(report))).sheets;
  const [list, ...machines] = handOver;
  const withAll = { ...written, sheets: [...written.sheets, ...handOver] };

  it('are as audited, all of them or some', () => {
    expect(states(verify(withAll))).toBe(asAudited);
    expect(verify(withAll).checked?.sheets).toContain(list?.name);
    const some = { ...written, sheets: [...machines.slice(2, 4), ...written.sheets] };
    expect(states(verify(some))).toBe(asAudited);
  });

  it('a cell that was edited is named, and so is a sheet that was copied', () => {
    const { book, row, column } = typed(withAll, 'K-101 Gas compressor', isResult, 4);
    const { results } = verify(book);
    expect(results.state).toBe('edited');
    expect(results.cells).toEqual([
      expect.objectContaining({ sheet: 'K-101 Gas compressor', row, column: columnLetters(column) }),
    ]);
    const twin = {
      ...withAll,
      sheets: [...withAll.sheets, ...machines.slice(0, 1).map((sheet) => ({ ...sheet, name: 'Copy' }))],
    };
    expect(verify(twin).results.said).toEqual([expect.stringContaining('carries a title of this audit')]);
  });

  it('alone can not be checked, and with other rules that is said', () => {
    const { checked, without } = verify({ name: 'h.xlsx', sheets: handOver });
    expect([checked, without.length]).toEqual([null, handOver.length]);
    const { book } = typed(withAll, 'Audit summary', (cell) => cell === report.version, '0.1.0');
    expect(verify(book).results.said.join()).toContain('sheets to hand over');
  });
});

describe('an audit compared with an earlier one', () => {
  const workbook = workbookOf(hostileList);
  const before = snapshotOf(audit(workbook, { now: new Date('2025-09-01T08:05:00Z') }));
  const compared = audited(workbook, now, { before });

  it('is checked by the fingerprints that it left, since what it was compared with is not at hand', () => {
    const found = verify(compared);
    expect(states(found)).toBe(asAudited);
    expect(found.results.said).toEqual([expect.stringContaining(`was compared with ${workbook.name}`)]);
    const { book } = typed(compared, 'Audit changes', (cell) => cell === 'Tag', 'Name');
    const { results } = verify(book);
    expect(results.state).toBe('edited');
    expect(results.said.join()).toContain("Sheet 'Audit changes' was edited");
  });
});

describe('several audits in one workbook', () => {
  const later = new Date('2026-09-02T08:05:00Z');
  const twice = audited(audited(workbookOf(hostileList)), later);

  it('the newest is checked, the older one named', () => {
    const { checked, older, ...parts } = verify(twice);
    expect(states({ checked, older, ...parts })).toBe(asAudited);
    expect(checked?.generated).toBe(later.toISOString());
    expect(older.map(({ generated, sheets }) => [generated, sheets.length])).toEqual([
      [now.toISOString(), 4],
    ]);
  });

  it('the newest can not be passed over by taking its summary away or setting its time back', () => {
    const { id } = verify(twice).checked ?? { id: '' };
    const summaries = twice.sheets.filter((sheet) => titleOfSheet(sheet).includes('summary'));
    const newest = summaries.find((sheet) => titleOfSheet(sheet).endsWith(id));
    const headless = { ...twice, sheets: twice.sheets.filter((sheet) => sheet !== newest) };
    const aged = edited(twice, newest?.name ?? '', (rows) =>
      rows.map((cells) =>
        cells.map((cell) => (cell === later.toISOString() ? '2020-01-01T00:00:00.000Z' : cell)),
      ),
    );
    for (const book of [headless, aged]) {
      const found = verify(book);
      expect([isClean(found), found.checked?.id]).toEqual([false, id]);
    }
  });

  it('taking the older one away is no edit of the newest', () => {
    const ids = new Set(verify(twice).older.flatMap(({ id }) => id));
    const sheets = twice.sheets.filter(
      ({ rows }) => ![...ids].some((id) => titleOfSheet({ rows }).endsWith(id)),
    );
    expect(sheets.length).toBeLessThan(twice.sheets.length);
    expect(states(verify({ ...twice, sheets }))).toBe(asAudited);
  });
});

describe('ugly workbooks', () => {
  it('texts that are formulas, hold control characters or fill a cell', () => {
    const long = { ...plant[0], tag: 'L-1', machine: 'µ'.repeat(32_767), location: 'a\r\nb\tc' };
    expect(states(verify(audited(workbookOf([...hostileList, long]))))).toBe(asAudited);
  });

  it('no workbook, or one without results, is nothing to check', () => {
    expect(verify({ name: 'x', sheets: [] }).checked).toBeNull();
    expect(verify(workbookOf(hostileList)).checked).toBeNull();
    const old = {
      ...workbookOf(hostileList),
      sheets: [sheetOf('Audit results', [['Tripdrift audit – results']])],
    };
    expect(verify(old)).toMatchObject({ checked: null, without: ['Audit results'] });
  });

  it('evidence that asks for endless hidden rows does not take for ever', () => {
    const spans = Array.from({ length: 3_000 }, () => '1-1048576').join();
    const { book } = typed(
      written,
      'Audit summary',
      (cell, cells) => cells[0] === 'State as JSON' && cell !== cells[0] && cell !== null,
      JSON.stringify({
        textTables: [],
        hiddenSheets: [],
        hiddenRows: { Channels: spans },
        earlierResults: [],
      }),
    );
    const start = performance.now();
    expect(isClean(verify(book))).toBe(false);
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});
