import { pathOf, writeAll } from '../../files.ts';
import { UsageRefused } from '../../refused.ts';
import type { Progress } from '../../terminal.ts';
import type { AuditedInput } from '../auditInput.ts';
import type { Options } from '../options.ts';
import { handoverBook } from './handoverBook.ts';
import { jsonReport } from './jsonReport.ts';
import { resultsCopy } from './resultsCopy.ts';
import { sharedCopy } from './sharedCopy.ts';
import type { OutputKind } from './wanted.ts';

const kinds: readonly OutputKind[] = [resultsCopy, handoverBook, jsonReport, sharedCopy];

/**
 * Refuses, before any work is done, files that could not be written.
 * @throws UsageRefused
 */
export function checkOutputs(options: Options): void {
  refuseSameFile(options);
  for (const kind of kinds) kind.check(options);
}

function refuseSameFile({ out, handover, share, json }: Options): void {
  const files = json === '-' ? { out, handover, share } : { out, handover, share, json };
  const options = new Map<string, string>();
  for (const [option, given] of Object.entries(files)) {
    if (given === undefined) continue;
    const other = options.get(pathOf(given));
    if (other !== undefined) {
      throw new UsageRefused(`--${other} and --${option} name the same file, ${given}. Choose two names.`);
    }
    options.set(pathOf(given), option);
  }
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
