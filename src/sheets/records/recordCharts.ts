import { extent, nice } from 'd3-array';
import type { Area } from '../../cells/sheet.ts';
import { incrementalSensitivity } from '../../method/record/calibrationRecord.ts';
import type { ChartLine, ChartMarker, ScatterChart, ScatterSeries } from '../charts/model.ts';
import { tones } from '../style/palette.ts';
import { rightFigures } from './blockFormulas.ts';
import { columnOf, printedColumns, type PointColumn } from './columns.ts';
import type { BlockPlaces } from './places.ts';
import type { ShownRecord } from './shown.ts';

const measuredLine: ChartLine = { color: tones.ink, width: 1.5 };
const measuredMarker: ChartMarker = { shape: 'circle', size: 5, color: tones.ink };
const ratedStyle: ChartLine = { color: tones.quiet, width: 1.25, dash: 'dash' };
const toleranceStyle: ChartLine = { color: tones.quiet, width: 1, dash: 'dot' };
const fittedStyle: ChartLine = { color: tones.quiet, width: 1, dash: 'dashDot' };

/** Parts of the height that the panels take, from the top. */
const panels = [0, 10 / 24, 17 / 24, 1] as const;

/**
 * The three charts of a block, one above the other over the same gaps: volts, deviation and steps. Told apart by dashes and
 * markers, which their titles name.
 */
export function recordCharts(record: ShownRecord, places: BlockPlaces): readonly ScatterChart[] {
  const { tag, unit, rated } = record;
  const { top, bottom } = places.charts;
  const rowAt = (part: number): number => top + Math.round((bottom - top + 1) * part);
  const panel = (index: 0 | 1 | 2): Area => ({
    top: rowAt(panels[index]),
    bottom: rowAt(panels[index + 1] ?? 1) - 1,
    left: 1,
    right: printedColumns,
  });
  const gaps = { numberFormat: 'General', ...endsOf(record.gaps) };
  const volts: ScatterChart = {
    kind: 'scatter',
    legend: false,
    title: `${tag}: volts against gap${rated === null ? '' : '; dashed: the line of rated slope'}${record.operatingGap === null ? '' : '; diamond: in service'}`,
    alternativeText: `${tag}: measured volts against gap in ${unit}${rated === null ? '' : ', with the line of rated slope'}.`,
    place: panel(0),
    xAxis: gaps,
    yAxis: { title: 'Output, V', numberFormat: '0' },
    series: [
      drawn('measured', 'volts', places, { line: measuredLine, marker: measuredMarker }),
      ...(rated === null ? [] : [drawn('rated slope', 'ratedLine', places, { line: ratedStyle })]),
      ...operatingPoint(record, places),
    ],
  };
  const fitted = drawn('off the fitted line', 'fittedDeviation', places, { line: fittedStyle });
  const deviation: ScatterChart = {
    kind: 'scatter',
    legend: false,
    title:
      rated === null
        ? `Off the fitted line, ${unit}`
        : `Off the line of rated slope, ${unit}; dash-dotted: off the fitted line; dotted: tolerance`,
    alternativeText: `${tag}: deviation from the line over the straight part against gap, both in ${unit}${rated === null ? '' : ', between its tolerances'}.`,
    place: panel(1),
    xAxis: gaps,
    yAxis: { numberFormat: 'General' },
    series:
      rated === null
        ? [fitted]
        : [
            drawn('off the rated line', 'ratedDeviation', places, {
              line: measuredLine,
              marker: measuredMarker,
            }),
            fitted,
            drawn('tolerance −', 'leastDeviation', places, { line: toleranceStyle }),
            drawn('tolerance +', 'mostDeviation', places, { line: toleranceStyle }),
          ],
  };
  const steps = { ...places, firstPoint: places.firstPoint + 1 };
  const sensitivity: ScatterChart = {
    kind: 'scatter',
    legend: false,
    title: `Sensitivity of each step, mV/${unit}${rated === null ? '' : '; dotted: tolerance'}`,
    alternativeText: `${tag}: sensitivity of each step in mV/${unit} against the gap in its middle${rated === null ? '' : ', between its tolerances'}.`,
    place: panel(2),
    xAxis: { title: `Gap, ${unit}`, ...gaps },
    yAxis: { numberFormat: 'General', ...endsOf(sensitivities(record)) },
    series: [
      overSteps('step', 'step', steps, { line: measuredLine, marker: measuredMarker }),
      ...(rated === null
        ? []
        : [
            overSteps('tolerance −', 'leastStep', steps, { line: toleranceStyle }),
            overSteps('tolerance +', 'mostStep', steps, { line: toleranceStyle }),
          ]),
    ],
  };
  return [volts, deviation, sensitivity];
}

/** Everything that the chart of the steps has to show: the steps, and tolerances about the rated and the middle one. */
function sensitivities({ gaps, volts, rated, tolerance }: ShownRecord): number[] {
  const steps = incrementalSensitivity({ gaps, volts, sorted: false }).map((step) => 1000 * step);
  const middle = steps.toSorted((one, other) => one - other)[Math.floor(steps.length / 2)] ?? NaN;
  return [
    ...steps,
    ...[rated ?? middle, middle].flatMap((of) => [of * (1 - tolerance), of * (1 + tolerance)]),
  ];
}

/** Round ends of an axis that shows all values; left to the program where they can't be told. */
function endsOf(values: readonly number[]): { readonly min?: number; readonly max?: number } {
  const [least = NaN, most = NaN] = extent(values);
  const [min, max] = nice(least, most, 5);
  return min < max ? { min, max } : {};
}

type SeriesStyle = Pick<ScatterSeries, 'line' | 'marker'>;

function drawn(name: string, column: PointColumn, places: BlockPlaces, look: SeriesStyle): ScatterSeries {
  return { name, x: { area: down('gap', places) }, y: { area: down(column, places) }, ...look };
}

function overSteps(name: string, column: PointColumn, places: BlockPlaces, look: SeriesStyle): ScatterSeries {
  return { name, x: { area: down('middle', places) }, y: { area: down(column, places) }, ...look };
}

function down(column: PointColumn, { firstPoint, lastPoint }: BlockPlaces): Area {
  const at = columnOf(column);
  return { top: firstPoint, bottom: lastPoint, left: at, right: at };
}

/** The gap at which the probe stands in service, at its gap voltage. */
function operatingPoint(
  { operatingGap, gapVoltage }: ShownRecord,
  { figures }: BlockPlaces,
): ScatterSeries[] {
  if (operatingGap === null || gapVoltage === null) return [];
  const at = (figure: keyof typeof rightFigures) => {
    const row = figures + rightFigures[figure];
    return { area: { top: row, bottom: row, left: 8, right: 8 } };
  };
  return [
    {
      name: 'in service',
      x: at('operatingGap'),
      y: at('gapVoltage'),
      marker: { shape: 'diamond', size: 10, color: tones.ink },
    },
  ];
}
