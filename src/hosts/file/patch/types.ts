import type { Area } from '../../../cells/sheet.ts';
import type { ModelValue } from '../../../sheets/model.ts';

/** A cell as it is to stand in the copy; its style stays. */
export interface EditedCell {
  /** From 1. */
  readonly row: number;
  /** From 1. */
  readonly column: number;
  /** What the cell shows; with `formula` the result stored beside it. `null` empties it. */
  readonly value: ModelValue;
  /** `value` is the code of an error, such as `#N/A`. */
  readonly error?: true;
  /** As a person types it, without `=`. Where it is left out, a formula that stood there goes. */
  readonly formula?: string;
  /**
   * The cells that the formula fills, of which this is the top left one; left out, it fills this one. The values of the
   * others are edits of their own, without a formula.
   */
  readonly array?: Area;
}

/** The edited cells of one sheet, in any order; of a cell given twice the later one counts. */
export interface SheetEdits {
  /** The sheet's name in the workbook. */
  readonly sheet: string;
  readonly cells: readonly EditedCell[];
}
