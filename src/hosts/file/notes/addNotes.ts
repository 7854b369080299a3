import { aroundRows } from '../patch/aroundRows.ts';
import { mapSheet } from '../patch/sheetMap.ts';
import { readRelationships } from '../read/relationships.ts';
import type { OpenWorkbook } from '../write/package/openWorkbook.ts';
import type { PackageEdits } from '../write/package/packageEdits.ts';
import { folderOf } from '../write/package/relationships.ts';
import { attribute, child } from '../write/xml/outline.ts';
import { splice } from '../write/xml/splice.ts';
import { defaultLimits } from '../zip/limits.ts';
import { emptyComments, withTexts, type CellNote } from './commentTexts.ts';
import { lastColumn, lastRow } from '../read/area.ts';
import { type TagAttribute, tagAttributes } from '../write/xml/tagAttributes.ts';

/** A drawing of notes' boxes that holds none yet, in the language programs want them in (ECMA-376 part 4, section 14). */
const emptyBoxes =
  '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"></xml>';

const shapeType =
  '<v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe"><v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>';

/** Numbers of shapes come in blocks of this size, of which a drawing lists those it uses (common practice, no source). */
const blockSize = 1024;

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

/**
 * A drawing with a hidden box for each note; `taken` are all such drawings of the workbook, whose blocks of numbers stay
 * theirs. The text is not taken apart: programs write such drawings in ways that are not well-formed.
 */
function withBoxes(drawing: string, notes: readonly CellNote[], taken: readonly string[]): string {
  const first = 1 + [drawing, ...taken].flatMap(blocksOf).reduce((most, block) => Math.max(most, block), 0);
  const blocks = Array.from(
    { length: Math.ceil(notes.length / (blockSize - 1)) },
    (_, index) => first + index,
  );
  const shapes = notes.map((note, index) => {
    const block = blocks[Math.floor(index / (blockSize - 1))] ?? first;
    return box(note, block * blockSize + 1 + (index % (blockSize - 1)));
  });
  const listed = withBlocks(drawing, blocks);
  const type = listed.includes('id="_x0000_t202"') ? '' : shapeType;
  const end = listed.lastIndexOf('</');
  return listed.slice(0, end) + type + shapes.join('') + listed.slice(end);
}

/** The list of the blocks that a drawing uses, as a place in its text. */
function blockList(drawing: string): TagAttribute | undefined {
  const tag = /<o:idmap\s[^<>]*>/.exec(drawing);
  if (!tag) return undefined;
  const attributes = tagAttributes(drawing, tag.index + '<o:idmap'.length, tag.index + tag[0].length);
  return attributes.find(({ name }) => name === 'data');
}

function blocksOf(drawing: string): number[] {
  const list = blockList(drawing);
  const listed = (list ? drawing.slice(list.valueFrom, list.valueTo) : '').match(/\d+/g) ?? [];
  const used = Array.from(drawing.matchAll(/_x0000_s(\d+)/g), ([, id]) => Math.floor(Number(id) / blockSize));
  return [...listed.map(Number), ...used];
}

function withBlocks(drawing: string, blocks: readonly number[]): string {
  const list = blockList(drawing);
  if (list) {
    const all = [drawing.slice(list.valueFrom, list.valueTo), ...blocks].join(',');
    return drawing.slice(0, list.valueFrom) + all + drawing.slice(list.valueTo);
  }
  const layout = `<o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="${blocks.join(',')}"/></o:shapelayout>`;
  return drawing.replace(/<xml\b[^<>]*>/, (tag) => tag + layout);
}

/** A box beside its cell, wide and high enough for a formula of usual length. */
function box({ row, column, text }: CellNote, id: number): string {
  const left = Math.min(column, lastColumn - 5);
  const top = Math.min(Math.max(row - 2, 0), lastRow - 12);
  const height = Math.min(12, 2 + Math.ceil(text.length / 34) + text.split('\n').length);
  const anchor = [left, 15, top, 10, left + 4, 15, top + height, 4].join(', ');
  return [
    `<v:shape id="_x0000_s${id}" type="#_x0000_t202" style="position:absolute;visibility:hidden" fillcolor="#ffffe1" o:insetmode="auto">`,
    '<v:fill color2="#ffffe1"/><v:path o:connecttype="none"/><v:textbox/>',
    `<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>${anchor}</x:Anchor><x:AutoFill>False</x:AutoFill>`,
    `<x:Row>${row - 1}</x:Row><x:Column>${column - 1}</x:Column></x:ClientData></v:shape>`,
  ].join('');
}
