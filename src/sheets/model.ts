import type { Area } from '../cells/sheet.ts';
import type { ChartModel } from './charts/model.ts';

/** How a cell looks. Everything left out is the workbook's own default. Colours are `RRGGBB`. */
export interface CellStyle {
  /**
   * Name under which a file lists the style, so that people can see and alter it; one of that name that stands in the file is
   * used as it is. Hosts that keep no such list pass over it.
   */
  readonly named?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly size?: number;
  readonly color?: string;
  readonly fill?: string;
  /** Spreadsheet number format code, e.g. `0.000`, `0.0%`, `yyyy-mm-dd`, `@`. */
  readonly numberFormat?: string;
  readonly wrap?: boolean;
  readonly align?: 'left' | 'center' | 'right';
  readonly valign?: 'top' | 'center';
  /** A thin line below the cell. */
  readonly underline?: boolean;
  /** The text is underlined, as links are. */
  readonly linked?: boolean;
}

/** A value to write: `text` is always written as text, whatever it begins with. */
export type ModelValue = number | string | boolean | null;

export interface ModelCell {
  readonly value: ModelValue;
  /** Key into `SheetModel.styles`. */
  readonly style?: string;
  /** Index into `SheetModel.formulas`; `value` is then the result stored beside the formula. */
  readonly formula?: number;
}

/** Shade cells of an area by what they say: the first rule whose text equals the cell's applies. */
export interface ShadeRule {
  readonly area: Area;
  readonly equals: string;
  readonly style: { readonly fill?: string; readonly color?: string; readonly bold?: boolean };
}

/** A list that programs keep as a table of its own, with its name and filters. */
export interface TableModel {
  /** Name wanted, letters alone; a host chooses a free one that begins with it. */
  readonly name: string;
  /** Header row included, and at least one row below it. The cells of the header row are texts, none twice. */
  readonly area: Area;
}

/** A cell to which a link leads. */
export interface LinkTarget {
  /** A sheet of the workbook, or with `ours` a sheet of the same run by the name it asked for. */
  readonly sheet: string;
  readonly ours?: true;
  readonly row: number;
  /** Letters. */
  readonly column: string;
}

/** A cell of a row that leads elsewhere. */
export interface RowLink {
  /** Counted from 1. */
  readonly column: number;
  readonly to: LinkTarget;
}

/**
 * A result sheet as data, for any host to write. Rows come one at a time so that a sheet of hundreds of thousands
 * never stands in memory whole; `rowCount` is known beforehand.
 */
export interface SheetModel {
  /** Name wanted; a host never overwrites a sheet but chooses a free name beginning with it, and says which. */
  readonly name: string;
  /** Widths in characters of the default font, one a column. */
  readonly widths: readonly number[];
  readonly styles: Readonly<Record<string, CellStyle>>;
  /**
   * Formulas used down the rows, without the leading `=`; `{r}` stands for the row's own number, as in
   * `I{r}*J{r}*K{r}/L{r}`; anchors are written `$K$4`; another result sheet of the same run is written
   * `{Audit summary}!$C$5` with the name it asked for.
   */
  readonly formulas: readonly string[];
  readonly rowCount: number;
  rows(): Iterable<ModelRow>;
  /** Its rows tell of the other sheets: a host that may choose the order in which it makes rows makes these last. */
  readonly writtenLast?: boolean;
  readonly freeze?: { readonly rows: number; readonly columns: number };
  /** A list with filters; header row included. */
  readonly filter?: Area;
  /** The same as a table of the program's own. A sheet has one of both. */
  readonly table?: TableModel;
  readonly merges?: readonly Area[];
  readonly shades?: readonly ShadeRule[];
  readonly charts?: readonly ChartModel[];
  /** The sheet that is shown when the workbook is opened, or once the sheets of a run are written; the first such of a run. */
  readonly inFront?: true;
  /** Name of the table of the input that this sheet shows, where that is no sheet of the workbook. */
  readonly shows?: string;
  readonly print: {
    readonly landscape: boolean;
    /** The program's or printer's usual paper where left out. */
    readonly paper?: 'A4' | 'Letter';
    /** Rows repeated on each page, both ends counted from 1. */
    readonly repeatRows?: { readonly from: number; readonly to: number };
    readonly footer?: string;
    /** The part of the sheet that is printed; all of it where left out. */
    readonly area?: Area;
    /**
     * Percent of its size at which it is printed; as large as one page is wide where left out. Excel heeds `newPages` only
     * with a percentage (from memory).
     */
    readonly scale?: number;
    /** Shrunk until all of it stands on one page. */
    readonly onePage?: true;
    /** Rows with which a new page begins, in rising order; hosts that know no page breaks pass over them. */
    readonly newPages?: readonly number[];
  };
}

export interface ModelRow {
  readonly height?: number;
  /** Cells from column A on; `undefined` leaves a cell empty. */
  readonly cells: readonly (ModelCell | undefined)[];
  readonly links?: readonly RowLink[];
}
