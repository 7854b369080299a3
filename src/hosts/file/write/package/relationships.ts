import { attribute, type Element } from '../xml/outline.ts';
import { appendInside, type Edit } from '../xml/splice.ts';
import { escapeXml } from '../xml/text.ts';
import type { EditablePart } from './editable.ts';

/** A relationship to another part of the package. */
export interface Relationship {
  readonly id: string;
  readonly type: string;
  /** Name of the part it leads to, without a leading slash. */
  readonly part: string;
}

/** The relationships that lead to parts inside the package; `source` is the part they belong to (`''` for the package). */
export function relationships(root: Element, source: string): readonly Relationship[] {
  return root.children
    .filter((element) => element.local === 'Relationship' && attribute(element, 'TargetMode') !== 'External')
    .map((element) => ({
      id: attribute(element, 'Id') ?? '',
      type: attribute(element, 'Type') ?? '',
      part: resolve(source, attribute(element, 'Target') ?? ''),
    }));
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

/** A target as it stands in a relationship, made a part name (ECMA-376 part 2: relative to the source's folder, or absolute). */
function resolve(source: string, target: string): string {
  const path = target.startsWith('/') ? target : folderOf(source) + target;
  const steps: string[] = [];
  for (const step of path.split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '.' && step !== '') steps.push(step);
  }
  return steps.join('/');
}

/** Relationships from a part to others in its folder or below, to be added to its relationships part. */
export function addRelationships(
  { text, root }: EditablePart,
  source: string,
  links: readonly Relationship[],
): Edit {
  const folder = folderOf(source);
  const markup = links.map(({ id, type, part }) => {
    const target = part.startsWith(folder) ? part.slice(folder.length) : `/${part}`;
    return `<${root.prefix}Relationship Id="${id}" Type="${type}" Target="${escapeXml(target)}"/>`;
  });
  return appendInside(text, root, markup.join(''));
}
