import type { ZipEntry } from './archive.ts';
import { collect } from './collect.ts';
import { crc32 } from './crc32.ts';
import { fflateDeflater, type Deflater } from './deflater.ts';
import { centralRecord, dataDescriptor, endRecord, localHeader, type EntryFacts } from './headers.ts';
import { FileRefused } from './refused.ts';

/** What `copy` needs to know of an entry of an existing archive. */
export type PackedEntry = Pick<
  ZipEntry,
  'nameBytes' | 'flags' | 'modified' | 'method' | 'crc' | 'size' | 'raw'
>;

/** Bytes handed on as they come; `end` must be called once, before the next entry begins. */
export interface EntrySink {
  /** The chunk is used up when the call returns. */
  push(chunk: Uint8Array): void;
  end(): void;
}

/** Builds a zip archive, entry after entry, in the order of the calls. */
export interface ZipWriter {
  /** Takes over an entry's packed bytes, name, date and check sum as they are. */
  copy(entry: PackedEntry): void;
  add(name: string, bytes: Uint8Array): void;
  /** Adds an entry in place of one of an existing archive, under its name as that stores it. */
  replace(entry: Pick<PackedEntry, 'nameBytes' | 'flags'>, bytes: Uint8Array): void;
  begin(name: string): EntrySink;
  /** Writes the directory of the archive; nothing may follow. */
  finish(): void;
}

const utf8Name = 0x0800;
const sizesFollow = 0x0008;
const largest = 0xffffffff;
/** 1980-01-01 00:00, the earliest date the format knows: a fixed one makes equal content equal bytes. */
const fixedDate = 0x00210000;

/**
 * A writer of zip archives that hands its bytes to `sink` as they come (PKWARE APPNOTE 6.3.10, without zip64). An entry
 * given in one piece, or taken over, carries its sizes in front; one given bit by bit carries them behind its data, so
 * that nothing of it has to stand in memory. fflate's own `Zip` has no way to pass packed bytes through.
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
  const entry = (facts: EntryFacts, packed: Uint8Array): void => {
    directory.push(centralRecord(facts, length));
    put(localHeader(facts));
    put(packed);
    if (length > largest || facts.size > largest) throw tooLarge();
  };
  const whole = (known: ReturnType<typeof newEntry>, bytes: Uint8Array): void => {
    const packed = collect();
    const deflate = deflater(packed.sink);
    deflate(bytes, false);
    deflate(new Uint8Array(0), true);
    const content = packed.bytes();
    entry({ ...known, crc: crc32(bytes, 0), size: bytes.length, packedSize: content.length }, content);
  };
  return {
    begin(name) {
      const start = length;
      const unknown = { ...newEntry(name), crc: 0, size: 0, packedSize: 0 };
      const facts = { ...unknown, flags: unknown.flags | sizesFollow };
      put(localHeader(facts));
      const deflate = deflater((chunk) => {
        facts.packedSize += chunk.length;
        put(chunk);
      });
      return {
        push(chunk) {
          facts.crc = crc32(chunk, facts.crc);
          facts.size += chunk.length;
          deflate(chunk, false);
        },
        end() {
          deflate(new Uint8Array(0), true);
          put(dataDescriptor(facts));
          directory.push(centralRecord(facts, start));
          if (length > largest || facts.size > largest) throw tooLarge();
        },
      };
    },
    add(name, bytes) {
      whole(newEntry(name), bytes);
    },
    replace({ nameBytes, flags }, bytes) {
      whole({ ...newEntry(''), nameBytes, flags: flags & utf8Name }, bytes);
    },
    copy({ raw, ...facts }) {
      entry({ ...facts, flags: facts.flags & ~sizesFollow, packedSize: raw.length }, raw);
    },
    finish() {
      if (directory.length > 0xffff) throw tooLarge();
      const start = length;
      directory.forEach(put);
      put(endRecord(directory.length, start, length - start));
    },
  };
}

/** What is known of a new entry before its content: names beyond ASCII are marked as UTF-8. */
function newEntry(name: string): Pick<EntryFacts, 'nameBytes' | 'flags' | 'modified' | 'method'> {
  const nameBytes = new TextEncoder().encode(name);
  const flags = nameBytes.length === name.length ? 0 : utf8Name;
  return { nameBytes, flags, modified: fixedDate, method: 8 };
}

function tooLarge(): FileRefused {
  return new FileRefused(
    'The result would be larger than a workbook file can be (4 GB); write it to several workbooks.',
  );
}
