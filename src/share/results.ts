import type { AstExpression } from '@borgar/fx';
import { cellAddress } from '../cells/address.ts';
import type { Area } from '../cells/sheet.ts';
import { evaluate } from '../functions/formula/evaluate.ts';
import { FormulaTooLarge, parseFormula } from '../functions/formula/parse.ts';
import { FunctionError } from '../functions/functionError.ts';
import { type Range, isRange, singleCell, reaches } from '../functions/range.ts';
import { errorIn } from '../functions/read/cellKind.ts';
import { oneLine } from '../hosts/file/zip/refused.ts';
import type { ViewCell } from '../hosts/file/view/types.ts';
import type { BookCells } from './bookCells.ts';
import { type Content, contentOf, isCalculated, isUnknown, notCalculated } from './content.ts';
import { hidesErrors, ifErrorOf } from './hiddenErrors.ts';
import { targetOf } from './references.ts';
import type { CellPlace } from './types.ts';

/** Why a result can't be told: a clause for a person. */
export class NoResult extends Error {}

const ring = 'it rests on itself';
const tooDeep = 'it is nested too deep';
const mostCells = 100_000;
/** Formulas without results that are followed from one to the next before the last of them is worked out by itself. */
const longestChain = 100;

/** A formula that others rest on, too many steps away to be followed. */
class Further extends Error {
  readonly place: CellPlace;
  readonly formula: string;

  constructor(place: CellPlace, formula: string) {
    super();
    this.place = place;
    this.formula = formula;
  }
}

