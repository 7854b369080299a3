import { fittedText } from '../../../../sheets/cells.ts';
import { longestTitle } from '../../../formats/chartStyles.ts';
import { escapeDrawingText } from '../xml/text.ts';

/** A title over a chart or beside an axis (CT_Title), nothing where there is none. `size` in points. */
export function title(text: string | undefined, size: number, bold: boolean, turned = false): string {
  if (text === undefined || text === '') return '';
  const properties = `sz="${size * 100}" b="${Number(bold)}"`;
  const rotation = turned ? ' rot="-5400000" vert="horz"' : '';
  return [
    `<c:title><c:tx><c:rich><a:bodyPr${rotation}/><a:lstStyle/>`,
    `<a:p><a:pPr><a:defRPr ${properties}/></a:pPr>`,
    `<a:r><a:rPr lang="en-US" ${properties}/><a:t>${escapeDrawingText(fittedText(text, longestTitle))}</a:t></a:r></a:p>`,
    '</c:rich></c:tx><c:overlay val="0"/></c:title>',
  ].join('');
}

/** The size in points of all text of a chart that has none of its own. */
export function textSize(size: number): string {
  return `<c:txPr><a:bodyPr/><a:lstStyle/><a:p><a:pPr><a:defRPr sz="${size * 100}"/></a:pPr><a:endParaRPr lang="en-US"/></a:p></c:txPr>`;
}
