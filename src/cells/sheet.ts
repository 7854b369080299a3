import type { Cell } from './cell.ts';

/** A rectangle of cells; rows and columns count from 1, as a spreadsheet shows them; both ends belong to it. */
export interface Area {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** A spreadsheet table ("list object") on a sheet. `area` includes its header row and its totals row. */
export interface SheetTable {
  readonly name: string;
  readonly area: Area;
  readonly headerRow: boolean;
  readonly totalsRow: boolean;
}

/** A text that number formats show with the numbers of an area one column wide, such as `mV/mil`; no cell holds it. */
export interface ShownText {
  readonly text: string;
  readonly area: Area;
}

/** One sheet of a user's workbook, read-only. */
export interface Sheet {
  readonly name: string;
  readonly hidden: boolean;
  /** `rows[0]` is row 1; a row may be shorter than the sheet, and is empty where nothing stands in it. */
  readonly rows: readonly (readonly Cell[])[];
  /** Rows (from 1) that are hidden or filtered away. */
  readonly hiddenRows: ReadonlySet<number>;
  readonly tables: readonly SheetTable[];
  /** Merged areas. In one a column wide every row holds the top cell's value; in any other only the top left cell does. */
  readonly merged?: readonly Area[];
  /** Columns (from 1) that are hidden or have no width. */
  readonly hiddenColumns?: ReadonlySet<number>;
  /** What number formats show with numbers, column by column, in runs of rows. */
  readonly shownTexts?: readonly ShownText[];
  /** How texts that are numbers were meant: set where every cell is text by nature of the format (csv). */
  readonly plainText?: { readonly decimal: '.' | ',' };
}

export interface Workbook {
  /** File name or document name, without folders. */
  readonly name: string;
  readonly sheets: readonly Sheet[];
}

/** The cell of a sheet at a row and column counted from 1; `null` where nothing stands. */
export function cellAt(sheet: Sheet, row: number, column: number): Cell {
  return sheet.rows[row - 1]?.[column - 1] ?? null;
}
