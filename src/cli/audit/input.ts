import type { Workbook } from '../../cells/sheet.ts';
import { readCsv } from '../../hosts/file/read/csv.ts';
import { baseName } from '../../hosts/file/read/fileName.ts';
import { readWorkbook } from '../../hosts/file/read/workbook.ts';
import { readBytes } from '../files.ts';
import { UsageRefused } from '../refused.ts';

export interface Input {
  readonly workbook: Workbook;
  /** The bytes of a spreadsheet file; `null` where the input is text tables. */
  readonly original: Uint8Array | null;
}

/**
 * Reads what the command line names: one workbook, or text tables.
 * @throws UsageRefused, FileRefused where an input can't be read.
 */
export function readInput(inputs: readonly string[], onProgress: (part: number) => void): Input {
  const [first, ...more] = inputs;
  if (first === undefined) throw new UsageRefused('Name a workbook or the text tables to audit. See --help.');
  if (!isTextTable(first)) {
    if (more.length > 0) {
      throw new UsageRefused('One workbook at a time; only text tables (.csv) come in pairs. See --help.');
    }
    const original = readBytes(first);
    return { workbook: readWorkbook(baseName(first), original, { onProgress }), original };
  }
  const odd = inputs.find((input) => !isTextTable(input));
  if (odd !== undefined)
    throw new UsageRefused(`${odd} is no text table (.csv) as the other input is. See --help.`);
  if (inputs.length > 2)
    throw new UsageRefused('At most two text tables: the channel list and the monitor settings.');
  const sheets = inputs.map((input) => readCsv(baseName(input), readBytes(input)));
  return { workbook: { name: inputs.map(baseName).join(' + '), sheets }, original: null };
}

/** Whether a path names a text table, by its ending. */
export function isTextTable(path: string): boolean {
  return /\.(csv|tsv|txt)$/iu.test(path);
}
