import { cellAddress } from '../../../cells/address.ts';
import type { SheetTable } from '../../../cells/sheet.ts';
import { reference } from '../../formats/reference.ts';
import { isSameFormula } from '../../formats/formulaTokens.ts';
import { shownFormula } from '../../formats/storedFormula.ts';
import { lastColumn, lastRow } from '../read/area.ts';
import { FileRefused, oneLine } from '../zip/refused.ts';
import { isInside, overlaps, type FilledArea } from './groups.ts';
import type { EditedCell } from './types.ts';

/** Things of one sheet by row and column. */
export type ByPlace<Placed> = ReadonlyMap<number, ReadonlyMap<number, Placed>>;

/** Sorts edits by place, the last one of a cell counting. Throws an Error for a place off the sheet. */
export function byPlace<Placed extends { readonly row: number; readonly column: number }>(
  edits: readonly Placed[],
  sheet: string,
): ByPlace<Placed> {
  const byRow = new Map<number, Map<number, Placed>>();
  for (const edit of edits) {
    const { row, column } = edit;
    if (!isWithin(row, lastRow) || !isWithin(column, lastColumn)) {
      throw new Error(`sheet "${sheet}" has no cell in row ${row}, column ${column}`);
    }
    const inRow = byRow.get(row) ?? new Map<number, Placed>();
    byRow.set(row, inRow.set(column, edit));
  }
  return byRow;
}

/**
 * Refuses, with FileRefused, what would leave a file that programs find damaged: an array formula or table of what-ifs
 * changed in part only, an array formula filled over another, or a table whose header says something else than its columns.
 */
export function refuseUnfit(
  edits: ByPlace<EditedCell>,
  filled: readonly FilledArea[],
  tables: readonly SheetTable[],
  sheet: string,
): void {
  const all = [...edits.values()].flatMap((row) => [...row.values()]);
  for (const table of tables) refuseHeader(all, table, sheet);
  for (const group of filled) refusePart(edits, all, group, sheet);
  const arrays = all.filter(({ array }) => array !== undefined);
  for (const edit of arrays) {
    const { row, column, array } = edit;
    if (array === undefined) continue;
    const misplaced = array.top !== row || array.left !== column;
    const other = filled.find(
      ({ anchor, area }) =>
        !(anchor.row === row && anchor.column === column) &&
        overlaps(area, array) &&
        edits.get(anchor.row)?.get(anchor.column) === undefined,
    );
    const second = arrays.find(
      (candidate) => candidate !== edit && candidate.array && overlaps(candidate.array, array),
    );
    if (misplaced || second !== undefined || other !== undefined) {
      throw refusal(
        sheet,
        edit,
        `has a formula that would fill ${reference(array)}, where another one stands`,
      );
    }
  }
}

/** Whether the edit leaves the formula of the array as it is and gives it new results. */
function isRecalculated(edit: EditedCell | undefined, { anchor }: FilledArea): boolean {
  return edit?.formula !== undefined && isSameFormula(edit.formula, shownFormula(anchor.formula.text));
}

function refusePart(
  edits: ByPlace<EditedCell>,
  all: readonly EditedCell[],
  group: FilledArea,
  sheet: string,
): void {
  const { anchor, area, kind } = group;
  const touched = all.filter(({ row, column }) => isInside(area, row, column));
  const [first] = touched;
  if (first === undefined) return;
  const atAnchor = edits.get(anchor.row)?.get(anchor.column);
  const size = (area.bottom - area.top + 1) * (area.right - area.left + 1);
  if (kind === 'array' && touched.length === size) return;
  if (kind === 'array' && isRecalculated(atAnchor, group) && atAnchor?.error !== true) return;
  const what =
    kind === 'array'
      ? `belongs to the array formula in ${cellAddress(anchor.row, anchor.column)}, which fills ${reference(area)} and can only be changed as a whole`
      : `belongs to the data table in ${reference(area)}, which can only be changed as a whole`;
  throw refusal(sheet, first, `${what}. Undo the change, or clear all of these cells first`);
}

function refuseHeader(all: readonly EditedCell[], table: SheetTable, sheet: string): void {
  if (!table.headerRow) return;
  const { area, name } = table;
  const header = all.find(({ row, column }) => row === area.top && isInside(area, row, column));
  if (header === undefined) return;
  throw refusal(
    sheet,
    header,
    `is a heading of the table “${oneLine(name, 40)}”, whose formulas go by it. Undo the change; rename the column in a spreadsheet program`,
  );
}

function isWithin(number: number, most: number): boolean {
  return Number.isInteger(number) && number >= 1 && number <= most;
}

function refusal(sheet: string, { row, column }: EditedCell, what: string): FileRefused {
  return new FileRefused(`Sheet “${oneLine(sheet)}”, cell ${cellAddress(row, column)} ${what}.`);
}
