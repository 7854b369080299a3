import { runUpName, runUpText } from '../../audit/advise/runUpText.ts';
import type { RunUpChannel, RunUpPointResult, RunUpThreshold } from '../../audit/model/report.ts';
import { setpointAt } from '../../audit/model/runUp.ts';
import { cell } from '../cells.ts';
import type { ScatterChart } from '../charts/model.ts';
import { realAndShown } from '../charts/realAndShown.ts';
import { blockList } from '../column.ts';
import { decimalsFor, givenStyle } from '../style/significant.ts';
import type { ModelRow } from '../model.ts';

/** The points of one run-up, with their drawing. */
export interface RunUpBlock {
  readonly rows: readonly ModelRow[];
  readonly chart: ScatterChart;
}

const drawnRows = 22;
const headRows = 4;
const drawing = { left: 8, right: 16 } as const;

/**
 * A block whose first row is `top`, its levels in the style `levelStyle`; `place` numbers its formulas, which hold where real and
 * shown are a ratio of sensitivities.
 */
export function runUpBlock(
  channel: RunUpChannel,
  isRatio: boolean,
  top: number,
  levelStyle: string,
  place: (formula: string) => number,
): RunUpBlock {
  const { tag, unit, sensitivityUnit, sensitivityFrom, configured, amplitudes, points, thresholds } = channel;
  const [threshold] = thresholds;
  const isOne = sensitivityFrom === 'one sensitivity';
  const ofSensitivity = `level${decimalsFor(configured)}`;
  const setAt = ({ speed }: Pick<RunUpPointResult, 'speed'>): number | null =>
    threshold ? setpointAt(threshold, speed) : null;
  const list = blockList<RunUpPointResult>([
    { id: 'x', header: 'Speed, r/min', style: 'speed', value: ({ speed }) => speed },
    {
      id: 'real',
      header: `Really, ${unit}`,
      style: levelStyle,
      value: ({ real }) => real,
      formula: '[shown]*[configured]/[sensitivity]',
      applies: () => isRatio && amplitudes === 'indicated',
    },
    {
      id: 'shown',
      header: `Shown, ${unit}`,
      style: levelStyle,
      value: ({ shown }) => shown,
      formula: '[real]*[sensitivity]/[configured]',
      applies: () => isRatio && amplitudes === 'real',
    },
    {
      id: 'set',
      header: `${threshold?.name ?? ''} set, ${unit}`,
      style: (point) => givenStyle(setAt(point)),
      value: setAt,
    },
    {
      id: 'sensitivity',
      header: `Sensitivity, ${sensitivityUnit}`,
      style: ({ sensitivity }) => (isOne ? givenStyle(sensitivity) : ofSensitivity),
      value: ({ sensitivity }) => sensitivity,
    },
    { id: 'configured', header: 'Configured', style: givenStyle(configured), value: () => configured },
  ]);
  const mark = (label: string, speed: number | null): ModelRow => {
    if (speed === null) return list.arranged({ real: cell(`${label}: not on this run-up`, 'text') });
    const set = setAt({ speed });
    return list.arranged({
      x: cell(speed, 'speed'),
      real: cell(label, 'text'),
      set: cell(set, givenStyle(set)),
    });
  };
  const words = threshold ? `${tag} ${runUpName(threshold)}: ${runUpText(channel, threshold)}` : tag;
  const rows: ModelRow[] = [
    { height: 22, cells: [cell(words, 'tag')] },
    mark('should act', threshold?.should ?? null),
    mark('acts', threshold?.acts ?? null),
    { height: 30, cells: list.headers },
    ...points.map((point) => list.row(point, place)),
  ];
  while (rows.length < headRows + drawnRows) rows.push({ cells: [] });
  rows.push({ cells: [] });
  return { rows, chart: chartOf(channel, threshold, top, list.numberOf) };
}

function chartOf(
  { tag, unit, points }: RunUpChannel,
  threshold: RunUpThreshold | undefined,
  top: number,
  columnOf: (id: string) => number,
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
      columnOf,
      setName: `${threshold?.name ?? 'threshold'} set`,
      should: (threshold?.should ?? null) === null ? null : ['should act', top + 1],
      acts: (threshold?.acts ?? null) === null ? null : ['acts', top + 2],
    }),
  };
}
