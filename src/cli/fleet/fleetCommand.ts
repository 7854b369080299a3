import { basename, dirname, join } from 'node:path';
import process from 'node:process';
import { defaultPolicy } from '../../audit/model/policy.ts';
import { caution } from '../../audit/model/caution.ts';
import { version } from '../../audit/model/version.ts';
import type { Fleet, FleetFile } from '../../sheets/fleet/types.ts';
import { auditOptions } from '../audit/auditInput.ts';
import type { Options } from '../audit/options.ts';
import { pathOf } from '../files.ts';
import { styleFor } from '../style.ts';
import { leftBehind, newToken } from '../staging.ts';
import { Stopped, watchStop } from '../stop.ts';
import { progressOn } from '../terminal.ts';
import { fleetOptions } from './fleetOptions.ts';
import { writeFleet } from './fleetOutputs.ts';
import { askedLines, copyNotes, fleetText } from './fleetText.ts';
import { isFolder, listFolder } from './folder.ts';
import type { Answer, Job } from './job.ts';
import { limitsFor } from './limits.ts';
import { memberMark } from './workerProcess.ts';
import { checkProposals, mapsOf, proposalName } from './proposals.ts';
import { openReports } from './reports.ts';
import { answersTo } from './worker.ts';
import { prepareTargets, type Targets } from './targets.ts';
import { once } from 'node:events';
import { setImmediate } from 'node:timers/promises';
import { closeSync, openSync, readSync } from 'node:fs';

const chunk = 1 << 20;

/**
 * Audits every workbook of a folder, in processes of their own, several at once. Returns the exit code: 0 all audited;
 * 1 all audited, and `--strict` found something in one; 2 one could not be audited; above 128 stopped by the user.
 * @throws UsageRefused, AuditRefused with one line for a person; no copy is written then.
 */
export async function fleetCommand(options: Options): Promise<number> {
  const { folder, minutes } = fleetOptions(options);
  const { out, json, map, propose, force } = options;
  const { workbooks, leftOut } = listFolder(folder, out === undefined ? undefined : pathOf(out));
  const maps = mapsOf(map);
  const ofAll = map !== undefined && isFolder(map) ? { ...options, map: undefined } : options;
  const settings = { ...auditOptions(ofAll), now: new Date() };
  const alsoRead = [options.policy, options.map].filter((given) => given !== undefined);
  const targets = prepareTargets({ folder, workbooks, alsoRead, out, json, force });
  checkProposals(propose, workbooks, alsoRead, force);
  sayLeftBehind(targets, json, propose);
  const reports = json === undefined ? undefined : openReports();
  const jobs = workbooks.map((file, index): Job => ({
    file,
    path: join(pathOf(folder), file),
    options: { ...settings, ...maps(file) },
    proposal: propose === undefined ? undefined : join(pathOf(propose), proposalName(file)),
    copy: targets && join(pathOf(targets.folder), file),
    report: reports?.of(index),
    token: newToken(),
  }));
  const stop = watchStop();
  let done = 0;
  try {
    const answers = await audited(jobs, minutes, stop.signal, () => ++done);
    const fleet: Fleet = {
      folder: basename(pathOf(folder)),
      generated: settings.now.toISOString(),
      version,
      policy: settings.policy ?? defaultPolicy,
      caution,
      files: answers.map((answer, index) => fileOf(workbooks[index] ?? '', answer)),
      leftOut,
    };
    const pieces = reports && fleetJson(fleet, reports.of);
    const file = json === '-' ? undefined : json;
    const written = await writeFleet(fleet, targets, file, pieces, stop.signal);
    if (json === '-' && pieces) await printPieces(pieces, stop.signal);
    else {
      const style = styleFor(process.stdout, process.env);
      process.stdout.write(
        [
          fleetText(fleet, answers, style),
          ...copyNotes(workbooks, answers),
          ...askedLines(workbooks, answers, propose),
          ...written,
          '',
        ].join('\n'),
      );
    }
    return exitCode(answers, options.strict);
  } catch (error) {
    if (!(error instanceof Stopped)) throw error;
    process.stderr.write(`${stoppedAfter(done, jobs.length, targets)}\n`);
    return error.exitCode;
  } finally {
    stop.release();
    reports?.remove();
  }
}

