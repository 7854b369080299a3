import type { ReadLimits } from './limits.ts';
import { FileRefused, oneLine } from './refused.ts';

/** One part as the zip's central directory describes it (PKWARE APPNOTE 6.3, section 4.3.12). */
export interface DirectoryRecord {
  /** With slashes between its folders and none in front, whatever the file's writer put there. */
  readonly name: string;
  /** The name exactly as stored. */
  readonly nameBytes: Uint8Array;
  /** General purpose bit flags; bit 0 (encrypted) is never set, bit 3 says that sizes follow the data. */
  readonly flags: number;
  /** 0 stored, 8 deflated. */
  readonly method: 0 | 8;
  /** MS-DOS time (low 16 bits) and date (high 16 bits). */
  readonly modified: number;
  /** CRC-32 of the unpacked bytes. */
  readonly crc: number;
  readonly compressedSize: number;
  readonly size: number;
  /** Where its local header starts, in bytes from the start of the file. */
  readonly offset: number;
}

const endSignature = 0x06054b50;
const endLength = 22;
const recordSignature = 0x02014b50;
const recordLength = 46;
const cutOff = 'The file is cut off or damaged: its table of contents is missing. Copy or download it again.';
const damaged = 'The file is damaged: its table of contents cannot be read. Copy or download it again.';
const zip64 =
  'The file uses the zip64 format for very large files, which is not read. Save it again as .xlsx.';

/** The records of the central directory in their order. Throws FileRefused where it is damaged or beyond `limits`. */
export function readDirectory(bytes: Uint8Array, limits: ReadLimits): DirectoryRecord[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  const length = view.getUint32(end + 12, true);
  const start = view.getUint32(end + 16, true);
  if (count === 0xffff || length === 0xffffffff || start === 0xffffffff) throw new FileRefused(zip64);
  if (view.getUint16(end + 4, true) !== 0 || view.getUint16(end + 8, true) !== count) {
    throw new FileRefused(
      'The file is one piece of a zip split over several. Join them, or save it again as .xlsx.',
    );
  }
  if (start + length > end) throw new FileRefused(damaged);
  if (count > limits.entries) {
    throw new FileRefused(`The file has ${count} parts, more than the ${limits.entries} that are read.`);
  }
  const records: DirectoryRecord[] = [];
  let at = start;
  for (let index = 0; index < count; index++) {
    if (at + recordLength > end || view.getUint32(at, true) !== recordSignature)
      throw new FileRefused(damaged);
    const nameEnd = at + recordLength + view.getUint16(at + 28, true);
    const next = nameEnd + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (next > end) throw new FileRefused(damaged);
    records.push(readRecord(view, at, bytes.subarray(at + recordLength, nameEnd)));
    at = next;
  }
  return records;
}

/** Position of the end-of-directory record: the last one whose comment fits the file. */
function findEnd(view: DataView): number {
  const lowest = Math.max(0, view.byteLength - endLength - 0xffff);
  for (let at = view.byteLength - endLength; at >= lowest; at--) {
    if (view.getUint32(at, true) !== endSignature) continue;
    if (at + endLength + view.getUint16(at + 20, true) <= view.byteLength) return at;
  }
  throw new FileRefused(cutOff);
}

/** A part's name from the root of the package; some writers put backslashes between folders, or a slash in front. */
export function partName(stored: string): string {
  return stored.replaceAll('\\', '/').replace(/^\/+/, '');
}

function readRecord(view: DataView, at: number, nameBytes: Uint8Array): DirectoryRecord {
  const name = partName(new TextDecoder().decode(nameBytes));
  const flags = view.getUint16(at + 8, true);
  const method = view.getUint16(at + 10, true);
  const compressedSize = view.getUint32(at + 20, true);
  const size = view.getUint32(at + 24, true);
  const offset = view.getUint32(at + 42, true);
  if ((flags & 0x41) !== 0) {
    throw new FileRefused(
      `Part “${oneLine(name)}” of the file is encrypted. Remove the password and save it again.`,
    );
  }
  if (method !== 0 && method !== 8) {
    throw new FileRefused(
      `Part “${oneLine(name)}” of the file is packed by an unusual method (${method}). Save it again as .xlsx.`,
    );
  }
  if ([compressedSize, size, offset].includes(0xffffffff)) throw new FileRefused(zip64);
  return {
    name,
    nameBytes,
    flags,
    method,
    modified: view.getUint32(at + 12, true),
    crc: view.getUint32(at + 16, true),
    compressedSize,
    size,
    offset,
  };
}
