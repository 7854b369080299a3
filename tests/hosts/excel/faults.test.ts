// Every call of every operation is refused once, or from then on, or loses its connection: nothing is half written without
// being said, nothing a user had is lost, and what is said is one line.
import { describe, expect, it } from 'vitest';
import { excelPort } from '../../../src/hosts/excel/excelPort.ts';
import { HostRefused, type WorkbookPort } from '../../../src/hosts/port/port.ts';
import type { SheetModel } from '../../../src/sheets/model.ts';
import { FakeBook } from '../../office/fake/book.ts';
import { FormulaCell } from '../../office/fake/entry.ts';
import { FakeExcel } from '../../office/fake/fakeExcel.ts';
import type { FakeSheet } from '../../office/fake/sheet.ts';
import { HostError } from '../../office/fake/hostError.ts';
import { sheetOf } from '../file/write/model.ts';
import { loadOffice } from '../../office/load.ts';
import { openInExcel } from './open.ts';

const stored = '_xldudf_TRIPDRIFT_EFFECTIVE(5,200,160)';
const setting = 'tripdrift.map';

/** A workbook with cells, formulas without their function, a cell formatted as text, and something remembered. */
function station(): FakeBook {
  const book = new FakeBook();
  const sheet = book.add('Channels', [
    ['Tag', 'Measured'],
    ['VT-1', 160],
  ]);
  for (const row of [2, 3, 5]) book.enter(sheet, row, 3, `=${stored}`);
  sheet.setFormat(4, 1, '@');
  book.add('Notes', [['kept']]);
  book.selection = { sheet, areas: [{ top: 4, left: 1, bottom: 4, right: 1 }] };
  book.settings.set(setting, '{"old":1}');
  return book;
}

/** The cells of a sheet that matter here, with their formats. */
function cellsOf(sheet: FakeSheet): string {
  const used = Array.from({ length: 6 }, (_, row) =>
    Array.from({ length: 4 }, (__, column) => {
      const content = sheet.content(row + 1, column + 1);
      const text = content instanceof FormulaCell ? `=${content.formula}` : content;
      return [text ?? null, sheet.format(row + 1, column + 1)];
    }),
  );
  return JSON.stringify(used);
}

function namesOf(book: FakeBook): string[] {
  return book.sheets.map(({ name }) => name);
}

const summary = sheetOf('Audit summary', [['a', 1]]);
const results: SheetModel = {
  ...sheetOf('Audit results', [['Tag', 1.5]]),
  freeze: { rows: 1, columns: 1 },
  print: {
    landscape: true,
    repeatRows: { from: 1, to: 1 },
    footer: 'x',
    area: { top: 1, left: 1, bottom: 1, right: 2 },
  },
};

const newSummary: SheetModel = {
  ...sheetOf('Audit summary', [], {
    rowCount: 2,
    rows: () => [
      { cells: [{ value: 'Tag' }, { value: 2 }] },
      {
        cells: [{ value: 'to the list' }, { value: 0, formula: 0 }],
        links: [{ column: 1, to: { sheet: 'Audit results', ours: true, row: 1, column: 'A' } }],
      },
    ],
    formulas: ['{Audit results}!$B$1'],
    table: { name: 'TripdriftList', area: { top: 1, left: 1, bottom: 2, right: 1 } },
  }),
};
const shownTable = { showHeaders: true, showTotals: false };

interface Operation {
  /** What stands in the workbook beside the station. */
  readonly begin?: (book: FakeBook) => void;
  readonly run: (port: WorkbookPort) => Promise<unknown>;
  /** Fails the test unless the workbook is as before, as it should be after, or `said` tells what is left half done. */
  readonly check: (book: FakeBook, before: FakeBook, said: string | undefined) => void;
}

/** Nothing of the workbook changed. */
function untouched(book: FakeBook, before: FakeBook): void {
  expect(namesOf(book)).toEqual(namesOf(before));
  expect(book.sheets.map(cellsOf)).toEqual(before.sheets.map(cellsOf));
  expect([...book.settings]).toEqual([...before.settings]);
}

