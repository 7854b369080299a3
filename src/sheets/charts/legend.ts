import type { ChartModel } from './model.ts';

/** Whether a chart has a legend. */
export function hasLegend({ series, legend }: ChartModel): boolean {
  return legend ?? series.length > 1;
}
