import { columnLetters } from '../../../cells/address.ts';
import { transitional } from '../../../hosts/file/write/package/namespaces.ts';
import { quotedName } from '../../../hosts/formats/reference.ts';
import { escapeXml } from '../../../hosts/file/write/xml/text.ts';
import { addPart, xmlDeclaration } from '../package/addPart.ts';
import type { Parts } from '../package/parts.ts';
import { addSheetElement, reference } from '../package/sheetElement.ts';

/** Values of one column over names in another, both on the rows `top` to `bottom` of the same sheet. */
export interface BarChart {
  readonly title: string;
  readonly valueAxis: string;
  readonly sheetName: string;
  readonly nameColumn: number;
  readonly valueColumn: number;
  readonly headerRow: number;
  readonly header: string;
  readonly top: number;
  /** What stands in the rows; `null` where there is no number. Stored beside the references. */
  readonly bars: readonly { readonly name: string; readonly value: number | null }[];
}

const chartNamespace = 'http://schemas.openxmlformats.org/drawingml/2006/chart';
const drawing = 'http://schemas.openxmlformats.org/drawingml/2006/main';
const placing = 'http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing';
const stem = 'application/vnd.openxmlformats-officedocument';

/** Puts a bar chart on a sheet, from the third row on, `columns` by `rows` cells in size. */
export function addBarChart(
  parts: Parts,
  sheet: string,
  chart: BarChart,
  columns: number,
  rows: number,
): void {
  const drawingPart = 'xl/drawings/drawing1.xml';
  const id = addPart(parts, {
    name: drawingPart,
    contentType: `${stem}.drawing+xml`,
    from: sheet,
    relationship: 'drawing',
    text: frame(columns, rows),
  });
  addPart(parts, {
    name: 'xl/charts/chart1.xml',
    contentType: `${stem}.drawingml.chart+xml`,
    from: drawingPart,
    relationship: 'chart',
    text: chartSpace(chart),
  });
  addSheetElement(parts, sheet, 'drawing', reference('drawing', id));
}

function frame(columns: number, rows: number): string {
  const corner = (name: string, column: number, row: number) =>
    `<xdr:${name}><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;
  return [
    `${xmlDeclaration}<xdr:wsDr xmlns:xdr="${placing}" xmlns:a="${drawing}"><xdr:twoCellAnchor>`,
    corner('from', 0, 2),
    corner('to', columns, 2 + rows),
    '<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="2" name="Gap voltages" descr="Bar chart of the gap voltages of all channels"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr>',
    '<xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>',
    `<a:graphic><a:graphicData uri="${chartNamespace}"><c:chart xmlns:c="${chartNamespace}" xmlns:r="${transitional.relationships}" r:id="rId1"/></a:graphicData></a:graphic>`,
    '</xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor></xdr:wsDr>',
  ].join('');
}

function chartSpace(chart: BarChart): string {
  const { bars, top, headerRow } = chart;
  const sheet = quotedName(chart.sheetName);
  const range = (column: number) => {
    const letters = columnLetters(column);
    return escapeXml(`${sheet}!$${letters}$${top}:$${letters}$${top + bars.length - 1}`);
  };
  const names = bars.map(({ name }, index) => `<c:pt idx="${index}"><c:v>${escapeXml(name)}</c:v></c:pt>`);
  const values = bars.flatMap(({ value }, index) =>
    value === null ? [] : [`<c:pt idx="${index}"><c:v>${value}</c:v></c:pt>`],
  );
  const count = `<c:ptCount val="${bars.length}"/>`;
  return [
    `${xmlDeclaration}<c:chartSpace xmlns:c="${chartNamespace}" xmlns:a="${drawing}" xmlns:r="${transitional.relationships}"><c:chart>`,
    `${title(chart.title, 1400)}<c:autoTitleDeleted val="0"/><c:plotArea><c:layout/>`,
    '<c:barChart><c:barDir val="col"/><c:grouping val="clustered"/><c:varyColors val="0"/>',
    '<c:ser><c:idx val="0"/><c:order val="0"/>',
    `<c:tx><c:strRef><c:f>${escapeXml(sheet)}!$${columnLetters(chart.valueColumn)}$${headerRow}</c:f><c:strCache><c:ptCount val="1"/><c:pt idx="0"><c:v>${escapeXml(chart.header)}</c:v></c:pt></c:strCache></c:strRef></c:tx>`,
    '<c:spPr><a:solidFill><a:srgbClr val="2F5D8A"/></a:solidFill></c:spPr><c:invertIfNegative val="0"/>',
    `<c:cat><c:strRef><c:f>${range(chart.nameColumn)}</c:f><c:strCache>${count}${names.join('')}</c:strCache></c:strRef></c:cat>`,
    `<c:val><c:numRef><c:f>${range(chart.valueColumn)}</c:f><c:numCache><c:formatCode>General</c:formatCode>${count}${values.join('')}</c:numCache></c:numRef></c:val>`,
    '</c:ser><c:gapWidth val="60"/><c:axId val="111"/><c:axId val="222"/></c:barChart>',
    '<c:catAx><c:axId val="111"/><c:scaling><c:orientation val="minMax"/></c:scaling><c:delete val="0"/><c:axPos val="b"/><c:tickLblPos val="low"/><c:txPr><a:bodyPr rot="-5400000" vert="horz"/><a:p><a:pPr><a:defRPr sz="800"/></a:pPr><a:endParaRPr lang="en"/></a:p></c:txPr><c:crossAx val="222"/><c:tickLblSkip val="1"/></c:catAx>',
    `<c:valAx><c:axId val="222"/><c:scaling><c:orientation val="minMax"/></c:scaling><c:delete val="0"/><c:axPos val="l"/><c:majorGridlines><c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr val="D9D9D9"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>${title(chart.valueAxis, 1000)}<c:crossAx val="111"/></c:valAx>`,
    '</c:plotArea><c:plotVisOnly val="0"/></c:chart></c:chartSpace>',
  ].join('');
}

/** A title of the chart or of an axis; size in hundredths of a point. */
function title(text: string, size: number): string {
  return `<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:pPr><a:defRPr sz="${size}" b="1"/></a:pPr><a:r><a:rPr lang="en" sz="${size}" b="1"/><a:t>${escapeXml(text)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`;
}
