import { mkdirSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { sheetNames } from '../../sheets/titles.ts';
import { checkWritable } from '../checkWritable.ts';
import { identitiesOf, identityOf, likeness } from '../fileIdentity.ts';
import { isOwnReport, pathOf } from '../files.ts';
import { UsageRefused, inWords, isSystemError } from '../refused.ts';

/** Where the outputs of a fleet go. */
export interface Targets {
  /** The folder of the copies, as the user gave it; it is there. */
  readonly folder: string;
  /** Name of the workbook over all others. */
  readonly summary: string;
}

export interface Wanted {
  readonly folder: string;
  readonly workbooks: readonly string[];
  /** Further files that are read. */
  readonly alsoRead: readonly string[];
  readonly out: string | undefined;
  readonly json: string | undefined;
  readonly force: boolean;
}

/**
 * Refuses, before any work is done, what could not be written, and makes the folder of the copies.
 * @throws UsageRefused
 */
export function prepareTargets(wanted: Wanted): Targets | undefined {
  const { out, workbooks } = wanted;
  const targets = out === undefined ? undefined : { folder: out, summary: summaryName(workbooks) };
  try {
    if (targets) checkFolder(targets, wanted);
    checkJson(wanted, targets);
  } catch (error) {
    if (!isSystemError(error)) throw error;
    throw new UsageRefused(`The outputs can not be checked: ${inWords(error, 'the system refused')}.`);
  }
  if (targets) makeFolder(targets.folder);
  return targets;
}

/** A name that none of the workbooks has. */
function summaryName(workbooks: readonly string[]): string {
  const taken = new Set(workbooks.map((name) => name.toLowerCase()));
  let name = `${sheetNames.fleet}.xlsx`;
  for (let number = 2; taken.has(name.toLowerCase()); number++) {
    name = `${sheetNames.fleet} (${number}).xlsx`;
  }
  return name;
}

function checkFolder({ folder: out, summary }: Targets, wanted: Wanted): void {
  const { folder, workbooks, force } = wanted;
  const path = pathOf(out);
  const there = identityOf(path);
  if (there === undefined) {
    if (identityOf(dirname(path)) === undefined) {
      throw new UsageRefused(`--out ${out}: its folder does not exist.`);
    }
    return;
  }
  if (!statSync(path).isDirectory()) {
    throw new UsageRefused(`--out ${out} is a file. For a folder, name a folder for the copies.`);
  }
  if (there === identityOf(pathOf(folder))) {
    throw new UsageRefused(
      `--out ${out} is the folder of the inputs, which are never changed. Name another.`,
    );
  }
  const existing: string[] = [];
  const inputs = identitiesOf(filesRead(wanted));
  for (const name of [...workbooks, summary]) {
    const identity = identityOf(join(path, name));
    if (identity === undefined) continue;
    existing.push(name);
    if (!inputs.has(identity)) continue;
    throw new UsageRefused(
      `${join(out, name)} is an input, which is never changed. Choose another folder for the copies.`,
    );
  }
  const [first, ...more] = existing;
  if (first === undefined || force) return;
  const others = more.length === 0 ? 'exists' : `and ${more.length} more files exist`;
  throw new UsageRefused(
    `${join(out, first)} ${others}. Choose another folder, or replace them with --force.`,
  );
}

/** Whole paths of all files that are read. */
function filesRead({ folder, workbooks, alsoRead }: Wanted): readonly string[] {
  return [...workbooks.map((name) => join(pathOf(folder), name)), ...alsoRead.map(pathOf)];
}

function checkJson(wanted: Wanted, targets: Targets | undefined): void {
  const { workbooks, json, force } = wanted;
  if (json === undefined || json === '-') return;
  const path = pathOf(json);
  const written = targets
    ? [...workbooks, targets.summary].map((name) => join(pathOf(targets.folder), name))
    : [];
  const beside = targets !== undefined && dirname(path) === pathOf(targets.folder);
  if (
    (beside && /\.xls[xm]$/iu.test(json)) ||
    written.some((workbook) => likeness(workbook, path) !== 'different')
  ) {
    throw new UsageRefused(`--json ${json}: the workbooks are written there. Name the file .json.`);
  }
  if (beside && identityOf(pathOf(targets.folder)) === undefined) return;
  checkWritable(json, filesRead(wanted), force || isOwnReport(json, 'fleet'));
}

function makeFolder(given: string): void {
  try {
    mkdirSync(pathOf(given), { recursive: true });
  } catch {
    throw new UsageRefused(`--out ${given}: the folder can not be made. Name one where you may write.`);
  }
}
