import { lastColumn, lastRow } from '../read/area.ts';
import { type TagAttribute, tagAttributes } from '../write/xml/tagAttributes.ts';
import type { CellNote } from './types.ts';

/** A drawing of notes' boxes that holds none yet, in the language programs want them in (ECMA-376 part 4, section 14). */
export const emptyBoxes =
  '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"></xml>';

const shapeType =
  '<v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe"><v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>';

/** Numbers of shapes come in blocks of this size, of which a drawing lists those it uses (common practice, no source). */
const blockSize = 1024;

/**
 * A drawing with a hidden box for each note; `taken` are all such drawings of the workbook, whose blocks of numbers stay
 * theirs. The text is not taken apart: programs write such drawings in ways that are not well-formed.
 */
export function withBoxes(drawing: string, notes: readonly CellNote[], taken: readonly string[]): string {
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