function keptOrBecame(after: string | undefined): Operation['check'] {
  return (book, before, said) => {
    expect(namesOf(book)).toEqual(namesOf(before));
    const now = book.settings.get(setting);
    if (said === undefined) expect(now).toBe(after);
    else expect(['{"old":1}', after]).toContain(now);
  };
}

const operations: Readonly<Record<string, Operation>> = {
  'reading the workbook': { run: (port) => port.readWorkbook(), check: untouched },
  'reading the selection': { run: (port) => port.readSelection(), check: untouched },
  'selecting a cell': {
    run: (port) => port.selectCell({ sheet: 'Notes', row: 1, column: 1 }),
    check: untouched,
  },
  'pointing at an area': {
    run: (port) => port.pointAt({ sheet: 'Notes', area: { top: 1, left: 1, bottom: 9, right: 1 } }),
    check: untouched,
  },
  'following the selection': { run: (port) => port.onSelect(() => undefined), check: untouched },
  'reading a setting': { run: (port) => port.readSetting('map'), check: untouched },
  'writing a setting': {
    run: (port) => port.writeSetting('map', { now: 2 }),
    check: keptOrBecame('{"now":2}'),
  },
  'taking a setting away': { run: (port) => port.writeSetting('map', null), check: keptOrBecame(undefined) },
  'looking for broken formulas': { run: (port) => port.findBrokenFormulas(), check: untouched },
  'calculating anew': { run: (port) => port.recalculate(), check: untouched },
  'telling whether functions are there': { run: (port) => port.functionsReady(), check: untouched },
  'inserting a formula': {
    run: (port) => port.insertFormula('=TRIPDRIFT.EFFECTIVE(5,200,160)'),
    check: (book, before, said) => {
      const cells = cellsOf(book.sheets[0]!);
      const old = cellsOf(before.sheets[0]!);
      if (said === undefined) expect(cells).not.toBe(old);
      else if (cells !== old) expect(said).toContain('Look at cell A4 on sheet “Channels”');
    },
  },
  'repairing formulas': {
    run: (port) => port.repairFormulas([2, 3, 5].map((row) => ({ sheet: 'Channels', row, column: 3 }))),
    check: (book, before, said) => {
      const cells = cellsOf(book.sheets[0]!);
      const old = cellsOf(before.sheets[0]!);
      if (said === undefined) expect(cells).not.toContain('_xldudf_');
      else if (cells !== old) expect(said).toMatch(/Some of the formulas may be repaired/);
    },
  },
  'writing result sheets': {
    run: (port) => port.writeSheets([summary, results]),
    check: (book, before, said) => {
      const [own, added] = [namesOf(book).slice(0, 2), namesOf(book).slice(2)];
      expect(own).toEqual(namesOf(before));
      expect(book.sheets.slice(0, 2).map(cellsOf)).toEqual(before.sheets.map(cellsOf));
      if (said === undefined) expect(added).toEqual(['Audit summary', 'Audit results']);
      else for (const name of added) expect(said).toContain(`“${name}”`);
    },
  },
  'replacing result sheets': {
    begin: (book) => {
      const old = book.add('Audit summary', [['earlier', 1]]);
      book.add('Audit results', [['Tag', 0.5]]);
      old.tables.push({
        name: 'TripdriftList',
        area: { top: 1, left: 1, bottom: 1, right: 2 },
        ...shownTable,
      });
    },
    run: (port) => port.replaceSheets(['Audit summary', 'Audit results'], [newSummary, results]),
    check: (book, before, said) => {
      expect(book.sheets.slice(0, 2).map(cellsOf)).toEqual(before.sheets.slice(0, 2).map(cellsOf));
      const earlier = before.sheets.slice(2).map(cellsOf);
      const after = book.sheets.slice(2);
      const isOld = (sheet: FakeSheet) => earlier.includes(cellsOf(sheet));
      const whole = after.filter((sheet) => !isOld(sheet));
      // At any moment there are all the earlier sheets or all the new ones.
      if (after.filter(isOld).length < 2) {
        expect(whole.map((sheet) => sheet.content(1, 2))).toEqual([2, 1.5]);
        expect(whole[0]!.links.get('A2')).toBe("'Audit results'!A1");
      }
      if (said === undefined) {
        expect(namesOf(book).slice(2)).toEqual(['Audit summary', 'Audit results']);
        expect(whole[0]!.tables.map(({ name }) => name)).toEqual(['TripdriftList']);
      } else if (after.length !== 2 || after.some((sheet) => !isOld(sheet)))
        for (const { name } of whole) {
          const isNamed = said.includes(`“${name}”`);
          const isNumbered = said.includes(`“${name} (2)”`) && said.includes('or so without the number');
          expect(isNamed || isNumbered, said).toBe(true);
        }
    },
  },
};

