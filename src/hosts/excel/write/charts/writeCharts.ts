import {
  type ChartCells,
  type ChartModel,
  type BarSeries,
  type ChartLine,
  type ScatterSeries,
  type ValueAxis,
  hasLegend,
} from '../../../../sheets/charts/model.ts';
import type { SheetModel } from '../../../../sheets/model.ts';
import { reference } from '../../../formats/reference.ts';
import { type Cancel, HostRefused } from '../../../port/port.ts';
import type { AddedSheets } from '../addSheets.ts';
import { doJobs, type Job } from '../requests.ts';
import { addChart, type AddedChart, draw } from './draw.ts';
import { chartStyles, plainColor } from '../../../formats/chartStyles.ts';

const lineStyles = { dash: 'Dash', dot: 'Dot', dashDot: 'DashDot' } as const;

const markerStyles = {
  circle: 'Circle',
  square: 'Square',
  diamond: 'Diamond',
  triangle: 'Triangle',
  cross: 'X',
  plus: 'Plus',
} as const;

/** A chart on its way into the workbook; `added` once Excel has made it. */
interface Charting {
  readonly model: ChartModel;
  readonly sheet: Excel.Worksheet;
  readonly rangeOf: (cells: ChartCells) => Excel.Range;
  added?: AddedChart;
}

/**
 * Puts the charts over sheets that are written: a request for charts as Excel makes them, one for what they draw, one for
 * their looks, more where those grow large. Looks may be refused, and the charts stay as Excel draws them. Alternative
 * texts are not set: Excel’s interface has none for charts. Throws an Error for cells of a sheet that is not of this run.
 */
export async function writeCharts(
  context: Excel.RequestContext,
  models: readonly SheetModel[],
  added: AddedSheets,
  cancel: Cancel | undefined,
): Promise<void> {
  const charts = chartings(models, added);
  if (charts.length === 0) return;
  const jobs = (bytes: (model: ChartModel) => number, queue: (one: Charting) => void): Job[] =>
    charts.map((one) => ({
      bytes: bytes(one.model),
      queue: () => {
        queue(one);
      },
      halves: () => [],
    }));

  const adding = jobs(
    () => 2_000,
    (one) => {
      one.added = addChart(one.sheet, one.model, one.rangeOf);
    },
  );
  await doJobs(context, adding, cancel);
  const drawing = jobs(
    ({ series }) => 6_000 + series.length * 3_000,
    ({ added: chart, model, rangeOf }) => {
      if (chart) draw(chart, model, rangeOf);
    },
  );
  await doJobs(context, drawing, cancel);
  const looks = jobs(
    ({ series }) => 6_000 + series.length * 3_000,
    ({ added: chart, model }) => {
      if (chart) setStyles(chart.chart, model);
    },
  );
  await doJobs(context, looks, cancel).catch((error: unknown) => {
    if (error instanceof HostRefused) throw error;
  });
}

function chartings(models: readonly SheetModel[], { sheets }: AddedSheets): Charting[] {
  return models.flatMap(({ charts = [], name }, index) => {
    const sheet = sheets[index]?.sheet;
    if (!sheet) return [];
    const sheetOf = ({ sheet: wanted }: ChartCells): Excel.Worksheet => {
      const found =
        wanted === undefined ? sheet : sheets[models.findIndex((one) => one.name === wanted)]?.sheet;
      if (found) return found;
      throw new Error(`a chart of sheet "${name}" names the sheet "${wanted ?? ''}", which is not written`);
    };
    const rangeOf = (cells: ChartCells): Excel.Range => sheetOf(cells).getRange(reference(cells.area));
    return charts.map((model): Charting => ({ model, sheet, rangeOf }));
  });
}

/** Sets how a chart looks: axes, grid, lines, markers, fills. Excel’s interface has no patterns, so lighter colours stand for them. */
function setStyles(chart: Excel.Chart, model: ChartModel): void {
  const { categoryAxis, valueAxis } = chart.axes;
  if ((model.title ?? '') !== '') {
    chart.title.format.font.size = chartStyles.titleSize;
    chart.title.format.font.bold = true;
  }
  if (hasLegend(model)) chart.legend.position = 'Bottom';
  if (model.kind === 'scatter') {
    setAxis(categoryAxis, model.xAxis);
    setAxis(valueAxis, model.yAxis);
    model.series.forEach((one, index) => {
      setPoints(chart.series.getItemAt(index), one);
    });
    return;
  }
  setAxis(valueAxis, model.valueAxis);
  categoryAxis.tickLabelPosition = 'Low';
  if (model.bars === 'horizontal') {
    categoryAxis.reversePlotOrder = true;
    categoryAxis.position = 'Maximum';
    valueAxis.tickLabelPosition = 'NextToAxis';
  }
  model.series.forEach((one, index) => {
    setBars(chart.series.getItemAt(index), one);
  });
}

function setAxis(axis: Excel.ChartAxis, { numberFormat, min, max }: ValueAxis): void {
  if (numberFormat !== undefined) axis.numberFormat = numberFormat;
  if (min !== undefined) axis.minimum = min;
  if (max !== undefined) axis.maximum = max;
  axis.tickLabelPosition = 'Low';
  axis.majorGridlines.visible = true;
  setLine(axis.majorGridlines.format.line, { color: chartStyles.gridColor, width: 0.5 });
}

function setPoints(series: Excel.ChartSeries, { line, marker }: ScatterSeries): void {
  if (line) setLine(series.format.line, line);
  if (!marker) {
    series.markerStyle = 'None';
    return;
  }
  series.markerStyle = markerStyles[marker.shape];
  series.markerSize = marker.size;
  series.markerBackgroundColor = `#${marker.color}`;
  series.markerForegroundColor = `#${marker.color}`;
}

function setBars(series: Excel.ChartSeries, bars: BarSeries): void {
  series.gapWidth = chartStyles.gapWidth;
  series.format.fill.setSolidColor(`#${plainColor(bars)}`);
  setLine(series.format.line, { color: bars.color, width: 0.75 });
}

function setLine(format: Excel.ChartLineFormat, { color, width, dash }: ChartLine): void {
  format.color = `#${color}`;
  format.weight = width;
  format.lineStyle = dash === undefined ? 'Continuous' : lineStyles[dash];
}
