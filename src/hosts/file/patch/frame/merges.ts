import type { Area, SheetTable } from '../../../../cells/sheet.ts';
import { reference } from '../../../formats/reference.ts';
import type { Edit } from '../../write/xml/splice.ts';
import { FileRefused, oneLine } from '../../zip/refused.ts';
import { overlaps } from '../groups.ts';
import type { SheetMap } from '../sheetMap.ts';

/** What stands between the rows and the merged areas (ECMA-376 part 1, section 18.3.1.99, CT_Worksheet). */
const before: ReadonlySet<string> = new Set([
  'sheetData',
  'sheetCalcPr',
  'sheetProtection',
  'protectedRanges',
  'scenarios',
  'autoFilter',
  'sortState',
  'dataConsolidate',
  'customSheetViews',
]);

/** The list of merged areas, all anew. Throws FileRefused for one that reaches into a table: programs find such a file damaged. */
export function changedMerges(
  map: SheetMap,
  merges: readonly Area[],
  tables: readonly SheetTable[],
  sheet: string,
): Edit[] {
  for (const merge of merges) {
    const table = tables.find(({ area }) => overlaps(area, merge));
    if (table === undefined) continue;
    throw new FileRefused(
      `Sheet “${oneLine(sheet)}”: the merged cells ${reference(merge)} reach into the table “${oneLine(table.name, 40)}”, which can have none. Unmerge them, then save.`,
    );
  }
  const name = map.sheetData.name.replace(/sheetData$/, 'mergeCell');
  const cells = merges.map((merge) => `<${name} ref="${reference(merge)}"/>`).join('');
  const markup = merges.length === 0 ? '' : `<${name}s count="${merges.length}">${cells}</${name}s>`;
  const present = map.around.find(({ local }) => local === 'mergeCells');
  if (present !== undefined) return [{ from: present.start, to: present.end, text: markup }];
  const at = map.around.findLast(({ local }) => before.has(local))?.end ?? map.sheetData.end;
  return markup === '' ? [] : [{ from: at, to: at, text: markup }];
}
