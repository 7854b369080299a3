import { writeAll } from '../../files.ts';
import type { Progress } from '../../terminal.ts';
import type { AuditedInput } from '../auditInput.ts';
import type { Options } from '../options.ts';
import { handoverBook } from './handoverBook.ts';
import { jsonReport } from './jsonReport.ts';
import { resultsCopy } from './resultsCopy.ts';
import type { OutputKind } from './wanted.ts';

const kinds: readonly OutputKind[] = [resultsCopy, handoverBook, jsonReport];

/**
 * Refuses, before any work is done, files that could not be written.
 * @throws UsageRefused
 */
export function checkOutputs(options: Options): void {
  for (const kind of kinds) kind.check(options);
}

/**
 * Writes what was asked for, all or none; what to tell the user of it.
 * @throws UsageRefused, FileRefused where a file can't be written.
 */
export function writeOutputs(options: Options, audited: AuditedInput, progress: Progress): readonly string[] {
  const outputs = kinds.flatMap((kind) => kind.output(options, audited, progress) ?? []);
  writeAll(outputs);
  return outputs.flatMap((output) => output.said());
}
