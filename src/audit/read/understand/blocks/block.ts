import type { Sheet, SheetTable } from '../../../../cells/sheet.ts';

/** How the records of a block lie: a row each, a column each, or a form each with labels beside its values. */
type Orientation = 'rows' | 'columns' | 'forms';

/** A cell of a sheet; row and column count from 1. */
export interface Place {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** A text of a header, from the outermost group (0) to the name of the field. */
export interface HeaderPart {
  readonly text: string;
  readonly row: number;
  readonly column: number;
  /** It stands there itself, covers the field by a merge, or stands to the left of it over a gap. */
  readonly covers: 'own' | 'merged' | 'assumed';
}

/** One field of a block: a column of rows, a row of columns, a label of forms. */
export interface FieldPlace {
  /** Column or row number; of forms the number of the label. */
  readonly at: number;
  readonly header: readonly HeaderPart[];
  readonly hidden: boolean;
}

/** An area of a sheet that holds records, with its headers. Plain data but for the sheet's cells. */
export interface Block {
  /** Its number in the workbook. */
  readonly id: number;
  readonly sheet: Sheet;
  readonly lies: Orientation;
  /** First and last row (or column) of its headers. */
  readonly header: readonly [first: number, last: number];
  readonly fields: readonly FieldPlace[];
  /** Rows (or columns) that may be records, first and last. */
  readonly span: readonly [first: number, last: number];
  /** Of forms: the cells of the values by form and label. */
  readonly forms: readonly ReadonlyMap<number, Place>[];
  /** Of forms: the cells that may name the units of the values, beside them. */
  readonly formUnits: readonly ReadonlyMap<number, Place>[];
  /** Of columns: the column of units beside the labels. */
  readonly unitLine: number | null;
  readonly table: SheetTable | null;
  /** Rows inside that repeat the header. */
  readonly repeats: ReadonlySet<number>;
}

/** The cell of a field in a record: a row, a column, or the number of a form. */
export function placeIn(block: Block, field: FieldPlace, record: number): Place | undefined {
  const sheet = block.sheet.name;
  if (block.lies === 'rows') return { sheet, row: record, column: field.at };
  if (block.lies === 'columns') return { sheet, row: field.at, column: record };
  return block.forms[record]?.get(field.at);
}

/** Whether a record stands in a hidden row or column. */
export function isHiddenRecord({ lies, sheet }: Block, record: number): boolean {
  if (lies === 'rows') return sheet.hiddenRows.has(record);
  return lies === 'columns' && sheet.hiddenColumns?.has(record) === true;
}

/** Lines (rows or columns) or forms of a block that may be records. */
export function* recordsOf(block: Block): Generator<number, void, void> {
  for (let at = block.span[0]; at <= block.span[1]; at++) if (!block.repeats.has(at)) yield at;
}
