import { outcomeText } from '../../audit/advise/replayedText.ts';
import type { Moment, ReplayedChannel, ReplayedThreshold } from '../../audit/model/report.ts';
import { clockOf } from '../../audit/model/wording.ts';
import { cell } from '../cells.ts';
import type { ScatterChart } from '../charts/model.ts';
import { realAndShown } from '../charts/realAndShown.ts';
import { blockList } from '../column.ts';
import { givenStyle } from '../style/significant.ts';
import type { ModelRow } from '../model.ts';

/** The readings of one channel about what happened, with their drawing. */
export interface TimelineBlock {
  readonly rows: readonly ModelRow[];
  readonly chart: ScatterChart;
}

/** Rows that the drawing takes. */
const drawnRows = 22;
const headRows = 4;
const drawing = { left: 7, right: 16 } as const;

/**
 * A block whose first row is `top`: its readings below each other in the style `levelStyle`, the drawing beside them.
 */
export function timelineBlock(
  channel: ReplayedChannel,
  threshold: ReplayedThreshold,
  top: number,
  levelStyle: string,
): TimelineBlock {
  const { tag, unit, timeline } = channel;
  const { name, setpoint, acted, should } = threshold;
  const zero = should.proven ?? acted.proven ?? timeline[0] ?? null;
  const minutes = (moment: Moment): number => (moment.seconds - (zero?.seconds ?? 0)) / 60;
  const given = givenStyle(setpoint);
  const from = zero === null ? '' : `Minutes from ${clockOf(zero.time)}`;
  const list = blockList<ReplayedChannel['timeline'][number]>([
    { id: 'x', header: from, style: 'minutes', value: minutes },
    { id: 'time', header: 'Time', style: 'text', value: ({ time }) => clockOf(time) },
    { id: 'shown', header: `Shown, ${unit}`, style: levelStyle, value: ({ shown }) => shown },
    { id: 'real', header: `Really, ${unit}`, style: levelStyle, value: ({ real }) => real },
    { id: 'set', header: `${name} set, ${unit}`, style: given, value: () => setpoint },
  ]);
  const mark = (label: string, moment: Moment | null): ModelRow =>
    moment
      ? list.arranged({
          x: cell(minutes(moment), 'minutes'),
          time: cell(clockOf(moment.time), 'text'),
          shown: cell(label, 'text'),
          set: cell(setpoint, given),
        })
      : list.arranged({ time: cell(`${label}: not in this record`, 'text') });
  const rows: ModelRow[] = [
    { height: 22, cells: [cell(`${tag} ${name}: ${outcomeText(threshold)}`, 'tag')] },
    mark('should have acted', should.proven),
    mark('acted', acted.proven),
    { height: 30, cells: list.headers },
    ...timeline.map((point) => list.row(point)),
  ];
  while (rows.length < headRows + drawnRows) rows.push({ cells: [] });
  rows.push({ cells: [] });
  return { rows, chart: chartOf(channel, threshold, top, from, list.numberOf) };
}

function chartOf(
  { tag, unit, timeline }: ReplayedChannel,
  { name, acted, should }: ReplayedThreshold,
  top: number,
  from: string,
  columnOf: (id: string) => number,
): ScatterChart {
  const first = top + headRows;
  const last = first + Math.max(1, timeline.length) - 1;
  return {
    kind: 'scatter',
    title: `${tag}: shown and real, ${name}`,
    alternativeText: `${tag} over time in minutes: what the monitor showed and what was really there, in ${unit}, with ${name}, when it should have acted and when it did.`,
    place: { top: top + 1, bottom: top + headRows + drawnRows - 1, ...drawing },
    xAxis: { title: from, numberFormat: 'General' },
    yAxis: { title: unit, numberFormat: 'General' },
    series: realAndShown({
      first,
      last,
      columnOf,
      setName: `${name} set`,
      should: should.proven && ['should have acted', top + 1],
      acts: acted.proven && ['acted', top + 2],
    }),
  };
}
