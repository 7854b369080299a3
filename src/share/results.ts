import { cellAddress } from '../cells/address.ts';
import type { Area } from '../cells/sheet.ts';
import { evaluate } from '../functions/formula/evaluate.ts';
import { parseFormula } from '../functions/formula/parse.ts';
import { FunctionError } from '../functions/functionError.ts';
import { type Range, isRange, loneCell, reaches } from '../functions/range.ts';
import { errorIn } from '../functions/read/cellKind.ts';
import { oneLine } from '../hosts/file/zip/refused.ts';
import type { ViewCell } from '../hosts/file/view/types.ts';
import type { BookCells } from './bookCells.ts';
import { targetOf } from './references.ts';
import type { CellPlace } from './types.ts';

/** What a cell shows, as it can be stored. */
export type Content = Pick<ViewCell, 'value' | 'error'>;

/** Why a result can't be told: a clause for a person. */
export class NoResult extends Error {}

/** Errors that say that nothing was calculated. */
const notCalculated = new Set(['#NAME?', '#BUSY!', '#GETTING_DATA', '#CONNECT!', '#BLOCKED!', '#UNKNOWN!']);

const mostCells = 100_000;
/** Formulas without results that rest on one another in a row, the last one first. */
const longestChain = 500;

/** The results of formulas, as the file has them or worked out from the cells they lead to. */
export class Results {
  readonly #book: BookCells;
  readonly #uses: (formula: string) => boolean;
  readonly #known = new Map<string, Range | NoResult>();
  readonly #open = new Set<string>();
  /** Some result was not stored, so others that rest on it may be out of date. */
  workedOut = false;

  constructor(book: BookCells, uses: (formula: string) => boolean) {
    this.#book = book;
    this.#uses = uses;
  }

  /**
   * The rows of what a formula shows in the cells it fills.
   * @throws NoResult where the file has none and it can't be worked out.
   */
  of(place: CellPlace, formula: string, area: Area): readonly (readonly Content[])[] {
    const stored = rowsOf(area, (row, column) => this.#book.cell({ sheet: place.sheet, row, column }));
    if (stored.flat().every((cell) => cell === undefined || isCalculated(cell))) {
      return stored.map((row) => row.map((cell): Content => cell ?? { value: '' }));
    }
    this.workedOut = true;
    return this.#workOut(place, formula).map((row) => row.map(contentOf));
  }

  /**
   * The values of the cells that a reference leads to.
   * @throws NoResult where one can't be told.
   */
  cellsAt(reference: string, at: CellPlace): Range {
    const target = targetOf(reference, at, this.#book);
    if (!target) throw new NoResult(`${oneLine(reference, 40)} can’t be followed`);
    if ('value' in target) return [[target.value]];
    const { sheet, area } = target;
    const size = (area.bottom - area.top + 1) * (area.right - area.left + 1);
    if (size > mostCells) throw new NoResult(`${oneLine(reference, 40)} is too large`);
    return rowsOf(area, (row, column) => this.#valueAt({ sheet: sheet.name, row, column }));
  }

  #valueAt(place: CellPlace): unknown {
    const cell = this.#book.cell(place);
    if (!cell) return null;
    if (isCalculated(cell)) return cell.error ? errorIn({ code: cell.value }) : cell.value;
    const { row, column } = place;
    if (cell.formula === undefined || !this.#uses(cell.formula)) {
      throw new NoResult(`${cellAddress(row, column)} has no result either`);
    }
    return this.#workOut(place, cell.formula)[0]?.[0];
  }

  #workOut(place: CellPlace, formula: string): Range {
    const key = `${place.row} ${place.column} ${place.sheet}`;
    const known = this.#known.get(key);
    if (known instanceof NoResult) throw known;
    if (known) return known;
    if (this.#open.has(key)) throw new NoResult('it rests on itself');
    if (this.#open.size >= longestChain) throw new NoResult('it rests on too long a chain of others');
    this.#open.add(key);
    try {
      const value = evaluate(parsed(formula), {
        cellsAt: (reference) => this.cellsAt(reference, place),
        operand,
        beyond: ({ message }) => {
          throw new NoResult(
            `it holds more than our functions and arithmetic (${message.split(/[:;]/)[0] ?? ''})`,
          );
        },
      });
      const rows = isRange(value) ? value : [[value]];
      this.#known.set(key, rows);
      return rows;
    } catch (error) {
      // One formula without a result ends the whole copy, so it is not tried again from elsewhere.
      if (error instanceof NoResult) this.#known.set(key, error);
      throw error;
    } finally {
      this.#open.delete(key);
    }
  }
}

function isCalculated({ uncalculated, error, value }: ViewCell): boolean {
  return uncalculated !== true && !(error === true && notCalculated.has(String(value)));
}

function rowsOf<Cell>(
  { top, left, bottom, right }: Area,
  at: (row: number, column: number) => Cell,
): Cell[][] {
  return Array.from({ length: bottom - top + 1 }, (_, row) =>
    Array.from({ length: right - left + 1 }, (__, column) => at(top + row, left + column)),
  );
}

function parsed(formula: string) {
  try {
    return parseFormula(formula);
  } catch {
    throw new NoResult('it can’t be read');
  }
}

/** A blank operand counts as 0, as in every spreadsheet; a text would be guessed at. */
function operand(given: unknown): unknown {
  if (isRange(given) && reaches(given)) throw new NoResult('it works with a range by an operator');
  const value = loneCell(given) ?? 0;
  if (typeof value === 'number' || value instanceof FunctionError) return value;
  throw new NoResult('it works with a text by an operator');
}

function contentOf(value: unknown): Content {
  if (value instanceof FunctionError) return { value: value.code, error: true };
  if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') return { value };
  return { value: 0 };
}
