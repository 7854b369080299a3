import { realpathSync, statSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import { UsageRefused, inWords, isAbsent } from './refused.ts';

/**
 * What tells a file or folder from all others, however it is named: device and inode, which links, bind mounts and other
 * spellings of a path share. `undefined` where there is nothing.
 * @throws UsageRefused where that can't be told.
 */
export function identityOf(path: string): string | undefined {
  try {
    const { dev, ino } = statSync(path, { bigint: true });
    // Some file systems over a network number nothing: there the path has to do.
    return ino === 0n ? realpathSync(path) : `${dev}:${ino}`;
  } catch (error) {
    if (isAbsent(error)) return undefined;
    throw new UsageRefused(`${basename(path)}: ${inWords(error, 'can not be looked at')}.`);
  }
}

/** Identities of those of these files that are there and can be looked at. */
export function identitiesOf(paths: readonly string[]): ReadonlySet<string> {
  return new Set(paths.flatMap((path) => identityOf(path) ?? []));
}

/** How two paths to which files are to be written are alike. */
export type Likeness = 'same' | 'but for letters' | 'different';

/** Whether two outputs would be one file, also where neither is there yet, or only on disks that know no letter case. */
export function likeness(one: string, other: string): Likeness {
  const there = identityOf(one);
  if (there !== undefined && there === identityOf(other)) return 'same';
  if (folderOf(one) !== folderOf(other)) return 'different';
  const [name, otherName] = [basename(one), basename(other)];
  if (name === otherName) return 'same';
  return folded(name) === folded(otherName) ? 'but for letters' : 'different';
}

function folderOf(path: string): string {
  const folder = dirname(path);
  return identityOf(folder) ?? folder;
}

function folded(name: string): string {
  return name.normalize('NFC').toLowerCase();
}
