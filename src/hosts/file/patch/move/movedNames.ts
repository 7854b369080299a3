import type { EditablePart } from '../../write/package/editable.ts';
import { attribute, child, childrenNamed } from '../../write/xml/outline.ts';
import type { Edit } from '../../write/xml/splice.ts';
import { escapeXml } from '../../write/xml/text.ts';
import { contentOf } from './contentOf.ts';

/** Moves what the workbook's names mean; print areas, filters and the like go with the cells they are made of. */
export function movedNames({ text, root }: EditablePart, formulaOf: (stored: string) => string): Edit[] {
  const list = child(root, 'definedNames');
  if (!list) return [];
  const names = childrenNamed(list, 'definedName');
  const gone: (typeof names)[number][] = [];
  const edits = names.flatMap((element): Edit[] => {
    const before = contentOf(text, element);
    const after = formulaOf(before);
    if (after === before) return [];
    if (attribute(element, 'name')?.startsWith('_xlnm.') && after.includes('#REF!')) {
      gone.push(element);
      return [{ from: element.start, to: element.end, text: '' }];
    }
    return [{ from: element.openEnd, to: element.closeStart, text: escapeXml(after) }];
  });
  return gone.length === names.length && gone.length > 0
    ? [{ from: list.start, to: list.end, text: '' }]
    : edits;
}
