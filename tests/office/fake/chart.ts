import type { Area } from '../../../src/cells/sheet.ts';

/** Cells of a sheet of the fake workbook, as a chart draws them. */
export interface FakeSource {
  readonly sheet: string;
  readonly area: Area;
}

export interface FakeSeries {
  name: string;
  x: FakeSource | null;
  y: FakeSource | null;
  /** What was set, by its name, as `Format.Line.Color`. */
  readonly set: Map<string, unknown>;
}

/** A chart of the fake workbook: its state, without any of the interface. */
export interface FakeChart {
  readonly id: string;
  readonly type: string;
  readonly series: FakeSeries[];
  place: Area | null;
  /** What was set, by its name, as `Axes.ValueAxis.Minimum`. */
  readonly set: Map<string, unknown>;
}
