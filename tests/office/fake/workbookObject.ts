import type { FakeBook } from './book.ts';
import { HostError, invalidArgument, itemNotFound } from './hostError.ts';
import type { HostObject } from './hostObject.ts';
import { rangeObject } from './rangeObject.ts';
import { tableObject, worksheetObject } from './worksheetObject.ts';

/** What requests change of the host besides the workbook. */
export interface HostCalls {
  listen(isListening: boolean): void;
  follow(isFollowing: boolean): void;
  suspended(what: 'calculation' | 'screen'): void;
}

export function workbookObject(book: FakeBook, calls: HostCalls): HostObject {
  return {
    get: { Name: () => book.name },
    parts: {
      Worksheets: () => worksheetsObject(book, calls),
      Tables: () => tablesObject(book),
      Names: () => ({ items: () => book.names.map((name) => ({ id: name, get: { Name: () => name } })) }),
      Settings: () => settingsObject(book),
      Protection: () => ({ get: { Protected: () => book.structureProtected } }),
      Application: () => ({
        get: { CalculationMode: () => book.calculationMode },
        methods: {
          SuspendApiCalculationUntilNextSync: () => {
            calls.suspended('calculation');
          },
          SuspendScreenUpdatingUntilNextSync: () => {
            calls.suspended('screen');
          },
        },
      }),
      Functions: () => ({ methods: { Date: (year, month, day) => dateResult(book, year, month, day) } }),
    },
    methods: {
      GetSelectedRange: () => {
        const area = book.selection?.areas[0];
        if (!book.selection || area === undefined || book.selection.areas.length > 1) {
          throw new HostError('InvalidSelection', 'The current selection is invalid for this operation.');
        }
        return rangeObject(book, book.selection.sheet, area);
      },
    },
  };
}

function worksheetsObject(book: FakeBook, calls: HostCalls): HostObject {
  const item = (key: unknown): HostObject => {
    const sheet = book.find(key);
    if (!sheet) throw itemNotFound();
    return worksheetObject(book, sheet);
  };
  return {
    item,
    items: () => book.sheets.map((sheet) => worksheetObject(book, sheet)),
    methods: {
      GetItemOrNullObject: (key) => {
        const sheet = book.find(key);
        return sheet ? worksheetObject(book, sheet) : null;
      },
      Add: (name) => worksheetObject(book, book.addByProgram(name)),
      _RegisterDataChangedEvent: () => {
        calls.listen(true);
      },
      _UnregisterDataChangedEvent: () => {
        calls.listen(false);
      },
      _RegisterSelectionChangedEvent: () => {
        calls.follow(true);
      },
      _UnregisterSelectionChangedEvent: () => {
        calls.follow(false);
      },
    },
  };
}

/** The library reaches tables by their ids through the workbook, wherever they were first found. */
function tablesObject(book: FakeBook): HostObject {
  const tables = (): HostObject[] =>
    book.sheets.flatMap((sheet) => sheet.tables.map((table) => tableObject(book, sheet, table)));
  return {
    items: tables,
    item: (key) => {
      const table = tables().find(({ id }) => id === key);
      if (!table) throw itemNotFound();
      return table;
    },
  };
}

function settingsObject(book: FakeBook): HostObject {
  const setting = (key: string): HostObject => ({
    id: key,
    get: { Key: () => key, Value: () => book.settings.get(key) },
    methods: {
      Delete: () => {
        book.settings.delete(key);
      },
    },
  });
  return {
    item: (key) => {
      if (!book.settings.has(String(key))) throw itemNotFound();
      return setting(String(key));
    },
    methods: {
      GetItemOrNullObject: (key) => (book.settings.has(String(key)) ? setting(String(key)) : null),
      Add: (key, value) => {
        if (typeof key !== 'string') throw invalidArgument();
        book.settings.set(key, value);
        return setting(key);
      },
    },
  };
}

/** The worksheet function DATE, by the workbook's date system (ECMA-376 part 1, section 18.17.4.1). */
function dateResult(book: FakeBook, year: unknown, month: unknown, day: unknown): HostObject {
  const days = Date.UTC(Number(year), Number(month) - 1, Number(day)) / 86_400_000;
  return { get: { Value: () => days + (book.date1904 ? 24_107 : 25_569), Error: () => null } };
}
