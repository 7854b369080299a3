import { attribute, childrenNamed, type Element } from '../xml/outline.ts';
import { appendInside, type Edit } from '../xml/splice.ts';
import { escapeXml } from '../xml/text.ts';
import type { EditablePart } from './editable.ts';
import { relationshipsType } from './namespaces.ts';

/** A part to be declared; `name` without a leading slash. */
export interface NewPart {
  readonly name: string;
  readonly contentType: string;
}

/**
 * Declares new parts in `[Content_Types].xml`, and the relationships parts of those that have some (ECMA-376 part 2, section
 * 6.2.3): one by one, but where the ending of the name says it already. Relationships parts get their ending declared where
 * nothing says what it means.
 */
export function declareParts(
  { text, root }: Pick<EditablePart, 'text' | 'root'>,
  parts: readonly NewPart[],
): readonly Edit[] {
  const { prefix } = root;
  const byEnding = new Map(
    childrenNamed(root, 'Default').map((element) => [
      (attribute(element, 'Extension') ?? '').toLowerCase(),
      (attribute(element, 'ContentType') ?? '').toLowerCase(),
    ]),
  );
  const markup: string[] = [];
  for (const { name, contentType } of parts) {
    const ending = name.slice(name.lastIndexOf('.') + 1).toLowerCase();
    const known = byEnding.get(ending);
    if (known === contentType.toLowerCase()) continue;
    if (known === undefined && contentType === relationshipsType) {
      byEnding.set(ending, contentType);
      markup.push(`<${prefix}Default Extension="${ending}" ContentType="${contentType}"/>`);
    } else {
      markup.push(`<${prefix}Override PartName="/${escapeXml(name)}" ContentType="${contentType}"/>`);
    }
  }
  return markup.length === 0 ? [] : [appendInside(text, root, markup.join(''))];
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

/** A relationships part, to be declared where its ending is not. */
export function relationshipsPart(name: string): NewPart {
  return { name, contentType: relationshipsType };
}

function nameOf(element: Element): string {
  return (attribute(element, 'PartName') ?? '').replace(/^\//, '').toLowerCase();
}
