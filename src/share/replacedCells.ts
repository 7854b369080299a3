import type { Area } from '../cells/sheet.ts';
import { nativeFormula } from '../functions/native/nativeFormula.ts';
import type { Range } from '../functions/range.ts';
import type { CellNote } from '../hosts/file/notes/commentTexts.ts';
import type { EditedCell } from '../hosts/file/patch/types.ts';
import type { SheetView, ViewCell } from '../hosts/file/view/types.ts';
import { reference } from '../hosts/formats/reference.ts';
import type { UsesOfFunctions } from './usesOfFunctions.ts';
import type { Content } from './content.ts';
import { NoResult, type Results } from './results.ts';
import type { CellPlace, ShareOptions, UnknownResult } from './types.ts';

/** What becomes of a sheet's cells. */
export interface ReplacedCells {
  readonly cells: readonly EditedCell[];
  readonly notes: readonly CellNote[];
  /** Areas that formulas filled which do so no longer, or as array formulas of the old kind; the first cell of each. */
  readonly filled: readonly Area[];
  readonly values: number;
  readonly native: number;
  /** Cells that keep what the file has for them. */
  readonly unknown: readonly UnknownResult[];
}

/**
 * Replaces the formulas of a sheet that need our functions. A cell whose result is neither in the file nor can be worked
 * out keeps what the file has for it.
 */
export function replacedCells(
  sheet: SheetView,
  use: UsesOfFunctions,
  results: Results,
  options: ShareOptions,
): ReplacedCells {
  const cells: EditedCell[] = [];
  const notes: CellNote[] = [];
  const filled: Area[] = [];
  const unknown: UnknownResult[] = [];
  let native = 0;
  for (const { row, cells: stored } of sheet.rows) {
    for (const cell of stored) {
      const { column, formula } = cell;
      if (formula === undefined || !use.uses(formula)) continue;
      const place: CellPlace = { sheet: sheet.name, row, column };
      const area = cell.array ?? { top: row, left: column, bottom: row, right: column };
      try {
        const shown = fitting(results.of(place, formula, area), area, cell);
        const own = options.formulas === 'native' ? nativeCells(place, cell, shown, use, results) : undefined;
        cells.push(...(own ?? valueCells(area, shown)));
        if (own) native++;
        else notes.push({ row, column, text: noteText(formula, cell.array, options.date) });
        if (cell.array) filled.push(area);
      } catch (error) {
        if (!(error instanceof NoResult)) throw error;
        unknown.push({ place, why: error.message });
        cells.push(...valueCells(area, results.storedIn(place, area)));
        notes.push({ row, column, text: unknownText(formula, error.message, options.date) });
        if (cell.array) filled.push(area);
      }
    }
  }
  return { cells, notes, filled, values: notes.length - unknown.length, native, unknown };
}

/** One result fills an area; otherwise it must be as large as the area that the file says the formula fills. */
function fitting(
  rows: readonly (readonly Content[])[],
  area: Area,
  { array }: ViewCell,
): readonly (readonly Content[])[] {
  const height = area.bottom - area.top + 1;
  const width = area.right - area.left + 1;
  const [only] = rows[0] ?? [];
  if (rows.length === height && rows.every((row) => row.length === width)) return rows;
  if (only && rows.length === 1 && rows[0]?.length === 1) {
    return Array.from({ length: height }, () => Array.from({ length: width }, () => only));
  }
  throw new NoResult(
    array ? `its result has another size than ${reference(area)}` : 'its result fills several cells',
  );
}

function valueCells(area: Area, rows: readonly (readonly Content[])[]): EditedCell[] {
  return rows.flatMap((row, down) =>
    row.map((content, right) => valueCell(area.top + down, area.left + right, content)),
  );
}

/** An empty text stays one, by a formula of its own: an empty cell would count as 0 where the text was refused. */
function valueCell(row: number, column: number, { value, error }: Content): EditedCell {
  if (value === '' || value === null) return { row, column, value: '', formula: '""' };
  return { row, column, value, ...(error && { error }) };
}

/** The cells with native formulas; none where one of them could show something else. */
function nativeCells(
  place: CellPlace,
  { formula = '', array }: ViewCell,
  shown: readonly (readonly Content[])[],
  { byName }: UsesOfFunctions,
  results: Results,
): EditedCell[] | undefined {
  const { row, column } = place;
  if (byName(formula) || shown.flat().some(({ error }) => error)) return undefined;
  const cellsAt = (name: string): Range | undefined => {
    try {
      return results.cellsAt(name, place);
    } catch (error) {
      if (error instanceof NoResult) return undefined;
      throw error;
    }
  };
  const [first] = shown;
  const [one = { value: null }, other] = first ?? [];
  const pair = array !== undefined && shown.length === 1 && first?.length === 2;
  const two = pair && other ? nativeFormula(formula, { cellsAt, array: false }, true) : undefined;
  if (two?.[1] !== undefined && other) {
    return [
      { row, column, value: one.value, formula: two[0] },
      { row, column: column + 1, value: other.value, formula: two[1] },
    ];
  }
  const isLarger = shown.length > 1 || (first?.length ?? 0) > 1;
  const single = isLarger ? undefined : nativeFormula(formula, { cellsAt, array: false })?.[0];
  if (single !== undefined) return [{ row, column, value: one.value, formula: single }];
  const spread = array && nativeFormula(formula, { cellsAt, array: true })?.[0];
  if (array === undefined || spread === undefined) return undefined;
  return shown.flatMap((line, down) =>
    line.map(({ value }, right): EditedCell => ({
      row: row + down,
      column: column + right,
      value,
      ...(down === 0 && right === 0 ? { formula: spread, array } : {}),
    })),
  );
}

function noteText(formula: string, array: Area | undefined, date: string): string {
  const where = array ? `, in ${reference(array)}` : '';
  return `Was${where}: =${formula}\nThis is its value of ${date}, when the copy was made. It does not follow the cells that it came from.`;
}

function unknownText(formula: string, why: string, date: string): string {
  return `Was: =${formula}\nIts result could not be worked out when the copy was made, on ${date}: ${why}. The cell has what the file had.`;
}
