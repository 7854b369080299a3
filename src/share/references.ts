import { type RangeA1, parseA1Ref, parseStructRef } from '@borgar/fx';
import type { Area, SheetTable } from '../cells/sheet.ts';
import { parseFormula } from '../functions/formula/parse.ts';
import { isInside } from '../hosts/file/patch/groups.ts';
import type { SheetView, ViewCell } from '../hosts/file/view/types.ts';
import type { BookCells } from './bookCells.ts';
import type { CellPlace } from './types.ts';

/** Cells that a reference leads to, or the one value that a name stands for. */
export type Target =
  { readonly sheet: SheetView; readonly area: Area } | { readonly value: string | number | boolean };

/**
 * What a reference in the formula of a cell means: an area of this workbook, a column of a table, or a name for either
 * or for a constant. `undefined` for whole rows and columns, other workbooks, several sheets, and names that move with
 * the cell or are formulas.
 */
export function targetOf(reference: string, at: CellPlace, book: BookCells): Target | undefined {
  if (reference.endsWith(']')) return tableTarget(reference, at, book);
  const plain = parseA1Ref(reference, { allowNamed: true });
  if (!plain) return undefined;
  if ('name' in plain && plain.name) {
    const [owner] = plain.context ?? [];
    return nameTarget(plain.name, owner ?? at.sheet, book);
  }
  return 'range' in plain ? rangeTarget(plain.range, plain.context ?? [], at.sheet, book) : undefined;
}

function rangeTarget(
  range: RangeA1,
  context: readonly string[],
  own: string,
  book: BookCells,
): Target | undefined {
  const { top, left } = range;
  const { bottom = top, right = left } = range;
  const sheet = context.length > 1 ? undefined : book.sheet(context[0] ?? own);
  if (!sheet || top === null || left === null || bottom === null || right === null) return undefined;
  return { sheet, area: { top: top + 1, left: left + 1, bottom: bottom + 1, right: right + 1 } };
}

/** What a name stands for: absolute cells, or a constant. */
function nameTarget(name: string, sheet: string, book: BookCells): Target | undefined {
  const refersTo = book.name(name, sheet);
  if (refersTo === undefined) return undefined;
  const plain = parseA1Ref(refersTo, { allowNamed: false });
  if (plain && 'range' in plain) {
    const { range, context = [] } = plain;
    const fixed = range.$top && range.$left && range.$bottom !== false && range.$right !== false;
    return fixed && context.length === 1 ? rangeTarget(range, context, sheet, book) : undefined;
  }
  try {
    const tree = parseFormula(refersTo);
    return tree.type === 'Literal' ? { value: tree.value } : undefined;
  } catch {
    return undefined;
  }
}

function tableTarget(reference: string, at: CellPlace, book: BookCells): Target | undefined {
  const struct = parseStructRef(reference);
  if (!struct || (struct.context ?? []).length > 0) return undefined;
  const found = book.table(struct.table ?? '', at);
  if (!found?.table.headerRow) return undefined;
  const { sheet, table } = found;
  const [first, last = first, ...more] = struct.columns ?? [];
  const left = first === undefined ? table.area.left : columnOf(table, sheet, first, book);
  const right = last === undefined ? table.area.right : columnOf(table, sheet, last, book);
  const [section = 'data', ...others] = struct.sections ?? [];
  const rows = rowsOf(table, section, at);
  if (!left || !right || !rows || more.length > 0 || others.length > 0) return undefined;
  const inSheet =
    section !== 'this row' || (sheet.name === at.sheet && isInside(table.area, at.row, table.area.left));
  return inSheet ? { sheet, area: { left, right, ...rows } } : undefined;
}

function columnOf(
  { area }: SheetTable,
  sheet: SheetView,
  header: string,
  book: BookCells,
): number | undefined {
  for (let column = area.left; column <= area.right; column++) {
    const cell: ViewCell | undefined = book.cell({ sheet: sheet.name, row: area.top, column });
    if (String(cell?.value).toLowerCase() === header.toLowerCase()) return column;
  }
  return undefined;
}

function rowsOf(
  { area, totalsRow }: SheetTable,
  section: string,
  at: CellPlace,
): Pick<Area, 'top' | 'bottom'> | undefined {
  switch (section) {
    case 'this row':
      return { top: at.row, bottom: at.row };
    case 'data':
      return { top: area.top + 1, bottom: area.bottom - Number(totalsRow) };
    case 'headers':
      return { top: area.top, bottom: area.top };
    case 'all':
      return { top: area.top, bottom: area.bottom };
    default:
      return undefined;
  }
}
