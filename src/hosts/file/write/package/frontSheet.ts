import { readRelationships } from '../../read/relationships.ts';
import type { ZipEntry } from '../../zip/archive.ts';
import { defaultLimits } from '../../zip/limits.ts';
import { decodeXml, encodeXml } from '../xml/encoding.ts';
import { child, childrenNamed } from '../xml/outline.ts';
import { type Edit, replaceAttribute, splice } from '../xml/splice.ts';
import { tagAttributes } from '../xml/tagAttributes.ts';
import type { EditablePart } from './editable.ts';
import type { OpenWorkbook } from './openWorkbook.ts';

/** Has the workbook open on the sheet at that place, from 0 (ECMA-376 part 1, 18.2.30). */
export function openOn({ text, root }: EditablePart, place: number): readonly Edit[] {
  const views = child(root, 'bookViews');
  const view = views && childrenNamed(views, 'workbookView')[0];
  if (view) {
    const known = replaceAttribute(text, view, 'activeTab', String(place));
    const at = view.start + 1 + view.name.length;
    return [known ?? { from: at, to: at, text: ` activeTab="${place}"` }];
  }
  const sheets = child(root, 'sheets');
  if (!sheets || views) return [];
  const { prefix } = root;
  const markup = `<${prefix}bookViews><${prefix}workbookView activeTab="${place}"/></${prefix}bookViews>`;
  return [{ from: sheets.start, to: sheets.start, text: markup }];
}

/**
 * Parts of a workbook as they are rewritten, in which no sheet says that it is selected: a program would take sheets selected
 * together for a group and write into all of them what is typed into one.
 */
export function withoutSelected(
  { archive, workbook }: OpenWorkbook,
  rewritten: ReadonlyMap<ZipEntry, Uint8Array>,
): ReadonlyMap<ZipEntry, Uint8Array> {
  const all = new Map(rewritten);
  for (const { kind, target } of readRelationships(archive, workbook.entry.name, defaultLimits)) {
    const entry = kind.toLowerCase().endsWith('sheet') ? archive.get(target) : undefined;
    if (!entry) continue;
    const known = rewritten.get(entry);
    if (!known && !startOf(archive, entry).includes('tabSelected')) continue;
    const xml = decodeXml(known ?? archive.bytes(entry), entry.name);
    const edits = selections(xml.text);
    if (edits.length > 0) all.set(entry, encodeXml({ ...xml, text: splice(xml.text, edits) }));
  }
  return all;
}

/** Bytes of a part in which the views of a sheet stand, as they come before its rows. */
const startLength = 1 << 16;

class Enough extends Error {}

/** The first characters of a part, those of UTF-16 without what they are apart. */
function startOf(archive: OpenWorkbook['archive'], entry: ZipEntry): string {
  const bytes: Uint8Array[] = [];
  let length = 0;
  try {
    archive.stream(entry, (chunk) => {
      bytes.push(chunk.slice(0, startLength));
      length += chunk.length;
      if (length >= startLength) throw new Enough();
    });
  } catch (error) {
    if (!(error instanceof Enough)) throw error;
  }
  const text = bytes.map((piece) => new TextDecoder('latin1').decode(piece)).join('');
  return text.replaceAll('\0', '');
}

/** Edits that take `tabSelected` back in the views of a sheet, whichever of alternatives they stand in. */
function selections(text: string): Edit[] {
  const rows = text.search(/<(?:[\w.-]+:)?sheetData\b/u);
  const head = rows < 0 ? text : text.slice(0, rows);
  return Array.from(head.matchAll(/<(?:[\w.-]+:)?sheetView\b/gu)).flatMap(({ 0: opening, index }) => {
    const end = text.indexOf('>', index) + 1;
    return tagAttributes(text, index + opening.length, end)
      .filter(({ name }) => name === 'tabSelected')
      .map(({ valueFrom, valueTo }): Edit => ({ from: valueFrom, to: valueTo, text: '0' }));
  });
}
