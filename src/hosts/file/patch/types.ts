import type { Area } from '../../../cells/sheet.ts';
import type { ModelValue } from '../../../sheets/model.ts';
import type { ViewStyle } from '../view/types.ts';

/** A cell as it is to stand in the copy; its look stays. */
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

/** What changes in the look of a cell; what is left out stays as it is. `null` is the plain state. Colours are `RRGGBB`, sizes points. */
export interface StyleChange {
  readonly numberFormat?: string;
  readonly font?: string;
  readonly size?: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly underline?: boolean;
  readonly strike?: boolean;
  readonly color?: string | null;
  readonly fill?: string | null;
  readonly align?: NonNullable<ViewStyle['align']> | null;
  readonly valign?: NonNullable<ViewStyle['valign']>;
  readonly wrap?: boolean;
}

/** A cell that looks different in the copy. */
export interface StyleEdit {
  /** From 1. */
  readonly row: number;
  /** From 1. */
  readonly column: number;
  /** The file's cell style, by its number, that the cell looks like; left out, its own. */
  readonly style?: number;
  readonly change?: StyleChange;
}

/** Columns of another width, both ends from 1 and included. */
export interface EditedColumns {
  readonly first: number;
  readonly last: number;
  /** In digits with padding, as files store it. */
  readonly width: number;
  readonly hidden: boolean;
}

/** A row of another height. */
export interface EditedRow {
  /** From 1. */
  readonly row: number;
  /** In points; left out, it stays as it is. */
  readonly height?: number;
  readonly hidden?: boolean;
}

/** What is different on one sheet, in any order; of a cell, row or column given twice the later one counts. */
export interface SheetEdits {
  /** The sheet's name in the workbook. */
  readonly sheet: string;
  readonly cells: readonly EditedCell[];
  readonly looks?: readonly StyleEdit[];
  readonly columns?: readonly EditedColumns[];
  readonly rows?: readonly EditedRow[];
  /** All merged areas of the sheet, where they are not as they were. */
  readonly merges?: readonly Area[];
}
