import { cellAddress } from '../../../cells/address.ts';
import { transitional } from '../../../hosts/file/write/package/namespaces.ts';
import { escapeXml } from '../../../hosts/file/write/xml/text.ts';
import { addPart, xmlDeclaration } from '../package/addPart.ts';
import type { Parts } from '../package/parts.ts';
import { addSheetElement, reference } from '../package/sheetElement.ts';

/** A remark that hangs at a cell; row and column count from 1. */
export interface CellComment {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

const stem = 'application/vnd.openxmlformats-officedocument';

/** Hangs comments at cells of a sheet: the texts in one part, their boxes in the old drawing language in another. */
export function addComments(parts: Parts, sheet: string, comments: readonly CellComment[]): void {
  const entries = comments.map(
    ({ row, column, text }) =>
      `<comment ref="${cellAddress(row, column)}" authorId="0"><text><t>${escapeXml(text)}</t></text></comment>`,
  );
  addPart(parts, {
    name: 'xl/comments1.xml',
    contentType: `${stem}.spreadsheetml.comments+xml`,
    from: sheet,
    relationship: 'comments',
    text:
      `${xmlDeclaration}<comments xmlns="${transitional.main}"><authors><author>machinery section</author></authors>` +
      `<commentList>${entries.join('')}</commentList></comments>`,
  });
  const id = addPart(parts, {
    name: 'xl/drawings/vmlDrawing1.vml',
    contentType: `${stem}.vmlDrawing`,
    from: sheet,
    relationship: 'vmlDrawing',
    text: boxes(comments),
  });
  addSheetElement(parts, sheet, 'legacyDrawing', reference('legacyDrawing', id));
}

function boxes(comments: readonly CellComment[]): string {
  return [
    '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel">',
    '<o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="1"/></o:shapelayout>',
    '<v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe"><v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>',
    ...comments.map(box),
    '</xml>',
  ].join('');
}

/** A hidden box of three columns by four rows beside its cell. */
function box({ row, column }: CellComment, index: number): string {
  const anchor = [column, 15, row - 1, 10, column + 3, 15, row + 3, 4].join(', ');
  return [
    `<v:shape id="_x0000_s${1025 + index}" type="#_x0000_t202" style="position:absolute;visibility:hidden" fillcolor="#ffffe1" o:insetmode="auto">`,
    '<v:fill color2="#ffffe1"/><v:path o:connecttype="none"/><v:textbox/>',
    `<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>${anchor}</x:Anchor><x:AutoFill>False</x:AutoFill>`,
    `<x:Row>${row - 1}</x:Row><x:Column>${column - 1}</x:Column></x:ClientData></v:shape>`,
  ].join('');
}
