import { packageRelationships, transitional } from '../../../hosts/file/write/package/namespaces.ts';
import { relationshipsOf } from '../../../hosts/file/write/package/relationships.ts';
import { outline } from '../../../hosts/file/write/xml/outline.ts';
import { appendToRoot, partNamed, type Parts } from './parts.ts';

export const xmlDeclaration = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** A part to be added, and from which part a relationship leads to it. */
export interface NewPart {
  /** Name without a leading slash, below `xl/`. */
  readonly name: string;
  readonly contentType: string;
  readonly text: string;
  /** The part that refers to it. */
  readonly from: string;
  /** Last word of the relationship's type, such as `drawing`. */
  readonly relationship: string;
}

/** Adds a part with its content type and the relationship that leads to it, and returns the relationship's id. */
export function addPart(parts: Parts, { name, contentType, text, from, relationship }: NewPart): string {
  if (parts.has(name)) throw new Error(`the workbook has a part ${name} already`);
  parts.set(name, text);
  appendToRoot(parts, '[Content_Types].xml', `<Override PartName="/${name}" ContentType="${contentType}"/>`);
  const links = relationshipsOf(from);
  if (!parts.has(links)) {
    parts.set(links, `${xmlDeclaration}<Relationships xmlns="${packageRelationships}"/>`);
  }
  const id = `rId${outline(partNamed(parts, links), links).children.length + 1}`;
  appendToRoot(
    parts,
    links,
    `<Relationship Id="${id}" Type="${transitional.relationships}/${relationship}" Target="/${name}"/>`,
  );
  return id;
}
