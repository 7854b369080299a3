/// <reference lib="dom" />
import { FileRefused } from '../../hosts/file/zip/refused.ts';
import type { ModelRow } from '../../sheets/model.ts';
import { openFile } from '../open/openFile.ts';
import {
  type AfterPieces,
  type CopyAsked,
  type FromWorker,
  type OpenAsked,
  type ToWorker,
  lost,
} from './messages.ts';
import { patchedCopy } from './patchedCopy.ts';
import { gatheredRows, rowPieces } from './rowPieces.ts';

const rows = gatheredRows<ModelRow>();

function answer(message: FromWorker, handedOver: Transferable[] = []): void {
  globalThis.postMessage(message, { transfer: handedOver });
}

function open({ name, bytes }: OpenAsked): void {
  const { view, original, ...rest } = openFile(name, bytes);
  let pieces = 0;
  const sheets = view.sheets.map(({ rows: all, ...sheet }, index) => {
    for (const piece of rowPieces(index, all)) {
      answer(piece);
      pieces++;
    }
    return sheet;
  });
  const opened = { ...rest, view: { ...view, sheets }, isWorkbook: original !== null };
  answer({ kind: 'done', results: { opened }, pieces });
}

function copy({ original, edits, added, share, pieces }: CopyAsked & AfterPieces): void {
  if (rows.count() !== pieces) throw new Error(lost);
  const copied = patchedCopy({
    original,
    edits,
    ...(share && { share }),
    added: added.map(({ head, beyondModel }, index) => ({
      model: { ...head, rows: () => rows.of(index) },
      beyondModel,
    })),
  });
  answer({ kind: 'done', results: { copied }, pieces: 0 }, [copied.bytes.buffer]);
}

globalThis.addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  try {
    if (data.kind === 'rows') rows.take(data);
    else if (data.kind === 'open') open(data);
    else copy(data);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    answer({ kind: error instanceof FileRefused ? 'refused' : 'failed', message });
  }
});
