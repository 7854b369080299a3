import { type ChartCells, type ChartModel, hasLegend } from '../../../../sheets/charts/model.ts';
import type { SheetModel } from '../../../../sheets/model.ts';
import type { Dialect } from '../package/namespaces.ts';
import type { PlannedSheet } from '../package/plannedParts.ts';
import { relationshipsOf, relationshipsText } from '../package/relationships.ts';
import type { ValuesWatch } from './drawnValues.ts';
import { referencesOf, type References } from './references.ts';
import { chartStyles } from '../../../formats/chartStyles.ts';
import { plot } from './plots.ts';
import { boxShape } from './shapes.ts';
import { textSize, title } from './text.ts';
import { escapeDrawingText } from '../xml/text.ts';

/** A part ready to be put into the package. */
export interface ChartingPart {
  readonly name: string;
  readonly text: string;
}

/**
 * The parts that a sheet's charts need, one after the other: the drawing, its links, the charts. All rows
 * of all sheets must have been written, so that `watch` knows what the charts draw; `nameOf` gives the
 * real name of the sheet on which cells stand.
 */
export function* chartParts(
  sheet: SheetModel,
  planned: PlannedSheet,
  dialect: Dialect,
  nameOf: (cells: ChartCells) => string,
  watch: ValuesWatch,
): Generator<ChartingPart> {
  const { drawing, charts } = planned;
  const models: readonly ChartModel[] = sheet.charts ?? [];
  if (drawing === undefined) return;
  const kind = (name: string): string => `${dialect.relationships}/${name}`;
  yield { name: drawing, text: drawingPart(models, dialect) };
  yield {
    name: relationshipsOf(drawing),
    text: relationshipsText(
      charts.map((part, index) => ({ id: `rId${index + 1}`, type: kind('chart'), part })),
    ),
  };
  const references = referencesOf(nameOf, (cells) => watch.valuesOf(cells, sheet));
  for (const [index, chart] of models.entries()) {
    yield { name: charts[index] ?? '', text: chartPart(chart, references, dialect) };
  }
}

/**
 * A chart's part (CT_ChartSpace; ECMA-376 part 1, 21.2). Blanks are gaps; hidden rows are drawn too.
 */
function chartPart(chart: ChartModel, references: References, dialect: Dialect): string {
  const legend = hasLegend(chart) ? '<c:legend><c:legendPos val="b"/><c:overlay val="0"/></c:legend>' : '';
  const untitled = chart.title === undefined || chart.title === '';
  return [
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n',
    `<c:chartSpace xmlns:c="${dialect.drawing}/chart" xmlns:a="${dialect.drawing}/main">`,
    `<c:roundedCorners val="0"/><c:chart>${title(chart.title, chartStyles.titleSize, true)}`,
    `<c:autoTitleDeleted val="${Number(untitled)}"/>`,
    `<c:plotArea><c:layout/>${plot(chart, references)}<c:spPr><a:noFill/></c:spPr></c:plotArea>`,
    `${legend}<c:plotVisOnly val="0"/><c:dispBlanksAs val="gap"/></c:chart>`,
    `${boxShape('FFFFFF', chartStyles.frameColor)}${textSize(chartStyles.textSize)}</c:chartSpace>`,
  ].join('');
}

/** A sheet's drawing part (CT_Drawing): its charts, each over its cells. The n-th chart is reached by the relationship `rIdn`. */
function drawingPart(charts: readonly ChartModel[], dialect: Dialect): string {
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
