import type { Area } from '../../cells/sheet.ts';
import { cellCount, drawnCells } from './cells.ts';
import type { ChartModel, ValueAxis } from './model.ts';

/** Series that a chart holds (common practice of spreadsheet programs, no source). */
const mostSeries = 255;

/**
 * Throws an Error, naming sheet and chart, where a chart contradicts itself: no series, cells that are no row or
 * column, unequal numbers of cells across and up, an axis that ends before it begins, a series that shows nothing, a
 * colour that is none, a measure out of range.
 */
export function checkChart(chart: ChartModel, sheet: string): void {
  const fault = faultOf(chart);
  if (fault !== undefined)
    throw new Error(`chart "${chart.title ?? chart.alternativeText}" of sheet "${sheet}": ${fault}`);
}

function faultOf(chart: ChartModel): string | undefined {
  const { place, series } = chart;
  if (!isArea(place)) return 'its place is no area of cells';
  if (series.length === 0 || series.length > mostSeries)
    return `it has ${series.length} series, a chart from 1 to ${mostSeries}`;
  const axes = chart.kind === 'scatter' ? [chart.xAxis, chart.yAxis] : [chart.valueAxis];
  if (axes.some(isReversed)) return 'an axis ends where it begins or before';
  for (const [index, [across, up]] of drawnCells(chart).entries()) {
    const name = `series "${series[index]?.name ?? ''}"`;
    if (![across.area, up.area].every(isLine)) return `${name} does not draw from one row or one column`;
    if (cellCount(across.area) !== cellCount(up.area)) {
      return `${name} has ${cellCount(across.area)} cells across and ${cellCount(up.area)} up`;
    }
  }
  const colors =
    chart.kind === 'scatter'
      ? chart.series.flatMap(({ line, marker }) => [line?.color ?? [], marker?.color ?? []].flat())
      : chart.series.map(({ color }) => color);
  const wrong = colors.find((color) => !/^[0-9A-F]{6}$/i.test(color));
  if (wrong !== undefined) return `colour "${wrong}" is not of the form RRGGBB`;
  return chart.kind === 'scatter' ? looksFault(chart.series) : undefined;
}

function looksFault(series: Extract<ChartModel, { kind: 'scatter' }>['series']): string | undefined {
  for (const { name, line, marker } of series) {
    if (!line && !marker) return `series "${name}" has neither a line nor markers`;
    if (line && !(line.width > 0 && line.width <= 100))
      return `series "${name}" has a line of ${line.width} pt`;
    if (marker && !(Number.isInteger(marker.size) && marker.size >= 2 && marker.size <= 72)) {
      return `series "${name}" has markers of ${marker.size} pt, not a whole number from 2 to 72`;
    }
  }
  return undefined;
}

function isReversed({ min = -Infinity, max = Infinity }: ValueAxis): boolean {
  return !(min < max);
}

function isArea({ top, left, bottom, right }: Area): boolean {
  return (
    [top, left, bottom, right].every((end) => Number.isInteger(end) && end >= 1) &&
    bottom >= top &&
    right >= left
  );
}

function isLine(area: Area): boolean {
  return isArea(area) && (area.top === area.bottom || area.left === area.right);
}
