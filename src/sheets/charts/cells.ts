import type { Area } from '../../cells/sheet.ts';
import type { ChartCells, ChartModel } from './model.ts';

/** The cells across and those up of each series: x and y, or categories and values. */
export function drawnCells(chart: ChartModel): readonly (readonly [ChartCells, ChartCells])[] {
  return chart.kind === 'scatter'
    ? chart.series.map(({ x, y }) => [x, y] as const)
    : chart.series.map(({ categories, values }) => [categories, values] as const);
}

/** The chart with other names for the sheets it draws from. */
export function withSheetNames(chart: ChartModel, nameOf: (sheet: string) => string): ChartModel {
  const renamed = (cells: ChartCells): ChartCells =>
    cells.sheet === undefined ? cells : { ...cells, sheet: nameOf(cells.sheet) };
  return chart.kind === 'scatter'
    ? { ...chart, series: chart.series.map((one) => ({ ...one, x: renamed(one.x), y: renamed(one.y) })) }
    : {
        ...chart,
        series: chart.series.map((one) => ({
          ...one,
          categories: renamed(one.categories),
          values: renamed(one.values),
        })),
      };
}

/** Number of cells of an area. */
export function cellCount({ top, left, bottom, right }: Area): number {
  return (bottom - top + 1) * (right - left + 1);
}
