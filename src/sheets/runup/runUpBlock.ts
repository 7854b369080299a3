import { runUpName, runUpText } from '../../audit/advise/runUpText.ts';
import type { RunUpChannel, RunUpThreshold } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import type { ScatterChart, ScatterSeries } from '../charts/model.ts';
import { tones } from '../look/palette.ts';
import { verdictLooks } from '../look/verdictLooks.ts';
import { decimalsFor } from '../look/significant.ts';
import type { ModelRow } from '../model.ts';

/** The points of one run-up, with their drawing. */
export interface RunUpBlock {
  readonly rows: readonly ModelRow[];
  readonly chart: ScatterChart;
}

const drawnRows = 22;
const headRows = 4;
const at = { speed: 1, real: 2, shown: 3, set: 4, sensitivity: 5, configured: 6 } as const;
const drawing = { left: 8, right: 16 } as const;

/** A block whose first row is `top`; `place` numbers its formulas. */
export function runUpBlock(
  channel: RunUpChannel,
  top: number,
  place: (formula: string) => number,
): RunUpBlock {
  const { tag, unit, sensitivityUnit, configured, amplitudes, points, thresholds } = channel;
  const [threshold] = thresholds;
  const look = `level${decimalsFor(threshold?.setpoint ?? null)}`;
  const fine = `level${decimalsFor(configured)}`;
  const shownFormula = place('B{r}*E{r}/F{r}');
  const realFormula = place('C{r}*F{r}/E{r}');
  const name = threshold ? runUpName(threshold) : '';
  const marks: readonly (readonly [string, number | null])[] = [
    ['should act', threshold?.should ?? null],
    ['acts', threshold?.acts ?? null],
  ];
  const rows: ModelRow[] = [
    {
      height: 22,
      cells: [cell(threshold ? `${tag} ${name}: ${runUpText(channel, threshold)}` : tag, 'tag')],
    },
    ...marks.map(([label, speed]): ModelRow => ({
      cells:
        speed === null
          ? [undefined, cell(`${label}: not on this run-up`, 'text')]
          : [
              cell(speed, 'speed'),
              cell(label, 'text'),
              undefined,
              cell(threshold ? levelAt(threshold, speed) : null, look),
            ],
    })),
    {
      height: 30,
      cells: [
        'Speed, r/min',
        `Really, ${unit}`,
        `Shown, ${unit}`,
        `${threshold?.name ?? ''} set, ${unit}`,
        `Sensitivity, ${sensitivityUnit}`,
        'Configured',
      ].map((text) => cell(text, 'header')),
    },
    ...points.map(({ speed, real, shown, sensitivity }): ModelRow => ({
      cells: [
        cell(speed, 'speed'),
        { value: real, style: look, ...(amplitudes === 'indicated' ? { formula: realFormula } : {}) },
        { value: shown, style: look, ...(amplitudes === 'real' ? { formula: shownFormula } : {}) },
        cell(threshold ? levelAt(threshold, speed) : null, look),
        cell(sensitivity, fine),
        cell(configured, fine),
      ],
    })),
  ];
  while (rows.length < headRows + drawnRows) rows.push({ cells: [] });
  rows.push({ cells: [] });
  return { rows, chart: chartOf(channel, threshold, top) };
}

function levelAt({ setpoint, multiplier, multiplierSpeed }: RunUpThreshold, speed: number): number {
  return speed < (multiplierSpeed ?? Infinity) ? multiplier * setpoint : setpoint;
}

function chartOf(
  { tag, unit, points }: RunUpChannel,
  threshold: RunUpThreshold | undefined,
  top: number,
): ScatterChart {
  const [first, last] = [top + headRows, top + headRows + points.length - 1];
  const down = (column: number) => ({ area: { top: first, bottom: last, left: column, right: column } });
  const x = down(at.speed);
  const mark = (name: string, row: number, marker: NonNullable<ScatterSeries['marker']>): ScatterSeries => ({
    name,
    x: { area: { top: top + row, bottom: top + row, left: at.speed, right: at.speed } },
    y: { area: { top: top + row, bottom: top + row, left: at.set, right: at.set } },
    marker,
  });
  return {
    kind: 'scatter',
    title: `${tag}: amplitude against speed`,
    alternativeText: `${tag}: real and shown amplitude in ${unit} against speed in r/min, with the setpoint, the speed at which it acts and that at which it should.`,
    place: { top: top + 1, bottom: top + headRows + drawnRows - 1, ...drawing },
    xAxis: { title: 'Speed, r/min', numberFormat: '#,##0' },
    yAxis: { title: unit, numberFormat: 'General' },
    series: [
      { name: 'really', x, y: down(at.real), line: { color: verdictLooks.late.light, width: 2 } },
      { name: 'shown', x, y: down(at.shown), line: { color: tones.quiet, width: 2, dash: 'dash' } },
      {
        name: `${threshold?.name ?? 'threshold'} set`,
        x,
        y: down(at.set),
        line: { color: tones.ink, width: 1, dash: 'dot' },
      },
      ...((threshold?.should ?? null) === null
        ? []
        : [mark('should act', 1, { shape: 'triangle', size: 11, color: verdictLooks.late.light })]),
      ...((threshold?.acts ?? null) === null
        ? []
        : [mark('acts', 2, { shape: 'diamond', size: 11, color: tones.quiet })]),
    ],
  };
}
