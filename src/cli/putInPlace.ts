import {
  closeSync,
  constants,
  copyFileSync,
  fsyncSync,
  linkSync,
  lstatSync,
  openSync,
  renameSync,
  rmSync,
} from 'node:fs';
import { dirname } from 'node:path';
import { UsageRefused, inWords, isAbsent, isSystemError } from './refused.ts';
import { newToken, partOf } from './staging.ts';

/** A file that is written whole beside its target. */
export interface Staged {
  /** The target as the user named it. */
  readonly given: string;
  readonly from: string;
  readonly to: string;
}

/** A target that has its new content, and where its earlier one is kept; `undefined` where there was none. */
interface Placed {
  readonly to: string;
  readonly earlier: string | undefined;
}

/**
 * Puts all files in place or none: where one can't be, those before it get back what they held.
 * @throws UsageRefused where that is so.
 */
export function putInPlace(staged: readonly Staged[]): void {
  const placed: Placed[] = [];
  for (const [index, { given, from, to }] of staged.entries()) {
    let earlier: string | undefined;
    try {
      // Nothing comes behind the last one for which it would have to be put back.
      if (index < staged.length - 1) earlier = keepEarlier(to);
      renameSync(from, to);
      placed.push({ to, earlier });
    } catch (error) {
      if (earlier !== undefined) removeQuietly(earlier);
      const lost = placed.toReversed().flatMap(putBack);
      if (!isSystemError(error)) throw error;
      throw new UsageRefused([`${given}: ${inWords(error, 'can not be written')}.`, ...lost].join(' '));
    }
  }
  for (const { earlier } of placed) if (earlier !== undefined) removeQuietly(earlier);
  for (const folder of new Set(staged.map(({ to }) => dirname(to)))) settle(folder);
}

/** Answers of file systems that know no hard links. */
const noLinks = new Set(['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK', 'EXDEV']);

/** A second name for what a target holds, or a copy where there are no hard links. */
function keepEarlier(path: string): string | undefined {
  try {
    lstatSync(path);
  } catch (error) {
    if (isAbsent(error)) return undefined;
    throw error;
  }
  const kept = partOf(path, newToken());
  try {
    linkSync(path, kept);
  } catch (error) {
    if (!isSystemError(error) || !noLinks.has(error.code ?? '')) throw error;
    copyEarlier(path, kept);
  }
  return kept;
}

function copyEarlier(path: string, kept: string): void {
  try {
    copyFileSync(path, kept, constants.COPYFILE_EXCL);
  } catch (error) {
    removeQuietly(kept);
    throw error;
  }
}

/** What to tell where even that fails. */
function putBack({ to, earlier }: Placed): readonly string[] {
  try {
    if (earlier === undefined) rmSync(to, { force: true });
    else renameSync(earlier, to);
    return [];
  } catch (error) {
    if (!isSystemError(error)) throw error;
    return [`${to} is new all the same${earlier === undefined ? '' : `; what it held is in ${earlier}`}.`];
  }
}

/** What stays all the same is named by the next run. */
function removeQuietly(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch (error) {
    if (!isSystemError(error)) throw error;
  }
}

/** Has the names of a folder's files written down to the disk, where the system can. */
function settle(folder: string): void {
  try {
    const open = openSync(folder, 'r');
    try {
      fsyncSync(open);
    } finally {
      closeSync(open);
    }
  } catch (error) {
    if (!isSystemError(error)) throw error;
  }
}
