import type { Area } from '../../../cells/sheet.ts';
import type { SpendCells } from './cellBudget.ts';

/**
 * How far a sheet reaches while its part is read, and what of the workbook's budget it takes: each row to its last filled
 * cell, or as many as it stores; all rows above its last filled one; what merges cover. The same whatever is kept of it.
 */
export class SheetExtent {
  readonly #spend: SpendCells;
  readonly #merges: Area[] = [];
  #row = 0;
  #stored = 0;
  #filledTo = 0;
  /** The last row with a filled cell, and the last column with one. */
  #height = 0;
  #width = 0;

  constructor(spend: SpendCells) {
    this.#spend = spend;
  }

  /** A row begins; one above the last has to be opened again with all it holds. */
  turnTo(row: number): void {
    this.#endRow();
    if (row <= this.#height) this.#spend(this.#width);
    this.#row = row;
  }

  /** A cell of the row; `isFilled` where it is not blank. */
  store(column: number, isFilled: boolean): void {
    this.#stored++;
    if (isFilled && column > this.#filledTo) this.#filledTo = column;
  }

  cover(merge: Area): void {
    this.#merges.push(merge);
  }

  /** Nothing more comes. */
  finish(): void {
    this.#endRow();
    for (const { top, left, bottom, right } of this.#merges) {
      const rows = Math.min(bottom, this.#height) - top + 1;
      if (rows > 0) this.#spend(rows * Math.max(1, Math.min(right - left + 1, this.#width)));
    }
  }

  #endRow(): void {
    if (this.#row === 0) return;
    this.#spend(Math.max(1, this.#stored, this.#filledTo));
    if (this.#filledTo > 0) {
      this.#spend(Math.max(0, this.#row - this.#height));
      this.#height = Math.max(this.#height, this.#row);
      this.#width = Math.max(this.#width, this.#filledTo);
    }
    this.#stored = 0;
    this.#filledTo = 0;
    this.#row = 0;
  }
}
