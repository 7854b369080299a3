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
import { Complaints, type TableComplaint } from './complaints.ts';
import { uncertaintyOf } from './uncertainty.ts';
import { faultLimitsOf, gapVoltageOf, zeroVoltages } from './voltages.ts';

export interface Assembled {
  /** `null`: the row can't be used; `complaints` say why. */
  readonly channel: Channel | null;
  readonly complaints: readonly TableComplaint[];
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
  const complaints = new Complaints(row, settings);
  if (!row.measured) complaints.missing('channels', 'measured', 'measured sensitivity');
  if (!settings.configured) complaints.missing('settings', 'configured', 'configured sensitivity');
  if (!settings.alert) complaints.missing('settings', 'alert', 'alert setpoint');
  if (!settings.danger) complaints.missing('settings', 'danger', 'danger setpoint');
  const common = commonUnits(row, settings, complaints);
  const { kind, measured, referenceSensitivity } = row;
  const { configured } = settings;
  if (!common || !kind || !measured?.unit || !configured || complaints.spoilt(kind === 'axial')) {
    return { channel: null, complaints: complaints.all };
  }

  const { unit, sensitivityUnit, detection, unitsPerVolt } = common;
  const context: AmountContext = {
    unit,
    sensitivityUnit,
    detection,
    unitsPerVolt,
    rows: { channels: row.row, settings: settings.row },
    complaints,
    assume,
    detectionColumn: settings.detection !== null,
  };
  const axial = kind === 'axial';
  if (!axial) noteCounter(settings, complaints);
  const channel: Channel = {
    kind,
    unit,
    detection,
    sensitivityUnit,
    configured: configured.value,
    measured: convert(measured.value, measured.unit, sensitivityUnit),
    unitsPerVolt,
    uncertainty: uncertaintyOf(row.uncertainty, measured, 'uncertainty', complaints),
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
    gapVoltage: gapVoltageOf(row.gapVoltage, 'gapVoltage', policy, complaints),
    referenceSensitivity: inUnit(referenceSensitivity, sensitivityUnit),
    referenceGapVoltage: inUnit(row.referenceGapVoltage, fixed.volt),
    ...zeroVoltages(row, settings, policy, complaints),
    direction: row.direction,
    faultLimits: faultLimitsOf(settings),
    calibratedOn: row.calibratedOn,
    lastGoodOn: row.lastGoodOn,
    group: settings.group,
    voting: settings.voting,
    recordReach: null,
    bypass: settings.bypass,
  };
  return { channel: complaints.spoilt(kind === 'axial') ? null : channel, complaints: complaints.all };
}

function noteCounter(settings: SettingsRow, complaints: Complaints): void {
  const column = settings.counterDanger ? 'counterDanger' : settings.counterAlert ? 'counterAlert' : null;
  if (column === null) return;
  const message =
    'Counter setpoints belong to axial channels; this one is of another kind, so they were not audited.';
  complaints.note('settings', column, 'counter-setpoint-not-axial', message);
}
