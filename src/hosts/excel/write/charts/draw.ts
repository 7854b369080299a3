import { drawnCells } from '../../../../sheets/charts/cells.ts';
import {
  type ChartCells,
  type ChartModel,
  type ScatterSeries,
  hasLegend,
} from '../../../../sheets/charts/model.ts';
import { cellAddress } from '../../../../cells/address.ts';
import { fittedText } from '../../../../sheets/cells.ts';
import { longestTitle } from '../../../formats/chartStyles.ts';

/** A chart as Excel made it, with the number of series that it chose itself. */
export interface AddedChart {
  readonly chart: Excel.Chart;
  readonly ownSeries: OfficeExtension.ClientResult<number>;
}

type RangeOf = (cells: ChartCells) => Excel.Range;

/** Lets Excel make a chart of the cells of the first series; which series it makes of them is its own choice. */
export function addChart(sheet: Excel.Worksheet, model: ChartModel, rangeOf: RangeOf): AddedChart {
  const [first] = drawnCells(model);
  if (!first) throw new RangeError('a chart needs at least one series');
  const chart = sheet.charts.add(typeOf(model), rangeOf(first[1]));
  chart.load('id');
  return { chart, ownSeries: chart.series.getCount() };
}

function typeOf(model: ChartModel): 'XYScatterLines' | 'BarClustered' | 'ColumnClustered' {
  if (model.kind === 'scatter') return 'XYScatterLines';
  return model.bars === 'horizontal' ? 'BarClustered' : 'ColumnClustered';
}

/** Has a chart draw what the model says and nothing else, over its cells and under its titles. */
export function draw({ chart, ownSeries }: AddedChart, model: ChartModel, rangeOf: RangeOf): void {
  const { place } = model;
  const add = (name: string, across: ChartCells, up: ChartCells): Excel.ChartSeries => {
    const series = chart.series.add(plainTitle(name));
    series.setXAxisValues(rangeOf(across));
    series.setValues(rangeOf(up));
    return series;
  };
  if (model.kind === 'bar') for (const one of model.series) add(one.name, one.categories, one.values);
  else {
    for (const one of model.series) {
      const series = add(one.name, one.x, one.y);
      series.chartType = scatterType(one);
      series.smooth = false;
    }
  }
  for (let own = ownSeries.value - 1; own >= 0; own--) chart.series.getItemAt(own).delete();
  chart.displayBlanksAs = 'NotPlotted';
  chart.plotVisibleOnly = false;
  chart.setPosition(cellAddress(place.top, place.left), cellAddress(place.bottom, place.right));
  setTitles(chart, model);
}

function scatterType({
  line,
  marker,
}: ScatterSeries): 'XYScatterLines' | 'XYScatterLinesNoMarkers' | 'XYScatter' {
  if (!line) return 'XYScatter';
  return marker ? 'XYScatterLines' : 'XYScatterLinesNoMarkers';
}

function setTitles(chart: Excel.Chart, model: ChartModel): void {
  const { categoryAxis, valueAxis } = chart.axes;
  const [across, up] =
    model.kind === 'scatter' ? [model.xAxis, model.yAxis] : [model.categoryAxis, model.valueAxis];
  setTitle(chart.title, model.title);
  setTitle(categoryAxis.title, across.title);
  setTitle(valueAxis.title, up.title);
  chart.legend.visible = hasLegend(model);
}

function setTitle(title: Excel.ChartTitle | Excel.ChartAxisTitle, text = ''): void {
  title.visible = text !== '';
  if (text !== '') title.text = plainTitle(text);
}

/** Excel takes a title or a name that begins with `=` for a formula (common practice, no source); a space before it keeps it text. */
function plainTitle(text: string): string {
  return fittedText(text.startsWith('=') ? ` ${text}` : text, longestTitle);
}
