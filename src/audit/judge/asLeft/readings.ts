import { convert } from '../../../units/unit.ts';
import type { Channel } from '../../model/channel.ts';
import { factOf } from '../../model/findings.ts';
import type { Policy } from '../../model/policy.ts';
import type { SensitivityResult } from '../../model/threshold.ts';
import type { RawCheck } from '../../read/records/rawRecord.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import type { Amount } from '../../read/rows/rowReader.ts';
import { fixed, inUnit } from '../evaluate/amounts.ts';
import type { Diagnostics } from '../evaluate/diagnostics.ts';
import { uncertaintyOf, usualCoverage } from '../evaluate/uncertainty.ts';
import { gapVoltageOf } from '../evaluate/voltages.ts';
import type { AddFinding } from '../findings/rule.ts';
import type { Usable } from '../records/chooseRecord.ts';
import { evaluateCheck } from '../records/evaluateCheck.ts';
import { averageAsLeft, addSensitivityFromRecord, addSensitivitiesApart } from './records.ts';

/** What was read after the correction, in the units of the channel; `null`: not read again. */
export interface AsLeftReadings {
  /** Above 0, in the channel's unit of sensitivity. */
  readonly sensitivity: number | null;
  readonly from: SensitivityResult['from'];
  /** Expanded at the policy's coverage factor, as a fraction of the sensitivity. */
  readonly uncertainty: number | null;
  /** V. */
  readonly gapVoltage: number | null;
  /** V. */
  readonly zero: number | null;
}

/** What of a channel's records was left after its correction. */
export interface LeftRecords {
  readonly record: Usable | undefined;
  readonly check: RawCheck | undefined;
}

/** Columns of as-left readings: when something unusable stands in one, it is not known how the channel was left. */
const columns: ReadonlySet<string> = new Set([
  'asLeftSensitivity',
  'asLeftUncertainty',
  'asLeftGapVoltage',
  'asLeftZero',
]);

/** Whether anything was read of a channel as left, usable or not. */
export function hasAsLeft(row: ChannelRow, { record, check }: LeftRecords): boolean {
  return (
    record !== undefined ||
    check !== undefined ||
    row.asLeftSensitivity !== null ||
    row.asLeftGapVoltage !== null ||
    row.asLeftUncertainty !== null ||
    row.asLeftZero !== null ||
    row.diagnostics.some(isUnusable)
  );
}

function isUnusable({ column, severity }: ChannelRow['diagnostics'][number]): boolean {
  return severity !== 'note' && columns.has(column);
}

/**
 * The as-left readings of a channel: from its row, and where that has no sensitivity from a calibration record or a check
 * with a known vibration marked as left, which is said. `null`, with a finding, where they can't be judged.
 */
export function asLeftReadings(
  row: ChannelRow,
  left: LeftRecords,
  channel: Channel,
  policy: Policy,
  addFinding: AddFinding,
): AsLeftReadings | null {
  let invalid = row.diagnostics.some(isUnusable);
  const diagnostics: Pick<Diagnostics, 'add'> = {
    add(table, column, rule, values) {
      invalid ||= columns.has(column);
      addFinding({ ...factOf(rule, 'warning', values), table, column });
      return null;
    },
  };
  const gapVoltage = gapVoltageOf(row.asLeftGapVoltage, 'asLeftGapVoltage', policy, diagnostics);
  const zero = inUnit(row.asLeftZero, fixed.volt);
  if (zero !== null && zero > 0 && policy.linearVolts.near <= 0)
    diagnostics.add('channels', 'asLeftZero', 'zero-voltage-positive', { which: 'as left', volts: zero });
  const average = invalid ? null : averageAsLeft(left.record, row, channel, policy);
  const listed = invalid ? null : row.asLeftSensitivity;
  const given = listed ?? average;
  const sensitivity = given && inChannelUnit(given, channel, diagnostics);
  const ofCheck = given || !left.check ? null : (evaluateCheck(left.check, channel) ?? null);
  const coverage = { given: row.asLeftCoverage?.value ?? usualCoverage, wanted: policy.coverage };
  const measured = given ?? (ofCheck && { value: ofCheck.sensitivity, unit: channel.sensitivityUnit });
  const uncertainty = uncertaintyOf(
    row.asLeftUncertainty,
    measured,
    'asLeftUncertainty',
    coverage,
    diagnostics,
  );
  const nothing =
    sensitivity === null && ofCheck === null && gapVoltage === null && zero === null && !invalid;
  if (invalid || nothing) {
    const fact = factOf('as-left-not-judged', 'warning', {
      why: invalid ? 'value unusable' : 'no sensitivity',
    });
    addFinding({ ...fact, table: 'channels', column: 'asLeftSensitivity' });
    return null;
  }
  if (left.record && average && !listed) addSensitivityFromRecord(left.record, average, addFinding);
  if (left.record && average && listed && sensitivity !== null)
    addSensitivitiesApart(left.record, average, sensitivity, channel, policy, addFinding);
  return {
    sensitivity: sensitivity ?? ofCheck?.sensitivity ?? null,
    from: listed ? 'channel list' : average ? 'calibration record' : ofCheck ? 'known vibration' : null,
    uncertainty,
    gapVoltage,
    zero,
  };
}

function inChannelUnit(
  { value, unit }: Amount,
  { sensitivityUnit }: Channel,
  diagnostics: Pick<Diagnostics, 'add'>,
): number | null {
  const at = ['channels', 'asLeftSensitivity'] as const;
  if (!unit) {
    return diagnostics.add(...at, 'unit-missing', { what: 'as-left sensitivity', example: 'mV/mil' });
  }
  const converted = convert(value, unit, sensitivityUnit);
  if (Number.isFinite(converted)) return converted;
  return diagnostics.add(...at, 'unit-does-not-fit', {
    kind: 'sensitivities',
    which: 'as left',
    unit: unit.text,
    configuredUnit: sensitivityUnit.text,
  });
}
