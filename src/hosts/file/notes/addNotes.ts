import { aroundRows } from '../patch/aroundRows.ts';
import { mapSheet } from '../patch/sheetMap.ts';
import { readRelationships } from '../read/relationships.ts';
import type { OpenWorkbook } from '../write/package/openWorkbook.ts';
import type { PackageEdits } from '../write/package/packageEdits.ts';
import { folderOf } from '../write/package/relationships.ts';
import { attribute, child } from '../write/xml/outline.ts';
import { splice } from '../write/xml/splice.ts';
import { defaultLimits } from '../zip/limits.ts';
import { emptyBoxes, withBoxes } from './boxes.ts';
import { emptyComments, withTexts } from './commentTexts.ts';
import type { CellNote } from './types.ts';

/** What stands behind the drawing of notes in a worksheet part (ECMA-376 part 1, section 18.3.1.99). */
const behind = new Set(
  'legacyDrawingHF drawingHF picture oleObjects controls webPublishItems tableParts extLst AlternateContent'.split(
    ' ',
  ),
);

const stem = 'application/vnd.openxmlformats-officedocument';

/**
 * Hangs notes at cells of a sheet, whose part is `sheet`: their texts in one part, their boxes in another, as programs
 * want both. Notes that are there stay; a cell that has one gets the text below it.
 */
export function addNotes(
  book: OpenWorkbook,
  edits: PackageEdits,
  sheet: { readonly part: string; readonly name: string },
  notes: readonly CellNote[],
): void {
  if (notes.length === 0) return;
  const folder = folderOf(book.workbook.entry.name);
  const links = readRelationships(book.archive, sheet.part, defaultLimits);
  const comments = links.find(({ kind }) => kind === 'comments')?.target;
  const texts = comments ?? edits.freeName(`${folder}comments`, '.xml');
  const before = comments === undefined ? emptyComments(book.dialect.main) : edits.text(comments);
  const { text, fresh } = withTexts(before, texts, notes);
  if (comments !== undefined) edits.put(comments, text);
  else {
    edits.addPart({
      name: texts,
      contentType: `${stem}.spreadsheetml.comments+xml`,
      text,
      from: sheet.part,
      kind: 'comments',
    });
  }
  if (fresh.length === 0) return;
  const markup = edits.text(sheet.part);
  const { root } = aroundRows(
    markup,
    sheet.part,
    mapSheet(markup, sheet.part, sheet.name, () => false),
  );
  // The drawing of headers is another.
  const element = child(root, 'legacyDrawing');
  const id = element && attribute(element, 'id', book.dialect.relationships);
  const drawing = links.find((link) => link.id === id)?.target;
  const taken = drawings(book, edits);
  if (drawing !== undefined) {
    edits.put(drawing, withBoxes(edits.text(drawing), fresh, taken));
    return;
  }
  const added = edits.addPart({
    name: edits.freeName(`${folder}drawings/vmlDrawing`, '.vml'),
    contentType: `${stem}.vmlDrawing`,
    text: withBoxes(emptyBoxes, fresh, taken),
    from: sheet.part,
    kind: 'vmlDrawing',
  });
  edits.put(sheet.part, withLegacyDrawing(edits.text(sheet.part), sheet, added, book.dialect.relationships));
}

function withLegacyDrawing(
  text: string,
  { part, name }: { readonly part: string; readonly name: string },
  id: string,
  relationships: string,
): string {
  const map = mapSheet(text, part, name, () => false);
  const next = map.around.find(({ local, start }) => start > map.sheetData.start && behind.has(local));
  const at = next?.start ?? text.lastIndexOf('</');
  const prefix = map.sheetData.name.slice(0, map.sheetData.name.indexOf(':') + 1);
  const markup = `<${prefix}legacyDrawing xmlns:r="${relationships}" r:id="${id}"/>`;
  return splice(text, [{ from: at, to: at, text: markup }]);
}

/** All drawings of notes and controls in the workbook, those that were added just now among them. */
function drawings({ archive }: OpenWorkbook, edits: PackageEdits): string[] {
  const names = archive.entries.map(({ name }) => name).filter((name) => /\.vml$/i.test(name));
  return [...names.map((name) => edits.text(name)), ...edits.added(/\.vml$/i)];
}
