import type { FoundTable, SkippedRow } from './found.ts';
import type { HeaderMatch } from './headerRows.ts';
import { unitRowBelow } from './unitRow.ts';

/** A header with the rows that belong to it: down to the next table's header, the totals row left out. */
export function bounded(
  match: HeaderMatch,
  all: readonly HeaderMatch[],
  repeatedHeaders: ReadonlySet<number>,
): FoundTable {
  const { sheet, row, table } = match;
  const below = all.filter(
    (other) =>
      other.sheet === sheet &&
      other.row > row &&
      other.columns.size >= 3 &&
      !repeatedHeaders.has(other.row) &&
      other.left <= match.right &&
      other.right >= match.left,
  );
  const end = Math.min(sheet.rows.length, ...below.map((other) => other.row - 1));
  const skipped = new Map<number, SkippedRow>(
    [...repeatedHeaders].map((repeat) => [repeat, 'header repeated']),
  );
  if (table?.totalsRow) skipped.set(table.area.bottom, 'totals');
  const units = unitRowBelow(match, end);
  return {
    kind: match.kind,
    sheet,
    headerRow: row,
    firstRow: row + (units ? 2 : 1),
    lastRow: end,
    areaEnd: table?.area.bottom ?? null,
    columns: units ?? match.columns,
    unitColumns: match.unitColumns,
    skipped,
    ignored: match.ignored,
  };
}
