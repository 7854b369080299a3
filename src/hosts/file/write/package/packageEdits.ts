import type { Deflater } from '../../zip/deflater.ts';
import { collect } from '../../zip/collect.ts';
import { zipWriter } from '../../zip/writer.ts';
import { appendInside, splice } from '../xml/splice.ts';
import { decodeXml, encodeXml } from '../xml/encoding.ts';
import { attribute, outline } from '../xml/outline.ts';
import { partKey } from '../../zip/archive.ts';
import { FileRefused, oneLine } from '../../zip/refused.ts';
import { escapeXml } from '../xml/text.ts';
import { declareParts, type NewPart, relationshipsPart } from './contentTypes.ts';
import { packageRelationships } from './namespaces.ts';
import type { OpenWorkbook } from './openWorkbook.ts';
import { freeIds, relationshipsOf } from './relationships.ts';

const declaration = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

const contentTypes = '[Content_Types].xml';

/** Parts of a workbook that change or come, by name without a leading slash, until the package is put together anew. */
export class PackageEdits {
  readonly #parts = new Map<string, { readonly name: string; readonly text: string }>();
  readonly #book: OpenWorkbook;

  constructor(book: OpenWorkbook) {
    this.#book = book;
  }

  has(name: string): boolean {
    return this.#parts.has(partKey(name)) || this.#book.archive.get(name) !== undefined;
  }

  /** The text of a part as it is now. Throws FileRefused where the workbook lacks it or it is damaged. */
  text(name: string): string {
    const known = this.#parts.get(partKey(name));
    if (known) return known.text;
    const entry = this.#book.archive.get(name);
    if (!entry)
      throw new FileRefused(`The workbook lacks its part ${oneLine(name)}. Save it again as .xlsx.`);
    return decodeXml(this.#book.archive.bytes(entry), entry.name).text;
  }

  /** Gives a part another text, or adds it. */
  put(name: string, text: string): void {
    this.#parts.set(partKey(name), { name, text });
  }

  /** Adds a part that the list of content types names, with the relationship that leads to it; the relationship's id. */
  addPart(part: { name: string; contentType: string; text: string; from: string; kind: string }): string {
    const { name, contentType, from, kind } = part;
    this.put(name, part.text);
    const links = relationshipsOf(from);
    const isNew = !this.has(links);
    if (isNew) this.put(links, `${declaration}<Relationships xmlns="${packageRelationships}"/>`);
    this.#declare([{ name, contentType }, ...(isNew ? [relationshipsPart(links)] : [])]);
    const [id = ''] = freeIds(outline(this.text(links), links), 1);
    const type = `${this.#book.dialect.relationships}/${kind}`;
    this.#append(
      links,
      (prefix) => `<${prefix}Relationship Id="${id}" Type="${type}" Target="/${escapeXml(name)}"/>`,
    );
    return id;
  }

  /** The texts of parts that were added, by the pattern of their names. */
  added(pattern: RegExp): string[] {
    return [...this.#parts.values()].flatMap(({ name, text }) =>
      pattern.test(name) && this.#book.archive.get(name) === undefined ? [text] : [],
    );
  }

  /** A name that no part has: `stem` with the first free number and the ending. */
  freeName(stem: string, ending: string): string {
    const declared = new Set(
      outline(this.text(contentTypes), contentTypes).children.map((element) =>
        partKey(attribute(element, 'PartName') ?? ''),
      ),
    );
    for (let number = 1; ; number++) {
      const name = `${stem}${number}${ending}`;
      if (!this.has(name) && !declared.has(partKey(name))) return name;
    }
  }

  /** The workbook with the changed parts; those that did not change are taken over byte for byte. */
  bytes(deflater?: Deflater): Uint8Array {
    const { sink, bytes } = collect();
    const zip = zipWriter(sink, deflater);
    const left = new Map(this.#parts);
    for (const entry of this.#book.archive.entries) {
      const changed = left.get(partKey(entry.name));
      left.delete(partKey(entry.name));
      if (!changed) zip.copy(entry);
      else {
        const before = decodeXml(this.#book.archive.bytes(entry), entry.name);
        zip.replace(entry, encodeXml({ ...before, text: changed.text }));
      }
    }
    for (const { name, text } of left.values()) zip.add(name, new TextEncoder().encode(text));
    zip.finish();
    return bytes();
  }

  #declare(parts: readonly NewPart[]): void {
    const text = this.text(contentTypes);
    this.put(contentTypes, splice(text, declareParts({ text, root: outline(text, contentTypes) }, parts)));
  }

  #append(name: string, markup: (prefix: string) => string): void {
    const text = this.text(name);
    const root = outline(text, name);
    this.put(name, splice(text, [appendInside(text, root, markup(root.prefix))]));
  }
}
