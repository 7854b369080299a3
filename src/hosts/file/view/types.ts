import type { Area, SheetTable } from '../../../cells/sheet.ts';

/** What a cell stores; dates are the day numbers of the workbook's own date system. */
type ViewValue = number | string | boolean | null;

/** One cell that a file stores, with or without content. */
export interface ViewCell {
  /** From 1. */
  readonly column: number;
  /** The stored value, of a formula its last result; `null` where nothing stands, or no result was stored. */
  readonly value: ViewValue;
  /** `value` is the code of an error, such as `#N/A`. */
  readonly error?: true;
  /** The formula's result was never stored. */
  readonly uncalculated?: true;
  /** As a person types it, without `=`; absent in the cells that an array formula spills into. */
  readonly formula?: string;
  /** At the top left cell of an array formula: the cells it fills. */
  readonly array?: Area;
  /** Index into `WorkbookView.styles`. */
  readonly style: number;
}

/** One row that a file stores. Rows and cells come in ascending order; those that nothing is stored for are left out. */
export interface ViewRow {
  /** From 1. */
  readonly row: number;
  /** In points, where the row has a height of its own. */
  readonly height?: number;
  readonly hidden?: true;
  /** Style of the cells that the row stores nothing for; index into `WorkbookView.styles`. */
  readonly style?: number;
  readonly cells: readonly ViewCell[];
}

/** A run of columns of one look, both ends from 1 and included. */
export interface ViewColumns {
  readonly first: number;
  readonly last: number;
  /** In pixels at 96 dots an inch, where the columns have a width of their own. */
  readonly width?: number;
  readonly hidden?: true;
  /** Style of cells that neither the file nor their row says anything of. */
  readonly style?: number;
}

/** How cells look. What is left out is plain. Colours are `RRGGBB`, theme colours and tints worked out. */
export interface ViewStyle {
  /** Number format code, `General` where numbers are shown as they are. */
  readonly numberFormat: string;
  readonly font: string;
  /** In points. */
  readonly size: number;
  readonly bold?: true;
  readonly italic?: true;
  readonly underline?: true;
  readonly strike?: true;
  readonly color?: string;
  readonly fill?: string;
  readonly align?: 'left' | 'center' | 'right';
  /** Left out it is `bottom`, as in every spreadsheet program. */
  readonly valign?: 'top' | 'center' | 'bottom';
  readonly wrap?: true;
}

/** What a rule changes in the look of a cell. */
export type ViewShade = Pick<ViewStyle, 'bold' | 'italic' | 'underline' | 'strike' | 'color' | 'fill'>;

/**
 * A conditional format that colours cells by comparing them (`cellIs`), by a formula (`expression`; rules about texts,
 * blanks, errors and dates store one too), or because other cells of its areas say the same (`duplicate`) or none does
 * (`unique`).
 */
export interface ViewRule {
  readonly kind: 'cellIs' | 'expression' | 'duplicate' | 'unique';
  readonly areas: readonly Area[];
  /** Of a comparison: `equal`, `notEqual`, `lessThan`, `lessThanOrEqual`, `greaterThan`, `greaterThanOrEqual`, `between`, `notBetween`. */
  readonly operator?: string;
  /** Without `=`, as people type them for the top left cell of the first area: a text stands in quotes. None where the kind needs none. */
  readonly formulas: readonly string[];
  readonly shade: ViewShade;
  /** Whether rules after it leave the cells alone that it colours. */
  readonly stops: boolean;
}

/** Cells that lead to a cell of the workbook. */
export interface ViewLink {
  readonly area: Area;
  /** Row and column from 1. */
  readonly to: { readonly sheet: string; readonly row: number; readonly column: number };
}

export interface SheetView {
  readonly name: string;
  readonly hidden: boolean;
  readonly rows: readonly ViewRow[];
  readonly columns: readonly ViewColumns[];
  /** In pixels at 96 dots an inch. */
  readonly defaultColumnWidth: number;
  /** In points. */
  readonly defaultRowHeight: number;
  readonly merges: readonly Area[];
  /** How many rows at the top and columns at the left stay in view. */
  readonly frozen: { readonly rows: number; readonly columns: number };
  readonly showGridLines: boolean;
  /** Left out where there are none; in the order in which they apply. Colour scales, bars, icons and other kinds of rules are left out. */
  readonly rules?: readonly ViewRule[];
  readonly tables: readonly SheetTable[];
  /** Left out where there are none. */
  readonly links?: readonly ViewLink[];
}

/** A defined name; one without `sheet` holds in the whole workbook. */
export interface ViewName {
  readonly name: string;
  readonly sheet?: string;
  /** As a person types it, without `=`. */
  readonly refersTo: string;
}

/** What a grid needs to show a workbook as it is. Chart sheets and the like have no cells and are left out. */
export interface WorkbookView {
  /** File name without folders. */
  readonly name: string;
  readonly sheets: readonly SheetView[];
  /** Index into `sheets` of the one that was in front. */
  readonly activeSheet: number;
  /** Cell styles; index 0 is that of cells that name none. Never empty. */
  readonly styles: readonly ViewStyle[];
  readonly names: readonly ViewName[];
  /** Day numbers count from 1904-01-01 and not from 1900. */
  readonly date1904: boolean;
}
