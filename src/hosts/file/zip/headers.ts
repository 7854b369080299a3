/** What the headers of a zip entry say about it. */
export interface EntryFacts {
  readonly nameBytes: Uint8Array;
  /** General purpose bit flags, without bit 3: sizes always stand in the headers. */
  readonly flags: number;
  /** MS-DOS time (low 16 bits) and date (high 16 bits). */
  readonly modified: number;
  readonly method: 0 | 8;
  readonly crc: number;
  readonly size: number;
  readonly packedSize: number;
}

const versionNeeded = 20;

/** The local header and the central directory record of an entry that starts at `offset`; PKWARE APPNOTE 4.3.7 and 4.3.12. */
export function entryHeaders(facts: EntryFacts, offset: number): { local: Uint8Array; central: Uint8Array } {
  const name = facts.nameBytes;
  const common = (view: DataView, at: number): void => {
    view.setUint16(at, versionNeeded, true);
    view.setUint16(at + 2, facts.flags, true);
    view.setUint16(at + 4, facts.method, true);
    view.setUint32(at + 6, facts.modified, true);
    view.setUint32(at + 10, facts.crc, true);
    view.setUint32(at + 14, facts.packedSize, true);
    view.setUint32(at + 18, facts.size, true);
    view.setUint16(at + 22, name.length, true);
  };
  const local = new Uint8Array(30 + name.length);
  const localView = new DataView(local.buffer);
  localView.setUint32(0, 0x04034b50, true);
  common(localView, 4);
  local.set(name, 30);

  const central = new Uint8Array(46 + name.length);
  const centralView = new DataView(central.buffer);
  centralView.setUint32(0, 0x02014b50, true);
  centralView.setUint16(4, versionNeeded, true);
  common(centralView, 6);
  centralView.setUint32(42, offset, true);
  central.set(name, 46);
  return { local, central };
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
