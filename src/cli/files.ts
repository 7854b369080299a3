import {
  closeSync,
  existsSync,
  openSync,
  readFileSync,
  readSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { createHash } from 'node:crypto';
import { basename, dirname, join, resolve } from 'node:path';
import { UsageRefused } from './refused.ts';

/** A path as its user meant it: `npm run` starts commands in the project's folder and says where it was called from. */
export function pathOf(given: string): string {
  const { npm_lifecycle_event: script, INIT_CWD: calledFrom } = process.env;
  return resolve(script === 'audit' && calledFrom !== undefined ? calledFrom : process.cwd(), given);
}

/**
 * The bytes of a file.
 * @throws UsageRefused where it can't be read, with the reason in plain words.
 */
export function readBytes(given: string): Uint8Array {
  try {
    return readFileSync(pathOf(given));
  } catch (error) {
    throw new UsageRefused(`${given}: ${inWords(error, 'can not be read')}.`);
  }
}

/**
 * A JSON file.
 * @throws UsageRefused where it can't be read or is no JSON.
 */
export function readJson(given: string): unknown {
  const bytes = readBytes(given);
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)) as unknown;
  } catch (error) {
    const why = error instanceof Error ? error.message.split('\n')[0] : '';
    throw new UsageRefused(`${given} is no JSON: ${why ?? ''}`);
  }
}

/** The real paths of those of these files that exist. */
export function realPaths(files: readonly string[]): ReadonlySet<string> {
  return new Set(
    files
      .map(pathOf)
      .filter(existsSync)
      .map((path) => realpathSync(path)),
  );
}

/**
 * Checks, before any work is done, that a file may be written.
 * @throws UsageRefused where it is one of the inputs, or exists and `force` is not given, or its folder is missing.
 */
export function checkWritable(given: string, inputs: readonly string[], force: boolean): void {
  const path = pathOf(given);
  if (!existsSync(dirname(path))) throw new UsageRefused(`${given}: its folder does not exist.`);
  if (!statSync(dirname(path)).isDirectory()) {
    throw new UsageRefused(`${given}: what stands before its name is a file, not a folder.`);
  }
  if (!existsSync(path)) return;
  if (realPaths(inputs).has(realpathSync(path))) {
    throw new UsageRefused(`${given} is an input, which is never changed. Choose another name.`);
  }
  if (!force) throw new UsageRefused(`${given} exists. Choose another name, or replace it with --force.`);
}

/** Whether a file is a report that was written here before, of one workbook or of a fleet, which may be written anew. */
export function isOwnReport(given: string, of: 'report' | 'fleet' = 'report'): boolean {
  try {
    const file = openSync(pathOf(given), 'r');
    const start = new Uint8Array(64);
    readSync(file, start);
    closeSync(file);
    return new TextDecoder().decode(start).includes(`"schema": "tripdrift-${of}/`);
  } catch {
    return false;
  }
}

export interface Output {
  readonly given: string;
  /** Writes the file piece by piece. */
  readonly write: (put: (piece: Uint8Array | string) => void) => void;
}

/** A file whose pieces come one after another. */
export function inPieces(given: string, pieces: Iterable<Uint8Array | string>): Output {
  return {
    given,
    write(put) {
      for (const piece of pieces) put(piece);
    },
  };
}

/** Bytes of a name that leave room for what is put behind it; file systems commonly take 255 (no source). */
const longestName = 230;

/** The file into which a process writes before its target is put in place. */
export function stagedAt(path: string, process: number): string {
  const name = basename(path);
  const short =
    Buffer.byteLength(name) > longestName ? createHash('sha256').update(name).digest('hex') : name;
  return join(dirname(path), `${short}.${process}.part`);
}

/**
 * Writes all outputs or none: each to a file beside its target first, then all are put in place.
 * @throws UsageRefused where one can't be written.
 */
export function writeAll(outputs: readonly Output[]): void {
  const staged: { from: string; to: string }[] = [];
  let current = '';
  try {
    for (const { given, write } of outputs) {
      current = given;
      const to = pathOf(given);
      const from = stagedAt(to, process.pid);
      staged.push({ from, to });
      const file = openSync(from, 'wx');
      try {
        write((piece) => {
          writeFileSync(file, piece);
        });
      } finally {
        closeSync(file);
      }
    }
    for (const { from, to } of staged) renameSync(from, to);
  } catch (error) {
    for (const { from } of staged) removeIfThere(from);
    if (!isSystemError(error)) throw error;
    throw new UsageRefused(`${current}: ${inWords(error, 'can not be written')}.`);
  }
}

/** What can't be removed must not hide why writing failed. */
function removeIfThere(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch (error) {
    if (!isSystemError(error)) throw error;
  }
}

function isSystemError(error: unknown): boolean {
  return error instanceof Error && 'syscall' in error;
}

function inWords(error: unknown, otherwise: string): string {
  switch (error instanceof Error && 'code' in error ? error.code : undefined) {
    case 'ENOENT':
      return 'there is no such file';
    case 'EISDIR':
      return 'is a folder, not a file';
    case 'EACCES':
    case 'EPERM':
      return `${otherwise}: permission is missing`;
    case 'ENAMETOOLONG':
      return `${otherwise}: its name is too long`;
    case 'ENOTDIR':
      return `${otherwise}: part of its path is a file, not a folder`;
    case 'EROFS':
      return `${otherwise}: the disk can only be read`;
    case 'ENOSPC':
      return `${otherwise}: the disk is full`;
    case 'EBUSY':
      return `${otherwise}: another program holds it open`;
    default:
      return otherwise;
  }
}
