import { factOf } from '../../model/findings.ts';
import { isoDate } from '../../../cells/cell.ts';
import { convert } from '../../../units/unit.ts';
import { fixed, inUnit } from '../evaluate/amounts.ts';
import type { Channel } from '../../model/channel.ts';
import type { AddFinding } from '../findings/rule.ts';
import type { Policy } from '../../model/policy.ts';
import type { Chosen, Usable } from '../records/chooseRecord.ts';
import { averageOf } from '../records/evaluateRecord.ts';
import { asLeft } from '../../read/records/recordCells.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import type { Amount } from '../../read/rows/rowReader.ts';

/** Days counted from 1970-01-01 between which a record as left of what was found can have been taken. */
export interface LeftBetween {
  /** Day of what was found; `null` where it is not known. */
  readonly found: number | null;
  readonly today: number;
}

/**
 * The record marked as left that counts, if any: of several temperatures the one with the lowest sensitivity. One that was
 * taken before what was found was left behind by an earlier correction and tells nothing; nor does one of a day to come.
 */
export function recordAsLeft(chosen: Chosen | undefined, between: LeftBetween): Usable | undefined {
  return allAsLeft(chosen).find(({ raw }) => isTakenBetween(raw.takenOn, between));
}

/** Those days of a channel: what was found is of its calibration, or else of its record as found. */
export function leftBetween(
  calibratedOn: number | null,
  chosen: Chosen | undefined,
  today: number,
): LeftBetween {
  const used = chosen?.used?.raw;
  const ofRecord = used && used.series !== asLeft ? used.takenOn : null;
  return { found: calibratedOn ?? ofRecord, today };
}

function allAsLeft(chosen: Chosen | undefined): readonly Usable[] {
  if (!chosen) return [];
  const { used, others } = chosen;
  return [...(used ? [used] : []), ...others].filter(({ raw }) => raw.series === asLeft);
}

function isTakenBetween(takenOn: number | null, { found, today }: LeftBetween): boolean {
  return takenOn === null || (takenOn <= today && (found === null || takenOn >= found));
}

/** The cell at which something is said of the as-left sensitivity. */
const atSensitivity = { table: 'channels', column: 'asLeftSensitivity' } as const;

/** Adds a finding for each record marked as left whose day keeps it from counting: it was left out. */
export function addRecordsOfOtherDays(
  chosen: Chosen | undefined,
  between: LeftBetween,
  addFinding: AddFinding,
): void {
  for (const { raw } of allAsLeft(chosen)) {
    const { takenOn, row, sheet } = raw;
    if (takenOn === null || isTakenBetween(takenOn, between)) continue;
    const { found, today } = between;
    const fact = factOf('record-as-left-of-another-day', 'warning', {
      sheet,
      row,
      takenOn: isoDate(takenOn),
      lies:
        takenOn > today
          ? { kind: 'after the audit', today: isoDate(today) }
          : { kind: 'before what was found', found: isoDate(found ?? takenOn) },
    });
    addFinding({ ...fact, ...atSensitivity });
  }
}

/**
 * Average of a record marked as left about the voltage about which it is read as left: the gap voltage as left, or as found
 * where none was read, or the zero voltage of a position as left. `null` without a record.
 */
export function averageAsLeft(
  record: Usable | undefined,
  row: ChannelRow,
  { kind, gapVoltage }: Channel,
  policy: Policy,
): Amount | null {
  if (!record || (kind !== 'radial' && kind !== 'axial')) return null;
  const zero = kind === 'axial' ? inUnit(row.asLeftZero, fixed.volt) : null;
  const volts = inUnit(row.asLeftGapVoltage, fixed.volt) ?? gapVoltage ?? zero;
  return averageOf(record, volts, policy) ?? null;
}

/** Adds the finding that a record stands for the as-left sensitivity. */
export function addSensitivityFromRecord(
  { raw }: Usable,
  { value, unit }: Amount,
  addFinding: AddFinding,
): void {
  const values = {
    sheet: raw.sheet,
    row: raw.row,
    value,
    unit: unit?.text ?? '',
    takenOn: raw.takenOn === null ? null : isoDate(raw.takenOn),
  };
  addFinding({ ...factOf('as-left-sensitivity-from-record', 'note', values), ...atSensitivity });
}

/** Adds a finding where a record marked as left and the as-left sensitivity of the channel list differ by more than the tolerance. */
export function addSensitivitiesApart(
  { raw }: Usable,
  { value, unit }: Amount,
  sensitivity: number,
  { sensitivityUnit }: Channel,
  { tolerance }: Policy,
  addFinding: AddFinding,
): void {
  if (!unit) return;
  const ofRecord = convert(value, unit, sensitivityUnit);
  const fraction = ofRecord / sensitivity - 1;
  if (!(Math.abs(fraction) > tolerance)) return;
  const values = {
    kind: 'as left',
    sheet: raw.sheet,
    row: raw.row,
    ofRecord,
    ofList: sensitivity,
    unit: sensitivityUnit.text,
    fraction,
  } as const;
  addFinding({ ...factOf('record-disagrees-with-list', 'warning', values), ...atSensitivity });
}
