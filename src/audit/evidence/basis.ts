import type { Workbook } from '../../cells/sheet.ts';
import type { Snapshot } from '../since/snapshot.ts';
import type { ColumnMap } from '../tables/columnMap.ts';
import { isResultSheet } from '../tables/resultSheet.ts';
import type { FoundInputs } from './inputsFingerprint.ts';

/** What an audit went by beside cells and policy: enough to repeat it exactly on the same cells. */
export interface AuditBasis {
  /** What the user said about the columns. */
  readonly map: ColumnMap;
  /** Sheets that were text files, with their decimal sign. */
  readonly textTables: readonly { readonly sheet: string; readonly decimal: '.' | ',' }[];
  /** Sheets with a table, a calibration record or a history that were hidden. */
  readonly hiddenSheets: readonly string[];
  /** Rows of tables that were hidden or filtered away, as in `5-9,12`, by sheet. */
  readonly hiddenRows: Readonly<Record<string, string>>;
  /** Result sheets of earlier audits that stood in the workbook. */
  readonly earlierResults: readonly string[];
  /** The earlier workbook or results that it was compared with; `null` where there were none. */
  readonly comparedWith: string | null;
}

/** What an audit goes by, as it is found. */
export function basisOf(
  workbook: Workbook,
  { tables: { channels, settings }, records, history }: FoundInputs,
  map: ColumnMap,
  before: Snapshot | undefined,
): AuditBasis {
  const read = [...records.byTag.values(), ...history.byTag.values()].flat().map(({ sheet }) => sheet);
  const used = new Set([channels.sheet.name, settings.sheet.name, ...read]);
  const sheets = workbook.sheets.filter(({ name }) => used.has(name));
  const hiddenRows = new Map<string, string>();
  for (const { sheet, headerRow, lastRow } of [channels, settings]) {
    const rows = [...sheet.hiddenRows].filter((row) => row >= headerRow && row <= lastRow);
    if (rows.length > 0) hiddenRows.set(sheet.name, spans(rows));
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
