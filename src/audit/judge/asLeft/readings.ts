import { convert } from '../../../units/convert.ts';
import type { Channel } from '../../model/channel.ts';
import type { Complaints } from '../evaluate/complaints.ts';
import { uncertaintyOf } from '../evaluate/uncertainty.ts';
import { gapVoltageOf } from '../evaluate/voltages.ts';
import type { Say } from '../findings/rule.ts';
import type { Policy } from '../../model/policy.ts';
import type { Usable } from '../records/chooseRecord.ts';
import type { AsLeftResult } from '../../model/report.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import type { Amount } from '../../read/rows/rowReader.ts';
import { averageAsLeft, sayFromRecord, sayWhereApart } from './records.ts';

/** What was read after the correction, in the units of the channel. */
export interface AsLeftReadings {
  /** Above 0, in the channel's unit of sensitivity. */
  readonly sensitivity: number;
  readonly from: AsLeftResult['sensitivityFrom'];
  /** Expanded, as a fraction of the sensitivity. */
  readonly uncertainty: number | null;
  readonly coverage: number;
  /** V. */
  readonly gapVoltage: number | null;
}

/** Columns without which, when something unusable stands in them, nothing can be judged as left. */
const decisive: ReadonlySet<string> = new Set(['asLeftSensitivity', 'asLeftUncertainty']);

/** Whether anything was read of a channel as left, usable or not. */
export function hasAsLeft(row: ChannelRow, record: Usable | undefined): boolean {
  return (
    record !== undefined ||
    row.asLeftSensitivity !== null ||
    row.asLeftGapVoltage !== null ||
    row.asLeftUncertainty !== null ||
    row.complaints.some(isDecisive)
  );
}

function isDecisive({ column, severity }: ChannelRow['complaints'][number]): boolean {
  return severity !== 'note' && decisive.has(column);
}

/**
 * The as-left readings of a channel: from its row, and where that has no sensitivity from a calibration record marked as
 * left, which is said. `null`, with a finding, where they can't be judged.
 */
export function asLeftReadings(
  row: ChannelRow,
  record: Usable | undefined,
  channel: Channel,
  policy: Policy,
  say: Say,
): AsLeftReadings | null {
  let spoilt = row.complaints.some(isDecisive);
  const complaints: Pick<Complaints, 'add'> = {
    add(table, column, rule, message) {
      spoilt ||= decisive.has(column);
      say({ table, column, rule, severity: 'warning', message });
      return null;
    },
  };
  const gapVoltage = gapVoltageOf(row.asLeftGapVoltage, 'asLeftGapVoltage', policy, complaints);
  const average = spoilt ? null : averageAsLeft(record, row, channel, policy);
  const given = spoilt ? null : (row.asLeftSensitivity ?? average);
  const sensitivity = given && inChannelUnit(given, channel, complaints);
  const uncertainty = uncertaintyOf(row.asLeftUncertainty, given, 'asLeftUncertainty', complaints);
  if (sensitivity === null || spoilt) {
    const why = spoilt ? 'a value among them can’t be used' : 'no sensitivity was read as left';
    say({
      table: 'channels',
      column: 'asLeftSensitivity',
      rule: 'as-left-not-judged',
      severity: 'warning',
      message: `The as-left readings were not judged: ${why}, so where the thresholds act since the correction is not known. Enter the as-left sensitivity with its unit.`,
    });
    return null;
  }
  if (record && average) {
    if (!row.asLeftSensitivity) sayFromRecord(record, average, say);
    else sayWhereApart(record, average, sensitivity, channel, policy, say);
  }
  return {
    sensitivity,
    from: row.asLeftSensitivity ? 'channel list' : 'calibration record',
    uncertainty,
    coverage: row.asLeftCoverage?.value ?? policy.coverage,
    gapVoltage,
  };
}

function inChannelUnit(
  { value, unit }: Amount,
  { sensitivityUnit }: Channel,
  complaints: Pick<Complaints, 'add'>,
): number | null {
  const at = ['channels', 'asLeftSensitivity'] as const;
  if (!unit) {
    const message =
      'The unit of the as-left sensitivity is missing; write it in brackets in the header, such as (mV/mil), or in a unit column.';
    return complaints.add(...at, 'unit-missing', message);
  }
  const converted = convert(value, unit, sensitivityUnit);
  if (Number.isFinite(converted)) return converted;
  const message = `The as-left sensitivity is in ${unit.text} and the configured one in ${sensitivityUnit.text}; these can't be compared. Correct the unit.`;
  return complaints.add(...at, 'unit-does-not-fit', message);
}
