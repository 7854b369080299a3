import type { ColumnMap } from './columnMap.ts';

/** What an audit went by, as SHA-256 in 64 hexadecimal digits each. No signature: whoever changes both can forge both. */
export interface Fingerprint {
  /** Of the cells that were read, see `inputsFingerprint`. */
  readonly inputs: string;
  /** Of the policy, what it leaves out included. */
  readonly policy: string;
}

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
  /** The file of recorded readings that was replayed beside the workbook; `null` where there was none. */
  readonly replayedFrom: string | null;
}
