import type { EntrySink } from '../../zip/writer.ts';

/** Bytes of a chunk: few calls of the packer, each with enough before it to point back to. */
const chunkLength = 1 << 20;

const encoder = new TextEncoder();

/** Markup as UTF-8. Text must hold no halves of surrogate pairs. */
export function utf8(text: string): Uint8Array {
  return encoder.encode(text);
}

/**
 * UTF-8 written piece by piece into one buffer, which is handed on whenever it is full. A sheet is millions of short pieces,
 * the same few over and over: as bytes they are made once and copied, which takes half the time of joining strings. The sink
 * must be done with a chunk when its call returns.
 */
export class ByteStream {
  readonly #sink: EntrySink;
  #buffer = new Uint8Array(chunkLength);
  #used = 0;

  constructor(sink: EntrySink) {
    this.#sink = sink;
  }

  write(bytes: Uint8Array): void {
    if (this.#used + bytes.length > this.#buffer.length) this.#makeRoom(bytes.length);
    const buffer = this.#buffer;
    const start = this.#used;
    // Most are so short that `set` takes longer.
    for (let index = 0; index < bytes.length; index++) buffer[start + index] = bytes[index] ?? 0;
    this.#used = start + bytes.length;
  }

  /** Writes a number in the shortest form that reads back as the same number. */
  number(value: number): void {
    const digits = String(value);
    if (this.#used + digits.length > this.#buffer.length) this.#makeRoom(digits.length);
    const buffer = this.#buffer;
    const start = this.#used;
    for (let index = 0; index < digits.length; index++) buffer[start + index] = digits.charCodeAt(index);
    this.#used = start + digits.length;
  }

  text(text: string): void {
    // A character takes at most three bytes.
    if (this.#used + 3 * text.length > this.#buffer.length) this.#makeRoom(3 * text.length);
    this.#used += encoder.encodeInto(text, this.#buffer.subarray(this.#used)).written;
  }

  /** Hands on what is left and ends the sink. */
  end(): void {
    this.#flush();
    this.#sink.end();
  }

  #makeRoom(bytes: number): void {
    this.#flush();
    if (bytes > this.#buffer.length) this.#buffer = new Uint8Array(bytes);
  }

  #flush(): void {
    if (this.#used > 0) this.#sink.push(this.#buffer.subarray(0, this.#used));
    this.#used = 0;
  }
}
