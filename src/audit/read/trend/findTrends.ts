import { cellText, type Cell } from '../../../cells/cell.ts';
import type { Sheet, Workbook } from '../../../cells/sheet.ts';
import type { ColumnMap } from '../../model/columnMap.ts';
import type { TrendSource } from '../../model/trend.ts';
import { hasListHeader } from '../hasListHeader.ts';
import { isResultSheet } from '../tables/titleWords.ts';
import { tagKey } from '../tables/tagKey.ts';
import { findTrendHead, headRows, type TrendHead } from './trendHead.ts';
import { timeReader } from './timeReader.ts';

/**
 * Sheets of a workbook that hold recorded readings and nothing else: below a title at most a header with a column of times,
 * and either tag and reading or columns headed by what stands as a cell on another sheet; rows that begin with times of day.
 */
export function trendSheets(workbook: Workbook, { notOfAudit = [] }: ColumnMap = {}): Sheet[] {
  return workbook.sheets.filter((sheet) => {
    if (isResultSheet(sheet)) return false;
    const head = findTrendHead(sheet.rows.slice(0, headRows));
    if (!head || !hasTimes(sheet, head) || hasListHeader(sheet)) return false;
    if (notOfAudit.some((said) => said.sheet.toLowerCase() === sheet.name.toLowerCase())) return false;
    return head.long !== null || namesOther(workbook, sheet, head);
  });
}

/** A workbook without sheets that are read for themselves. */
export function withoutSheets(workbook: Workbook, apart: readonly Sheet[]): Workbook {
  if (apart.length === 0) return workbook;
  return { ...workbook, sheets: workbook.sheets.filter((sheet) => !apart.includes(sheet)) };
}

/** A sheet as a table of readings. */
export function sheetSource({ name, rows, plainText }: Sheet): TrendSource {
  return { name, from: 'workbook', rows: () => rows, ...(plainText ? { plainText } : {}) };
}

/** Whether the first filled rows below a header begin with times, of which one at least has a time of day. */
function hasTimes(sheet: Sheet, { row, time, date }: TrendHead): boolean {
  const reader = timeReader({ zone: 'UTC', dates: 'day first' });
  let [times, ofDay] = [0, 0];
  for (const cells of sheet.rows.slice(row, row + 50)) {
    const utc = reader.read(at(cells, date), at(cells, time));
    if (Number.isNaN(utc)) continue;
    times++;
    if (utc % 86_400_000 !== 0) ofDay++;
  }
  return times > 1 && ofDay > 0;
}

function at(cells: readonly Cell[], column: number | null): Cell {
  return column === null ? null : (cells[column - 1] ?? null);
}

/** Whether a header of a wide table stands as a cell of another sheet, as tags do in lists. */
function namesOther(workbook: Workbook, own: Sheet, { columns }: TrendHead): boolean {
  const wanted = new Set(columns.map(({ tag }) => tagKey(tag)));
  return workbook.sheets.some(
    (sheet) =>
      sheet !== own &&
      !isResultSheet(sheet) &&
      sheet.rows.some((cells) =>
        cells.some((cell) => typeof cell === 'string' && wanted.has(tagKey(cellText(cell)))),
      ),
  );
}
