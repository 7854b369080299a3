import { withAttributes } from '../hosts/file/patch/attributes.ts';
import { child, type Element } from '../hosts/file/write/xml/outline.ts';
import type { Edit } from '../hosts/file/write/xml/splice.ts';

/** Has programs calculate everything when they open the workbook (ECMA-376 part 1, section 18.2.2); `text` is the workbook part's. */
export function calculateOnOpening(text: string, root: Element): Edit[] {
  const settings = child(root, 'calcPr');
  if (settings) return withAttributes(text, settings, { fullCalcOnLoad: '1' });
  const before = ['definedNames', 'externalReferences', 'functionGroups', 'sheets']
    .map((local) => child(root, local))
    .find((element) => element !== undefined);
  return before
    ? [{ from: before.end, to: before.end, text: `<${root.prefix}calcPr fullCalcOnLoad="1"/>` }]
    : [];
}
