import type { ChartModel } from '../../../../sheets/charts/model.ts';
import type { Dialect } from '../package/namespaces.ts';
import { escapeDrawingText } from '../xml/text.ts';

/** A sheet's drawing part (CT_Drawing): its charts, each over its cells. The n-th chart is reached by the relationship `rIdn`. */
export function drawingPart(charts: readonly ChartModel[], dialect: Dialect): string {
  const { drawing, relationships } = dialect;
  return [
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n',
    `<xdr:wsDr xmlns:xdr="${drawing}/spreadsheetDrawing" xmlns:a="${drawing}/main" xmlns:c="${drawing}/chart" xmlns:r="${relationships}">`,
    ...charts.map((chart, index) => anchored(chart, index, dialect)),
    '</xdr:wsDr>',
  ].join('');
}

function anchored({ place, alternativeText }: ChartModel, index: number, { drawing }: Dialect): string {
  // The first id belongs to the drawing itself (common practice, no source).
  const id = index + 2;
  return [
    '<xdr:twoCellAnchor editAs="oneCell">',
    corner('from', place.top - 1, place.left - 1),
    corner('to', place.bottom, place.right),
    '<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr>',
    `<xdr:cNvPr id="${id}" name="Chart ${index + 1}" descr="${escapeDrawingText(alternativeText)}"/>`,
    '<xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr>',
    '<xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>',
    `<a:graphic><a:graphicData uri="${drawing}/chart"><c:chart r:id="rId${index + 1}"/></a:graphicData></a:graphic>`,
    '</xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>',
  ].join('');
}

/** A corner at the left top of a cell, counted from 0. */
function corner(name: string, row: number, column: number): string {
  return `<xdr:${name}><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;
}
