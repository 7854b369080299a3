import { cellAddress } from '../cells/address.ts';
import type { CellNote } from '../hosts/file/notes/types.ts';
import { readRelationships } from '../hosts/file/read/relationships.ts';
import { readXml } from '../hosts/file/read/xml.ts';
import type { Archive } from '../hosts/file/zip/archive.ts';
import { defaultLimits } from '../hosts/file/zip/limits.ts';
import { threadNote } from './words.ts';

/** What to tell of cells with a thread of comments, beside which a note may not be shown. */
export function threadNotes(
  archive: Archive,
  part: string,
  sheet: string,
  notes: readonly CellNote[],
): string[] {
  const threads = new Set<string>();
  for (const { kind, target } of readRelationships(archive, part, defaultLimits)) {
    const entry = kind === 'threadedComment' ? archive.get(target) : undefined;
    if (!entry) continue;
    readXml(archive, entry, defaultLimits, {
      open(name, attributes) {
        if (name === 'threadedComment') threads.add(attributes['ref'] ?? '');
      },
    });
  }
  return notes.flatMap(({ row, column, text }) => {
    const address = cellAddress(row, column);
    return threads.has(address) ? [threadNote(sheet, address, text)] : [];
  });
}
