import type { LongTable } from './rowNames.ts';
import { factAt, factOf, type PlacedFact } from '../../model/findings.ts';
import { columnLetters } from '../../../cells/address.ts';
import { type RecordColumn, withUnitRow } from '../tables/recordHeaders.ts';
import type { RecordHead } from './recordHeads.ts';

/** A head with a tag column as a table; of two columns of one kind the first counts, and the other is remarked on. */
export function longTable(
  { sheet, row, lastRow, columns: all }: RecordHead,
  series: string,
  remarks: PlacedFact[],
): LongTable {
  const { columns, firstRow } = withUnitRow(sheet, row, all);
  const first = new Map<RecordColumn['id'], RecordColumn>();
  for (const column of columns) {
    const there = first.get(column.id);
    if (!there) {
      first.set(column.id, column);
      continue;
    }
    const values = {
      kind: 'second column',
      header: column.header,
      firstHeader: there.header,
      firstColumn: columnLetters(there.column),
    } as const;
    const place = { sheet: sheet.name, row, column: columnLetters(column.column) };
    remarks.push(factAt(place, factOf('record-point-left-out', 'warning', values)));
  }
  return { sheet, headerRow: row, firstRow, lastRow, columns: first, series };
}
