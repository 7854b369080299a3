import type { ZipEntry } from './archive.ts';
import { crc32 } from './crc32.ts';
import { fflateDeflater, type Deflater } from './deflater.ts';
import { endRecord, entryHeaders, type EntryFacts } from './headers.ts';
import { FileRefused } from './refused.ts';

/** What `copy` needs to know of an entry of an existing archive. */
export type PackedEntry = Pick<
  ZipEntry,
  'nameBytes' | 'flags' | 'modified' | 'method' | 'crc' | 'size' | 'raw'
>;

/** Bytes handed on as they come; `end` must be called once, before the next entry begins. */
export interface EntrySink {
  push(chunk: Uint8Array): void;
  end(): void;
}

/** Builds a zip archive, entry after entry, in the order of the calls. */
export interface ZipWriter {
  /** Takes over an entry's packed bytes, name, date and check sum as they are. */
  copy(entry: PackedEntry): void;
  add(name: string, bytes: Uint8Array): void;
  begin(name: string): EntrySink;
  /** Writes the directory of the archive; nothing may follow. */
  finish(): void;
}

const utf8Name = 0x0800;
const sizesFollow = 0x0008;
/** 1980-01-01 00:00, the earliest date the format knows: a fixed one makes equal content equal bytes. */
const fixedDate = 0x00210000;

/**
 * A writer of zip archives that hands its bytes to `sink` as they come (PKWARE APPNOTE 6.3.10, without zip64). Every local header carries the sizes and the
 * check sum: fflate's own `Zip` puts them behind the data, which readers that stream cannot follow for stored
 * entries, and it has no way to pass packed bytes through. The packed entry stands in memory, the unpacked never.
 * Throws FileRefused past 65,535 entries or 4 GiB.
 */
export function zipWriter(
  sink: (piece: Uint8Array) => void,
  deflater: Deflater = fflateDeflater(),
): ZipWriter {
  const directory: Uint8Array[] = [];
  let length = 0;

  const put = (piece: Uint8Array): void => {
    sink(piece);
    length += piece.length;
  };
  const entry = (facts: EntryFacts, packed: readonly Uint8Array[]): void => {
    const { local, central } = entryHeaders(facts, length);
    directory.push(central);
    put(local);
    packed.forEach(put);
    if (length > 0xffffffff || facts.size > 0xffffffff) throw tooLarge();
  };
  const begin = (name: string): EntrySink => {
    const packed: Uint8Array[] = [];
    let crc = 0;
    let size = 0;
    const nameBytes = new TextEncoder().encode(name);
    const flags = nameBytes.length === name.length ? 0 : utf8Name;
    const deflate = deflater((chunk) => packed.push(chunk));
    return {
      push(chunk) {
        crc = crc32(chunk, crc);
        size += chunk.length;
        deflate(chunk, false);
      },
      end() {
        deflate(new Uint8Array(0), true);
        const packedSize = packed.reduce((sum, chunk) => sum + chunk.length, 0);
        entry({ nameBytes, flags, modified: fixedDate, method: 8, crc, size, packedSize }, packed);
      },
    };
  };
  return {
    begin,
    add(name, bytes) {
      const sink = begin(name);
      sink.push(bytes);
      sink.end();
    },
    copy({ raw, ...facts }) {
      entry({ ...facts, flags: facts.flags & ~sizesFollow, packedSize: raw.length }, [raw]);
    },
    finish() {
      if (directory.length > 0xffff) throw tooLarge();
      const start = length;
      directory.forEach(put);
      put(endRecord(directory.length, start, length - start));
    },
  };
}

function tooLarge(): FileRefused {
  return new FileRefused(
    'The result would be larger than a workbook file can be (4 GB); write it to several workbooks.',
  );
}
