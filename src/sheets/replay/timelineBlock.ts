import { outcomeText } from '../../audit/advise/replayedText.ts';
import type { Moment, ReplayedChannel, ReplayedThreshold } from '../../audit/model/report.ts';
import { clockOf } from '../../audit/model/wording.ts';
import { cell } from '../cells.ts';
import type { ScatterChart } from '../charts/model.ts';
import { realAndShown } from '../charts/realAndShown.ts';
import { givenStyle } from '../look/significant.ts';
import type { ModelRow } from '../model.ts';

/** The readings of one channel about what happened, with their drawing. */
export interface TimelineBlock {
  readonly rows: readonly ModelRow[];
  readonly chart: ScatterChart;
}

/** Rows that the drawing takes. */
const drawnRows = 22;
const headRows = 4;
/** Columns of the block: minutes, time, shown, really, and the setpoint. */
const at = { minutes: 1, time: 2, shown: 3, real: 4, set: 5 } as const;
const drawing = { left: 7, right: 16 } as const;

/**
 * A block whose first row is `top`: its readings below each other in the style `look`, the drawing beside them.
 */
export function timelineBlock(
  channel: ReplayedChannel,
  threshold: ReplayedThreshold,
  top: number,
  look: string,
): TimelineBlock {
  const { tag, unit, timeline } = channel;
  const { name, setpoint, acted, should } = threshold;
  const zero = should.proven ?? acted.proven ?? timeline[0] ?? null;
  const minutes = (moment: Moment): number => (moment.seconds - (zero?.seconds ?? 0)) / 60;
  const given = givenStyle(setpoint);
  const marks: readonly (readonly [label: string, moment: Moment | null])[] = [
    ['should have acted', should.proven],
    ['acted', acted.proven],
  ];
  const from = zero === null ? '' : `Minutes from ${clockOf(zero.time)}`;
  const rows: ModelRow[] = [
    { height: 22, cells: [cell(`${tag} ${name}: ${outcomeText(threshold)}`, 'tag')] },
    ...marks.map(([label, moment]): ModelRow => ({
      cells: moment
        ? [
            cell(minutes(moment), 'minutes'),
            cell(clockOf(moment.time), 'text'),
            cell(label, 'text'),
            undefined,
            cell(setpoint, given),
          ]
        : [undefined, cell(`${label}: not in this record`, 'text')],
    })),
    {
      height: 30,
      cells: [from, 'Time', `Shown, ${unit}`, `Really, ${unit}`, `${name} set, ${unit}`].map((text) =>
        cell(text, 'header'),
      ),
    },
    ...timeline.map((point): ModelRow => ({
      cells: [
        cell(minutes(point), 'minutes'),
        cell(clockOf(point.time), 'text'),
        cell(point.shown, look),
        cell(point.real, look),
        cell(setpoint, given),
      ],
    })),
  ];
  while (rows.length < headRows + drawnRows) rows.push({ cells: [] });
  rows.push({ cells: [] });
  return { rows, chart: chartOf(channel, threshold, top, timeline.length, from) };
}

function chartOf(
  { tag, unit }: ReplayedChannel,
  { name, acted, should }: ReplayedThreshold,
  top: number,
  points: number,
  from: string,
): ScatterChart {
  const first = top + headRows;
  const last = first + Math.max(1, points) - 1;
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
      columns: { x: at.minutes, real: at.real, shown: at.shown, set: at.set },
      setName: `${name} set`,
      should: should.proven && ['should have acted', top + 1],
      acts: acted.proven && ['acted', top + 2],
    }),
  };
}
