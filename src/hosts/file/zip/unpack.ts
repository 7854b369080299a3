import { Inflate } from 'fflate';
import { crc32 } from './crc32.ts';
import { FileRefused, oneLine } from './refused.ts';

/** Packed bytes handed to the inflater at once: deflate grows at most 1032-fold, so a chunk stays under 17 MB. */
const pieceLength = 16 * 1024;

interface Packed {
  readonly name: string;
  readonly method: 0 | 8;
  readonly size: number;
  readonly crc: number;
  readonly raw: Uint8Array;
}

/**
 * Unpacks one part, handing out each chunk as soon as it is there. Size and CRC-32 are counted on the way:
 * throws FileRefused as soon as the part holds more than it declares, and at its end where either differs.
 */
export function unpack(part: Packed, onChunk: (chunk: Uint8Array) => void): void {
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
