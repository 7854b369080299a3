import type { ColumnMap } from '../model/columnMap.ts';
import type { AuditBasis } from '../model/basis.ts';
import type { Workbook } from '../../cells/sheet.ts';
import type { Snapshot } from '../model/snapshot.ts';
import { isResultSheet } from '../read/tables/titleWords.ts';
import type { BookRead } from '../read/bookRead.ts';

/** What an audit goes by, as it is found. */
export function basisOf(
  workbook: Workbook,
  { tables: { channels, settings }, records, history, trends, againstSpeed, understood }: BookRead,
  map: ColumnMap,
  before: Snapshot | undefined,
  replayedFrom: string | null,
): AuditBasis {
  const read = [...records.byTag.values(), ...history.byTag.values()].flat().map(({ sheet }) => sheet);
  const used = new Set([
    channels.sheet.name,
    settings.sheet.name,
    ...read,
    ...[...trends, ...againstSpeed].map(({ name }) => name),
  ]);
  // What is understood of a workbook hangs on all of its sheets.
  const sheets = workbook.sheets.filter((sheet) =>
    understood ? !isResultSheet(sheet) : used.has(sheet.name),
  );
  const hiddenRows = new Map<string, string>();
  if (understood) {
    for (const { name, hiddenRows: rows } of sheets)
      if (rows.size > 0) hiddenRows.set(name, spans([...rows]));
  } else {
    for (const { sheet, headerRow, lastRow } of [channels, settings]) {
      const rows = [...sheet.hiddenRows].filter((row) => row >= headerRow && row <= lastRow);
      if (rows.length > 0) hiddenRows.set(sheet.name, spans(rows));
    }
  }
  return {
    map,
    textTables: sheets.flatMap(({ name, plainText }) =>
      plainText ? [{ sheet: name, decimal: plainText.decimal }] : [],
    ),
    hiddenSheets: sheets.filter(({ hidden }) => hidden).map(({ name }) => name),
    hiddenRows: Object.fromEntries(hiddenRows),
    earlierResults: workbook.sheets.filter(isResultSheet).map(({ name }) => name),
    comparedWith: before?.input ?? null,
    replayedFrom,
  };
}

/** Row numbers as spans: 5, 6, 7, 9 → `5-7,9`. */
function spans(rows: readonly number[]): string {
  const runs: [from: number, to: number][] = [];
  for (const row of rows.toSorted((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last && row === last[1] + 1) last[1] = row;
    else runs.push([row, row]);
  }
  return runs.map(([from, to]) => (from === to ? String(from) : `${from}-${to}`)).join();
}
