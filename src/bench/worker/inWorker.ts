/// <reference lib="dom" />
import type { ViewRow } from '../../hosts/file/view/types.ts';
import { pause } from '../../hosts/grid/pause.ts';
import { FileRefused } from '../../hosts/file/zip/refused.ts';
import { type FromWorker, type Results, type ToWorker, lost } from './messages.ts';
import type { RowPiece } from './rowPieces.ts';

/** The largest files take a minute or two of work between two messages; milliseconds. */
const longestSilence = 10 * 60_000;

/**
 * Has work done by a worker of its own, which goes with it, and gives what came of it; `onRows` hears the rows that come
 * first. Messages go out one at a time, so that the page answers between them. Rejects with FileRefused where the work is
 * refused, and with an Error where it fails otherwise.
 */
export async function inWorker<Kind extends keyof Results>(
  kind: Kind,
  messages: Iterable<ToWorker>,
  onRows?: (piece: RowPiece<ViewRow>) => void,
): Promise<Results[Kind]> {
  let silent: ReturnType<typeof setTimeout> | undefined;
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  try {
    const ended = new Promise<Results[Kind]>((resolve, reject) => {
      // A worker that the browser ended says nothing any more.
      const listen = (): void => {
        clearTimeout(silent);
        silent = setTimeout(() => {
          reject(new Error('the part of the page that works on files does not answer. Try again'));
        }, longestSilence);
      };
      let pieces = 0;
      listen();
      worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
        listen();
        if (data.kind === 'rows') {
          pieces++;
          onRows?.(data);
        } else if (data.kind === 'done' && data.pieces !== pieces) reject(new Error(lost));
        else if (data.kind === 'refused') reject(new FileRefused(data.message));
        else if (data.kind === 'failed') reject(new Error(data.message));
        else if (data.results[kind]) resolve(data.results[kind]);
      });
      worker.addEventListener('error', (event) => {
        event.preventDefault();
        reject(new Error(event.message || 'the part of the page that works on files could not be loaded'));
      });
      worker.addEventListener('messageerror', () => {
        reject(new Error('an answer of the part that works on files could not be read'));
      });
    });
    await Promise.race([ended, sendAll(worker, messages)]);
    return await ended;
  } finally {
    clearTimeout(silent);
    worker.terminate();
  }
}

async function sendAll(worker: Worker, messages: Iterable<ToWorker>): Promise<void> {
  for (const message of messages) {
    worker.postMessage(message);
    await pause();
  }
}
