import type { ZipEntry } from './archive.ts';
import { collect } from './collect.ts';
import { crc32 } from './crc32.ts';
import { fflateDeflater, type Deflater } from './deflater.ts';
import { FileRefused } from './refused.ts';

/** What the headers of a zip entry say about it. */
interface EntryFacts {
  readonly nameBytes: Uint8Array;
  /** General purpose bit flags; bit 3 where the sizes follow the data. */
  readonly flags: number;
  /** MS-DOS time (low 16 bits) and date (high 16 bits). */
  readonly modified: number;
  readonly method: 0 | 8;
  readonly crc: number;
  readonly size: number;
  readonly packedSize: number;
}

const versionNeeded = 20;

/** What `copy` needs to know of an entry of an existing archive. */
type PackedEntry = Pick<ZipEntry, 'nameBytes' | 'flags' | 'modified' | 'method' | 'crc' | 'size' | 'raw'>;

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

function common(view: DataView, at: number, facts: EntryFacts): void {
  view.setUint16(at, versionNeeded, true);
  view.setUint16(at + 2, facts.flags, true);
  view.setUint16(at + 4, facts.method, true);
  view.setUint32(at + 6, facts.modified, true);
  view.setUint32(at + 10, facts.crc, true);
  view.setUint32(at + 14, facts.packedSize, true);
  view.setUint32(at + 18, facts.size, true);
  view.setUint16(at + 22, facts.nameBytes.length, true);
}

/** The local header of an entry; PKWARE APPNOTE 4.3.7. */
function localHeader(facts: EntryFacts): Uint8Array {
  const header = new Uint8Array(30 + facts.nameBytes.length);
  const view = new DataView(header.buffer);
  view.setUint32(0, 0x04034b50, true);
  common(view, 4, facts);
  header.set(facts.nameBytes, 30);
  return header;
}

/** The central directory record of an entry that starts at `offset`; PKWARE APPNOTE 4.3.12. */
function centralRecord(facts: EntryFacts, offset: number): Uint8Array {
  const record = new Uint8Array(46 + facts.nameBytes.length);
  const view = new DataView(record.buffer);
  view.setUint32(0, 0x02014b50, true);
  view.setUint16(4, versionNeeded, true);
  common(view, 6, facts);
  view.setUint32(42, offset, true);
  record.set(facts.nameBytes, 46);
  return record;
}

/** What follows the data of an entry whose header could not know its sizes yet (bit 3); PKWARE APPNOTE 4.3.9. */
function dataDescriptor({ crc, packedSize, size }: EntryFacts): Uint8Array {
  const descriptor = new Uint8Array(16);
  const view = new DataView(descriptor.buffer);
  view.setUint32(0, 0x08074b50, true);
  view.setUint32(4, crc, true);
  view.setUint32(8, packedSize, true);
  view.setUint32(12, size, true);
  return descriptor;
}

/** The end of central directory record; PKWARE APPNOTE 4.3.16. */
function endRecord(entries: number, start: number, size: number): Uint8Array {
  const record = new Uint8Array(22);
  const view = new DataView(record.buffer);
  view.setUint32(0, 0x06054b50, true);
  view.setUint16(8, entries, true);
  view.setUint16(10, entries, true);
  view.setUint32(12, size, true);
  view.setUint32(16, start, true);
  return record;
}
