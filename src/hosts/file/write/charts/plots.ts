import type { BarChart, ChartModel, ScatterChart } from '../../../../sheets/charts/model.ts';
import { fittedText } from '../../../../sheets/cellContent.ts';
import { chartLooks, longestTitle } from '../../../formats/chartLooks.ts';
import { escapeCellText } from '../xml/text.ts';
import { axisIds, categoryAxis, valueAxis, type AxisPlace } from './axes.ts';
import type { References } from './references.ts';
import { barShape, lineShape, markerShape } from './shapes.ts';

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
    `${markup.join('')}<c:gapWidth val="${chartLooks.gapWidth}"/>${ids}</c:barChart>`,
    categoryAxis(categories.title, categoryPlace, lying),
    valueAxis(values, valuePlace, { atEnd: lying, between: true }),
  ].join('');
}

function head(name: string, index: number): string {
  const text = escapeCellText(fittedText(name, longestTitle));
  return `<c:idx val="${index}"/><c:order val="${index}"/><c:tx><c:v>${text}</c:v></c:tx>`;
}
