import type { FoundTable, RowSpan, SkippedRow } from './found.ts';
import type { HeaderMatch } from './headerRows.ts';
import { listRows } from './listRows.ts';
import { recordAreas } from './recordAreas.ts';
import type { HeaderRows } from './searchHeaders.ts';
import { unitRowBelow } from './unitRow.ts';

/** A header that was chosen, with the rows that repeat it. */
export interface ChosenHeader {
  readonly match: HeaderMatch;
  readonly repeats: ReadonlySet<number>;
}

/**
 * A header with the rows that belong to it: down to the next table's header or the calibration records below it, the
 * totals row left out. `other` is the header of the other table: the same row, where one table is both.
 */
export function bounded(
  chosen: ChosenHeader,
  other: ChosenHeader,
  all: readonly HeaderMatch[],
  { ofRecords }: HeaderRows,
): FoundTable {
  const { match, repeats } = chosen;
  const { sheet, row, table } = match;
  const below = all.filter(
    (header) =>
      header.sheet === sheet &&
      header.row > row &&
      header.columns.size >= 3 &&
      !repeats.has(header.row) &&
      header.left <= match.right &&
      header.right >= match.left,
  );
  const end = Math.min(sheet.rows.length, ...below.map((header) => header.row - 1));
  const units = unitRowBelow(match, end);
  const firstRow = row + (units ? 2 : 1);
  const records = recordsIn(chosen, other, all, { top: firstRow, bottom: end }, ofRecords.get(sheet) ?? []);
  const last = records.at(-1);
  const toEnd = last?.bottom === end ? last : undefined;
  const skipped = new Map<number, SkippedRow>([...repeats].map((repeat) => [repeat, 'header repeated']));
  if (table?.totalsRow) skipped.set(table.area.bottom, 'totals');
  for (const { top, bottom } of toEnd ? records.slice(0, -1) : records)
    for (let at = top; at <= bottom; at++) skipped.set(at, 'record');
  return {
    kind: match.kind,
    sheet,
    headerRow: row,
    firstRow,
    lastRow: toEnd ? toEnd.top - 1 : end,
    areaEnd: table?.area.bottom ?? null,
    columns: units ?? match.columns,
    unitColumns: match.unitColumns,
    skipped,
    unread: match.unread,
  };
}

/** The records below a header; where one table is both, they are the same for its two readings. */
function recordsIn(
  { match, repeats }: ChosenHeader,
  other: ChosenHeader,
  all: readonly HeaderMatch[],
  rows: RowSpan,
  recordRows: readonly number[],
): RowSpan[] {
  const { sheet, row, table } = match;
  const tag = match.columns.get('tag')?.column;
  const isBoth =
    other.match.sheet === sheet && other.match.row === row && other.match.columns.get('tag')?.column === tag;
  const list = listRows(match, isBoth ? other.match : undefined);
  if (!list) return [];
  const headers = new Set(
    all.filter((header) => header.sheet === sheet && header.columns.size > 1).map((header) => header.row),
  );
  return recordAreas(list, {
    ...rows,
    recordRows,
    areaEnd: table?.area.bottom ?? 0,
    repeats: isBoth ? new Set([...repeats, ...other.repeats]) : repeats,
    isHeader: (at) => headers.has(at),
  });
}
