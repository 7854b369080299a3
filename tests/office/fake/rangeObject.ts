import type { Area } from '../../../src/cells/sheet.ts';
import { addressOf, areaOf } from './address.ts';
import type { FakeBook } from './book.ts';
import { type Content, ErrorValue, FormulaCell } from './entry.ts';
import { formatObject } from './formatObject.ts';
import { accessDenied, HostError, invalidArgument } from './hostError.ts';
import type { HostObject } from './hostObject.ts';
import { rulesObject } from './rulesObject.ts';
import { type FakeSheet, overlap } from './sheet.ts';
import { worksheetObject } from './worksheetObject.ts';

/** Cells that `values` and its like hand over; beyond it they are `null` without an error (public reference, limits). */
const mostCells = 5_000_000;
/** Merged areas that are listed; beyond it the call fails (public reference). */
const mostMerges = 512;

export function rangeObject(book: FakeBook, sheet: FakeSheet, area: Area): HostObject {
  const { top, left, bottom, right } = area;
  const size = { rows: bottom - top + 1, columns: right - left + 1 };
  const grid = <T>(cell: (row: number, column: number) => T): T[][] | null =>
    size.rows * size.columns > mostCells
      ? null
      : Array.from({ length: size.rows }, (_, row) =>
          Array.from({ length: size.columns }, (__, column) => cell(top + row, left + column)),
        );
  const write = (): void => {
    refuseLocked(sheet, area);
  };
  const fill = (value: unknown, put: (row: number, column: number, entry: unknown) => void): void => {
    write();
    forEachCell(value, size, (row, column, entry) => {
      put(top + row, left + column, entry);
    });
  };
  const enter = (value: unknown): void => {
    fill(value, (row, column, entry) => {
      if (entry !== null) book.enter(sheet, row, column, entry);
    });
  };
  return {
    isReferenced: true,
    get: {
      Address: () => `${sheet.name}!${addressOf(area)}`,
      RowIndex: () => top - 1,
      ColumnIndex: () => left - 1,
      RowCount: () => size.rows,
      ColumnCount: () => size.columns,
      CellCount: () => size.rows * size.columns,
      RowHidden: () => allOrSome(top, bottom, sheet.hiddenRows),
      ColumnHidden: () => allOrSome(left, area.right, sheet.hiddenColumns),
      Values: () => grid((row, column) => valueOf(sheet.content(row, column))),
      Formulas: () => grid((row, column) => formulaOf(sheet.content(row, column))),
      ValueTypes: () => grid((row, column) => typeOf(sheet.content(row, column))),
      NumberFormat: () => grid((row, column) => sheet.format(row, column)),
    },
    set: {
      // A link leads where it says; without a text to display the cell keeps its own, and looks like a link.
      Hyperlink: (value) => {
        write();
        const link = (value ?? {}) as {
          readonly documentReference?: unknown;
          readonly textToDisplay?: unknown;
        };
        if (typeof link.documentReference !== 'string' || link.textToDisplay !== undefined)
          throw invalidArgument();
        sheet.links.set(addressOf(area).split(':')[0] ?? '', link.documentReference);
        for (const [name, painted] of [
          ['Bold', false],
          ['Underline', 'Single'],
        ] as const)
          sheet.paint(area, `Font.${name}`, painted);
      },
      Values: enter,
      Formulas: enter,
      NumberFormat: (value) => {
        fill(value, (row, column, format) => {
          if (typeof format !== 'string') throw invalidArgument();
          sheet.setFormat(row, column, format);
        });
      },
    },
    parts: {
      Worksheet: () => worksheetObject(book, sheet),
      Format: () => formatObject(sheet, [area], write),
      ConditionalFormats: () => rulesObject(sheet, area),
    },
    methods: {
      GetCell: (row, column) =>
        rangeObject(book, sheet, {
          top: top + Number(row),
          left: left + Number(column),
          bottom: top + Number(row),
          right: left + Number(column),
        }),
      // The library writes tables of more than 1,500 cells by slices of some rows, all in the same request.
      _ValidateArraySize: (rows, columns) => {
        if (rows !== size.rows || columns !== size.columns) throw invalidArgument();
      },
      GetRow: (index) => {
        if (Number(index) < 0 || Number(index) >= size.rows) throw invalidArgument();
        return rangeObject(book, sheet, { ...area, top: top + Number(index), bottom: top + Number(index) });
      },
      GetBoundingRect: (other) => {
        const last = areaOf(other);
        return rangeObject(book, sheet, {
          top: Math.min(top, last.top),
          left: Math.min(left, last.left),
          bottom: Math.max(bottom, last.bottom),
          right: Math.max(right, last.right),
        });
      },
      GetRowProperties: () =>
        Array.from({ length: size.rows }, (_, index) => ({ rowHidden: sheet.hiddenRows.has(top + index) })),
      GetColumnProperties: () =>
        Array.from({ length: size.columns }, (_, index) => ({
          columnHidden: sheet.hiddenColumns.has(left + index),
        })),
      GetMergedAreasOrNullObject: () => {
        const merges = sheet.merges.flatMap((merge) => overlap(merge, area) ?? []);
        if (merges.length > mostMerges) throw new HostError('InvalidOperation');
        return merges.length === 0 ? null : areasObject(book, sheet, merges);
      },
      GetSpecialCellsOrNullObject: (kind) => {
        if (kind !== 'Formulas') throw invalidArgument();
        const cells = formulaCells(sheet);
        return cells.length === 0 ? null : areasObject(book, sheet, cells);
      },
      Merge: () => {
        write();
        sheet.merges.push(area);
      },
      Select: () => {
        if (sheet.visibility !== 'Visible') throw new HostError('InvalidOperation');
        book.active = sheet;
        book.selection = { sheet, areas: [area] };
      },
    },
  };
}

