import type { BarChart, ChartModel, ScatterChart, ValueAxis } from '../../../../sheets/charts/model.ts';
import { fittedText } from '../../../../sheets/cells.ts';
import { chartStyles, longestTitle } from '../../../formats/chartStyles.ts';
import { escapeCellText, escapeXml } from '../xml/text.ts';
import type { References } from './references.ts';
import { barShape, lineShape, markerShape } from './shapes.ts';
import { title } from './text.ts';

/** Which side of the plot an axis stands on: below or at the left. */
type Side = 'b' | 'l';

/** The numbers by which a chart's two axes know each other; any two will do, as each chart is a part of its own. */
const axisIds = { across: 1, up: 2 } as const;

interface AxisPlace {
  readonly side: Side;
  readonly id: number;
  readonly crossed: number;
}

const gridLines = `<c:majorGridlines>${lineShape({ color: chartStyles.gridColor, width: 0.5 })}</c:majorGridlines>`;

const axisLine = lineShape({ color: chartStyles.axisColor, width: 0.75 });

const across = { id: axisIds.across, crossed: axisIds.up };
const up = { id: axisIds.up, crossed: axisIds.across };
const ids = `<c:axId val="${axisIds.across}"/><c:axId val="${axisIds.up}"/>`;

/** What a chart draws and its axes (part of CT_PlotArea). */
export function plot(chart: ChartModel, references: References): string {
  return chart.kind === 'scatter' ? scatterPlot(chart, references) : barPlot(chart, references);
}

function scatterPlot({ series, xAxis, yAxis }: ScatterChart, { numbers }: References): string {
  const markup = series.map(({ name, x, y, line, marker }, index) =>
    [
      `<c:ser>${head(name, index)}${lineShape(line)}${markerShape(marker)}`,
      `<c:xVal>${numbers(x)}</c:xVal><c:yVal>${numbers(y)}</c:yVal><c:smooth val="0"/></c:ser>`,
    ].join(''),
  );
  return [
    `<c:scatterChart><c:scatterStyle val="lineMarker"/><c:varyColors val="0"/>${markup.join('')}${ids}</c:scatterChart>`,
    valueAxis(xAxis, { side: 'b', ...across }),
    valueAxis(yAxis, { side: 'l', ...up }),
  ].join('');
}

function barPlot(
  { series, bars, categoryAxis: categories, valueAxis: values }: BarChart,
  references: References,
): string {
  const lying = bars === 'horizontal';
  const markup = series.map((one, index) =>
    [
      `<c:ser>${head(one.name, index)}${barShape(one)}<c:invertIfNegative val="0"/>`,
      `<c:cat>${references.names(one.categories)}</c:cat><c:val>${references.numbers(one.values)}</c:val></c:ser>`,
    ].join(''),
  );
  const categoryPlace: AxisPlace = { side: lying ? 'l' : 'b', ...across };
  const valuePlace: AxisPlace = { side: lying ? 'b' : 'l', ...up };
  return [
    `<c:barChart><c:barDir val="${lying ? 'bar' : 'col'}"/><c:grouping val="clustered"/><c:varyColors val="0"/>`,
    `${markup.join('')}<c:gapWidth val="${chartStyles.gapWidth}"/>${ids}</c:barChart>`,
    categoryAxis(categories.title, categoryPlace, lying),
    valueAxis(values, valuePlace, { atEnd: lying, between: true }),
  ].join('');
}

function head(name: string, index: number): string {
  const text = escapeCellText(fittedText(name, longestTitle));
  return `<c:idx val="${index}"/><c:order val="${index}"/><c:tx><c:v>${text}</c:v></c:tx>`;
}

function labels(position: 'low' | 'nextTo'): string {
  return `<c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="${position}"/>`;
}

/**
 * An axis of numbers (CT_ValAx). Its numbers stand at the edge of the plot, wherever zero is. `atEnd`: it stands where the
 * other axis ends, which is below for categories that run down; `between`: the other axis has categories, not points.
 */
function valueAxis(
  { title: text, numberFormat, min, max }: ValueAxis,
  { side, id, crossed }: AxisPlace,
  { atEnd = false, between = false } = {},
): string {
  const format =
    numberFormat === undefined
      ? '<c:numFmt formatCode="General" sourceLinked="1"/>'
      : `<c:numFmt formatCode="${escapeXml(numberFormat)}" sourceLinked="0"/>`;
  return [
    `<c:valAx><c:axId val="${id}"/><c:scaling><c:orientation val="minMax"/>`,
    max === undefined ? '' : `<c:max val="${max}"/>`,
    min === undefined ? '' : `<c:min val="${min}"/>`,
    `</c:scaling><c:delete val="0"/><c:axPos val="${side}"/>${gridLines}`,
    title(text, chartStyles.textSize, false, side === 'l'),
    `${format}${labels(atEnd ? 'nextTo' : 'low')}${axisLine}<c:crossAx val="${crossed}"/>`,
    `<c:crosses val="${atEnd ? 'max' : 'autoZero'}"/>`,
    `<c:crossBetween val="${between ? 'between' : 'midCat'}"/></c:valAx>`,
  ].join('');
}

/** An axis of categories (CT_CatAx); `downwards`: the first one is at the top. */
function categoryAxis(
  text: string | undefined,
  { side, id, crossed }: AxisPlace,
  downwards: boolean,
): string {
  return [
    `<c:catAx><c:axId val="${id}"/><c:scaling><c:orientation val="${downwards ? 'maxMin' : 'minMax'}"/></c:scaling>`,
    `<c:delete val="0"/><c:axPos val="${side}"/>`,
    title(text, chartStyles.textSize, false, side === 'l'),
    `<c:numFmt formatCode="General" sourceLinked="1"/>${labels('low')}${axisLine}<c:crossAx val="${crossed}"/>`,
    '<c:crosses val="autoZero"/><c:auto val="0"/><c:lblAlgn val="ctr"/><c:lblOffset val="100"/><c:noMultiLvlLbl val="1"/></c:catAx>',
  ].join('');
}
