import { once } from 'node:events';
import process from 'node:process';
import { setImmediate } from 'node:timers/promises';

/**
 * Prints pieces as fast as they are taken on the other side, until all are or nobody takes them any more; rejects with the
 * reason of `signal` once it is aborted.
 */
export async function printPieces(pieces: Iterable<string | Uint8Array>, signal: AbortSignal): Promise<void> {
  for (const piece of pieces) {
    // Signals are heard between two turns only.
    await setImmediate();
    signal.throwIfAborted();
    const taken = process.stdout.write(piece);
    if (process.stdout.errored) return;
    if (taken) continue;
    try {
      await once(process.stdout, 'drain', { signal });
    } catch {
      signal.throwIfAborted();
      // The stream failed: whoever runs the command hears of it too.
      return;
    }
  }
}