export function areasObject(book: FakeBook, sheet: FakeSheet, areas: readonly Area[]): HostObject {
  const cellCount = areas.reduce(
    (sum, { top, left, bottom, right }) => sum + (bottom - top + 1) * (right - left + 1),
    0,
  );
  return {
    isReferenced: true,
    get: { AreaCount: () => areas.length, CellCount: () => cellCount },
    parts: {
      Areas: () => ({ items: () => areas.map((area) => rangeObject(book, sheet, area)) }),
      Format: () =>
        formatObject(sheet, areas, () => {
          for (const area of areas) refuseLocked(sheet, area);
        }),
    },
  };
}

/** A table of entries must have the range’s shape. */
function forEachCell(
  value: unknown,
  size: { readonly rows: number; readonly columns: number },
  put: (row: number, column: number, entry: unknown) => void,
): void {
  if (!Array.isArray(value) || value.length !== size.rows) throw invalidArgument();
  value.forEach((row: unknown, rowIndex) => {
    if (!Array.isArray(row) || row.length !== size.columns) throw invalidArgument();
    row.forEach((entry: unknown, column) => {
      put(rowIndex, column, entry);
    });
  });
}

function refuseLocked(sheet: FakeSheet, { top, left, bottom, right }: Area): void {
  if (!sheet.isProtected) return;
  for (let row = top; row <= bottom; row++) {
    for (let column = left; column <= right; column++) {
      if (sheet.isLocked(row, column)) throw accessDenied();
    }
  }
}

function formulaCells(sheet: FakeSheet): Area[] {
  const used = sheet.used();
  const cells: Area[] = [];
  for (let row = used?.top ?? 1; row <= (used?.bottom ?? 0); row++) {
    for (let column = used?.left ?? 1; column <= (used?.right ?? 0); column++) {
      if (sheet.content(row, column) instanceof FormulaCell)
        cells.push({ top: row, left: column, bottom: row, right: column });
    }
  }
  return cells;
}

function allOrSome(top: number, bottom: number, hidden: ReadonlySet<number>): boolean | null {
  let count = 0;
  for (const row of hidden) if (row >= top && row <= bottom) count++;
  return count === 0 ? false : count === bottom - top + 1 ? true : null;
}

function valueOf(content: Content | undefined): string | number | boolean {
  if (content instanceof FormulaCell) return valueOf(content.result);
  return content instanceof ErrorValue ? content.code : (content ?? '');
}

function formulaOf(content: Content | undefined): string | number | boolean {
  return content instanceof FormulaCell ? content.formula : valueOf(content);
}

function typeOf(content: Content | undefined): string {
  if (content instanceof FormulaCell) return typeOf(content.result);
  if (content === undefined) return 'Empty';
  if (content instanceof ErrorValue) return 'Error';
  return { number: 'Double', boolean: 'Boolean', string: 'String' }[
    typeof content as 'number' | 'boolean' | 'string'
  ];
}
