import { factOf, type PlacedFact } from '../../model/findings.ts';
import { convert } from '../../../units/unit.ts';
import { parseUnit, type Unit } from '../../../units/parse.ts';
import type { Channel } from '../../model/channel.ts';
import type { RecordResult } from '../../model/report.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import { readDate } from '../../read/rows/date.ts';
import { placeOf } from '../../read/rows/diagnostic.ts';
import type { Amount } from '../../read/rows/rowReader.ts';
import { asLeft } from '../../read/records/recordCells.ts';
import type { SnapshotChannel } from '../../model/snapshot.ts';
import type { FoundTable } from '../../read/tables/found.ts';
import type { HistoryBook, Reading, TaggedReading } from '../../read/history/reading.ts';
import { isSameNumber } from '../../model/sameValue.ts';

/** A reading in the unit of its channel. */
interface DatedValue {
  /** Day counted from 1970-01-01. */
  readonly day: number;
  readonly sensitivity: number;
  readonly asLeft: boolean;
}

/** Readings in the order of their dates, each once, and where they begin to count. */
interface Counting<T extends DatedValue> {
  readonly readings: readonly T[];
  /** Place of the first that counts. */
  readonly from: number;
  /** What was found before the last correction; `undefined` where there was none. */
  readonly found: T | undefined;
}

/** Where dated readings of channels come from, beside the channel list. */
export interface DriftSources {
  readonly history: HistoryBook;
  /** Channels of an earlier audit by what tags are compared by. */
  readonly before: ReadonlyMap<string, readonly SnapshotChannel[]>;
}

/** A reading in the unit of its channel, with where it was found. */
export type ChannelReading = Reading & DatedValue;

/** What there is of one channel. */
export interface ReadChannel {
  readonly channel: Channel;
  readonly row: ChannelRow;
  readonly table: FoundTable;
  readonly history: readonly TaggedReading[];
  readonly before: SnapshotChannel | undefined;
  readonly record: RecordResult | null;
  readonly asLeft: Amount | null;
}

/**
 * All dated readings of a channel in the unit of its sensitivities: of its histories, of the channel list, of the earlier
 * audit, and the average of its calibration record where no other reading is of that day. A reading in a unit that does
 * not fit is left out, which `leftOut` is told.
 */
export function channelReadings(of: ReadChannel, leftOut: (finding: PlacedFact) => void): ChannelReading[] {
  const { sensitivityUnit: unit } = of.channel;
  const listed: readonly Reading[] = [...of.history, ...fromList(of), ...fromEarlier(of.before)];
  const ofRecord = fromRecord(of.record).filter(({ day }) => listed.every((one) => one.day !== day));
  return [...listed, ...ofRecord].flatMap((reading): ChannelReading[] => {
    const sensitivity = convert(reading.value, reading.unit, unit);
    if (!Number.isNaN(sensitivity)) return [{ ...reading, sensitivity }];
    if (reading.from === 'history') leftOut(misfit(reading, unit));
    return [];
  });
}

function misfit({ sheet, row, column, value, unit }: Reading, wanted: Unit): PlacedFact {
  const values = { kind: 'unit does not fit', value, unit: unit.text, wanted: wanted.text } as const;
  return { ...factOf('history-row-left-out', 'warning', values), sheet, row, column };
}

function fromList({ channel, row, table, asLeft: left }: ReadChannel): Reading[] {
  const day = channel.calibratedOn;
  if (day === null) return [];
  const { measured, sensitivityUnit: unit, uncertainty } = channel;
  const known = { day, from: 'channel list' } as const;
  const found = {
    ...known,
    value: measured,
    unit,
    asLeft: false,
    uncertainty,
    ...placeOf(table, row.row, 'measured'),
  };
  if (!left?.unit || !(left.value > 0)) return [found];
  const place = placeOf(table, row.row, 'asLeftSensitivity');
  return [found, { ...known, value: left.value, unit: left.unit, asLeft: true, uncertainty: null, ...place }];
}

function fromEarlier(before: SnapshotChannel | undefined): Reading[] {
  const measured = before?.values['measured sensitivity'];
  const day = dayOf(before?.calibratedOn ?? null);
  if (!before || !measured || !('amount' in measured) || day === null) return [];
  const unit = parseUnit(measured.unit);
  if (!unit || !(measured.amount > 0)) return [];
  const place = { ...before.source, column: 'A' };
  return [
    { day, value: measured.amount, unit, asLeft: false, uncertainty: null, from: 'earlier audit', ...place },
  ];
}

function fromRecord(record: RecordResult | null): Reading[] {
  const day = dayOf(record?.takenOn ?? null);
  const unit = record && parseUnit(`mV/${record.gapUnit}`);
  if (!record || !unit || day === null || !(record.average > 0)) return [];
  const { average: value, series, sheet, row } = record;
  const known = { day, value, unit, uncertainty: null, from: 'calibration record' } as const;
  return [{ ...known, asLeft: series === asLeft, sheet, row, column: 'A' }];
}

function dayOf(iso: string | null): number | null {
  if (iso === null) return null;
  const read = readDate(iso);
  return 'day' in read ? read.day : null;
}

/**
 * Brings readings into the order of their dates, as found before as left, and leaves out those that repeat the value of
 * their day. The last as-left reading that differs from what was found on its day is a correction, or, where nothing was
 * found that day, from what was found last, if nothing was left since: an outage may take more than a day. The readings
 * count from it on, itself included. Of equals the first given is kept.
 */
export function countingReadings<T extends DatedValue>(all: readonly T[]): Counting<T> {
  const inOrder = all.toSorted(
    (one, other) => one.day - other.day || Number(one.asLeft) - Number(other.asLeft),
  );
  const readings: T[] = [];
  let from = 0;
  let found: T | undefined;
  let open: T | undefined;
  for (const reading of inOrder) {
    const ofDay = sameDay(readings, reading.day);
    const before = reading.asLeft ? (ofDay.findLast(({ asLeft }) => !asLeft) ?? open) : undefined;
    open = reading.asLeft ? undefined : reading;
    if (ofDay.some(({ sensitivity }) => isSameNumber(sensitivity, reading.sensitivity))) continue;
    if (before && !isSameNumber(before.sensitivity, reading.sensitivity))
      [from, found] = [readings.length, before];
    readings.push(reading);
  }
  return { readings, from, found };
}

function sameDay<T extends DatedValue>(readings: readonly T[], day: number): T[] {
  const ofDay: T[] = [];
  for (let at = readings.length - 1; at >= 0 && readings[at]?.day === day; at--) {
    const reading = readings[at];
    if (reading) ofDay.unshift(reading);
  }
  return ofDay;
}
