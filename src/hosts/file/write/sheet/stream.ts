import type { EntrySink } from '../../zip/writer.ts';

const chunkLength = 1 << 17;

/** Hands text on as UTF-8 in chunks of about 128 K characters and ends the sink. Text must hold no halves of surrogate pairs. */
export function streamText(pieces: Iterable<string>, sink: EntrySink): void {
  const encoder = new TextEncoder();
  let pending = '';
  for (const piece of pieces) {
    pending += piece;
    if (pending.length >= chunkLength) {
      sink.push(encoder.encode(pending));
      pending = '';
    }
  }
  if (pending !== '') sink.push(encoder.encode(pending));
  sink.end();
}