interface Fault {
  readonly name: string;
  /** Lets the n-th thing fail; whether there was an n-th. */
  readonly arm: (excel: FakeExcel, nth: number) => { reached: boolean };
}

function refusing(name: string, code: string, lasting: boolean): Fault {
  return {
    name,
    arm: (excel, nth) => {
      const state = { reached: false };
      let count = 0;
      excel.beforeAction = ({ Name }) => {
        if (Name === '_RemoveReference') return;
        if (++count < nth || (!lasting && count > nth)) return;
        state.reached = true;
        throw new HostError(code);
      };
      return state;
    },
  };
}

function disconnecting(name: string, status: number, undone: boolean, lasting: boolean): Fault {
  return {
    name,
    arm: (excel, nth) => {
      const state = { reached: false };
      let count = 0;
      excel.onRequest = () => {
        if (++count < nth || (!lasting && count > nth)) return undefined;
        state.reached = true;
        return { status, undone };
      };
      return state;
    },
  };
}

const faults: readonly Fault[] = [
  refusing('a call is refused', 'GeneralException', false),
  refusing('a call is refused as protected', 'AccessDenied', false),
  refusing('everything is refused from a call on, as when the workbook is closed', 'InvalidObjectPath', true),
  refusing('Excel does not answer from a call on', 'ServiceNotAvailable', true),
  refusing('a cell is edited from a call on', 'InvalidOperationInCellEditMode', true),
  disconnecting('the connection breaks for good before a request', 0, true, true),
  disconnecting('one answer is lost after the request was carried out', 503, false, false),
  disconnecting('all answers are lost from a request on', 503, false, true),
];

/** Loading it anew for each of hundreds of faults would take minutes. */
const library = loadOffice();
const most = 400;

describe.each(Object.entries(operations))('%s', (_, { begin, run, check }) => {
  it.each(faults)('where $name', async ({ arm }) => {
    let nth = 1;
    for (; nth < most; nth++) {
      const [book, before] = [station(), station()];
      for (const one of [book, before]) begin?.(one);
      const excel = new FakeExcel(book, undefined, library);
      const port = excelPort({ library });
      const fault = arm(excel, nth);
      let said: string | undefined;
      try {
        await run(port);
      } catch (error) {
        expect(error, String(error)).toBeInstanceOf(HostRefused);
        said = (error as HostRefused).message;
        expect(said).toMatch(/^[^\n]{20,400}\.$/);
      }
      if (!fault.reached) break;
      check(book, before, said);
    }
    expect(nth).toBeGreaterThan(1);
    expect(nth).toBeLessThan(most);
  });
});

it('waits while a cell is edited, and goes on where it was left', async () => {
  for (const [name, { begin, run, check }] of Object.entries(operations)) {
    const [book, before] = [station(), station()];
    for (const one of [book, before]) begin?.(one);
    const { excel, port } = openInExcel(book);
    excel.startEditing();
    let ended = false;
    const work = run(port).then(() => {
      ended = true;
    });
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(ended, name).toBe(false);
    excel.stopEditing();
    await work;
    check(book, before, undefined);
  }
});
