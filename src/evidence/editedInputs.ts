import type { ThresholdResult } from '../audit/model/threshold.ts';
import type { ChannelResult, Report } from '../audit/model/report.ts';
import { columnsOf } from '../audit/read/tables/vocabulary.ts';
import type { Steps } from '../audit/model/steps.ts';
import type { Cell } from '../cells/cell.ts';
import type { Sheet } from '../cells/sheet.ts';
import { columns } from '../sheets/results/columns.ts';
import { lineOf } from '../sheets/results/line.ts';
import { headerRow } from '../sheets/results/headerRow.ts';
import { Differences } from './differences.ts';
import { type InputPlaces, inputColumns, type InputPlace } from './inputPlaces.ts';
import { quoted, sameValue, valueText } from './sameValue.ts';
import type { CellDifference } from './verification.ts';

const idAt = columns.map(({ id }) => id);
const [tagAt, machineAt, thresholdAt, multiplierAt] = ['tag', 'machine', 'threshold', 'multiplier'].map(
  (id) => idAt.indexOf(id),
);

/** Channels between two steps. */
const stride = 250;

/** Inputs that are not those of the audit. */
export interface EditedInputs {
  readonly differences: Differences;
  /** Channels or thresholds that came or went. */
  readonly said: readonly string[];
}

/**
 * Names the inputs that were edited: compares what the results sheet shows of the inputs with what an audit of the cells
 * as they are now reads. In the channel's unit, as the sheet shows them; the place is the cell in the user's own table.
 * `places` names it where the tables don't.
 */
export function* editedInputs(now: Report, results: Sheet, places: InputPlaces): Steps<number, EditedInputs> {
  const before = linesByKey(results);
  const differences = new Differences();
  const placed = new Set<string>();
  const came: string[] = [];
  for (const [index, channel] of now.channels.entries()) {
    if (index % stride === 0) yield index / now.channels.length;
    for (const threshold of channel.thresholds) {
      const key = keyOf(channel, threshold);
      const cells = takeLine(before.get(key), channel);
      if (!cells) {
        came.push(nameOf(key));
        continue;
      }
      for (const difference of between(now, places, channel, threshold, cells)) {
        const at = `${difference.sheet}\n${difference.row}\n${difference.column}`;
        if (!placed.has(at)) differences.add(difference);
        placed.add(at);
      }
    }
  }
  const gone = [...before].flatMap(([key, left]) => left.map(() => nameOf(key)));
  return {
    differences,
    said: [...listed('Not there when it was audited', came), ...listed('No longer there', gone)],
  };
}

/** Lines of a results sheet by their keys; a tag that stands twice has several, in the order of its rows. */
function linesByKey({ rows }: Sheet): Map<string, (readonly Cell[])[]> {
  const found = new Map<string, (readonly Cell[])[]>();
  for (const cells of rows.slice(headerRow)) {
    const key = keyIn(cells);
    const there = found.get(key);
    if (there) there.push(cells);
    else if (nameOf(key) !== '') found.set(key, [cells]);
  }
  return found;
}

/** Takes a channel's line out of those of its tag: that of its machine, else the first. */
function takeLine(
  lines: (readonly Cell[])[] | undefined,
  { machine }: ChannelResult,
): readonly Cell[] | undefined {
  const own = lines?.findIndex((cells) => sameValue(cells[machineAt ?? 0] ?? null, machine)) ?? -1;
  return lines?.splice(Math.max(0, own), 1)[0];
}

function* between(
  now: Report,
  places: InputPlaces,
  channel: ChannelResult,
  threshold: ThresholdResult,
  cells: readonly Cell[],
): Generator<CellDifference> {
  const line = lineOf(channel, threshold, now.policy);
  for (const [index, { id, value }] of columns.entries()) {
    const input = inputColumns.get(id);
    const cell = cells[index] ?? null;
    if (!input || sameValue(cell, value(line))) continue;
    yield {
      ...placeOf(now, places, channel, threshold, input),
      stands: valueText(value(line)),
      should: quoted(cell),
    };
  }
}

function placeOf(
  { columns: readings }: Report,
  places: InputPlaces,
  channel: ChannelResult,
  { name }: ThresholdResult,
  { table, column, asLeft }: InputPlace,
): Pick<CellDifference, 'sheet' | 'row' | 'column'> {
  const { source, state } = channel;
  const { sheet, row } = (table === 'settings' ? source.settings : null) ?? source.channels;
  const listed = state === 'as left' ? (asLeft ?? column) : column;
  const id =
    listed === 'setpoint' ? name.replace(/ (.)/u, (_, letter: string) => letter.toUpperCase()) : listed;
  const place = places(channel, table, id);
  if (place) return place;
  const meaning = columnsOf(table)[id]?.name;
  const of = table === 'channels' ? 'channel list' : 'monitor settings';
  const reading =
    readings.find((one) => one.table === of && one.meaning === meaning) ??
    readings.find((one) => one.meaning === meaning);
  return { sheet, row, column: reading?.column ?? 'A' };
}

/** By what a line of the results sheet is known again. */
function keyOf({ tag }: ChannelResult, { name, multiplier }: ThresholdResult): string {
  return `${tag}\n${name}\n${multiplier}`;
}

function keyIn(cells: readonly Cell[]): string {
  const [tag, threshold, multiplier] = [tagAt, thresholdAt, multiplierAt].map((at) =>
    quoted(cells[at ?? 0] ?? null),
  );
  return `${tag ?? ''}\n${threshold ?? ''}\n${multiplier ?? ''}`;
}

function nameOf(key: string): string {
  return key.split('\n').slice(0, 2).join(' ').trim();
}

function listed(what: string, names: readonly string[]): string[] {
  if (names.length === 0) return [];
  const more = names.length > 5 ? ` and ${names.length - 5} more` : '';
  return [`${what}: ${names.slice(0, 5).join(', ')}${more}.`];
}
