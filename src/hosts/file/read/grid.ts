import type { Cell } from '../../../cells/cell.ts';

const emptyRow: readonly Cell[] = Object.freeze([]);

/**
 * The rows of a sheet as they come in, in any order, each as short as its last filled cell. Rows without a
 * filled cell are all one and the same empty row, so that a million of them cost next to nothing.
 */
export class Grid {
  readonly #rows: (readonly Cell[])[] = [];
  #row = 0;
  #current: Cell[] = [];

  /** Turns to a row, from 1. A row may be turned to again: its cells are then added to. */
  startRow(row: number): void {
    this.#store();
    this.#row = row;
    for (const cell of this.#rows[row - 1] ?? emptyRow) this.#current.push(cell);
  }

  /** Adds one cell where none stands yet; false where one does. */
  put(column: number, cell: Cell): boolean {
    if (cell === null) return true;
    const row = this.#current;
    while (row.length < column) row.push(null);
    if (row[column - 1] !== null) return false;
    row[column - 1] = cell;
    return true;
  }

  /** The finished rows, to the last one with a filled cell. The grid is not to be used again. */
  finish(): (readonly Cell[])[] {
    this.#store();
    return this.#rows;
  }

  #store(): void {
    if (this.#current.length === 0) return;
    while (this.#rows.length < this.#row) this.#rows.push(emptyRow);
    // A copy is exactly as long as the row; the array that grew has room to spare.
    this.#rows[this.#row - 1] = this.#current.slice();
    this.#current.length = 0;
  }
}
