import { cellText, isBlank } from '../../../cells/cell.ts';
import { type Sheet, cellAt } from '../../../cells/sheet.ts';
import type { HeaderMatch } from './headerRows.ts';
import { isRecordWord } from './recordHeaders.ts';
import { spanOf, isNumber } from './recordParts.ts';
import { columnsOf } from './vocabulary.ts';

/** By what the rows of a channel list or of monitor settings are told from what else stands below their header. */
export interface ListRows {
  readonly sheet: Sheet;
  readonly headerRow: number;
  /** Columns that it uses, from and to. */
  readonly left: number;
  readonly right: number;
  readonly tag: number;
  /** Columns that hold numbers. */
  readonly numbers: readonly number[];
  /** Those of them without which there is no such table. */
  readonly required: readonly number[];
}

/** The rows below a header, read in two ways where one table is both channel list and monitor settings. */
export function listRows(match: HeaderMatch, also: HeaderMatch | undefined): ListRows | undefined {
  const { sheet, row: headerRow } = match;
  const tag = match.columns.get('tag')?.column;
  if (tag === undefined) return undefined;
  const columns = [match, ...(also ? [also] : [])].flatMap(({ kind, columns: found }) =>
    [...found.values()].map(({ id, column }) => ({ column, spec: columnsOf(kind)[id] })),
  );
  const numbers = columns.filter(({ spec }) => spec?.holds === 'number');
  const required = numbers.filter(({ spec }) => spec?.required);
  return {
    sheet,
    headerRow,
    ...spanOf(columns),
    tag,
    numbers: numbers.map(({ column }) => column),
    required: required.map(({ column }) => column),
  };
}

/** Whether a cell holds a text that is no number. */
export function isText(sheet: Sheet, row: number, column: number): boolean {
  const cell = cellAt(sheet, row, column);
  return typeof cell === 'string' && !isBlank(cell) && !isNumber(sheet, row, column);
}

/** Whether a text says what stands beside it, as above a record: `Date`, `Temperature (°C)`, `Serial no.:`. */
export function isLabel(text: string): boolean {
  return text.trimEnd().endsWith(':') || isRecordWord(text);
}

/**
 * Whether a row can be nothing but one of the table: a tag, and a number in every column that the table must have. A word
 * without a digit beside one number may also be a line of a record, such as its slope.
 */
export function isListRow({ sheet, tag, numbers, required }: ListRows, row: number): boolean {
  if (!isText(sheet, row, tag) || !required.every((column) => isNumber(sheet, row, column))) return false;
  const text = cellText(cellAt(sheet, row, tag));
  if (isLabel(text)) return false;
  return /\d/u.test(text) || numbers.filter((column) => isNumber(sheet, row, column)).length > 1;
}
