import type { Archive, ZipEntry } from '../../zip/archive.ts';
import { FileRefused, oneLine } from '../../zip/refused.ts';
import { decodeXml, encodeXml, type XmlPart } from '../xml/encoding.ts';
import { outline, type Element } from '../xml/outline.ts';

/** A part of the user's workbook that is going to be added to. */
export interface EditablePart {
  readonly entry: ZipEntry;
  readonly text: string;
  readonly root: Element;
  /** The bytes of its new text, in the encoding it came in. */
  encode(text: string): Uint8Array;
}

/** Takes a part of the archive apart for editing. Throws FileRefused where it is missing or damaged. */
export function editable(archive: Archive, name: string): EditablePart {
  const entry = archive.get(name);
  if (!entry) {
    throw new FileRefused(
      `The file lacks its part “${oneLine(name)}”, so it is no complete workbook. Open it in a spreadsheet program and save it as .xlsx.`,
    );
  }
  const part: XmlPart = decodeXml(archive.bytes(entry), entry.name);
  return {
    entry,
    text: part.text,
    root: outline(part.text, entry.name),
    encode: (text) => encodeXml({ ...part, text }),
  };
}
