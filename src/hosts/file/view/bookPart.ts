import { shownFormula } from '../../formats/storedFormula.ts';
import { unescapeText } from '../read/escapes.ts';
import type { SheetEntry } from '../read/workbookPart.ts';
import { booleanAttribute, readXml } from '../read/xml.ts';
import type { Archive, ZipEntry } from '../zip/archive.ts';
import type { ReadLimits } from '../zip/limits.ts';
import type { ViewName, WorkbookView } from './types.ts';

/**
 * What the workbook part says for a grid: its names (ECMA-376 part 1, section 18.2.5) without those that programs keep
 * for themselves (`_xlnm.…`, hidden ones), and which sheet is in front: the first visible one where that is none of `sheets`.
 */
export function readBookPart(
  archive: Archive,
  part: ZipEntry,
  sheets: readonly SheetEntry[],
  limits: ReadLimits,
): Pick<WorkbookView, 'names' | 'activeSheet'> {
  const names: ViewName[] = [];
  let activeTab = 0;
  let name: { name: string; sheet?: string } | undefined;
  let text = '';
  const sheetOf = (tab: string | undefined): string | undefined =>
    sheets.find((sheet) => String(sheet.tab) === tab)?.name;
  readXml(archive, part, limits, {
    open(element, attributes, parents) {
      if (element === 'workbookView' && parents.at(-1) === 'bookViews') {
        activeTab = Number(attributes['activeTab'] ?? 0);
      }
      if (element !== 'definedName') return;
      const { localSheetId: tab } = attributes;
      const sheet = sheetOf(tab);
      const own = attributes['name'] ?? '';
      const unseen = own.startsWith('_xlnm.') || booleanAttribute(attributes['hidden']) === true;
      text = '';
      if (unseen || (tab !== undefined && sheet === undefined)) return;
      name = { name: unescapeText(own), ...(sheet === undefined ? {} : { sheet }) };
    },
    close(element) {
      if (element !== 'definedName' || name === undefined) return;
      names.push({ ...name, refersTo: shownFormula(text) });
      name = undefined;
    },
    text(run) {
      if (name !== undefined) text += run;
    },
  });
  const active = sheets.findIndex(({ tab }) => tab === activeTab);
  const visible = sheets.findIndex(({ hidden }) => !hidden);
  return { names, activeSheet: Math.max(0, active >= 0 && !sheets[active]?.hidden ? active : visible) };
}
