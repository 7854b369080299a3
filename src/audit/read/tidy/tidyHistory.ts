import type { Steps } from '../../model/steps.ts';
import { type PlacedFact, factAt, factOf } from '../../model/findings.ts';
import type { HistoryTable } from '../history/historyTables.ts';
import { historyReadings } from '../history/historyReadings.ts';
import type { HistoryBook, TaggedReading } from '../history/reading.ts';
import type { FoundColumn } from '../tables/found.ts';
import { tagKey } from '../tables/tagKey.ts';
import type { Claim } from '../understand/tables/claim.ts';
import type { TableRead } from '../understand/tables/tableRead.ts';
import { withColumnLetters } from './cellRemarks.ts';
import { columnLetters } from '../../../cells/address.ts';
import type { ColumnReading } from '../../model/report.ts';
import { evidenceTexts } from '../understand/evidenceText.ts';
import { meaning } from '../understand/meaning.ts';
import type { TidyList } from './tidyList.ts';

/** Columns of a history by the meanings that they have in a list of channels. */
const columnOf = {
  tag: 'tag',
  measured: 'sensitivity',
  asLeftSensitivity: 'asLeft',
  calibratedOn: 'day',
  uncertainty: 'uncertainty',
} as const;

/**
 * Dated readings in lists that are no lists of channels, beside those that were found by their standard headers. One that
 * can't be read is said to be left aside.
 */
export function* tidyHistory(
  tables: readonly TableRead[],
  found: HistoryBook,
  today: number,
): Steps<void, HistoryBook> {
  const remarks: PlacedFact[] = [...found.remarks];
  const byTag = new Map<string, TaggedReading[]>([...found.byTag].map(([key, all]) => [key, [...all]]));
  const read = new Set([...found.byTag.values()].flat().map(({ sheet, row }) => `${sheet} ${row}`));
  for (const table of tables) {
    if (table.part !== 'history' || table.leftOut) continue;
    const { block } = table.lane;
    const [from, to] = block.span;
    const isRead = Array.from({ length: to - from + 1 }, (_, at) => from + at).some((row) =>
      read.has(`${block.sheet.name} ${row}`),
    );
    if (isRead) continue;
    const history = historyTable(table);
    if (!history) {
      const first = block.fields[0]?.header.at(-1);
      const place = {
        sheet: block.sheet.name,
        row: first?.row ?? block.header[0],
        column: first?.column ?? 1,
      };
      const values = {
        text: block.sheet.name,
        looksLike: 'a history of readings',
        why: 'not certain',
      } as const;
      remarks.push(factAt(withColumnLetters(place), factOf('left-aside', 'warning', values)));
      continue;
    }
    for (const reading of yield* historyReadings(history, today, remarks)) {
      const key = tagKey(reading.tag);
      const there = byTag.get(key);
      if (there) there.push(reading);
      else byTag.set(key, [reading]);
    }
  }
  return { byTag, remarks };
}

/** A list of dated readings as one with standard headers; `undefined` where it does not lie in rows or is not certain. */
function historyTable({ lane, claims, tag }: TableRead): HistoryTable | undefined {
  const { block } = lane;
  const needed = [tag ?? undefined, claims.get('measured'), claims.get('calibratedOn')];
  if (block.lies !== 'rows' || !needed.every((claim) => claim?.standing === 'certain')) return undefined;
  const columns = new Map<string, FoundColumn>();
  const unitColumns: HistoryTable['unitColumns'][number][] = [];
  for (const [id, name] of Object.entries(columnOf) as [keyof typeof columnOf, string][]) {
    const claim: Claim | null | undefined = id === 'tag' ? tag : claims.get(id);
    if (claim?.standing !== 'certain') continue;
    const { field, unit } = claim;
    columns.set(name, {
      id: name,
      column: field.place.at,
      header: field.text,
      remarks: [],
      ...(unit.fixed?.unit ? { unit: unit.fixed.unit } : {}),
    });
    for (const beside of unit.beside)
      unitColumns.push({ column: beside.place.at, header: beside.text, names: new Set([name]) });
  }
  const [firstRow, lastRow] = block.span;
  return { sheet: block.sheet, headerRow: block.header[1], firstRow, lastRow, columns, unitColumns };
}

/** How each field that was used was understood, with its evidence, for the user to see and correct. */
export function tidyReadings({ columns }: TidyList): ColumnReading[] {
  return columns.flatMap(({ id, name, table, fields }) =>
    fields.map(({ place, header, unit, evidence }): ColumnReading => ({
      table: table === 'channels' ? 'channel list' : 'monitor settings',
      sheet: place.sheet,
      headerRow: place.row,
      column: columnLetters(place.column),
      header,
      meaning: name,
      unit: unit ?? meaning(id).usualUnit,
      evidence: evidenceTexts(evidence),
    })),
  );
}
