import type { BarChart, ScatterChart } from '../../../../src/sheets/charts/model.ts';
import type { SheetModel } from '../../../../src/sheets/model.ts';
import { sheetOf } from './model.ts';

const column = (left: number, top: number, bottom: number) => ({ top, left, bottom, right: left });

/** Gap in mm, volts, the rated line in volts, deviation in µm, its upper and lower limit; one gap has no reading. */
export const readings = [
  [0.25, -1.62, -1.97, 44, 25, -25],
  [0.5, -3.9, -3.94, 5, 25, -25],
  [0.75, -5.89, -5.91, 2.5, 25, -25],
  [1, undefined, -7.87, undefined, 25, -25],
  [1.25, -9.86, -9.84, -2.5, 25, -25],
  [1.5, -11.83, -11.81, -2, 25, -25],
] as const;

const last = readings.length + 1;
const gap = { area: column(1, 2, last) };

export const voltsChart: ScatterChart = {
  kind: 'scatter',
  title: 'Output of "31-VT-1X" <probe & driver>',
  alternativeText: 'Volts against gap:\nmeasured points beside the rated line, “<&>"',
  place: { top: 10, left: 1, bottom: 27, right: 6 },
  xAxis: { title: 'Gap, mm', numberFormat: '0.00', min: 0, max: 1.75 },
  yAxis: { title: 'Output, V' },
  series: [
    {
      name: 'measured',
      x: gap,
      y: { area: column(2, 2, last) },
      marker: { shape: 'circle', size: 7, color: '0072B2' },
    },
    {
      name: 'rated',
      x: gap,
      y: { area: column(3, 2, last) },
      line: { color: '000000', width: 1.25, dash: 'dash' },
    },
  ],
};

export const deviationChart: ScatterChart = {
  ...voltsChart,
  title: 'Deviation',
  alternativeText: 'Deviation from the rated line against gap, between its limits',
  place: { top: 10, left: 7, bottom: 27, right: 13 },
  yAxis: { title: 'Deviation, µm', numberFormat: '0', min: -50, max: 50 },
  series: [
    {
      name: 'deviation',
      x: gap,
      y: { area: column(4, 2, last) },
      line: { color: '0072B2', width: 1.5 },
      marker: { shape: 'square', size: 6, color: '0072B2' },
    },
    ...[5, 6].map((left) => ({
      name: left === 5 ? 'upper limit' : 'lower limit',
      x: gap,
      y: { area: column(left, 2, last) },
      line: { color: 'D55E00', width: 1, dash: 'dot' as const },
    })),
  ],
};

export const recordSheet: SheetModel = sheetOf(
  'Record',
  [['Gap', 'Measured', 'Rated', 'Deviation', 'Upper', 'Lower'], ...readings],
  { charts: [voltsChart, deviationChart] },
);

export const thresholds = [
  ['31-VT-1X', 5, 6.25],
  ['31-VT-1Y', 5, 4.9],
  ["31-VT-2X's", 7.5, null],
  ['=31&<2Y>', 7.5, 9],
] as const;

const tags = { sheet: "Pump's thresholds", area: column(1, 2, 5) };

export const thresholdChart: BarChart = {
  kind: 'bar',
  bars: 'horizontal',
  title: 'Where danger acts',
  alternativeText: 'Intended and effective danger thresholds of four channels',
  place: { top: 1, left: 1, bottom: 20, right: 9 },
  categoryAxis: { title: 'Channel' },
  valueAxis: { title: 'mil pp', numberFormat: '0.0', min: 0 },
  series: [
    {
      name: 'intended',
      categories: tags,
      values: { sheet: "Pump's thresholds", area: column(2, 2, 5) },
      color: '595959',
      pattern: 'diagonal',
    },
    {
      name: 'effective',
      categories: tags,
      values: { sheet: "Pump's thresholds", area: column(3, 2, 5) },
      color: '0072B2',
    },
  ],
};

/** A record with two charts, a table of thresholds and a sheet that draws from that table, as bars lying and standing. */
export function chartedSheets(): readonly SheetModel[] {
  return [
    recordSheet,
    sheetOf('Hand-over', [['']], {
      charts: [
        thresholdChart,
        { ...thresholdChart, bars: 'vertical', place: { top: 21, left: 1, bottom: 40, right: 9 } },
      ],
    }),
    sheetOf("Pump's thresholds", [['Tag', 'Intended', 'Effective'], ...thresholds]),
  ];
}
