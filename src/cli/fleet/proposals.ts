import { join } from 'node:path';
import type { AuditOptions } from '../../audit/audit.ts';
import { parseColumnMap } from '../../audit/model/columnMap.ts';
import { AuditRefused } from '../../audit/model/refused.ts';
import { checkWritable } from '../checkWritable.ts';
import { identityOf } from '../fileIdentity.ts';
import { pathOf, readJson } from '../files.ts';
import { UsageRefused } from '../refused.ts';
import { isFolder } from './folder.ts';

/** Name of a workbook's proposal in the folder of all. */
export function proposalName(workbook: string): string {
  return `${workbook}.json`;
}

/**
 * Refuses, before any work is done, a folder for proposals that could not be written or would replace something.
 * @throws UsageRefused
 */
export function checkProposals(
  given: string | undefined,
  workbooks: readonly string[],
  inputs: readonly string[],
  force: boolean,
): void {
  if (given === undefined) return;
  if (given === '-')
    throw new UsageRefused('--propose - prints the proposal of one workbook. For a folder, name a folder.');
  if (identityOf(pathOf(given)) === undefined) {
    checkWritable(given, inputs, force);
    return;
  }
  if (!isFolder(given))
    throw new UsageRefused(`--propose ${given} is a file. For a folder, name a folder for the proposals.`);
  for (const name of workbooks) checkWritable(join(given, proposalName(name)), inputs, force);
}

/**
 * What the answers are for each workbook: the one map for all, or that of its name in a folder of maps; none where there is
 * none.
 * @throws UsageRefused, AuditRefused where one can't be read, with its name.
 */
export function mapsOf(given: string | undefined): (workbook: string) => Pick<AuditOptions, 'map'> {
  if (given === undefined || !isFolder(given)) return () => ({});
  return (workbook) => {
    const file = join(given, proposalName(workbook));
    if (identityOf(pathOf(file)) === undefined) return {};
    try {
      return { map: parseColumnMap(readJson(file)) };
    } catch (error) {
      if (!(error instanceof AuditRefused)) throw error;
      throw new AuditRefused(`${file}: ${error.message}`);
    }
  };
}
