import { baseName } from '../read/fileName.ts';
import { openBook, type ReadOptions } from '../read/openBook.ts';
import { SheetRows } from './sheetRows.ts';
import { readViewStyles } from './styles.ts';
import type { SheetView, WorkbookView, ViewName } from './types.ts';
import { readXml, booleanAttribute } from '../read/xml.ts';
import type { Archive, ZipEntry } from '../zip/archive.ts';
import { FileRefused } from '../zip/refused.ts';
import type { ReadLimits } from '../zip/limits.ts';
import { shownFormula } from '../../formats/storedFormula.ts';
import { unescapeText } from '../read/escapes.ts';
import type { SheetEntry } from '../read/workbookPart.ts';

/** Cells count light before dark, the theme has them the other way round (common practice, no source). */
const order = 'lt1 dk1 lt2 dk2 accent1 accent2 accent3 accent4 accent5 accent6 hlink folHlink'.split(' ');

/** Colours of a workbook without a theme of its own: black on white, and the accents of the time before themes changed (from memory). */
const plainTheme: readonly string[] =
  'FFFFFF 000000 EEECE1 1F497D 4F81BD C0504D 9BBB59 8064A2 4BACC6 F79646 0000FF 800080'.split(' ');

/**
 * A workbook of the .xlsx family as a grid shows it: values as they are stored, formulas as people type them, looks.
 * `readWorkbook` is what the audit takes; the reader beneath both is one, so they accept and refuse the same files. Nothing
 * is calculated. Throws FileRefused for everything that cannot be read in full.
 */
export function viewWorkbook(fileName: string, bytes: Uint8Array, options: ReadOptions = {}): WorkbookView {
  const { archive, limits, book, readSheet } = openBook(bytes, options);
  const theme = readTheme(archive, book.theme, limits);
  const viewStyles = readViewStyles(archive, book.styles, theme, limits);
  const sheets = book.sheets.map((entry): SheetView => {
    const kept = new SheetRows(viewStyles, book.date1904);
    const tables = readSheet(entry, kept);
    const { columns, merges, links, frozen, showGridLines, defaultColumnWidth, defaultRowHeight } =
      kept.frame;
    const rules = kept.rules();
    return {
      name: entry.name,
      hidden: entry.hidden,
      rows: kept.rows(),
      columns,
      defaultColumnWidth,
      defaultRowHeight,
      merges,
      frozen,
      showGridLines,
      ...(rules.length > 0 ? { rules } : {}),
      tables,
      ...(links.length > 0 ? { links } : {}),
    };
  });
  const front = readBookPart(archive, book.part, book.sheets, limits);
  return { name: baseName(fileName), sheets, ...front, styles: viewStyles.styles, date1904: book.date1904 };
}

/** The theme's colours (ECMA-376 part 1, section 20.1.6.2) in the order cells count them; those of a workbook without a theme where the part is broken, as it holds nothing but colours. */
function readTheme(archive: Archive, part: ZipEntry | undefined, limits: ReadLimits): readonly string[] {
  if (part === undefined) return plainTheme;
  const found = new Map<string, string>();
  try {
    readXml(archive, part, limits, {
      open(name, attributes, parents) {
        if (parents.at(-2) !== 'clrScheme') return;
        const value = name === 'sysClr' ? attributes['lastClr'] : attributes['val'];
        if (value !== undefined && /^[0-9a-f]{6}$/i.test(value)) {
          found.set(parents.at(-1) ?? '', value.toUpperCase());
        }
      },
    });
  } catch (error) {
    if (!(error instanceof FileRefused)) throw error;
    return plainTheme;
  }
  return order.map((name, index) => found.get(name) ?? plainTheme[index] ?? '000000');
}

/**
 * What the workbook part says for a grid: its names (ECMA-376 part 1, section 18.2.5) without those that programs keep
 * for themselves (`_xlnm.…`, hidden ones), and which sheet is in front: the first visible one where that is none of `sheets`.
 */
function readBookPart(
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
