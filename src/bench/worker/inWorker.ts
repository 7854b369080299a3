/// <reference lib="dom" />
import { pause } from '../../hosts/grid/pause.ts';
import { FileRefused } from '../../hosts/file/zip/refused.ts';
import type { FromWorker, Outcome, ToWorker } from './messages.ts';

type Ended = Exclude<Outcome, { done: 'refused' | 'failed' }>;

/**
 * Has work done by a worker of its own, which goes with it, and gives what came of it. Messages go out one at a time, so
 * that the page answers between them. Throws FileRefused as the work does, and an Error where it fails otherwise.
 */
export async function inWorker(messages: Iterable<ToWorker>): Promise<Ended> {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  try {
    const ended = new Promise<Ended>((resolve, reject) => {
      worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
        if (data.done === 'refused') reject(new FileRefused(data.message));
        else if (data.done === 'failed') reject(new Error(data.message));
        else resolve(data);
      });
      worker.addEventListener('error', (event) => {
        event.preventDefault();
        reject(new Error(event.message || 'the part of the page that works on files could not be loaded'));
      });
      worker.addEventListener('messageerror', () => {
        reject(new Error('an answer of the worker could not be read'));
      });
    });
    await Promise.race([ended, sendAll(worker, messages)]);
    return await ended;
  } finally {
    worker.terminate();
  }
}

async function sendAll(worker: Worker, messages: Iterable<ToWorker>): Promise<void> {
  for (const message of messages) {
    worker.postMessage(message);
    await pause();
  }
}
