import { factOf } from '../../model/findings.ts';
import { convert } from '../../../units/convert.ts';
import type { Channel } from '../../model/channel.ts';
import type { Diagnostics } from '../evaluate/diagnostics.ts';
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
    row.diagnostics.some(isDecisive)
  );
}

function isDecisive({ column, severity }: ChannelRow['diagnostics'][number]): boolean {
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
  let invalid = row.diagnostics.some(isDecisive);
  const diagnostics: Pick<Diagnostics, 'add'> = {
    add(table, column, rule, values) {
      invalid ||= decisive.has(column);
      say({ ...factOf(rule, 'warning', values), table, column });
      return null;
    },
  };
  const gapVoltage = gapVoltageOf(row.asLeftGapVoltage, 'asLeftGapVoltage', policy, diagnostics);
  const average = invalid ? null : averageAsLeft(record, row, channel, policy);
  const given = invalid ? null : (row.asLeftSensitivity ?? average);
  const sensitivity = given && inChannelUnit(given, channel, diagnostics);
  const uncertainty = uncertaintyOf(row.asLeftUncertainty, given, 'asLeftUncertainty', diagnostics);
  if (sensitivity === null || invalid) {
    const why = invalid ? 'value unusable' : 'no sensitivity';
    const fact = factOf('as-left-not-judged', 'warning', { why });
    say({ ...fact, table: 'channels', column: 'asLeftSensitivity' });
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
    which: 'as-left',
    unit: unit.text,
    configuredUnit: sensitivityUnit.text,
  });
}
