import type { EntrySink } from '../../zip/writer.ts';

const chunkLength = 1 << 17;

/**
 * Hands text on as UTF-8 in chunks of about 128 K characters and ends the sink. Text must hold no halves of surrogate
 * pairs. One buffer serves all chunks: the sink must be done with a chunk when its call returns.
 */
export function streamText(pieces: Iterable<string>, sink: EntrySink): void {
  const encoder = new TextEncoder();
  let buffer = new Uint8Array(2 * chunkLength);
  let pending = '';
  const flush = (): void => {
    if (3 * pending.length > buffer.length) buffer = new Uint8Array(3 * pending.length);
    const { written } = encoder.encodeInto(pending, buffer);
    sink.push(buffer.subarray(0, written));
    pending = '';
  };
  for (const piece of pieces) {
    pending += piece;
    if (pending.length >= chunkLength) flush();
  }
  if (pending !== '') flush();
  sink.end();
}
