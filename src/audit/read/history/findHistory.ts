import type { Tables } from '../tables/found.ts';
import type { HeaderRows } from '../tables/searchHeaders.ts';
import { tagKey } from '../tables/tagKey.ts';
import { factAt, factOf, type PlacedFact } from '../../model/findings.ts';
import { placeOf } from '../rows/diagnostic.ts';
import { historyReadings } from './historyReadings.ts';
import { historyTables } from './historyTables.ts';
import type { HistoryBook, TaggedReading } from './reading.ts';

/**
 * Finds the dated readings of a workbook, beside its two tables. Nothing here refuses an audit; what can't be used is a
 * remark. Goes step by step. `today`: day of the audit, from 1970-01-01.
 */
export function* findHistory(
  headerRows: HeaderRows,
  tables: Tables,
  today: number,
): Generator<void, HistoryBook, void> {
  const remarks: PlacedFact[] = [];
  const byTag = new Map<string, TaggedReading[]>();
  for (const table of historyTables(headerRows, tables)) {
    const readings = yield* historyReadings(table, today, remarks);
    for (const reading of readings) {
      const key = tagKey(reading.tag);
      const there = byTag.get(key);
      if (there) there.push(reading);
      else byTag.set(key, [reading]);
    }
    if (readings.length === 0 || !table.sheet.hidden) continue;
    const values = { sheet: table.sheet.name, holds: 'history' } as const;
    const place = placeOf(table, table.headerRow, 'tag');
    remarks.push(factAt(place, factOf('hidden-sheet', 'note', values)));
  }
  return { byTag, remarks };
}
