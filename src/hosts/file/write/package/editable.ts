import type { Archive, ZipEntry } from '../../zip/archive.ts';
import { FileRefused, oneLine } from '../../zip/refused.ts';
import { decodeXml, encodeXml, type XmlPart } from '../xml/encoding.ts';
import { outline, type Element } from '../xml/outline.ts';

/** A part of the user's workbook that is going to be added to. */
export interface EditablePart {
  readonly entry: ZipEntry;
  readonly text: string;
  /** Its elements, found when they are first asked for. Throws FileRefused where the part is damaged. */
  readonly root: Element;
  /** The bytes of its new text, in the encoding it came in. */
  encode(text: string): Uint8Array;
  /** The part with another text. */
  withText(text: string): EditablePart;
}

/** Takes a part of the archive apart for editing. Throws FileRefused where it is missing, and once it is looked into where it is damaged. */
export function editable(archive: Archive, name: string): EditablePart {
  const entry = archive.get(name);
  if (!entry) {
    throw new FileRefused(
      `The file lacks its part “${oneLine(name)}”, so it is no complete workbook. Open it in a spreadsheet program and save it as .xlsx.`,
    );
  }
  return new Editable(entry, decodeXml(archive.bytes(entry), entry.name));
}

class Editable implements EditablePart {
  readonly #part: XmlPart;
  #root: Element | undefined;

  constructor(
    readonly entry: ZipEntry,
    part: XmlPart,
  ) {
    this.#part = part;
  }

  get text(): string {
    return this.#part.text;
  }

  get root(): Element {
    return (this.#root ??= outline(this.text, this.entry.name));
  }

  encode(text: string): Uint8Array {
    return encodeXml({ ...this.#part, text });
  }

  withText(text: string): EditablePart {
    return new Editable(this.entry, { ...this.#part, text });
  }
}
