import { convert } from '../../../units/unit.ts';
import type { Channel, Kind } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { NotJudged, Obstacle } from '../../model/threshold.ts';
import type { PairedRows } from '../../read/pairedRows.ts';
import { lacksDirection } from '../lines/axialLine.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import type { AssumedUnit } from '../../read/rows/units.ts';
import {
  counterLevel,
  fixed,
  growthPerDay,
  inRange,
  inUnit,
  level,
  readingOf,
  type AmountContext,
} from './amounts.ts';
import { commonUnits } from './commonUnits.ts';
import type { Diagnostics, TableDiagnostic } from './diagnostics.ts';
import { loopOf } from './loopEnds.ts';
import { expandedIn, gainUncertaintyOf, uncertainties, usualCoverage } from './uncertainty.ts';
import { vectorsOf } from './vectors.ts';
import { faultLimitsOf, gapVoltageOf, zeroVoltages } from './voltages.ts';

export interface Assembled {
  readonly kind: Kind | null;
  /** `null`: the row can't be used; `blocking` say why. */
  readonly channel: Channel | null;
  readonly diagnostics: readonly TableDiagnostic[];
  /** Those that keep the row, or its thresholds, from being judged. */
  readonly blocking: readonly TableDiagnostic[];
  /** What keeps its thresholds from being better than incomplete. */
  readonly obstacles: readonly Obstacle[];
}

/**
 * Brings a channel's row and its settings into common units, and checks what can be checked only with both; `kind` is what
 * kind of channel it is, `null` where that is not known. Numbers without a unit of their own are taken in the unit of the
 * setpoints, and reported through `assume`.
 */
export function assemble(
  { row, settings }: PairedRows,
  kind: Kind | null,
  diagnostics: Diagnostics,
  policy: Policy,
  assume: (assumed: AssumedUnit) => void,
): Assembled {
  if (!row.measured) diagnostics.missing('channels', 'measured', 'measured sensitivity');
  if (!settings.configured) diagnostics.missing('settings', 'configured', 'configured sensitivity');
  if (!settings.alert) diagnostics.missing('settings', 'alert', 'alert setpoint');
  if (!settings.danger) diagnostics.missing('settings', 'danger', 'danger setpoint');
  const common = commonUnits(kind, row, settings, diagnostics);
  const axial = kind === 'axial';
  const { measured, referenceSensitivity } = row;
  const { configured } = settings;
  const finished = (channel: Channel | null, obstacles: readonly Obstacle[]): Assembled => ({
    kind,
    channel,
    diagnostics: diagnostics.all,
    blocking: diagnostics.blocking(kind),
    obstacles: joined(diagnostics.obstacles(kind), obstacles),
  });
  if (!common || !kind || !measured?.unit || !configured || diagnostics.invalid(axial))
    return finished(null, [
      ...(kind ? [] : (['the kind is not known'] as const)),
      ...(diagnostics.absent('measured') || diagnostics.absent('configured')
        ? (['a sensitivity is missing'] as const)
        : []),
    ]);

  const { unit, sensitivityUnit, detection, unitsPerVolt } = common;
  const notCompared: NotJudged[] = [];
  const context: AmountContext = {
    unit,
    sensitivityUnit,
    detection,
    unitsPerVolt,
    rows: { channels: row.row, settings: settings.row },
    diagnostics,
    assume,
    detectionColumn: settings.detection !== null,
    asStated: kind === 'velocity' || kind === 'acceleration',
    notCompared,
  };
  if (!axial) noteCounter(settings, diagnostics);
  const coverage = { given: row.coverage?.value ?? usualCoverage, wanted: policy.coverage };
  const zeroUncertainty = axial
    ? inRange(row.zeroUncertainty, 'zeroUncertainty', fixed.volt, zeroUncertainties, context)
    : null;
  const { uncertainty, sharedUncertainty } = uncertainties(row, measured, coverage, diagnostics);
  const channel: Channel = {
    kind,
    unit,
    detection,
    sensitivityUnit,
    configured: configured.value,
    measured: convert(measured.value, measured.unit, sensitivityUnit),
    unitsPerVolt,
    uncertainty,
    sharedUncertainty,
    gain: settings.gain?.value ?? 1,
    gainUncertainty: gainUncertaintyOf(settings, row, policy.coverage, diagnostics),
    zeroUncertainty: expandedIn(zeroUncertainty, fixed.volt, row, policy.coverage),
    loop: null,
    batch: row.batch,
    alert: level(context, 'settings', 'alert', settings.alert),
    danger: level(context, 'settings', 'danger', settings.danger),
    counterAlert: axial ? counterLevel(context, 'counterAlert', settings.counterAlert) : null,
    counterDanger: axial ? counterLevel(context, 'counterDanger', settings.counterDanger) : null,
    fullScale: level(context, 'settings', 'fullScale', settings.fullScale),
    multiplier: settings.multiplier?.value ?? 1,
    resolution: level(context, 'settings', 'resolution', settings.resolution),
    limit: level(context, 'channels', 'limit', row.limit),
    reading: readingOf(context, kind, row.reading),
    vectors: kind === 'radial' ? vectorsOf(context, row) : null,
    growthPerDay: growthPerDay(context, row.growth),
    doublingDays: inUnit(row.doubling, fixed.day),
    alertDelay: inUnit(settings.alertDelay, fixed.second),
    dangerDelay: inUnit(settings.dangerDelay, fixed.second),
    speed: inUnit(row.speed, fixed.speed),
    gapVoltage: gapVoltageOf(row.gapVoltage, 'gapVoltage', policy, diagnostics),
    chainLength: inUnit(row.chainLength, fixed.metre),
    referenceSensitivity: inUnit(referenceSensitivity, sensitivityUnit),
    referenceGapVoltage: inUnit(row.referenceGapVoltage, fixed.volt),
    direction: row.direction,
    faultLimits: faultLimitsOf(settings),
    calibratedOn: row.calibratedOn,
    lastGoodOn: row.lastGoodOn,
    group: settings.group,
    voting: settings.voting,
    recordReach: null,
    bypass: settings.bypass,
    notCompared,
    ...zeroVoltages(kind, row, settings, policy, diagnostics),
  };
  const whole = kind === 'loop' ? { ...channel, loop: loopOf(row, channel, policy, diagnostics) } : channel;
  return diagnostics.invalid(axial) ? finished(null, []) : finished(whole, missingOfPosition(whole));
}

/** V: what is above is no uncertainty of a zero voltage, rather one in mV; our choice, no source. */
const zeroUncertainties = [0, 5] as const;

function joined(one: readonly Obstacle[], other: readonly Obstacle[]): readonly Obstacle[] {
  if (other.length === 0) return one;
  return one.length === 0 ? other : [...one, ...other];
}

/** Zero voltages and direction that a position needs and that are not given. */
function missingOfPosition(channel: Channel): Obstacle[] {
  const { kind, zeroMeasured, zeroConfigured } = channel;
  if (kind !== 'axial') return [];
  const missing: Obstacle[] = [];
  if (zeroMeasured === null) missing.push('the zero voltage was not measured');
  if (zeroConfigured === null) missing.push('the configured zero voltage is missing');
  if (lacksDirection(channel)) missing.push('the direction is missing');
  return missing;
}

function noteCounter(settings: SettingsRow, diagnostics: Diagnostics): void {
  const column = settings.counterDanger ? 'counterDanger' : settings.counterAlert ? 'counterAlert' : null;
  if (column === null) return;
  diagnostics.note('settings', column, 'counter-setpoint-not-axial', {});
}
