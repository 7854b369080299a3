import { checkWritable } from '../../checkWritable.ts';
import { readBytes } from '../../files.ts';
import { UsageRefused } from '../../refused.ts';
import { plain } from '../../terminal.ts';
import { writeAll } from '../../writeAll.ts';
import { isTextTable } from '../input.ts';
import type { Options } from '../options.ts';
import { removalNotes, withoutResults } from './earlierResults.ts';
import { filesRead, checkCopyName } from './wanted.ts';

/**
 * `--remove-results`: writes a copy of the workbook without result sheets, and audits nothing; what to tell the user of it.
 * Rejects with the reason of `signal` once that is aborted.
 * @throws UsageRefused, FileRefused where it can't be made or written.
 */
export async function writeWithoutResults(options: Options, signal: AbortSignal): Promise<readonly string[]> {
  const { inputs, force, 'remove-results': given = '', 'remove-edited': evenEdited } = options;
  const [input = '', ...more] = inputs;
  if (more.length > 0 || isTextTable(input))
    throw new UsageRefused('--remove-results takes result sheets out of one workbook. See --help.');
  checkCopyName('--remove-results', given, input);
  checkWritable(given, filesRead(options), force);
  const without = withoutResults(readBytes(input), { option: '--remove-results', evenEdited, coming: [] });
  const write = (put: (piece: Uint8Array) => void): void => {
    put(without.bytes);
  };
  await writeAll([{ given, write }], { signal });
  return [`Written: ${given}.`, ...removalNotes(without, false).map((note) => plain(note))];
}

/**
 * Refuses what goes with none of the other options.
 * @throws UsageRefused
 */
export function checkRemoving(options: Options): void {
  const { out, handover, json, share, since, policy, map, propose, strict, verify } = options;
  const { 'remove-results': removing, 'replace-results': replacing, 'remove-edited': evenEdited } = options;
  const others = [out, handover, json, share, since, policy, map, propose];
  if (removing !== undefined && (replacing || strict || verify || others.some((one) => one !== undefined)))
    throw new UsageRefused('--remove-results stands alone: it audits nothing. See --help.');
  if (replacing && out === undefined)
    throw new UsageRefused('--replace-results goes with --out. See --help.');
  if (evenEdited && !replacing && removing === undefined)
    throw new UsageRefused('--remove-edited goes with --replace-results or --remove-results. See --help.');
}
