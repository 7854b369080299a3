import type { Policy } from '../../model/policy.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import type { Amount } from '../../read/rows/rowReader.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import type { TableKind } from '../../read/tables/vocabulary.ts';
import { fixed, inUnit } from './amounts.ts';
import type { Complaints } from './complaints.ts';

export interface ZeroVoltages {
  readonly zeroConfigured: number | null;
  readonly zeroMeasured: number | null;
}

/** Zero voltages of an axial channel, V; a complaint where one is missing or the direction is needed and missing. */
export function zeroVoltages(
  row: ChannelRow,
  settings: SettingsRow,
  policy: Policy,
  complaints: Complaints,
): ZeroVoltages {
  if (row.kind !== 'axial') return { zeroConfigured: null, zeroMeasured: null };
  const zeroConfigured = inUnit(settings.zeroConfigured, fixed.volt);
  const zeroMeasured = inUnit(row.zeroMeasured, fixed.volt);
  if (policy.linearVolts.near <= 0) {
    refusePositive('channels', 'zeroMeasured', 'measured', zeroMeasured, complaints);
    refusePositive('settings', 'zeroConfigured', 'configured', zeroConfigured, complaints);
  }
  if (zeroMeasured === null || zeroConfigured === null) {
    const [table, column, which] =
      zeroMeasured === null
        ? (['channels', 'zeroMeasured', 'measured'] as const)
        : (['settings', 'zeroConfigured', 'configured'] as const);
    complaints.add(
      table,
      column,
      'zero-voltage-missing',
      `The ${which} zero voltage is missing, so a shifted zero is not judged: the thresholds follow from the sensitivities alone. Enter it.`,
    );
  } else if (zeroConfigured !== zeroMeasured && row.direction === null) {
    complaints.add(
      'channels',
      'direction',
      'direction-missing',
      'The positive direction (toward or away) is missing, and the zero voltages differ: the thresholds depend on it. Enter it.',
    );
  }
  return { zeroConfigured, zeroMeasured };
}

function refusePositive(
  table: TableKind,
  column: string,
  which: string,
  volts: number | null,
  complaints: Complaints,
): void {
  if (volts === null || volts <= 0) return;
  const message = `The ${which} zero voltage ${volts} V is positive; gap voltages of these probes are negative. Correct the sign.`;
  complaints.add(table, column, 'zero-voltage-positive', message);
}

/** A gap voltage, V; not used, with a complaint, where its sign can't be right for the policy's linear span. */
export function gapVoltageOf(
  amount: Amount | null,
  column: 'gapVoltage' | 'asLeftGapVoltage',
  policy: Policy,
  complaints: Pick<Complaints, 'add'>,
): number | null {
  const gap = inUnit(amount, fixed.volt);
  if (gap === null || gap <= 0 || policy.linearVolts.near > 0) return gap;
  const which = column === 'gapVoltage' ? 'gap voltage' : 'as-left gap voltage';
  const message = `The ${which} ${gap} V is positive; gap voltages of these probes are negative. It was not used. Correct the sign.`;
  return complaints.add('channels', column, 'gap-voltage-positive', message);
}

/** Circuit-fault limits in either order, V; `null` unless both are given. */
export function faultLimitsOf(settings: SettingsRow): { far: number; near: number } | null {
  const [one, other] = [inUnit(settings.faultHigh, fixed.volt), inUnit(settings.faultLow, fixed.volt)];
  return one === null || other === null ? null : { far: Math.min(one, other), near: Math.max(one, other) };
}
