import { runUpName, runUpText } from '../../audit/advise/runUpText.ts';
import type { RunUpChannel, RunUpThreshold } from '../../audit/model/report.ts';
import { setpointAt } from '../../audit/model/runUp.ts';
import { cell } from '../cells.ts';
import type { ScatterChart } from '../charts/model.ts';
import { realAndShown } from '../charts/realAndShown.ts';
import { decimalsFor, givenStyle } from '../look/significant.ts';
import type { ModelRow } from '../model.ts';

/** The points of one run-up, with their drawing. */
export interface RunUpBlock {
  readonly rows: readonly ModelRow[];
  readonly chart: ScatterChart;
}

const drawnRows = 22;
const headRows = 4;
const at = { x: 1, real: 2, shown: 3, set: 4, sensitivity: 5, configured: 6 } as const;
const drawing = { left: 8, right: 16 } as const;

/**
 * A block whose first row is `top`, its levels in the style `look`; `place` numbers its formulas, which hold where real and
 * shown are a ratio of sensitivities.
 */
export function runUpBlock(
  channel: RunUpChannel,
  isRatio: boolean,
  top: number,
  look: string,
  place: (formula: string) => number,
): RunUpBlock {
  const { tag, unit, sensitivityUnit, sensitivityFrom, configured, amplitudes, points, thresholds } = channel;
  const [threshold] = thresholds;
  const shownBy = isRatio && amplitudes === 'real' ? { formula: place('B{r}*E{r}/F{r}') } : {};
  const realBy = isRatio && amplitudes === 'indicated' ? { formula: place('C{r}*F{r}/E{r}') } : {};
  const isOne = sensitivityFrom === 'one sensitivity';
  const sensitivityLook = isOne ? givenStyle : () => `level${decimalsFor(configured)}`;
  const setAt = (speed: number) => {
    const set = threshold ? setpointAt(threshold, speed) : null;
    return cell(set, givenStyle(set));
  };
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
          : [cell(speed, 'speed'), cell(label, 'text'), undefined, setAt(speed)],
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
        { value: real, style: look, ...realBy },
        { value: shown, style: look, ...shownBy },
        setAt(speed),
        cell(sensitivity, sensitivityLook(sensitivity)),
        cell(configured, givenStyle(configured)),
      ],
    })),
  ];
  while (rows.length < headRows + drawnRows) rows.push({ cells: [] });
  rows.push({ cells: [] });
  return { rows, chart: chartOf(channel, threshold, top) };
}

function chartOf(
  { tag, unit, points }: RunUpChannel,
  threshold: RunUpThreshold | undefined,
  top: number,
): ScatterChart {
  const [first, last] = [top + headRows, top + headRows + points.length - 1];
  return {
    kind: 'scatter',
    title: `${tag}: amplitude against speed`,
    alternativeText: `${tag}: real and shown amplitude in ${unit} against speed in r/min, with the setpoint, the speed at which it acts and that at which it should.`,
    place: { top: top + 1, bottom: top + headRows + drawnRows - 1, ...drawing },
    xAxis: { title: 'Speed, r/min', numberFormat: '#,##0' },
    yAxis: { title: unit, numberFormat: 'General' },
    series: realAndShown({
      first,
      last,
      columnOf: (id) => at[id],
      setName: `${threshold?.name ?? 'threshold'} set`,
      should: (threshold?.should ?? null) === null ? null : ['should act', top + 1],
      acts: (threshold?.acts ?? null) === null ? null : ['acts', top + 2],
    }),
  };
}
