import { convert } from '../../units/convert.ts';
import { fixed, inUnit } from '../evaluate/amounts.ts';
import type { Channel } from '../evaluate/channel.ts';
import type { Say } from '../findings/rule.ts';
import type { Policy } from '../policy/policy.ts';
import type { Chosen, Usable } from '../records/chooseRecord.ts';
import { averageOf } from '../records/evaluateRecord.ts';
import { asLeft } from '../records/series.ts';
import { amount, percent } from '../report/wording.ts';
import type { ChannelRow } from '../rows/channelRow.ts';
import type { Amount } from '../rows/rowReader.ts';

/** The record marked as left that counts, if any: of several temperatures the one with the lowest sensitivity. */
export function recordAsLeft(chosen: Chosen | undefined): Usable | undefined {
  if (!chosen) return undefined;
  const { used, others } = chosen;
  return used?.raw.series === asLeft ? used : others.find(({ raw }) => raw.series === asLeft);
}

/** Average of a record marked as left about the gap voltage as left, or as found where none was read; `null` without one. */
export function averageAsLeft(
  record: Usable | undefined,
  row: ChannelRow,
  { kind, gapVoltage, zeroMeasured }: Channel,
  policy: Policy,
): Amount | null {
  if (!record || (kind !== 'radial' && kind !== 'axial')) return null;
  const volts = inUnit(row.asLeftGapVoltage, fixed.volt) ?? gapVoltage ?? zeroMeasured;
  return averageOf(record, volts, policy) ?? null;
}

/** Says that a record stands for the as-left sensitivity. */
export function sayFromRecord({ raw }: Usable, { value, unit }: Amount, say: Say): void {
  say({
    table: 'channels',
    column: 'asLeftSensitivity',
    rule: 'as-left-sensitivity-from-record',
    severity: 'note',
    message: `The channel list has no as-left sensitivity; the average of the calibration record marked as left in row ${raw.row} of sheet '${raw.sheet}', ${amount(value, unit?.text ?? '')}, was used.`,
  });
}

/** Says where a record marked as left and the as-left sensitivity of the channel list differ by more than the tolerance. */
export function sayWhereApart(
  { raw }: Usable,
  { value, unit }: Amount,
  sensitivity: number,
  { sensitivityUnit }: Channel,
  { tolerance }: Policy,
  say: Say,
): void {
  if (!unit) return;
  const ofRecord = convert(value, unit, sensitivityUnit);
  const off = ofRecord / sensitivity - 1;
  if (!(Math.abs(off) > tolerance)) return;
  say({
    table: 'channels',
    column: 'asLeftSensitivity',
    rule: 'record-disagrees-with-list',
    severity: 'warning',
    message: `The record marked as left in row ${raw.row} of sheet '${raw.sheet}' gives ${amount(ofRecord, sensitivityUnit.text)}, ${percent(off)} off the as-left sensitivity of the channel list, ${amount(sensitivity, sensitivityUnit.text)}. Find out which is right before either is used.`,
  });
}
