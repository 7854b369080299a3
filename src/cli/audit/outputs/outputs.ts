import { dirname } from 'node:path';
import { likeness } from '../../fileIdentity.ts';
import { pathOf, isOwnReport } from '../../files.ts';
import { UsageRefused } from '../../refused.ts';
import { leftBehind } from '../../staging.ts';
import type { Progress } from '../../terminal.ts';
import { writeAll, inPieces } from '../../writeAll.ts';
import type { Options } from '../options.ts';
import { proposalFile } from './proposal.ts';
import { resultsCopy, copyWith } from './resultsCopy.ts';
import { sharedCopy } from './sharedCopy.ts';
import { type Made, type OutputKind, filesRead } from './wanted.ts';
import { checkWritable } from '../../checkWritable.ts';
import { reportJson } from '../reportJson.ts';
import { emptyWorkbook } from '../../../hosts/file/write/newWorkbook.ts';
import { handoverSheets } from '../../../sheets/handover/handoverSheets.ts';

/** `--handover`: a workbook of its own with a list of the machines and a sheet to hand over for each. */
const handoverBook: OutputKind = {
  check(options) {
    const { handover, force } = options;
    if (handover === undefined) return;
    if (!/\.xlsx$/iu.test(handover)) {
      throw new UsageRefused(`--handover ${handover}: the hand-over workbook must be named .xlsx.`);
    }
    checkWritable(handover, filesRead(options), force);
  },
  output({ handover }, { report }, progress) {
    if (handover === undefined) return undefined;
    const empty = { original: emptyWorkbook(), ownSheets: [] };
    return copyWith(handover, empty, () => handoverSheets(report), progress);
  },
};

/** `--json FILE`: the report as JSON. An earlier report of ours is written anew without being asked. */
const jsonReport: OutputKind = {
  check(options) {
    const { json, force } = options;
    if (json === undefined || json === '-') return;
    checkWritable(json, filesRead(options), force || isOwnReport(json));
  },
  output({ json }, { report }) {
    if (json === undefined || json === '-') return undefined;
    return { ...inPieces(json, reportJson(report)), said: () => [`Written: ${json}.`] };
  },
};

const kinds: readonly OutputKind[] = [resultsCopy, handoverBook, jsonReport, sharedCopy, proposalFile];

/**
 * Refuses, before any work is done, files that could not be written.
 * @throws UsageRefused
 */
export function checkOutputs(options: Options): void {
  if (options.json === '-' && options.propose === '-')
    throw new UsageRefused('--json - and --propose - both print on standard output. Name a file for one.');
  refuseSameFile(options);
  for (const kind of kinds) kind.check(options);
}

function refuseSameFile(options: Options): void {
  const files = outputsOf(options);
  for (const [index, [option, given]] of files.entries()) {
    for (const [other, otherGiven] of files.slice(0, index)) {
      const like = likeness(pathOf(otherGiven), pathOf(given));
      if (like === 'different') continue;
      const how =
        like === 'same'
          ? `name the same file, ${given}`
          : `differ in letter case alone, which many disks do not tell apart`;
      throw new UsageRefused(`--${other} and --${option} ${how}. Choose two names.`);
    }
  }
}

/** The files to be written, each with its option. */
function outputsOf({ out, handover, share, json, propose }: Options): readonly (readonly [string, string])[] {
  return Object.entries({ out, handover, share, json, propose }).flatMap(([option, name]) =>
    name === undefined || name === '-' ? [] : [[option, name] as const],
  );
}

/** A line about unfinished files of a killed run where this one is to write. */
export function leftBehindThere(options: Options): string | undefined {
  return leftBehind(outputsOf(options).map(([, given]) => dirname(pathOf(given))));
}

/**
 * Writes what was asked for, all or none; what to tell the user of it. Rejects with the reason of `signal` once that is
 * aborted.
 * @throws UsageRefused, FileRefused where a file can't be written.
 */
export async function writeOutputs(
  options: Options,
  made: Made,
  progress: Progress,
  signal: AbortSignal,
): Promise<readonly string[]> {
  const outputs = kinds.flatMap((kind) => kind.output(options, made, progress) ?? []);
  await writeAll(outputs, { signal });
  return outputs.flatMap((output) => output.said());
}
