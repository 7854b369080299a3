/// <reference lib="dom" />
import { FileRefused } from '../../hosts/file/zip/refused.ts';
import type { ModelRow } from '../../sheets/model.ts';
import type { FromWorker, ToWorker } from './messages.ts';
import { patchedCopy } from './patchedCopy.ts';
import { gatheredRows } from './rowPieces.ts';

const rows = gatheredRows<ModelRow>();

function answer(message: FromWorker, handedOver: Transferable[] = []): void {
  globalThis.postMessage(message, { transfer: handedOver });
}

function work(asked: ToWorker): void {
  if (asked.ask === 'rows') {
    rows.take(asked);
    return;
  }
  const { original, edits } = asked;
  const added = asked.added.map(({ head, beyondModel }, index) => ({
    model: { ...head, rows: () => rows.of(index) },
    beyondModel,
  }));
  const copied = patchedCopy({ original, edits, added });
  answer({ done: 'copied', copied }, [copied.bytes.buffer]);
}

globalThis.addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  try {
    work(data);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    answer({ done: error instanceof FileRefused ? 'refused' : 'failed', message });
  }
});
