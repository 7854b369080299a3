import { level } from '../../audit/model/wording.ts';
import { wide, type Entry } from '../style/layout.ts';
import type { ChannelRow } from './channelRows.ts';
import { type PageLine, clipped } from './paper.ts';

/** Marks of the drawing. */
const marks = { set: '△', trips: '▼', limit: '┃' } as const;

/** What a line of the drawing shows, each as a part of where it is set: 1 is on the setting. */
interface DrawnLine {
  readonly name: string;
  readonly set: string;
  readonly trips: { readonly at: number; readonly text: string };
  readonly limit: { readonly at: number; readonly text: string } | null;
}

/** Columns of the page: the channel's name, then the scale. */
interface Room {
  readonly name: number;
  readonly scale: number;
}

/** Whether there is a level at which a row's danger really trips. */
export function canBeDrawn({ channel, danger }: ChannelRow): boolean {
  return (
    channel.inBypass === false &&
    danger !== null &&
    danger.setpoint !== null &&
    danger.effective !== null &&
    danger.verdict !== 'incomplete' &&
    danger.verdict !== 'unreachable'
  );
}

/**
 * A line a channel on one scale, parts of where each is set, so that all settings stand below each other and what stands to
 * the right of them is late. In plain cells: grey paper, every program and a reader's eye take it alike.
 */
export function levelDrawing(rows: readonly ChannelRow[], room: Room): readonly PageLine[] {
  const lines = rows.filter(canBeDrawn).map(drawnLine);
  const [from, to] = scaleOf(lines);
  const columnAt = (part: number): number =>
    Math.min(room.scale - 1, Math.max(0, Math.round(((part - from) / (to - from)) * (room.scale - 1))));
  return lines.flatMap((line) => {
    const [set, trips] = [columnAt(1), columnAt(line.trips.at)];
    const beyond = line.trips.at > to ? ' »' : line.trips.at < from ? ' «' : '';
    const limit =
      line.limit && line.limit.at <= to ? { ...line.limit, column: columnAt(line.limit.at) } : null;
    const above = [
      { column: trips, mark: marks.trips, text: `${line.trips.text}${beyond}`, left: trips < set },
    ];
    const below = [
      { column: set, mark: marks.set, text: line.set, left: limit === null || limit.column >= set },
      ...(limit && limit.column !== set
        ? [{ column: limit.column, mark: marks.limit, text: limit.text, left: limit.column < set }]
        : []),
    ];
    return [
      {
        entries: [wide(line.name, 'drawnName', room.name), ...cellsOf(above, room.scale, 'drawnTop')],
        height: 16,
      },
      { entries: [wide(null, 'drawnName', room.name), ...cellsOf(below, room.scale, 'drawn')], height: 13 },
    ];
  });
}

function drawnLine({ channel, danger, counter, multiplier }: ChannelRow): DrawnLine {
  const set = multiplier * (danger?.setpoint ?? NaN);
  const { resolution, limit } = channel.inputs;
  const [acts, low, high] = [danger?.effective ?? NaN, danger?.low ?? null, danger?.high ?? null];
  const say = (value: number): string => level(value, resolution);
  const uncertain = danger?.verdict === 'undetermined' && low !== null && high !== null;
  return {
    name: `${clipped(channel.tag, 24)}${counter ? ' counter' : ''}${multiplier === 1 ? '' : ` × ${multiplier}`}`,
    set: say(set),
    trips: { at: acts / set, text: uncertain ? `${say(low)}–${say(high)}` : say(acts) },
    limit:
      limit === null || multiplier !== 1
        ? null
        : { at: limit / Math.abs(set), text: say(Math.sign(set) * limit) },
  };
}

/** Ends of the scale: what is drawn, but no further than from none to twice the setting. */
function scaleOf(lines: readonly DrawnLine[]): readonly [from: number, to: number] {
  const parts = lines.flatMap(({ trips, limit }) => [trips.at, ...(limit ? [limit.at] : [])]);
  return [
    Math.max(0, Math.min(0.9, ...parts.map((part) => part - 0.1))),
    Math.min(2, Math.max(1.2, ...parts.map((part) => part + 0.12))),
  ];
}

interface Mark {
  readonly column: number;
  readonly mark: string;
  readonly text: string;
  /** Whether its number stands to its left. */
  readonly left: boolean;
}

/** Marks and their numbers on a line of `width` cells, with nothing between them. */
function cellsOf(all: readonly Mark[], width: number, style: string): readonly Entry[] {
  const entries: Entry[] = [];
  let at = 0;
  const upTo = (column: number, value: string, end: string): void => {
    if (column > at) entries.push(wide(value === '' ? null : value, `${style}${end}`, column - at));
    at = Math.max(at, column);
  };
  const sorted = all.toSorted((one, other) => one.column - other.column);
  sorted.forEach(({ column, mark, text, left }, index) => {
    const next = sorted[index + 1]?.column ?? width;
    const toLeft = (left && column - at >= numberWidth) || next - column <= numberWidth;
    if (toLeft) {
      upTo(column - numberWidth, '', '');
      upTo(column, text, 'Left');
      upTo(column + 1, mark, 'Mark');
    } else {
      upTo(column, '', '');
      upTo(column + 1, mark, 'Mark');
      upTo(Math.min(next, column + 1 + numberWidth), text, '');
    }
  });
  upTo(width, '', '');
  return entries;
}

/** Cells that a number takes. */
const numberWidth = 6;
