/** A text that hangs at a cell; row and column count from 1. */
export interface CellNote {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}
