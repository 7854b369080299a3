import { cellText, isBlank } from '../../../../cells/cell.ts';
import { cellAt, type Sheet } from '../../../../cells/sheet.ts';
import { headerKey } from '../../tables/header.ts';
import { statedUnit } from '../vocabulary/statedUnit.ts';
import type { HeaderRead } from '../vocabulary/headerText.ts';
import { isAmount, labelOf } from './cellKind.ts';
import { shownAt } from './shownCells.ts';

/** Labels below each other in one column, with what stands to their right. */
export interface LabelRun {
  readonly sheet: Sheet;
  readonly column: number;
  readonly rows: readonly number[];
  /** Column of units beside the labels. */
  readonly unitColumn: number | null;
  /** Columns of values, up to the next column of labels. */
  readonly values: readonly number[];
}

/** Fewest labels that make a run. */
const fewest = 3;
/** Rows without a label that a run may go over. */
const gap = 3;
/** Columns that are looked at for labels. */
const widest = 60;

/** Runs of labels in the rows of a sheet that `isFree` says are of no other block. */
export function labelRuns(sheet: Sheet, isFree: (row: number) => boolean): LabelRun[] {
  const byColumn = new Map<number, number[]>();
  for (let row = 1; row <= sheet.rows.length; row++) {
    const cells = sheet.rows[row - 1] ?? [];
    if (cells.length === 0 || !isFree(row)) continue;
    for (let column = 1; column <= Math.min(cells.length, widest); column++) {
      const label = labelOf(cells[column - 1] ?? null);
      if (!label || !isLabel(label, cellText(cells[column - 1] ?? null))) continue;
      const rows = byColumn.get(column);
      if (rows) rows.push(row);
      else byColumn.set(column, [row]);
    }
  }
  const runs = [...byColumn].flatMap(([column, rows]) =>
    stretches(rows).map((stretch) => ({ column, rows: stretch })),
  );
  const real = runs.filter(
    ({ column, rows }) =>
      new Set(rows.map((row) => headerKey(cellText(cellAt(sheet, row, column))))).size >= fewest,
  );
  return real.flatMap((run) => withValues(sheet, run, real));
}

/** A label names a quantity, a tag or a machine; a unit alone is none. */
function isLabel(label: HeaderRead, text: string): boolean {
  if (label.name === '') return false;
  return (
    label.standard.length > 0 || label.unit !== null || /:\s*$/u.test(text) || label.known * 2 >= label.words
  );
}

function stretches(rows: readonly number[]): number[][] {
  const found: number[][] = [];
  for (const row of rows) {
    const last = found.at(-1);
    if (last && row - (last.at(-1) ?? 0) <= gap + 1) last.push(row);
    else found.push([row]);
  }
  return found;
}

/** The rows of a run from the first label with something beside it: what stands above is a title. */
function withoutTitles(
  sheet: Sheet,
  { column, rows }: { column: number; rows: readonly number[] },
): readonly number[] {
  const first = rows.findIndex((row) =>
    (sheet.rows[row - 1] ?? []).slice(column).some((cell) => !isBlank(cell)),
  );
  return rows.slice(Math.max(0, first));
}

function withValues(
  sheet: Sheet,
  run: { column: number; rows: readonly number[] },
  all: readonly { column: number; rows: readonly number[] }[],
): LabelRun[] {
  const { column } = run;
  const rows = withoutTitles(sheet, run);
  const [top, bottom] = [rows[0] ?? 1, rows.at(-1) ?? 1];
  const next = Math.min(
    ...all
      .filter(
        (other) => other.column > column && (other.rows[0] ?? 0) <= bottom && (other.rows.at(-1) ?? 0) >= top,
      )
      .map((other) => other.column),
    column + 16_384,
  );
  let right = 0;
  for (const row of rows) right = Math.max(right, (sheet.rows[row - 1] ?? []).length);
  right = Math.min(right, next - 1);
  let unitColumn: number | null = null;
  const values: number[] = [];
  for (let at = column + 1; at <= right; at++) {
    let filled = 0;
    let units = 0;
    let amounts = 0;
    for (const row of rows) {
      const cell = shownAt(sheet, row, at);
      if (isBlank(cell)) continue;
      filled++;
      if (isAmount(cell)) amounts++;
      else if (typeof cell === 'string' && statedUnit(cell)) units++;
    }
    if (unitColumn === null && units > 0 && amounts === 0 && units * 2 >= filled) unitColumn = at;
    else if (filled > 0) values.push(at);
  }
  return values.length === 0
    ? []
    : [{ sheet, column, rows: withUnknown(sheet, column, rows, values), unitColumn, values }];
}

/** The rows of a run with those among and right below them whose text is no known label, and which are filled as the others are. */
function withUnknown(
  sheet: Sheet,
  column: number,
  rows: readonly number[],
  values: readonly number[],
): readonly number[] {
  if (values.length < 2) return rows;
  const known = new Set(rows);
  const isFilled = (row: number): boolean => {
    const text = cellAt(sheet, row, column);
    if (typeof text !== 'string' || isBlank(text) || isAmount(text)) return false;
    return values.filter((at) => !isBlank(cellAt(sheet, row, at))).length * 2 > values.length;
  };
  const found: number[] = [];
  const bottom = rows.at(-1) ?? 0;
  for (let row = rows[0] ?? 1; row <= bottom || isFilled(row); row++)
    if (known.has(row) || isFilled(row)) found.push(row);
  return found;
}

/** The run cut where its labels begin anew: below each other stand several tables or forms. */
export function segmentsOf(run: LabelRun): LabelRun[] {
  const keys = run.rows.map((row) => headerKey(cellText(cellAt(run.sheet, row, run.column))));
  const again = keys.find((key, at) => keys.indexOf(key, at + 1) > at);
  if (again === undefined) return [run];
  const starts = keys.flatMap((key, at) => (key === again ? [at] : []));
  return starts.map((start, at) => ({
    ...run,
    rows: run.rows.slice(at === 0 ? 0 : start, starts[at + 1] ?? run.rows.length),
  }));
}
