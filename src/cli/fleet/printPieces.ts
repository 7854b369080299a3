import { once } from 'node:events';
import process from 'node:process';
import { setImmediate } from 'node:timers/promises';

/** Prints pieces as fast as they are taken on the other side; rejects with the reason of `signal` once it is aborted. */
export async function printPieces(pieces: Iterable<string | Uint8Array>, signal: AbortSignal): Promise<void> {
  for (const piece of pieces) {
    // Signals are heard between two turns only.
    await setImmediate();
    signal.throwIfAborted();
    if (process.stdout.write(piece)) continue;
    await once(process.stdout, 'drain', { signal }).catch((error: unknown) => {
      signal.throwIfAborted();
      throw error;
    });
  }
}