function sayLeftBehind(
  targets: Targets | undefined,
  json: string | undefined,
  propose: string | undefined,
): void {
  const left = leftBehind([
    ...(targets ? [pathOf(targets.folder)] : []),
    ...(propose === undefined ? [] : [pathOf(propose)]),
    ...(json === undefined || json === '-' ? [] : [dirname(pathOf(json))]),
  ]);
  if (left !== undefined) process.stderr.write(`${left}\n`);
}

/** The answers to all jobs, each by this very program in another process, with progress on a terminal. */
async function audited(
  jobs: readonly Job[],
  minutes: number,
  signal: AbortSignal,
  count: () => number,
): Promise<readonly Answer[]> {
  const program = { module: process.argv[1] ?? '', args: ['audit', memberMark] };
  const progress = progressOn(process.stderr);
  try {
    return await answersTo(jobs, program, limitsFor(jobs.length, minutes), signal, () => {
      progress.show('auditing', count() / jobs.length);
    });
  } finally {
    progress.clear();
  }
}

function fileOf(file: string, { found, refused }: Answer): FleetFile {
  return refused === null ? { file, found, refused } : { file, found: null, refused };
}

function exitCode(answers: readonly Answer[], strict: boolean): number {
  if (answers.some(({ refused }) => refused !== null)) return 2;
  return strict && answers.some((answer) => answer.refused === null && answer.critical) ? 1 : 0;
}

function stoppedAfter(done: number, all: number, targets: Targets | undefined): string {
  const stopped = `Stopped after ${done} of ${all} workbooks`;
  if (targets === undefined) return `${stopped}; nothing was written.`;
  return `${stopped}; what is done stands whole in ${targets.folder}, without a summary. Begin anew with --force.`;
}

/**
 * Prints pieces as fast as they are taken on the other side, until all are or nobody takes them any more; rejects with the
 * reason of `signal` once it is aborted.
 */
async function printPieces(pieces: Iterable<string | Uint8Array>, signal: AbortSignal): Promise<void> {
  for (const piece of pieces) {
    // Signals are heard between two turns only.
    await setImmediate();
    signal.throwIfAborted();
    const taken = process.stdout.write(piece);
    if (process.stdout.errored) return;
    if (taken) continue;
    try {
      await once(process.stdout, 'drain', { signal });
    } catch {
      signal.throwIfAborted();
      // The stream failed: whoever runs the command hears of it too.
      return;
    }
  }
}

/**
 * A fleet as JSON in pieces, each report as it lies in a file of its own (`reportOf` a workbook); none stands in memory
 * whole.
 */
function* fleetJson(
  fleet: Pick<Fleet, 'generated' | 'files' | 'leftOut'>,
  reportOf: (index: number) => string,
): Generator<string | Uint8Array> {
  const { generated, files, leftOut } = fleet;
  yield `{\n "schema": "tripdrift-fleet/1",\n "generated": ${JSON.stringify(generated)},\n "files": [`;
  for (const [index, { file, refused }] of files.entries()) {
    yield `${index === 0 ? '' : ','}\n{"file": ${JSON.stringify(file)}, "refused": ${JSON.stringify(refused)}, "report": `;
    if (refused === null) yield* contentOf(reportOf(index));
    else yield 'null';
    yield '}';
  }
  yield `\n],\n "leftOut": ${JSON.stringify(leftOut)}\n}\n`;
}

function* contentOf(path: string): Generator<Uint8Array> {
  const file = openSync(path, 'r');
  try {
    for (;;) {
      const piece = new Uint8Array(chunk);
      const length = readSync(file, piece);
      if (length === 0) return;
      yield piece.subarray(0, length);
    }
  } finally {
    closeSync(file);
  }
}
