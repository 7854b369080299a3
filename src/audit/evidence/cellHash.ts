import type { Cell } from '../../cells/cell.ts';
import { canonicalNumber, canonicalText, plainNumber } from './canonical.ts';
import { startSha256 } from './fingerprint.ts';

/** Bytes that gather before they are hashed. */
const room = 1 << 15;

/** Longest text whose bytes are kept, and how many are: words, names and tags, which stand in many cells. */
const longestKept = 20;
const mostKept = 10_000;

/** First byte of each value: what it is. */
const tags = { empty: 0, number: 1, text: 2, true: 3, false: 4, error: 5, end: 6 } as const;

/**
 * SHA-256 (FIPS 180-4) of cells one after another, the same whatever program stored or read them: each is a byte for its
 * type, then a number as the eight bytes of its double, low byte first, to some significant digits; a text as its length
 * in UTF-8, four bytes, and its bytes. A date or percentage is the number it is; a text of blanks is an empty cell.
 */
export class CellHash {
  readonly #digits: number;
  readonly #hash = startSha256();
  readonly #bytes = new Uint8Array(room);
  readonly #view = new DataView(this.#bytes.buffer);
  readonly #encoder = new TextEncoder();
  /** What stands for a text, made once: letter by letter it takes several times as long as to copy it. */
  readonly #kept = new Map<string, Uint8Array>();
  #used = 0;
  /** Where the last text begins. */
  #lastText = 0;

  constructor(digits: number) {
    this.#digits = digits;
  }

  /** Adds a cell; says whether a reader would see anything in it. */
  cell(cell: Cell | undefined): boolean {
    if (typeof cell === 'number') this.#number(cell);
    else if (typeof cell === 'string') return this.text(cell);
    else if (typeof cell === 'boolean') this.#tag(cell ? tags.true : tags.false);
    else if (cell === null || cell === undefined) {
      this.#tag(tags.empty);
      return false;
    } else if ('code' in cell) this.#text(tags.error, cell.code);
    else this.#number(plainNumber(cell) ?? NaN);
    return true;
  }

  /** Adds a text; says whether it is more than blanks. */
  text(text: string): boolean {
    const known = this.#kept.get(text);
    if (known) {
      this.#copy(known);
      return true;
    }
    if (!(text.charCodeAt(0) > 32) && text.trim() === '') {
      this.#tag(tags.empty);
      return false;
    }
    this.#text(tags.text, canonicalText(text));
    if (text.length <= longestKept) this.#keep(text);
    return true;
  }

  /** Adds the end of a row or part. */
  end(): void {
    this.#tag(tags.end);
  }

  /** 64 lower-case hexadecimal digits. Nothing can be added afterwards. */
  hex(): string {
    this.#flush();
    return this.#hash.hex();
  }

  /** Keeps what was just written for a text. */
  #keep(text: string): void {
    if (this.#kept.size === mostKept) this.#kept.clear();
    this.#kept.set(text, this.#bytes.slice(this.#lastText, this.#used));
  }

  #copy(bytes: Uint8Array): void {
    if (this.#used + bytes.length > room) this.#flush();
    for (let index = 0; index < bytes.length; index++) this.#bytes[this.#used + index] = bytes[index] ?? 0;
    this.#used += bytes.length;
  }

  #tag(tag: number): void {
    if (this.#used === room) this.#flush();
    this.#bytes[this.#used++] = tag;
  }

  #number(value: number): void {
    if (!Number.isFinite(value)) {
      this.#text(tags.error, String(value));
      return;
    }
    if (this.#used + 9 > room) this.#flush();
    this.#bytes[this.#used] = tags.number;
    this.#view.setFloat64(this.#used + 1, canonicalNumber(value, this.#digits), true);
    this.#used += 9;
  }

  #text(tag: number, text: string): void {
    // A character takes at most three bytes.
    if (this.#used + 5 + 3 * text.length > room) this.#flush();
    if (5 + 3 * text.length > room) {
      this.#longText(tag, text);
      return;
    }
    this.#lastText = this.#used;
    const start = this.#used + 5;
    let used = start;
    for (let index = 0; index < text.length; index++) {
      const code = text.charCodeAt(index);
      if (code > 127) {
        used = start + this.#encoder.encodeInto(text, this.#bytes.subarray(start)).written;
        break;
      }
      this.#bytes[used++] = code;
    }
    this.#bytes[start - 5] = tag;
    this.#view.setUint32(start - 4, used - start, true);
    this.#used = used;
  }

  #longText(tag: number, text: string): void {
    const bytes = this.#encoder.encode(text);
    this.#bytes[0] = tag;
    this.#view.setUint32(1, bytes.length, true);
    this.#used = 5;
    this.#flush();
    this.#hash.update(bytes);
  }

  #flush(): void {
    this.#hash.update(this.#bytes.subarray(0, this.#used));
    this.#used = 0;
  }
}
