import { hasLegend } from '../../../../sheets/charts/legend.ts';
import type {
  BarSeries,
  ChartLine,
  ChartModel,
  ScatterSeries,
  ValueAxis,
} from '../../../../sheets/charts/model.ts';
import { chartLooks, plainColor } from '../../../formats/chartLooks.ts';

const lineStyles = { dash: 'Dash', dot: 'Dot', dashDot: 'DashDot' } as const;
const markerStyles = {
  circle: 'Circle',
  square: 'Square',
  diamond: 'Diamond',
  triangle: 'Triangle',
  cross: 'X',
  plus: 'Plus',
} as const;

/** Sets how a chart looks: axes, grid, lines, markers, fills. Excel’s interface has no patterns, so lighter colours stand for them. */
export function setLooks(chart: Excel.Chart, model: ChartModel): void {
  const { categoryAxis, valueAxis } = chart.axes;
  if ((model.title ?? '') !== '') {
    chart.title.format.font.size = chartLooks.titleSize;
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
  setLine(axis.majorGridlines.format.line, { color: chartLooks.gridColor, width: 0.5 });
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
  series.gapWidth = chartLooks.gapWidth;
  series.format.fill.setSolidColor(`#${plainColor(bars)}`);
  setLine(series.format.line, { color: bars.color, width: 0.75 });
}

function setLine(format: Excel.ChartLineFormat, { color, width, dash }: ChartLine): void {
  format.color = `#${color}`;
  format.weight = width;
  format.lineStyle = dash === undefined ? 'Continuous' : lineStyles[dash];
}
