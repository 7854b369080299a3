import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import type { Progress } from '../../terminal.ts';
import type { Output } from '../../writeAll.ts';
import type { AuditedInput } from '../auditInput.ts';
import type { Options } from '../options.ts';
import { copyEnding } from '../../../hosts/file/write/package/workbookKind.ts';
import { readBytes } from '../../files.ts';
import { UsageRefused } from '../../refused.ts';
import { isTextTable } from '../input.ts';

/** A file that the command line asked for, ready to be written; `said` is known once it is. */
export interface WantedOutput extends Output {
  /** What to tell the user of it, one sentence a line. */
  readonly said: () => readonly string[];
}

/** What files are made of. */
export interface Made extends AuditedInput {
  /** What was understood and is proposed, or what a person answered; `null` where nobody wants it kept. */
  readonly proposal: ColumnMap | null;
}

/** One kind of file that the command writes. */
export interface OutputKind {
  /**
   * Refuses, before any work is done, what could not be written.
   * @throws UsageRefused
   */
  readonly check: (options: Options) => void;
  /** The file, where the command line asks for it. */
  readonly output: (options: Options, made: Made, progress: Progress) => WantedOutput | undefined;
}

/** Every file that the command line has the command read, and which it therefore never writes. */
export function filesRead({ inputs, policy, map, since, replay }: Options): readonly string[] {
  return [...inputs, ...[policy, map, since, replay].filter((given) => given !== undefined)];
}

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
