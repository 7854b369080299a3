import type { FaultLimits, Kind } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import type { Amount } from '../../read/rows/rowReader.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import type { TableKind } from '../../read/tables/vocabulary.ts';
import { fixed, inUnit } from './amounts.ts';
import type { Diagnostics } from './diagnostics.ts';

export interface ZeroVoltages {
  readonly zeroConfigured: number | null;
  readonly zeroMeasured: number | null;
}

/** Zero voltages of an axial channel, V; a warning where one is missing or the direction is needed and missing. */
export function zeroVoltages(
  kind: Kind,
  row: ChannelRow,
  settings: SettingsRow,
  policy: Policy,
  diagnostics: Diagnostics,
): ZeroVoltages {
  if (kind !== 'axial') return { zeroConfigured: null, zeroMeasured: null };
  const zeroConfigured = inUnit(settings.zeroConfigured, fixed.volt);
  const zeroMeasured = inUnit(row.zeroMeasured, fixed.volt);
  if (policy.linearVolts.near <= 0) {
    refusePositive('channels', 'zeroMeasured', 'measured', zeroMeasured, diagnostics);
    refusePositive('settings', 'zeroConfigured', 'configured', zeroConfigured, diagnostics);
  }
  if (zeroMeasured === null && !diagnostics.isSaid('zeroMeasured'))
    diagnostics.add('channels', 'zeroMeasured', 'zero-voltage-missing', { which: 'measured' }, 'absent');
  if (zeroConfigured === null && !diagnostics.isSaid('zeroConfigured'))
    diagnostics.add('settings', 'zeroConfigured', 'zero-voltage-missing', { which: 'configured' }, 'absent');
  const apart = zeroMeasured !== null && zeroConfigured !== null && zeroConfigured !== zeroMeasured;
  if (apart && row.direction === null)
    diagnostics.add('channels', 'direction', 'direction-missing', {}, 'absent');
  return { zeroConfigured, zeroMeasured };
}

function refusePositive(
  table: TableKind,
  column: string,
  which: 'measured' | 'configured',
  volts: number | null,
  diagnostics: Diagnostics,
): void {
  if (volts === null || volts <= 0) return;
  diagnostics.add(table, column, 'zero-voltage-positive', { which, volts });
}

/** A gap voltage, V; not used, with a warning, where its sign can't be right for the policy's linear span. */
export function gapVoltageOf(
  amount: Amount | null,
  column: 'gapVoltage' | 'asLeftGapVoltage',
  policy: Policy,
  diagnostics: Pick<Diagnostics, 'add'>,
): number | null {
  const gap = inUnit(amount, fixed.volt);
  if (gap === null || gap <= 0 || policy.linearVolts.near > 0) return gap;
  const which = column === 'gapVoltage' ? 'as found' : 'as left';
  return diagnostics.add('channels', column, 'gap-voltage-positive', { which, volts: gap });
}

/** Circuit-fault limits, V: both in either order, or the one that is given; `null` where none is. */
export function faultLimitsOf(settings: SettingsRow): FaultLimits | null {
  const [high, low] = [inUnit(settings.faultHigh, fixed.volt), inUnit(settings.faultLow, fixed.volt)];
  if (high === null && low === null) return null;
  if (high === null || low === null) return { far: low, near: high };
  return { far: Math.min(high, low), near: Math.max(high, low) };
}