/** The results of formulas, as the file has them or worked out from the cells they lead to. */
export class Results {
  readonly #book: BookCells;
  readonly #uses: (formula: string) => boolean;
  readonly #known = new Map<string, Range | NoResult>();
  readonly #open = new Set<string>();
  #withoutOurs: boolean | undefined;
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
    const calculated = stored.flat().every((cell) => cell === undefined || isCalculated(cell));
    if (calculated && !this.#isFalse(place, formula, stored[0]?.[0])) {
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

  /** What the file has for the cells of a formula that can't be worked out; #N/A where it has nothing, which would count as 0. */
  storedIn(place: CellPlace, area: Area): readonly (readonly Content[])[] {
    return rowsOf(area, (row, column) => {
      const cell = this.#book.cell({ sheet: place.sheet, row, column });
      const has = cell && cell.uncalculated !== true && cell.value !== null;
      return has
        ? { value: cell.value, ...(cell.error && { error: cell.error }) }
        : { value: '#N/A', error: true };
    });
  }

  #valueAt(place: CellPlace): unknown {
    const cell = this.#book.cell(place);
    if (!cell) return null;
    const { row, column } = place;
    const ours = cell.formula !== undefined && this.#uses(cell.formula);
    if (isCalculated(cell) && !(ours && this.#isFalse(place, cell.formula, cell)))
      return cell.error ? errorIn({ code: cell.value }) : cell.value;
    if (cell.formula === undefined || !ours) {
      throw new NoResult(`${cellAddress(row, column)} has no result either`);
    }
    return this.#workOut(place, cell.formula)[0]?.[0];
  }

  /**
   * Whether a formula of ours shows what it has for errors because the program that calculated it did not know our
   * functions: others say so, or its own result is another.
   */
  #isFalse(place: CellPlace, formula: string, stored: ViewCell | undefined): boolean {
    try {
      const tree = parsed(formula);
      if (!hidesErrors(tree, this.#uses)) return false;
      if (this.#calculatedWithoutOurs()) return true;
      const otherwise = ifErrorOf(tree)?.otherwise;
      if (otherwise?.type !== 'Literal' || otherwise.value !== (stored?.value ?? '')) return false;
      const [[result] = []] = this.#workOut(place, formula);
      return result !== otherwise.value;
    } catch (error) {
      if (error instanceof NoResult) return false;
      throw error;
    }
  }

  /** Whether some formula of ours shows #NAME? or the like, and not because a cell that it rests on does. */
  #calculatedWithoutOurs(): boolean {
    this.#withoutOurs ??= this.#book.view.sheets.some(({ name: sheet, rows }) =>
      rows.some(({ row, cells }) =>
        cells.some(
          (cell) =>
            cell.formula !== undefined &&
            isUnknown(cell) &&
            this.#uses(cell.formula) &&
            !this.#rightlyUnknown({ sheet, row, column: cell.column }, cell.formula),
        ),
      ),
    );
    return this.#withoutOurs;
  }

  #rightlyUnknown(place: CellPlace, formula: string): boolean {
    try {
      const [[result] = []] = this.#workOut(place, formula);
      return result instanceof FunctionError && notCalculated.has(result.code);
    } catch (error) {
      if (error instanceof NoResult) return false;
      throw error;
    }
  }

  /** Works out a formula; where many rest on one another, from the one that the others rest on, so that no chain is too long. */
  #workOut(place: CellPlace, formula: string): Range {
    if (this.#open.size > 0) return this.#follow(place, formula);
    const waiting = [{ place, formula }];
    for (;;) {
      const next = waiting.at(-1) ?? { place, formula };
      try {
        const rows = this.#follow(next.place, next.formula);
        if (waiting.length <= 1) return rows;
      } catch (error) {
        if (error instanceof Further) {
          const key = keyOf(error.place);
          // What waits for it is what it rests on.
          if (waiting.some((one) => keyOf(one.place) === key)) this.#known.set(key, new NoResult(ring));
          else waiting.push({ place: error.place, formula: error.formula });
          continue;
        }
        if (!(error instanceof NoResult) || waiting.length <= 1) throw error;
      }
      waiting.pop();
    }
  }

  #follow(place: CellPlace, formula: string): Range {
    const key = keyOf(place);
    const known = this.#known.get(key);
    if (known instanceof NoResult) throw known;
    if (known) return known;
    if (this.#open.has(key)) throw new NoResult(ring);
    if (this.#open.size >= longestChain) throw new Further(place, formula);
    this.#open.add(key);
    try {
      const tree = parsed(formula);
      const caught = ifErrorOf(tree);
      const value = caught
        ? this.#unlessError(this.#valueOf(caught.value, place), caught.otherwise, place)
        : this.#valueOf(tree, place);
      const rows = isRange(value) ? value : [[value]];
      this.#known.set(key, rows);
      return rows;
    } catch (error) {
      const told = error instanceof RangeError && this.#open.size === 1 ? new NoResult(tooDeep) : error;
      if (told instanceof NoResult) this.#known.set(key, told);
      throw told;
    } finally {
      this.#open.delete(key);
    }
  }

  #valueOf(node: AstExpression, place: CellPlace): unknown {
    return evaluate(node, {
      cellsAt: (reference) => this.cellsAt(reference, place),
      operand,
      beyond: ({ message }) => {
        throw new NoResult(
          `it holds more than our functions and arithmetic (${message.split(/[:;]/)[0] ?? ''})`,
        );
      },
    });
  }

  #unlessError(value: unknown, otherwise: AstExpression, place: CellPlace): unknown {
    if (isRange(value) && reaches(value)) throw new NoResult('it looks for errors in several cells');
    return singleCell(value) instanceof FunctionError ? this.#valueOf(otherwise, place) : value;
  }
}

function keyOf({ sheet, row, column }: CellPlace): string {
  return `${row} ${column} ${sheet}`;
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
  } catch (error) {
    throw new NoResult(error instanceof FormulaTooLarge ? `it is ${error.message}` : 'it can’t be read');
  }
}

/** A blank operand counts as 0, as in every spreadsheet; a text would be guessed at. */
function operand(given: unknown): unknown {
  if (isRange(given) && reaches(given)) throw new NoResult('it works with a range by an operator');
  const value = singleCell(given) ?? 0;
  if (typeof value === 'number' || value instanceof FunctionError) return value;
  throw new NoResult('it works with a text by an operator');
}
