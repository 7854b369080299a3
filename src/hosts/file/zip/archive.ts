import { type DirectoryRecord, partName, readDirectory } from './directory.ts';
import type { ReadLimits } from './limits.ts';
import { FileRefused, oneLine } from './refused.ts';
import { Inflate } from 'fflate';
import { crc32 } from './crc32.ts';

/** Packed bytes handed to the inflater at once: deflate grows at most 1032-fold, so a chunk stays under 17 MB. */
const pieceLength = 16 * 1024;

interface Packed {
  readonly name: string;
  readonly method: 0 | 8;
  readonly size: number;
  readonly crc: number;
  readonly raw: Uint8Array;
}

/** One part of the file. A copy of `raw` under the same name, method, crc and sizes is the part byte for byte. */
export interface ZipEntry extends DirectoryRecord {
  /** The packed bytes, a view into the file. */
  readonly raw: Uint8Array;
}

export interface Archive {
  /** In the order of the zip's table of contents; folders are among them (their names end in `/`). */
  readonly entries: readonly ZipEntry[];
  /** The part of that name, in any case, with or without a leading slash. */
  get(name: string): ZipEntry | undefined;
  /** The part unpacked. Throws FileRefused where it is damaged. */
  bytes(entry: ZipEntry): Uint8Array;
  /** Unpacks the part piece by piece. What `onChunk` throws passes through; a damaged part throws FileRefused. */
  stream(entry: ZipEntry, onChunk: (chunk: Uint8Array) => void): void;
}

const localSignature = 0x04034b50;
const localLength = 30;

/**
 * Opens a zip held in memory; nothing is unpacked yet. Throws FileRefused for a damaged or split zip, zip64,
 * encryption, unknown packing, two parts of one name, parts that overlap, and sizes beyond `limits`. The
 * declared sizes can be relied on: a part that unpacks to another size is refused when it is read.
 */
export function openZip(bytes: Uint8Array, limits: ReadLimits): Archive {
  const records = readDirectory(bytes, limits);
  const entries = records.map((record) => ({ ...record, raw: locate(bytes, record) }));
  refuseOverlaps(entries, bytes);
  refuseBombs(entries, limits);
  const byName = new Map<string, ZipEntry>();
  for (const entry of entries) {
    const key = partKey(entry.name);
    if (byName.has(key)) {
      throw new FileRefused(`The file holds part “${oneLine(entry.name)}” twice. Save it again as .xlsx.`);
    }
    byName.set(key, entry);
  }
  return {
    entries,
    get: (name) => byName.get(partKey(name)),
    bytes(entry) {
      const whole = new Uint8Array(entry.size);
      let filled = 0;
      unpack(entry, (chunk) => {
        whole.set(chunk, filled);
        filled += chunk.length;
      });
      return whole;
    },
    stream: unpack,
  };
}

/** Part names are compared without case (ECMA-376 part 2, section 6.2.2.3). */
export function partKey(name: string): string {
  return partName(name).toLowerCase();
}

function locate(bytes: Uint8Array, record: DirectoryRecord): Uint8Array {
  const { offset } = record;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (offset + localLength <= bytes.length && view.getUint32(offset, true) === localSignature) {
    const start =
      offset + localLength + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
    const end = start + record.compressedSize;
    if (end <= bytes.length) return bytes.subarray(start, end);
  }
  throw new FileRefused(
    `The file is cut off or damaged: part “${oneLine(record.name)}” is not where it should be. Copy or download it again.`,
  );
}

/** Parts that share bytes are how a small file claims to unpack to a huge one; no honest writer makes them. */
function refuseOverlaps(entries: readonly ZipEntry[], bytes: Uint8Array): void {
  let free = 0;
  for (const entry of [...entries].sort((a, b) => a.offset - b.offset)) {
    if (entry.offset < free) {
      throw new FileRefused(
        `Part “${oneLine(entry.name)}” of the file overlaps another. Do not trust this file.`,
      );
    }
    free = entry.raw.byteOffset - bytes.byteOffset + entry.raw.length;
  }
}

/** What the parts declare to hold; that none holds more is seen while it is unpacked. */
function refuseBombs(entries: readonly ZipEntry[], limits: ReadLimits): void {
  const total = entries.reduce((sum, { size }) => sum + size, 0);
  if (total > limits.unpackedBytes) {
    throw new FileRefused(
      `The file would unpack to ${megabytes(total)}, more than the ${megabytes(limits.unpackedBytes)} that are read. Split it, or delete empty formatted rows.`,
    );
  }
}

function megabytes(bytes: number): string {
  return `${Math.ceil(bytes / 2 ** 20).toLocaleString('en')} MB`;
}

/**
 * Unpacks one part, handing out each chunk as soon as it is there. Size and CRC-32 are counted on the way:
 * throws FileRefused as soon as the part holds more than it declares, and at its end where either differs.
 */
function unpack(part: Packed, onChunk: (chunk: Uint8Array) => void): void {
  let size = 0;
  let crc = 0;
  for (const chunk of chunks(part)) {
    size += chunk.length;
    if (size > part.size) throw damaged(part, 'it holds more than it declares');
    crc = crc32(chunk, crc);
    if (chunk.length > 0) onChunk(chunk);
  }
  if (size < part.size) throw damaged(part, 'it ends too early');
  if (crc !== part.crc) throw damaged(part, 'its checksum does not match');
}

function* chunks(part: Packed): Generator<Uint8Array> {
  if (part.method === 0) {
    yield part.raw;
    return;
  }
  const ready: Uint8Array[] = [];
  const inflate = new Inflate((chunk) => ready.push(chunk));
  for (let at = 0; at === 0 || at < part.raw.length; at += pieceLength) {
    try {
      inflate.push(part.raw.subarray(at, at + pieceLength), at + pieceLength >= part.raw.length);
    } catch {
      throw damaged(part, 'its packed data is broken');
    }
    yield* ready.splice(0);
  }
}

function damaged(part: Packed, how: string): FileRefused {
  return new FileRefused(
    `Part “${oneLine(part.name)}” of the file is damaged: ${how}. Copy or download the file again.`,
  );
}
