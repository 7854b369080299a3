import { existsSync, mkdirSync, realpathSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { checkWritable, isOwnReport, pathOf, realPaths } from '../files.ts';
import { UsageRefused } from '../refused.ts';
import { sheetNames } from '../../sheets/titles.ts';

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
  if (targets) checkFolder(targets, wanted);
  checkJson(wanted);
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

function checkFolder({ folder: out, summary }: Targets, { folder, workbooks, force }: Wanted): void {
  const path = pathOf(out);
  if (!existsSync(path)) {
    if (!existsSync(dirname(path))) throw new UsageRefused(`--out ${out}: its folder does not exist.`);
    return;
  }
  if (!statSync(path).isDirectory()) {
    throw new UsageRefused(`--out ${out} is a file. For a folder, name a folder for the copies.`);
  }
  if (realpathSync(path) === realpathSync(pathOf(folder))) {
    throw new UsageRefused(
      `--out ${out} is the folder of the inputs, which are never changed. Name another.`,
    );
  }
  const existing = [...workbooks, summary].filter((name) => existsSync(join(path, name)));
  const inputs = realPaths(workbooks.map((name) => join(pathOf(folder), name)));
  for (const name of existing) {
    if (!inputs.has(realpathSync(join(path, name)))) continue;
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

function checkJson({ folder, workbooks, out, json, force }: Wanted): void {
  if (json === undefined || json === '-') return;
  const beside = out !== undefined && dirname(pathOf(json)) === pathOf(out);
  if (beside && /\.xls[xm]$/iu.test(json)) {
    throw new UsageRefused(`--json ${json}: the workbooks are written there. Name the file .json.`);
  }
  if (beside && !existsSync(pathOf(out))) return;
  const inputs = workbooks.map((name) => join(pathOf(folder), name));
  checkWritable(json, inputs, force || isOwnReport(json, 'fleet'));
}

function makeFolder(given: string): void {
  try {
    mkdirSync(pathOf(given), { recursive: true });
  } catch {
    throw new UsageRefused(`--out ${given}: the folder can not be made. Name one where you may write.`);
  }
}
