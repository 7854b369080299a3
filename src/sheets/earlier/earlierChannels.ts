import {
  thresholdNames,
  verdicts,
  type ThresholdName,
  type ThresholdVerdict,
} from '../../audit/model/threshold.ts';
import { verdictWords } from '../../audit/model/wording.ts';
import { isoDate } from '../../cells/cell.ts';
import { channelVerdict } from '../../audit/model/order.ts';
import { tagKey } from '../../audit/read/tables/tagKey.ts';
import { notADate } from '../../audit/advise/messages/phrases.ts';
import { readDate } from '../../audit/read/rows/date.ts';
import {
  type SnapshotChannel,
  type SnapshotThreshold,
  type Quantity,
  type Value,
  quantityNames,
} from '../../audit/model/snapshot.ts';
import type { ResultCells } from './resultCells.ts';
import { amountIn, word } from '../../audit/since/fromReport.ts';

/** The column of a sheet of results in which each quantity stands; those left out it does not show. */
const columnOf: Readonly<Partial<Record<Quantity, string>>> = {
  ...Object.fromEntries(thresholdNames.map((name) => [name, 'setpoint'])),
  'configured sensitivity': 'configured',
  'measured sensitivity': 'measured',
  'set-point multiplier': 'multiplier',
  'full scale': 'fullScale',
  limit: 'limit',
  resolution: 'resolution',
  detection: 'detection',
  kind: 'kind',
  'configured zero voltage': 'zeroConfigured',
  'measured zero voltage': 'zeroMeasured',
  'positive direction': 'sign',
  'monitor gain': 'gain',
  'zero voltage uncertainty': 'zeroUncertainty',
  'loop current at 0 %': 'loopAtZero',
  'loop current at 100 %': 'loopAtSpan',
  bypass: 'inBypass',
};

interface Lines {
  readonly row: number;
  readonly tag: string;
  readonly thresholds: SnapshotThreshold[];
}

/** The channels of a sheet of results: its lines by tag and by the row of the channel list that they name. */
export function earlierChannels(
  sheet: string,
  cells: ResultCells,
  firstRow: number,
  lastRow: number,
): { readonly channels: readonly SnapshotChannel[]; readonly unknown: readonly Quantity[] } {
  const found = new Map<string, Lines>();
  for (let row = firstRow; row <= lastRow; row++) {
    const tag = cells.text(row, 'tag');
    if (tag === '') continue;
    const key = [tagKey(tag), cells.text(row, 'sheet'), cells.text(row, 'row')].join('\n');
    const lines = found.get(key) ?? { row, tag, thresholds: [] };
    found.set(key, lines);
    const threshold = thresholdIn(cells, row);
    if (threshold) lines.thresholds.push(threshold);
  }
  const channels = [...found.values()].map((lines) => channelOf(sheet, cells, lines));
  return { channels, unknown: unknownQuantities(cells) };
}

function channelOf(sheet: string, cells: ResultCells, { row, tag, thresholds }: Lines): SnapshotChannel {
  return {
    tag,
    machine: cells.text(row, 'machine'),
    location: cells.text(row, 'location'),
    unit: cells.text(row, 'unit') || null,
    detection: cells.text(row, 'detection') || null,
    verdict: channelVerdict(thresholds),
    thresholds,
    values: earlierValues(cells, row, thresholds),
    calibratedOn: dayIn(cells, row),
    source: { sheet, row },
  };
}

/** The threshold of a line; `undefined` where its name is none, incomplete where its verdict is none, with a remark. */
function thresholdIn(cells: ResultCells, row: number): SnapshotThreshold | undefined {
  const [name, verdict] = [cells.text(row, 'threshold'), cells.text(row, 'verdict')];
  if (!isName(name)) {
    refuse(cells, row, 'threshold', name, thresholdNames);
    return undefined;
  }
  const known = verdictIn(verdict);
  if (!known) refuse(cells, row, 'verdict', verdict, Object.values(verdictWords));
  return {
    name,
    verdict: known ?? 'incomplete',
    multiplier: cells.number(row, 'multiplier') ?? 1,
    setpoint: cells.number(row, 'setpoint'),
    effective: cells.number(row, 'effective'),
  };
}

