/** What the headers of a zip entry say about it. */
export interface EntryFacts {
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
export function localHeader(facts: EntryFacts): Uint8Array {
  const header = new Uint8Array(30 + facts.nameBytes.length);
  const view = new DataView(header.buffer);
  view.setUint32(0, 0x04034b50, true);
  common(view, 4, facts);
  header.set(facts.nameBytes, 30);
  return header;
}

/** The central directory record of an entry that starts at `offset`; PKWARE APPNOTE 4.3.12. */
export function centralRecord(facts: EntryFacts, offset: number): Uint8Array {
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
export function dataDescriptor({ crc, packedSize, size }: EntryFacts): Uint8Array {
  const descriptor = new Uint8Array(16);
  const view = new DataView(descriptor.buffer);
  view.setUint32(0, 0x08074b50, true);
  view.setUint32(4, crc, true);
  view.setUint32(8, packedSize, true);
  view.setUint32(12, size, true);
  return descriptor;
}

/** The end of central directory record; PKWARE APPNOTE 4.3.16. */
export function endRecord(entries: number, start: number, size: number): Uint8Array {
  const record = new Uint8Array(22);
  const view = new DataView(record.buffer);
  view.setUint32(0, 0x06054b50, true);
  view.setUint16(8, entries, true);
  view.setUint16(10, entries, true);
  view.setUint32(12, size, true);
  view.setUint32(16, start, true);
  return record;
}
