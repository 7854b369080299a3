import { attribute, type Element } from '../xml/outline.ts';
import { appendInside, type Edit } from '../xml/splice.ts';
import { escapeXml } from '../xml/text.ts';
import type { EditablePart } from './editable.ts';
import { packageRelationships } from './namespaces.ts';

/** A relationship to be added. */
export interface NewRelationship {
  readonly id: string;
  readonly type: string;
  /** Name of the part it leads to, without a leading slash. */
  readonly part: string;
}

/** The name of a part's own relationships part: `xl/workbook.xml` → `xl/_rels/workbook.xml.rels`. */
export function relationshipsOf(part: string): string {
  return `${folderOf(part)}_rels/${part.slice(folderOf(part).length)}.rels`;
}

/** The folder of a part with its slash: `xl/workbook.xml` → `xl/`. */
export function folderOf(part: string): string {
  return part.slice(0, part.lastIndexOf('/') + 1);
}

/** As many relationship ids as asked for that no relationship has, in any case. */
export function freeIds(root: Element, count: number): readonly string[] {
  const taken = new Set(root.children.map((element) => attribute(element, 'Id')?.toLowerCase()));
  const free: string[] = [];
  for (let number = 1; free.length < count; number++) {
    if (!taken.has(`rid${number}`)) free.push(`rId${number}`);
  }
  return free;
}

/** Takes relationships of a kind, the last word of their type, out of a relationships part. */
export function removeRelationships({ root }: EditablePart, kind: string): readonly Edit[] {
  return root.children
    .filter((element) => (attribute(element, 'Type') ?? '').endsWith(`/${kind}`))
    .map(({ start, end }) => ({ from: start, to: end, text: '' }));
}

/** Relationships from a part to others in its folder or below, to be added to its relationships part. */
export function addRelationships(
  { text, root }: EditablePart,
  source: string,
  links: readonly NewRelationship[],
): readonly Edit[] {
  if (links.length === 0) return [];
  const folder = folderOf(source);
  const markup = links.map(({ id, type, part }) => {
    const target = part.startsWith(folder) ? part.slice(folder.length) : `/${part}`;
    return `<${root.prefix}Relationship Id="${id}" Type="${type}" Target="${escapeXml(target)}"/>`;
  });
  return [appendInside(text, root, markup.join(''))];
}

/** A whole relationships part; parts are named from the root of the package. */
export function relationshipsText(links: readonly NewRelationship[]): string {
  const markup = links.map(
    ({ id, type, part }) => `<Relationship Id="${id}" Type="${type}" Target="/${escapeXml(part)}"/>`,
  );
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<Relationships xmlns="${packageRelationships}">${markup.join('')}</Relationships>`;
}
