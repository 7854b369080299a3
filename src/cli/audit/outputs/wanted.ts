import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import type { Progress } from '../../terminal.ts';
import type { Output } from '../../writeAll.ts';
import type { AuditedInput } from '../auditInput.ts';
import type { Options } from '../options.ts';

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
