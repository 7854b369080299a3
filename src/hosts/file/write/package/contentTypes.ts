import { attribute, type Element } from '../xml/outline.ts';
import { appendInside, type Edit } from '../xml/splice.ts';
import { escapeXml } from '../xml/text.ts';
import type { EditablePart } from './editable.ts';

/** A part to be declared; `name` without a leading slash. */
export interface NewPart {
  readonly name: string;
  readonly contentType: string;
}

/** Declares new parts in `[Content_Types].xml`. */
export function declareParts({ text, root }: EditablePart, parts: readonly NewPart[]): readonly Edit[] {
  if (parts.length === 0) return [];
  const markup = parts.map(
    ({ name, contentType }) =>
      `<${root.prefix}Override PartName="/${escapeXml(name)}" ContentType="${contentType}"/>`,
  );
  return [appendInside(text, root, markup.join(''))];
}

/** Takes the declaration of a part that goes out of `[Content_Types].xml`. */
export function undeclarePart({ root }: EditablePart, part: string): readonly Edit[] {
  return root.children
    .filter((element) => nameOf(element) === part.toLowerCase())
    .map(({ start, end }) => ({ from: start, to: end, text: '' }));
}

/** Part names declared one by one, without their leading slash and in lower case. */
export function declaredNames({ root }: EditablePart): readonly string[] {
  return root.children.map(nameOf);
}

function nameOf(element: Element): string {
  return (attribute(element, 'PartName') ?? '').replace(/^\//, '').toLowerCase();
}
