import { nodeDeflater } from '../../../hosts/file/zip/nodeDeflater.ts';
import { dayOf } from '../../../share/dayOf.ts';
import { shareWorkbook } from '../../../share/shareWorkbook.ts';
import type { ShareFormulas } from '../../../share/types.ts';
import { checkWritable } from '../../checkWritable.ts';
import { readBytes } from '../../files.ts';
import { UsageRefused } from '../../refused.ts';
import { plain } from '../../terminal.ts';
import { writeAll } from '../../writeAll.ts';
import { isTextTable } from '../input.ts';
import type { Options } from '../options.ts';
import { type OutputKind, type WantedOutput, filesRead, checkCopyName } from './wanted.ts';

/** `--share`: a copy of the workbook for people without our functions. */
export const sharedCopy: OutputKind = {
  check(options) {
    const { inputs, share, force } = options;
    formulasOf(options);
    if (share === undefined) return;
    if (inputs.some(isTextTable)) {
      throw new UsageRefused('--share copies a workbook; text tables (.csv) have no formulas.');
    }
    checkCopyName('--share', share, inputs[0]);
    checkWritable(share, filesRead(options), force);
  },
  output(options, { source }) {
    return options.share === undefined ? undefined : shared(options, options.share, source.original);
  },
};

/** Whether nothing but a copy to share is asked for, so that the workbook need not hold what can be audited. */
export function isShareAlone({ share, strict, ...options }: Options): boolean {
  const { out, handover, json, since, policy, map, propose, replay } = options;
  const others = [out, handover, json, since, policy, map, propose, replay];
  return share !== undefined && !strict && others.every((one) => one === undefined);
}

/**
 * Makes the copy to share and nothing else; what to tell the user of it. Rejects with the reason of `signal` once that is
 * aborted.
 * @throws UsageRefused, FileRefused where it can't be made or written.
 */
export async function shareAlone(options: Options, signal: AbortSignal): Promise<readonly string[]> {
  const { inputs, share = '' } = options;
  const [first = '', ...more] = inputs;
  if (more.length > 0) throw new UsageRefused('One workbook at a time. See --help.');
  const output = shared(options, share, readBytes(first));
  await writeAll([output], { signal });
  return output.said();
}

function shared(options: Options, given: string, original: Uint8Array): WantedOutput {
  let said: readonly string[] = [];
  return {
    given,
    write(put) {
      const { bytes, notes } = shareWorkbook(original, {
        formulas: formulasOf(options),
        date: dayOf(new Date()),
        deflater: nodeDeflater,
      });
      put(bytes);
      said = [`Written: ${given}, a copy to share.`, ...notes.map((note) => plain(note))];
    },
    said: () => said,
  };
}

function formulasOf({ 'share-formulas': given, share }: Options): ShareFormulas {
  if (given === undefined) return 'values';
  if (share === undefined) throw new UsageRefused('--share-formulas goes with --share. See --help.');
  if (given === 'values' || given === 'native') return given;
  throw new UsageRefused(`--share-formulas ${given}: choose values or native.`);
}
