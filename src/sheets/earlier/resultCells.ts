import { cellText, isBlank } from '../../cells/cell.ts';
import { notANumber } from '../../audit/advise/messages/phrases.ts';
import { readNumber } from '../../cells/number.ts';
import type { EarlierRemark } from '../../audit/model/snapshot.ts';
import { columnLetters } from '../../cells/address.ts';
import { type Sheet, cellAt } from '../../cells/sheet.ts';
import { columns } from '../results/columns.ts';
import { headerRow } from '../results/headerRow.ts';

/** Reads the cells of a sheet of results by the ids of its columns. */
export interface ResultCells {
  readonly has: (id: string) => boolean;
  readonly text: (row: number, id: string) => string;
  /** `null` where the cell is blank or, with a remark, holds no number. */
  readonly number: (row: number, id: string) => number | null;
  readonly numberAt: (row: number, column: number, header: string) => number | null;
  readonly remark: (row: number, id: string, message: string) => void;
}

/** Headers that columns had on sheets of earlier versions. */
const formerHeaders: Readonly<Record<string, string>> = {
  effective: 'Acts at T',
  settingsRow: 'Row',
};

/**
 * A reader for the cells of a sheet of results. Columns are told by their headers, so that a sheet of another version, or
 * one with its columns in another order, is read too. Of two columns with one header the first counts.
 */
export function resultCells(sheet: Sheet, remarks: EarlierRemark[]): ResultCells {
  const places = new Map<string, number>();
  for (const [index, cell] of (sheet.rows[headerRow - 1] ?? []).entries()) {
    const column = columns.find(
      ({ id, header }) => (header === cell || formerHeaders[id] === cell) && !places.has(id),
    );
    if (column) places.set(column.id, index + 1);
  }
  const at = (row: number, id: string) => cellAt(sheet, row, places.get(id) ?? 0);
  const remark = (row: number, id: string, message: string) => {
    const column = columnLetters(places.get(id) ?? 1);
    remarks.push({ sheet: sheet.name, row, column, message });
  };
  const numberAt = (row: number, column: number, header: string) => {
    const cell = cellAt(sheet, row, column);
    if (cell === null || isBlank(cell)) return null;
    const read = readNumber(cell, undefined);
    if ('value' in read) return read.percent ? read.value / 100 : read.value;
    const message = `'${header}': '${cellText(cell).slice(0, 60)}' ${notANumber[read.why]}, so it was not compared. Restore the sheet, or audit the earlier workbook anew.`;
    remarks.push({ sheet: sheet.name, row, column: columnLetters(column), message });
    return null;
  };
  return {
    has: (id) => places.has(id),
    text: (row, id) => cellText(at(row, id)),
    remark,
    number: (row, id) =>
      numberAt(row, places.get(id) ?? 0, columns.find((column) => column.id === id)?.header ?? id),
    numberAt,
  };
}
