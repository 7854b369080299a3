import type { Cell } from '../../../cells/cell.ts';
import type { Sheet, Workbook } from '../../../cells/sheet.ts';
import { headerKey } from './header.ts';
import { isTagHeader } from './headerRows.ts';
import { mayHeadRecord } from './recordHeaders.ts';
import { isResultSheet } from './titleWords.ts';

/** A row with headers of the tag column. Rows and columns count from 1. */
export interface TagRow {
  readonly sheet: Sheet;
  readonly row: number;
  readonly tagColumns: readonly number[];
}

/** The rows of a workbook that may head something: a table, or a calibration record. */
export interface HeaderRows {
  readonly ofTags: ReadonlyMap<Sheet, readonly TagRow[]>;
  readonly ofRecords: ReadonlyMap<Sheet, readonly number[]>;
}

/** Rows that are looked at in one step. */
const stride = 500;

/** Looks through every sheet that is no result of ours, some rows at a time. */
export function* searchHeaders(workbook: Workbook): Generator<void, HeaderRows, void> {
  const ofTags = new Map<Sheet, readonly TagRow[]>();
  const ofRecords = new Map<Sheet, readonly number[]>();
  for (const sheet of inputSheets(workbook)) {
    const tags: TagRow[] = [];
    const records: number[] = [];
    for (const [index, cells] of sheet.rows.entries()) {
      if (index % stride === stride - 1) yield;
      const row = index + 1;
      const tagColumns = tagColumnsIn(cells);
      if (tagColumns) tags.push({ sheet, row, tagColumns });
      if (isHeadOfRecord(cells)) records.push(row);
    }
    ofTags.set(sheet, tags);
    ofRecords.set(sheet, records);
  }
  return { ofTags, ofRecords };
}

/** The sheets of a workbook that an audit reads. */
export function inputSheets(workbook: Workbook): Sheet[] {
  return workbook.sheets.filter((sheet) => !isResultSheet(sheet));
}

function tagColumnsIn(cells: readonly Cell[]): number[] | undefined {
  let columns: number[] | undefined;
  for (let column = 1; column <= cells.length; column++) {
    const cell = cells[column - 1];
    if (typeof cell === 'string' && isTagHeader(cell)) (columns ??= []).push(column);
  }
  return columns;
}

/** Whether a row may head a calibration record. */
export function isHeadOfRecord(cells: readonly Cell[]): boolean {
  return cells.some((cell) => typeof cell === 'string' && mayHeadRecord(cell)) && cells.some(mayBeVolts);
}

/** Every header of a column of volts has one of these words in it. */
function mayBeVolts(cell: Cell): boolean {
  return typeof cell === 'string' && cell.length <= 60 && /volt|output/u.test(headerKey(cell));
}
