import { Deflate } from 'fflate';

/** Packs one entry: called with each chunk in turn, it hands raw deflate data (RFC 1951) to the sink it was made with. */
export type Deflater = (sink: (packed: Uint8Array) => void) => (chunk: Uint8Array, last: boolean) => void;

type Level = 0 | 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9;

/** Packs with fflate, which runs anywhere. `level` 0 (store) to 9 (smallest). */
export function fflateDeflater(level: Level = 1): Deflater {
  return (sink) => {
    const stream = new Deflate({ level }, sink);
    return (chunk, last) => {
      stream.push(chunk, last);
    };
  };
}
