import type { Fact, Place } from '../../model/findings.ts';
import type { Sheet } from '../../../cells/sheet.ts';
import type { Unit } from '../../../units/parse.ts';
import type { TableKind } from './vocabulary.ts';

/** One column of a table as it was understood. */
export interface FoundColumn {
  /** Key in the vocabulary, e.g. `measured`. */
  readonly id: string;
  /** Column number in the sheet, from 1. */
  readonly column: number;
  readonly header: string;
  /** Unit of every cell, from the header, the row of units below it, or the column map. */
  readonly unit?: Unit;
  /** Coverage factor that the header of an uncertainty names, as in `(%, k=3)`. */
  readonly coverage?: number;
  /** Texts in the header's brackets that are no unit. */
  readonly remarks: readonly string[];
}

/** A column whose cells name the unit of other cells in their row. */
export interface UnitColumn {
  readonly column: number;
  readonly header: string;
  /** Ids of the columns that the header names, as in "Sensitivity unit"; empty for a bare "Unit". */
  readonly names: ReadonlySet<string>;
}

/** What a row inside a table is that is no channel. */
export type SkippedRow = 'header repeated' | 'totals' | 'record';

/** A channel list or a table of monitor settings, found on a sheet. Rows and columns count from 1. */
export interface FoundTable {
  readonly kind: TableKind;
  readonly sheet: Sheet;
  readonly headerRow: number;
  readonly firstRow: number;
  readonly lastRow: number;
  readonly columns: ReadonlyMap<string, FoundColumn>;
  readonly unitColumns: readonly UnitColumn[];
  /** Rows inside that are no channels, with what they are. */
  readonly skipped: ReadonlyMap<number, SkippedRow>;
  /** Last row of the spreadsheet table, where it is one; rows right below it count all the same. */
  readonly areaEnd: number | null;
  /** Headers of the table whose columns are not read. */
  readonly unread: readonly UnreadHeader[];
  /** Of a table that was put together from lists of another shape: where what is in it really stands. */
  readonly origin?: TableOrigin;
}

/** Where the cells of a table come from that was put together from others, and what was said of them there. */
interface TableOrigin {
  /** Where a column really stands in a row, or would; of the header row, its header. */
  readonly place: (row: number, id: string) => Place;
  /** By what a row is joined: its tag, and its machine where the tag stands on several. */
  readonly key: (row: number) => string;
  /** The machine that a row is about; empty where none is said. */
  readonly machine: (row: number) => string;
  /** What was said of the cells of a row, each by the id of its column. */
  readonly remarks: (row: number) => readonly (Fact & { readonly column: string })[];
}

/** A header whose column is not read. */
export interface UnreadHeader {
  readonly column: number;
  readonly text: string;
  /** Without what stands in brackets. */
  readonly name: string;
  readonly unit?: Unit;
  /** Another name for a text that has a column already, as `Channel` beside `Tag`. */
  readonly secondName: boolean;
}

/** What of a table its rows are read by. */
export type ReadTable = Pick<FoundTable, 'sheet' | 'columns' | 'unitColumns' | 'origin'>;

/** Whether both tables are one: the same rows, told apart only by what their columns mean. */
export function isSameTable(one: FoundTable, other: FoundTable): boolean {
  return (
    one.sheet === other.sheet &&
    one.headerRow === other.headerRow &&
    one.columns.get('tag')?.column === other.columns.get('tag')?.column
  );
}

/** Rows of a sheet, both ends included. */
export interface RowSpan {
  readonly top: number;
  readonly bottom: number;
}

/** The rows of a table, its header among them: one stretch, or those between which calibration records stand. */
export function stretchesOf({ headerRow, lastRow, skipped }: FoundTable): RowSpan[] {
  const records = [...skipped].flatMap(([row, what]) => (what === 'record' ? [row] : []));
  const stretches: RowSpan[] = [];
  let top = headerRow;
  for (const row of records.toSorted((one, other) => one - other)) {
    if (row > top) stretches.push({ top, bottom: row - 1 });
    top = row + 1;
  }
  if (top <= lastRow) stretches.push({ top, bottom: lastRow });
  return stretches;
}

/** Both tables of one audit. */
export type Tables = Readonly<Record<TableKind, FoundTable>>;
