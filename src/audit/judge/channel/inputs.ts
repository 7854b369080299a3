import type { SensitivityResult, ThresholdResult } from '../../model/threshold.ts';
import { isoDate } from '../../../cells/cell.ts';
import type { Channel } from '../../model/channel.ts';
import { linearReachOf } from '../lines/vibrationLine.ts';
import type { Policy } from '../../model/policy.ts';
import type { ChannelInputs } from '../../model/report.ts';

/** What the audit used of a channel, as the report shows it. */
export function inputsOf(
  channel: Channel,
  thresholds: readonly ThresholdResult[],
  policy: Policy,
): ChannelInputs {
  const { real } = thresholds.find((threshold) => threshold.real !== null) ?? { real: null };
  return {
    limit: channel.limit,
    fullScale: channel.fullScale,
    resolution: channel.resolution,
    linearReach: linearReachOf(channel, policy),
    reading: channel.reading,
    realReading: real,
    gapVoltage: channel.gapVoltage,
    zeroConfigured: channel.zeroConfigured,
    zeroMeasured: channel.zeroMeasured,
    zeroUncertainty: channel.zeroUncertainty,
    gain: channel.gain,
    gainUncertainty: channel.gainUncertainty,
    batch: channel.batch === '' ? null : channel.batch,
    sharedUncertainty: channel.sharedUncertainty,
    chainLength: channel.chainLength,
    loop: channel.loop,
    direction: channel.kind === 'axial' ? channel.direction : null,
    unitsPerVolt: channel.kind === 'axial' ? channel.unitsPerVolt : null,
    faultLimits: channel.faultLimits,
    speed: channel.speed,
    growthPerDay: channel.growthPerDay,
    doublingDays: channel.doublingDays,
    alertDelay: channel.alertDelay,
    dangerDelay: channel.dangerDelay,
    group: channel.group === '' ? null : channel.group,
    voting: channel.voting === '' ? null : channel.voting,
    bypass: channel.bypass,
    calibratedOn: channel.calibratedOn === null ? null : isoDate(channel.calibratedOn),
  };
}

/** The inputs of a channel that can't be used. */
export const noInputs: ChannelInputs = {
  limit: null,
  fullScale: null,
  resolution: null,
  linearReach: null,
  reading: null,
  realReading: null,
  gapVoltage: null,
  zeroConfigured: null,
  zeroMeasured: null,
  zeroUncertainty: null,
  gain: 1,
  gainUncertainty: null,
  batch: null,
  sharedUncertainty: null,
  chainLength: null,
  loop: null,
  direction: null,
  unitsPerVolt: null,
  faultLimits: null,
  speed: null,
  growthPerDay: null,
  doublingDays: null,
  alertDelay: null,
  dangerDelay: null,
  group: null,
  voting: null,
  bypass: false,
  calibratedOn: null,
};

/** Both sensitivities of a channel, as the report shows them. */
export function sensitivityOf(
  channel: Channel,
  error: number,
  coverage: number,
  from: SensitivityResult['from'],
): SensitivityResult {
  return {
    configured: channel.configured,
    measured: channel.measured,
    unit: channel.sensitivityUnit.text,
    error,
    uncertainty: channel.uncertainty,
    coverage: channel.uncertainty === null ? null : coverage,
    from,
  };
}
