import { areaAt, areaByIndexes, areaOf, wholeSheet } from './address.ts';
import type { FakeBook } from './book.ts';
import { chartsObject } from './chartsObject.ts';
import { accessDenied, HostError, invalidArgument } from './hostError.ts';
import type { HostObject } from './hostObject.ts';
import { pageLayoutObject } from './pageLayoutObject.ts';
import { areasObject, rangeObject } from './rangeObject.ts';
import type { FakeSheet, FakeTable } from './sheet.ts';

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
    parts: {
      Tables: () => ({ items: () => sheet.tables.map((table) => tableObject(book, sheet, table)) }),
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

export function tableObject(book: FakeBook, sheet: FakeSheet, table: FakeTable): HostObject {
  return {
    id: `${sheet.id}${table.name}`,
    get: {
      Name: () => table.name,
      ShowHeaders: () => table.showHeaders,
      ShowTotals: () => table.showTotals,
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
