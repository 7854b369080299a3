import { closeSync, fsyncSync, openSync, rmSync, writeFileSync } from 'node:fs';
import { setImmediate } from 'node:timers/promises';
import { pathOf } from './files.ts';
import { putInPlace, type Staged } from './putInPlace.ts';
import { UsageRefused, inWords, isSystemError } from './refused.ts';
import { newToken, partOf } from './staging.ts';

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

/** How outputs are written. */
export interface Writing {
  /** Aborted once the user ends the command: nothing is written then, and its reason is thrown. */
  readonly signal?: AbortSignal;
  /** Names the unfinished files, as `newToken` makes it. */
  readonly token?: string;
}

/**
 * Writes all outputs or none: each to a file beside its target first, down to the disk, then all are put in place.
 * @throws UsageRefused where one can't be written, the reason of the signal where that is aborted; no unfinished file
 * stays then.
 */
export async function writeAll(
  outputs: readonly Output[],
  { signal, token = newToken() }: Writing = {},
): Promise<void> {
  const staged: Staged[] = [];
  try {
    for (const output of outputs) {
      const to = pathOf(output.given);
      const one = { given: output.given, from: partOf(to, token), to };
      staged.push(one);
      stage(one, output);
      await heard(signal);
    }
    putInPlace(staged);
  } catch (error) {
    for (const { from } of staged) removeIfThere(from);
    throw error;
  }
}

function stage({ given, from }: Staged, output: Output): void {
  try {
    const file = openSync(from, 'wx');
    try {
      output.write((piece) => {
        writeFileSync(file, piece);
      });
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
  } catch (error) {
    if (!isSystemError(error)) throw error;
    throw new UsageRefused(`${given}: ${inWords(error, 'can not be written')}.`);
  }
}

/** Signals are heard between two turns only; the first may have begun before a signal came. */
async function heard(signal: AbortSignal | undefined): Promise<void> {
  if (signal === undefined) return;
  await setImmediate();
  await setImmediate();
  signal.throwIfAborted();
}

/** What can't be removed must not hide why writing failed. */
function removeIfThere(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch (error) {
    if (!isSystemError(error)) throw error;
  }
}
