import { describe, expect, it } from 'vitest';
import { type Cell, cellText } from '../../src/cells/cell.ts';
import { cellAt, type Sheet } from '../../src/cells/sheet.ts';
import { columnNumber } from '../../src/cells/address.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { untidy } from './generate.ts';
import { dimensions } from './layouts/all.ts';
import { xlsxOf } from './render/xlsx.ts';

const books = Array.from({ length: 150 }, (_, index) => untidy(index + 1));

describe('untidy workbooks made up', () => {
  it('are the same from the same number, and others from others', () => {
    expect(untidy(12)).toEqual(untidy(12));
    expect(new Set(books.map(({ workbook }) => JSON.stringify(workbook.sheets))).size).toBe(books.length);
  });

  it('hold every layout in some workbook', () => {
    const seen = new Set(
      Array.from({ length: 1500 }, (_, index) => untidy(index + 1).chosen).flatMap((chosen) =>
        Object.entries(chosen).map(([dimension, way]) => `${dimension}: ${way}`),
      ),
    );
    const all = dimensions.flatMap(({ name, options }) => options.map((option) => `${name}: ${option.name}`));
    expect(all.filter((one) => !seen.has(one))).toEqual([]);
  });

  it('keep every verdict clear of the tolerance, alerts below dangers below full scale', () => {
    for (const { truth } of books) {
      for (const { configured, measured, alert, danger, optional } of truth.channels) {
        if (configured === null || measured === null || danger === null || alert === null) continue;
        const ratio = measured / configured;
        expect(Math.min(Math.abs(ratio - 0.95), Math.abs(ratio - 1.05))).toBeGreaterThan(0.02);
        expect(alert).toBeLessThan(danger);
        if (typeof optional.fullScale === 'number') expect(danger).toBeLessThan(optional.fullScale);
      }
    }
  });

  it('show each channel where the truth says, with the tag that it says', () => {
    for (const { truth, workbook, number, chosen } of books) {
      if (chosen['near tags'] !== 'same tags') continue;
      for (const { tag, places } of truth.channels) {
        expect(places.length, `workbook ${number}`).toBeGreaterThan(0);
        for (const place of places) {
          const on = workbook.sheets.find(({ name }) => name === place.sheet)!;
          const texts =
            place.row === undefined
              ? columnTexts(on, place.column!)
              : (on.rows[place.row - 1] ?? []).map(cellText);
          expect(texts, `workbook ${number}, ${place.sheet}`).toContain(tag[0]);
        }
      }
    }
  });

  it('put a header where the truth says that a meaning stands', () => {
    for (const { truth, workbook } of books) {
      for (const { sheet, column, row } of truth.fields) {
        const on = workbook.sheets.find(({ name }) => name === sheet)!;
        const cells =
          column === undefined
            ? (on.rows[row! - 1] ?? [])
            : on.rows.map((_, index) => cellAt(on, index + 1, columnNumber(column)));
        expect(cells.some((cell) => cellText(cell) !== '')).toBe(true);
        expect(column === undefined || on.hiddenColumns?.has(columnNumber(column)) !== true).toBe(true);
      }
    }
  });

  it('come back from an .xlsx file as they went into it', () => {
    for (const { workbook } of books.slice(0, 40)) {
      const read = readWorkbook(workbook.name, xlsxOf(workbook));
      expect(read.sheets.map(({ name, hidden }) => [name, hidden])).toEqual(
        workbook.sheets.map(({ name, hidden }) => [name, hidden]),
      );
      read.sheets.forEach((sheet, index) => {
        const made = workbook.sheets[index]!;
        expect(sheet.rows.map(withoutEnd)).toEqual(made.rows.map(withoutEnd));
        expect(sheet.hiddenRows).toEqual(made.hiddenRows);
        if (sheet.merged) expect(sheet.merged).toEqual(made.merged);
        if (sheet.hiddenColumns) expect(sheet.hiddenColumns).toEqual(made.hiddenColumns);
      });
    }
  });
});

function columnTexts(sheet: Sheet, column: string): string[] {
  return sheet.rows.map((_, index) => cellText(cellAt(sheet, index + 1, columnNumber(column))));
}

function withoutEnd(row: readonly Cell[]): readonly Cell[] {
  const last = row.findLastIndex((cell) => cell !== null);
  return row.slice(0, last + 1);
}
