import type { Area } from '../../../src/cells/sheet.ts';
import { areaAt, areaByIndexes, areaOf, wholeSheet } from './address.ts';
import type { FakeBook } from './book.ts';
import { chartsObject } from './chartsObject.ts';
import { accessDenied, HostError, invalidArgument } from './hostError.ts';
import type { HostObject } from './hostObject.ts';
import { pageLayoutObject } from './pageLayoutObject.ts';
import { areasObject, rangeObject } from './rangeObject.ts';
import { overlap, type FakeSheet, type FakeTable } from './sheet.ts';

/** Greatest length of the addresses given to `getRanges` (public reference). */
const longestAddresses = 8_192;

export function worksheetObject(book: FakeBook, sheet: FakeSheet): HostObject {
  const write = (): void => {
    if (sheet.isProtected) throw accessDenied();
  };
  return {
    id: sheet.id,
    get: {
      Id: () => sheet.id,
      Name: () => sheet.name,
      Visibility: () => sheet.visibility,
    },
    set: {
      Name: (name) => {
        book.rename(sheet, name);
      },
    },
    parts: {
      Tables: () => ({
        items: () => sheet.tables.map((table) => tableObject(book, sheet, table)),
        methods: {
          Add: (range, hasHeaders) => {
            write();
            return tableObject(book, sheet, addTable(sheet, areaOf(range), hasHeaders));
          },
        },
      }),
      Protection: () => ({ get: { Protected: () => sheet.isProtected } }),
      Charts: () => chartsObject(sheet, write),
      FreezePanes: () => freezeObject(sheet, write),
      AutoFilter: () => ({
        methods: {
          Apply: (range) => {
            write();
            sheet.filter = areaOf(range);
          },
        },
      }),
      PageLayout: () => pageLayoutObject(sheet, write),
    },
    methods: {
      GetRange: (address) =>
        rangeObject(book, sheet, typeof address === 'string' ? areaAt(address) : wholeSheet),
      GetRangeByIndexes: (...place) =>
        rangeObject(book, sheet, areaByIndexes(place[0], place[1], place[2], place[3])),
      GetRanges: (addresses) => {
        if (typeof addresses !== 'string' || addresses.length > longestAddresses) throw invalidArgument();
        return areasObject(book, sheet, addresses.split(/[,;]/).map(areaAt));
      },
      GetUsedRangeOrNullObject: () => {
        const used = sheet.used();
        return used === null ? null : rangeObject(book, sheet, used);
      },
      Activate: () => {
        if (sheet.visibility !== 'Visible') throw new HostError('InvalidOperation');
        book.active = sheet;
        // Each sheet has a selection of its own, at first its first cell.
        book.selection = { sheet, areas: [{ top: 1, left: 1, bottom: 1, right: 1 }] };
      },
      Calculate: () => {
        book.calculate(sheet);
      },
      Delete: () => {
        book.delete(sheet);
      },
    },
  };
}

/** Header cells are texts and differ, and tables stand apart from merged cells and other tables, or Excel changes or refuses them. */
function addTable(sheet: FakeSheet, area: Area, hasHeaders: unknown): FakeTable {
  const columns = area.right - area.left + 1;
  const titles = Array.from({ length: columns }, (_, index) =>
    sheet.content(area.top, area.left + index),
  ).filter((title) => typeof title === 'string');
  const differ = new Set(titles.map((title) => title.toLowerCase())).size === columns;
  const apart = [...sheet.merges, ...sheet.tables.map((table) => table.area)].every(
    (other) => overlap(other, area) === null,
  );
  if (hasHeaders !== true || !apart || !differ) throw invalidArgument();
  const table: FakeTable = {
    name: `Table${sheet.tables.length + 1}`,
    area,
    showHeaders: true,
    showTotals: false,
  };
  sheet.tables.push(table);
  return table;
}

export function tableObject(book: FakeBook, sheet: FakeSheet, table: FakeTable): HostObject {
  return {
    id: `${sheet.id}${table.name}`,
    get: {
      Name: () => table.name,
      ShowHeaders: () => table.showHeaders,
      ShowTotals: () => table.showTotals,
    },
    set: {
      Name: (name) => {
        const taken = [
          ...book.names,
          ...book.sheets.flatMap(({ tables }) =>
            tables.filter((one) => one !== table).map((one) => one.name),
          ),
        ];
        if (typeof name !== 'string' || !/^[\p{L}_][\p{L}\d_.]*$/u.test(name)) throw invalidArgument();
        if (taken.some((other) => other.toLowerCase() === name.toLowerCase())) throw invalidArgument();
        table.name = name;
      },
      Style: (style) => {
        table.style = String(style);
      },
    },
    methods: { GetRange: () => rangeObject(book, sheet, table.area) },
  };
}

function freezeObject(sheet: FakeSheet, write: () => void): HostObject {
  return {
    methods: {
      FreezeAt: (range) => {
        write();
        sheet.frozen = areaOf(range);
      },
      FreezeRows: (count) => {
        write();
        sheet.frozen = { ...wholeSheet, bottom: Number(count) };
      },
      FreezeColumns: (count) => {
        write();
        sheet.frozen = { ...wholeSheet, right: Number(count) };
      },
    },
  };
}
