import { copyEnding } from '../../../hosts/file/write/package/workbookKind.ts';
import { readBytes } from '../../files.ts';
import { UsageRefused } from '../../refused.ts';
import { isTextTable } from '../input.ts';

/**
 * Refuses a name of a copy whose ending does not fit what the input holds: macros stay in an .xlsm alone, and the copy of a
 * template is a workbook.
 * @throws UsageRefused
 */
export function checkCopyName(option: string, given: string, input = ''): void {
  const wanted = endingFor(input);
  if (given.toLowerCase().endsWith(wanted)) return;
  throw new UsageRefused(`${option} ${given}: a copy of ${input} must be named ${wanted}.`);
}

/** By what the file says of itself; by its name where it does not, or is not to be read. */
function endingFor(input: string): '.xlsx' | '.xlsm' {
  const byName = /\.(xlsm|xltm)$/iu.test(input) ? '.xlsm' : '.xlsx';
  if (input === '' || isTextTable(input)) return byName;
  try {
    return copyEnding(readBytes(input)) ?? byName;
  } catch (error) {
    if (error instanceof UsageRefused) return byName;
    throw error;
  }
}
