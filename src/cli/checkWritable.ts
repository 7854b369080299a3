import { statSync } from 'node:fs';
import { dirname } from 'node:path';
import { identitiesOf, identityOf } from './fileIdentity.ts';
import { pathOf } from './files.ts';
import { UsageRefused, inWords, isAbsent, isSystemError } from './refused.ts';

/**
 * Checks, before any work is done, that a file may be written.
 * @throws UsageRefused where it is one of the inputs under whatever name, or exists and `force` is not given, or its
 * folder is missing.
 */
export function checkWritable(given: string, inputs: readonly string[], force: boolean): void {
  try {
    const path = pathOf(given);
    checkFolder(given, dirname(path));
    const there = identityOf(path);
    if (there === undefined) return;
    if (identitiesOf(inputs.map(pathOf)).has(there)) {
      throw new UsageRefused(`${given} is an input, which is never changed. Choose another name.`);
    }
  } catch (error) {
    if (!isSystemError(error)) throw error;
    throw new UsageRefused(`${given}: ${inWords(error, 'can not be written')}.`);
  }
  if (!force) throw new UsageRefused(`${given} exists. Choose another name, or replace it with --force.`);
}

function checkFolder(given: string, folder: string): void {
  try {
    if (statSync(folder).isDirectory()) return;
  } catch (error) {
    if (!isAbsent(error)) throw error;
    throw new UsageRefused(`${given}: its folder does not exist.`);
  }
  throw new UsageRefused(`${given}: what stands before its name is a file, not a folder.`);
}
