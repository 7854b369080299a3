import { factAt, factOf, type PlacedFact } from '../../model/findings.ts';
import { columnLetters } from '../../../cells/address.ts';
import { type Sheet, cellAt } from '../../../cells/sheet.ts';
import { tagKey } from '../tables/tagKey.ts';
import { recordText, seriesOf } from './recordCells.ts';
import { type RecordColumn, type RecordColumnId, recordColumns } from '../tables/recordHeaders.ts';
import { isEmptyPoint } from '../tables/recordParts.ts';

/** A table of records with a tag in every row. */
export interface LongTable {
  readonly sheet: Sheet;
  readonly headerRow: number;
  readonly firstRow: number;
  readonly lastRow: number;
  readonly columns: ReadonlyMap<RecordColumnId, RecordColumn>;
  /** Of rows that name none. */
  readonly series: string;
}

/** To which record a row of a long table belongs. */
export interface RowName {
  readonly row: number;
  readonly tag: string;
  readonly series: string;
  readonly temperature: string;
  /** The same for every row of one record. */
  readonly key: string;
}

/**
 * The rows of a long table that have a point, with the names of their records. A tag written once over the rows of its
 * record, as people do, holds for the rows right below it, and so do its series and temperature; not across a blank row,
 * where a sum or another table may follow. Ends at the headers of another table.
 */
export function* rowNames(
  { sheet, firstRow, lastRow, columns, series: ofTable }: LongTable,
  tag: RecordColumn,
  [one, other]: readonly [RecordColumn, RecordColumn],
  remarks: PlacedFact[],
): Generator<RowName | undefined, void> {
  let before: Omit<RowName, 'row'> | undefined;
  let said = false;
  for (let row = firstRow; row <= lastRow; row++) {
    if (row % 2_000 === 0) yield undefined;
    if (isEmptyPoint(sheet, row, one, other)) {
      before = undefined;
      said = false;
      continue;
    }
    const written = recordText(sheet, row, tag);
    if (written !== '') {
      if (headsTag(sheet, row, tag, one)) return;
      said = false;
    } else if (!before) {
      if (!said) remarks.push(withoutTag(sheet.name, row, tag));
      said = true;
      continue;
    }
    const above = written === '' ? before : undefined;
    const series = recordText(sheet, row, columns.get('series'));
    const temperature = recordText(sheet, row, columns.get('temperature'));
    const named = {
      tag: above?.tag ?? written,
      series: above && series === '' ? above.series : seriesOf(series, ofTable),
      temperature: above && temperature === '' ? above.temperature : temperature,
    };
    before = { ...named, key: `${tagKey(named.tag)}\n${named.series}\n${named.temperature}` };
    yield { row, ...before };
  }
}

function headsTag(sheet: Sheet, row: number, tag: RecordColumn, beside: RecordColumn): boolean {
  if (typeof cellAt(sheet, row, beside.column) !== 'string') return false;
  return recordColumns(sheet, row, tag.column, tag.column).some(({ id }) => id === 'tag');
}

function withoutTag(sheet: string, row: number, { column }: RecordColumn): PlacedFact {
  const place = { sheet, row, column: columnLetters(column) };
  return factAt(place, factOf('record-without-tag', 'warning', { kind: 'row', row }));
}
