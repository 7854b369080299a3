import type { AssumedUnit } from '../../read/rows/units.ts';
import { convert } from '../../../units/convert.ts';
import type { Policy } from '../../model/policy.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import {
  counterLevel,
  fixed,
  growthPerDay,
  inUnit,
  level,
  readingOf,
  type AmountContext,
} from './amounts.ts';
import type { Channel } from '../../model/channel.ts';
import { commonUnits } from './commonUnits.ts';
import { Diagnostics, type TableDiagnostic } from './diagnostics.ts';
import { uncertaintyOf } from './uncertainty.ts';
import { faultLimitsOf, gapVoltageOf, zeroVoltages } from './voltages.ts';

export interface Assembled {
  /** `null`: the row can't be used; `diagnostics` say why. */
  readonly channel: Channel | null;
  readonly diagnostics: readonly TableDiagnostic[];
}

/**
 * Brings a channel's row and its settings into common units, and checks what can be checked only with both.
 * Numbers without a unit of their own are taken in the unit of the setpoints, and reported through `assume`.
 */
export function assemble(
  row: ChannelRow,
  settings: SettingsRow,
  policy: Policy,
  assume: (assumed: AssumedUnit) => void,
): Assembled {
  const diagnostics = new Diagnostics(row, settings);
  if (!row.measured) diagnostics.missing('channels', 'measured', 'measured sensitivity');
  if (!settings.configured) diagnostics.missing('settings', 'configured', 'configured sensitivity');
  if (!settings.alert) diagnostics.missing('settings', 'alert', 'alert setpoint');
  if (!settings.danger) diagnostics.missing('settings', 'danger', 'danger setpoint');
  const common = commonUnits(row, settings, diagnostics);
  const { kind, measured, referenceSensitivity } = row;
  const { configured } = settings;
  if (!common || !kind || !measured?.unit || !configured || diagnostics.invalid(kind === 'axial')) {
    return { channel: null, diagnostics: diagnostics.all };
  }

  const { unit, sensitivityUnit, detection, unitsPerVolt } = common;
  const context: AmountContext = {
    unit,
    sensitivityUnit,
    detection,
    unitsPerVolt,
    rows: { channels: row.row, settings: settings.row },
    diagnostics,
    assume,
    detectionColumn: settings.detection !== null,
  };
  const axial = kind === 'axial';
  if (!axial) noteCounter(settings, diagnostics);
  const channel: Channel = {
    kind,
    unit,
    detection,
    sensitivityUnit,
    configured: configured.value,
    measured: convert(measured.value, measured.unit, sensitivityUnit),
    unitsPerVolt,
    uncertainty: uncertaintyOf(row.uncertainty, measured, 'uncertainty', diagnostics),
    coverage: row.coverage?.value ?? policy.coverage,
    alert: level(context, 'settings', 'alert', settings.alert),
    danger: level(context, 'settings', 'danger', settings.danger),
    counterAlert: axial ? counterLevel(context, 'counterAlert', settings.counterAlert) : null,
    counterDanger: axial ? counterLevel(context, 'counterDanger', settings.counterDanger) : null,
    fullScale: level(context, 'settings', 'fullScale', settings.fullScale),
    multiplier: settings.multiplier?.value ?? 1,
    resolution: level(context, 'settings', 'resolution', settings.resolution),
    limit: level(context, 'channels', 'limit', row.limit),
    reading: readingOf(context, kind, row.reading),
    growthPerDay: growthPerDay(context, row.growth),
    doublingDays: inUnit(row.doubling, fixed.day),
    alertDelay: inUnit(settings.alertDelay, fixed.second),
    dangerDelay: inUnit(settings.dangerDelay, fixed.second),
    speed: inUnit(row.speed, fixed.speed),
    gapVoltage: gapVoltageOf(row.gapVoltage, 'gapVoltage', policy, diagnostics),
    referenceSensitivity: inUnit(referenceSensitivity, sensitivityUnit),
    referenceGapVoltage: inUnit(row.referenceGapVoltage, fixed.volt),
    ...zeroVoltages(row, settings, policy, diagnostics),
    direction: row.direction,
    faultLimits: faultLimitsOf(settings),
    calibratedOn: row.calibratedOn,
    lastGoodOn: row.lastGoodOn,
    group: settings.group,
    voting: settings.voting,
    recordReach: null,
    bypass: settings.bypass,
  };
  return { channel: diagnostics.invalid(kind === 'axial') ? null : channel, diagnostics: diagnostics.all };
}

function noteCounter(settings: SettingsRow, diagnostics: Diagnostics): void {
  const column = settings.counterDanger ? 'counterDanger' : settings.counterAlert ? 'counterAlert' : null;
  if (column === null) return;
  diagnostics.note('settings', column, 'counter-setpoint-not-axial', {});
}
