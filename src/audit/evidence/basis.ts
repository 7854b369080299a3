import type { Workbook } from '../../cells/sheet.ts';
import type { Tables } from '../join/context.ts';
import type { RecordBook } from '../records/rawRecord.ts';
import type { ColumnMap } from '../tables/columnMap.ts';
import { isResultSheet } from '../tables/resultSheet.ts';

/** What an audit went by beside cells and policy: enough to repeat it exactly on the same cells. */
export interface AuditBasis {
  /** What the user said about the columns. */
  readonly map: ColumnMap;
  /** Sheets that were text files, with their decimal sign. */
  readonly textTables: readonly { readonly sheet: string; readonly decimal: '.' | ',' }[];
  /** Sheets with a table or a calibration record that were hidden. */
  readonly hiddenSheets: readonly string[];
  /** Rows of tables that were hidden or filtered away, as in `5-9,12`, by sheet. */
  readonly hiddenRows: Readonly<Record<string, string>>;
  /** Result sheets of earlier audits that stood in the workbook. */
  readonly earlierResults: readonly string[];
}

/** What an audit goes by, as it is found. */
export function basisOf(
  workbook: Workbook,
  { channels, settings }: Tables,
  records: RecordBook,
  map: ColumnMap,
): AuditBasis {
  const withRecords = [...records.byTag.values()].flat().map(({ sheet }) => sheet);
  const used = new Set([channels.sheet.name, settings.sheet.name, ...withRecords]);
  const sheets = workbook.sheets.filter(({ name }) => used.has(name));
  const hiddenRows: Record<string, string> = {};
  for (const { sheet, headerRow, lastRow } of [channels, settings]) {
    const rows = [...sheet.hiddenRows].filter((row) => row >= headerRow && row <= lastRow);
    if (rows.length > 0) hiddenRows[sheet.name] = spans(rows);
  }
  return {
    map,
    textTables: sheets.flatMap(({ name, plainText }) =>
      plainText ? [{ sheet: name, decimal: plainText.decimal }] : [],
    ),
    hiddenSheets: sheets.filter(({ hidden }) => hidden).map(({ name }) => name),
    hiddenRows,
    earlierResults: workbook.sheets.filter(isResultSheet).map(({ name }) => name),
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
