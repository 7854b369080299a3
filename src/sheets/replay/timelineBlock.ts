import { outcomeText } from '../../audit/advise/replayedText.ts';
import type { Moment, ReplayedChannel, ReplayedThreshold } from '../../audit/model/report.ts';
import { clockOf } from '../../audit/model/wording.ts';
import type { Area } from '../../cells/sheet.ts';
import { cell } from '../cells.ts';
import type { ScatterChart, ScatterSeries } from '../charts/model.ts';
import { palette, tones } from '../look/palette.ts';
import { decimalsFor } from '../look/significant.ts';
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

/** The threshold of a channel that its drawing is about: the first of its list that did anything, else the first. */
export function drawnThreshold({ thresholds }: ReplayedChannel): ReplayedThreshold | undefined {
  return thresholds.find(({ outcome }) => outcome !== 'not reached') ?? thresholds[0];
}

/** A block whose first row is `top`: its readings below each other, the drawing beside them. */
export function timelineBlock(
  channel: ReplayedChannel,
  threshold: ReplayedThreshold,
  top: number,
): TimelineBlock {
  const { tag, unit, timeline } = channel;
  const { name, setpoint, acted, should } = threshold;
  const zero = should.proven ?? acted.proven ?? timeline[0] ?? null;
  const minutes = (moment: Moment): number => (moment.seconds - (zero?.seconds ?? 0)) / 60;
  const look = `level${decimalsFor(setpoint)}`;
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
            undefined,
            cell(label, 'text'),
            cell(setpoint, look),
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
        cell(setpoint, look),
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
  const down = (column: number): { readonly area: Area } => ({
    area: { top: first, bottom: last, left: column, right: column },
  });
  const mark = (row: number, column: number): { readonly area: Area } => ({
    area: { top: top + row, bottom: top + row, left: column, right: column },
  });
  const x = down(at.minutes);
  const marked = (label: string, row: number, marker: ScatterSeries['marker']): ScatterSeries => ({
    name: label,
    x: mark(row, at.minutes),
    y: mark(row, at.set),
    ...(marker ? { marker } : {}),
  });
  return {
    kind: 'scatter',
    title: `${tag}: shown and real, ${name}`,
    alternativeText: `${tag} over time in minutes: what the monitor showed and what was really there, in ${unit}, with ${name}, when it should have acted and when it did.`,
    place: { top: top + 1, bottom: top + headRows + drawnRows - 1, ...drawing },
    xAxis: { title: from, numberFormat: 'General' },
    yAxis: { title: unit, numberFormat: 'General' },
    series: [
      { name: 'really', x, y: down(at.real), line: { color: palette.orange, width: 2 } },
      { name: 'shown', x, y: down(at.shown), line: { color: palette.blue, width: 2, dash: 'dash' } },
      { name: `${name} set`, x, y: down(at.set), line: { color: tones.ink, width: 1, dash: 'dot' } },
      ...(should.proven
        ? [marked('should have acted', 1, { shape: 'triangle', size: 11, color: palette.orange })]
        : []),
      ...(acted.proven ? [marked('acted', 2, { shape: 'diamond', size: 11, color: palette.blue })] : []),
    ],
  };
}
