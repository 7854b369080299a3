import type { Area } from '../../cells/sheet.ts';

/**
 * A row or a column of cells that a chart draws. An empty cell leaves a gap; a text among numbers is drawn as zero by
 * spreadsheet programs, so a cell that has no value to draw should be empty.
 */
export interface ChartCells {
  /** Result sheet of the same run, by the name it asked for; the chart's own where left out. */
  readonly sheet?: string;
  readonly area: Area;
}

/** An axis of numbers. Its ends are chosen by the program where they are left out; its number format is that of the cells. */
export interface ValueAxis {
  readonly title?: string;
  readonly numberFormat?: string;
  readonly min?: number;
  readonly max?: number;
}

export interface ChartLine {
  /** `RRGGBB`. */
  readonly color: string;
  /** Points. */
  readonly width: number;
  readonly dash?: 'dash' | 'dot' | 'dashDot';
}

export interface ChartMarker {
  readonly shape: 'circle' | 'square' | 'diamond' | 'triangle' | 'cross' | 'plus';
  /** Points, whole, from 2 to 72. */
  readonly size: number;
  /** `RRGGBB`. */
  readonly color: string;
}

/** Points of x and y, joined by straight lines where a line is given; a line, markers or both. */
export interface ScatterSeries {
  readonly name: string;
  readonly x: ChartCells;
  readonly y: ChartCells;
  readonly line?: ChartLine;
  readonly marker?: ChartMarker;
}

/** One bar for each category. The pattern tells series apart where a print has no colours. */
export interface BarSeries {
  readonly name: string;
  readonly categories: ChartCells;
  readonly values: ChartCells;
  /** `RRGGBB`. */
  readonly color: string;
  readonly pattern?: 'diagonal' | 'crossed' | 'dotted';
}

interface ChartFrame {
  /** Titles and names of series hold 255 characters; longer ones end in an ellipsis. */
  readonly title?: string;
  /** What the chart shows, in words, for those who don't see it. */
  readonly alternativeText: string;
  /** `false`: none, the title says what is what. Programs differ in the order of a legend under lying bars. */
  readonly legend?: false;
  /** The cells that it covers. */
  readonly place: Area;
}

export interface ScatterChart extends ChartFrame {
  readonly kind: 'scatter';
  readonly xAxis: ValueAxis;
  readonly yAxis: ValueAxis;
  readonly series: readonly ScatterSeries[];
}

/** Bars side by side; horizontal ones have the first category at the top. */
export interface BarChart extends ChartFrame {
  readonly kind: 'bar';
  readonly bars: 'horizontal' | 'vertical';
  readonly categoryAxis: { readonly title?: string };
  readonly valueAxis: ValueAxis;
  readonly series: readonly BarSeries[];
}

/** A chart over a result sheet. Hidden and filtered rows are drawn all the same; more than one series has a legend. */
export type ChartModel = ScatterChart | BarChart;

/** Whether a chart has a legend. */
export function hasLegend({ series, legend }: ChartModel): boolean {
  return legend ?? series.length > 1;
}
