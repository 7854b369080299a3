import { canonicalJson, plainNumber } from '../../audit/evidence/canonical.ts';
import { CellHash } from '../../audit/evidence/cellHash.ts';
import { textHash } from '../../audit/evidence/fingerprint.ts';
import type { Cell } from '../../cells/cell.ts';
import type { Steps } from '../../audit/model/steps.ts';
import { fittedText, writable } from '../cells.ts';
import type { ModelRow, ModelValue, SheetModel } from '../model.ts';
import { isTitleOf } from '../titles.ts';
import { isAboutResults } from './evidenceLabels.ts';

/** Significant digits in which the numbers of results count: programs that calculate anew differ in the last ones. */
const resultDigits = 9;
/** Numbers this close are equal: what a difference of equal ones leaves. */
export const negligible = 1e-11;
/** Characters of a text that count: what every host can write into one cell. */
export const textCounted = 32_000;

/** Rows between two steps. */
const stride = 250;

/** SHA-256 of each result sheet, by the text of its cell A1. */
export type SheetFingerprints = Readonly<Record<string, string>>;

/** One fingerprint for all result sheets of an audit, in whatever order they stand. */
export function resultsFingerprint(sheets: SheetFingerprints): string {
  return textHash(canonicalJson(sheets));
}

/** SHA-256 of what a result sheet shows, but for what it says of its own fingerprint. Tells how many rows are done. */
export function* modelFingerprint(model: SheetModel): Steps<number, string> {
  const hash = new SheetHash();
  for (const { cells } of model.rows()) {
    const row = hash.add(storedRow(cells));
    if (row % stride === 0) yield row;
  }
  return hash.hex();
}

/** The same of a sheet as it was read from a workbook. */
export function* sheetFingerprint(rows: readonly (readonly Cell[])[]): Steps<number, string> {
  const hash = new SheetHash();
  for (const cells of rows) {
    const row = hash.add(cells);
    if (row % stride === 0) yield row;
  }
  return hash.hex();
}

/** A row of a model as cells hold it. */
export function storedRow(cells: ModelRow['cells']): readonly Cell[] {
  return cells.map((cell) => (cell ? storedValue(cell.value) : null));
}

/** A value of a model as a cell holds it. */
export function storedValue(value: ModelValue): Exclude<ModelValue, null> | null {
  if (typeof value === 'number') return writable(value);
  return typeof value === 'string' ? fittedText(value) : value;
}

/** The fingerprint of a sheet, row by row. */
export class SheetHash {
  readonly #hash = new CellHash(resultDigits);
  #row = 0;
  #isSummary = false;

  /** Adds the next row; its number. */
  add(cells: readonly Cell[]): number {
    if (++this.#row === 1) this.#isSummary = isTitleOf('summary', cells[0] ?? null);
    if (this.#isSummary && isAboutResults(cells.length, (index) => cells[index])) return this.#row;
    let last = cells.length - 1;
    while (last >= 0 && isBlank(cells[last] ?? null)) last--;
    if (last < 0) return this.#row;
    this.#hash.cell(this.#row);
    for (let index = 0; index <= last; index++) this.#hash.cell(counted(cells[index] ?? null));
    this.#hash.end();
    return this.#row;
  }

  hex(): string {
    return this.#hash.hex();
  }
}

function isBlank(cell: Cell): boolean {
  return cell === null || (typeof cell === 'string' && cell.trim() === '');
}

/** A cell as it counts: small numbers, which may be what is left of a difference of equal ones, to twelve decimals. */
function counted(cell: Cell): Cell {
  if (typeof cell === 'string') return cell.length > textCounted ? cell.slice(0, textCounted) : cell;
  const number = plainNumber(cell);
  if (number === undefined || Math.abs(number) >= 1e-3) return cell;
  return Math.round(number * 1e12) / 1e12;
}