function refuse(cells: ResultCells, row: number, id: string, text: string, known: readonly string[]): void {
  cells.remark(
    row,
    id,
    `'${text.slice(0, 60)}' in row ${row} is none of ${known.join(', ')}, so it could not be compared. Restore the sheet, or audit the earlier workbook anew.`,
  );
}

function isName(text: string): text is ThresholdName {
  return thresholdNames.some((name) => name === text);
}

/** A verdict by its word, or by its name in the report, as results before rules version 0.4.0 have it. */
function verdictIn(text: string): ThresholdVerdict | undefined {
  return verdicts.find((verdict) => verdictWords[verdict] === text || verdict === text);
}

function dayIn(cells: ResultCells, row: number): string | null {
  const text = cells.text(row, 'calibratedOn');
  if (text === '') return null;
  const read = readDate(text);
  if ('day' in read) return isoDate(read.day);
  cells.remark(
    row,
    'calibratedOn',
    `'${text.slice(0, 60)}' ${notADate[read.why]}; write the day as year-month-day, such as 2025-03-14.`,
  );
  return null;
}

/** Quantities that the sheet does not show. */
function unknownQuantities(cells: ResultCells): Quantity[] {
  return quantityNames.filter((name) => !cells.has(columnOf[name] ?? ''));
}

/** Settings and readings of a channel as its first line and its thresholds show them. */
function earlierValues(
  cells: ResultCells,
  row: number,
  thresholds: readonly SnapshotThreshold[],
): Partial<Record<Quantity, Value | null>> {
  const unit = cells.text(row, 'unit') || null;
  const detection = cells.text(row, 'detection') || null;
  const level = (id: string) => amountIn(cells.number(row, id), unit, detection);
  const sensitivity = (id: string) =>
    amountIn(cells.number(row, id), cells.text(row, 'sensitivityUnit') || null);
  const setpoint = (name: ThresholdName) => {
    const own = thresholds.find((one) => one.name === name && one.multiplier === 1);
    return amountIn(own?.setpoint ?? null, unit, detection);
  };
  const sign = cells.number(row, 'sign');
  const worked = thresholds.some(({ verdict }) => verdict !== 'incomplete');
  return {
    ...Object.fromEntries(thresholdNames.map((name) => [name, setpoint(name)])),
    'configured sensitivity': sensitivity('configured'),
    'measured sensitivity': sensitivity('measured'),
    'set-point multiplier': worked
      ? amountIn(Math.max(1, ...thresholds.map(({ multiplier }) => multiplier)), '')
      : null,
    'full scale': level('fullScale'),
    limit: level('limit'),
    resolution: level('resolution'),
    detection: word(detection),
    kind: word(cells.text(row, 'kind')),
    'configured zero voltage': amountIn(cells.number(row, 'zeroConfigured'), 'V'),
    'measured zero voltage': amountIn(cells.number(row, 'zeroMeasured'), 'V'),
    'positive direction': word(sign === null ? null : sign > 0 ? 'toward' : 'away'),
    // A sheet shows a gain where one was measured.
    'monitor gain': worked ? amountIn(cells.number(row, 'gain') ?? 1, '') : null,
    'zero voltage uncertainty': amountIn(cells.number(row, 'zeroUncertainty'), 'V'),
    'loop current at 0 %': amountIn(cells.number(row, 'loopAtZero'), 'mA'),
    'loop current at 100 %': amountIn(cells.number(row, 'loopAtSpan'), 'mA'),
    bypass: bypassIn(cells, row),
  };
}

/** Whether a channel was in bypass; `null` where no settings were joined with it, or the sheet does not say. */
function bypassIn(cells: ResultCells, row: number): Value | null {
  const text = cells.text(row, 'inBypass');
  return cells.text(row, 'settingsSheet') !== '' && (text === 'yes' || text === 'no') ? word(text) : null;
}
