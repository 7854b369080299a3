import { createHash, randomBytes } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { plain } from './terminal.ts';

/** Bytes of a name that leave room for what is put behind it; file systems commonly take 255 (no source). */
const longestName = 200;

/** What tells the unfinished files of one run from those of all others, on this machine or another; nobody can guess it. */
export function newToken(): string {
  return randomBytes(16).toString('hex');
}

/** The file beside `path` in which a run keeps what it is not done with. */
export function partOf(path: string, token: string): string {
  const name = basename(path);
  const short =
    Buffer.byteLength(name) > longestName ? createHash('sha256').update(name).digest('hex') : name;
  return join(dirname(path), `${short}.tripdrift-${token}.part`);
}

const part = /\.tripdrift-[0-9a-f]{32}\.part$/u;

const mostNamed = 5;

/** A line about unfinished files in these folders that a killed run could not clear away; none where there are none. */
export function leftBehind(folders: Iterable<string>): string | undefined {
  const found = [...new Set(folders)].flatMap((folder) => partsIn(folder).map((name) => join(folder, name)));
  const [first] = found;
  if (first === undefined) return undefined;
  const named = found.slice(0, mostNamed).map((path) => plain(path));
  const more = found.length > mostNamed ? ` and ${found.length - mostNamed} more` : '';
  return `Left unfinished by a run that was killed: ${named.join(', ')}${more}. Delete what no other audit is still writing.`;
}

function partsIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder).filter((name) => part.test(name));
  } catch {
    return [];
  }
}
