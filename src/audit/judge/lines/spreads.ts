import { positionActing, loopActing } from '../../../method/ratio/chains.ts';
import type { Acting } from '../../../method/ratio/acting.ts';
import { loopDefaults } from '../../../method/loop.ts';
import type { Channel, MeasuredLoop } from '../../model/channel.ts';
import type { EvidenceName } from '../../model/threshold.ts';

/** Configured sensitivity as the monitor really divides by it, its gain counted. */
export function divisorOf({ configured, gain }: Pick<Channel, 'configured' | 'gain'>): number {
  return configured / gain;
}

/** Whether an uncertainty of anything that the line hangs on is known; without, the value alone decides. */
export function isUncertain({ uncertainty, gainUncertainty, zeroUncertainty, loop }: Channel): boolean {
  const ofLoop = loop !== null && (loop.at0Uncertainty !== null || loop.at100Uncertainty !== null);
  return uncertainty !== null || gainUncertainty !== null || zeroUncertainty !== null || ofLoop;
}

/** Expanded uncertainty of sensitivity and gain together, a fraction; `null` where neither is known. */
export function ofBoth({ uncertainty, gainUncertainty }: Channel): number | null {
  if (gainUncertainty === null) return uncertainty;
  return Math.hypot(uncertainty ?? 0, gainUncertainty);
}

/** Zeros and direction that a position needs. */
export interface Zeros {
  readonly zeroConfigured: number;
  readonly zeroMeasured: number;
  readonly direction: 'toward' | 'away';
}

/** A position chain as it acts, in the channel's unit. */
export function actingPosition(channel: Channel, zeros: Zeros): Acting {
  const perUnit = 1000 / channel.unitsPerVolt;
  return positionActing({
    zeroConfigured: zeros.zeroConfigured,
    zeroMeasured: zeros.zeroMeasured,
    direction: zeros.direction,
    configured: channel.configured * perUnit,
    gain: channel.gain,
    gainUncertainty: channel.gainUncertainty ?? 0,
    measured: channel.measured * perUnit,
    uncertainty: channel.uncertainty ?? 0,
    zeroUncertainty: channel.zeroUncertainty ?? 0,
  });
}

/**
 * A current loop as it acts by its measured ends. Where the sensitivities are the loop's own the ends stand in their place,
 * and a check with a known vibration stands for the slope; else the sensor before the loop is a further factor.
 */
export function actingLoop(by: EvidenceName, channel: Channel, loop: MeasuredLoop): Acting {
  const { gain, measured, unitsPerVolt } = channel;
  const own = loop.at0Uncertainty !== null || loop.at100Uncertainty !== null;
  const checked = loop.isAll && by === 'known vibration';
  const at100 = checked ? loop.at0 + (loop.span * measured) / unitsPerVolt : loop.at100;
  const sensorCounts = !loop.isAll || checked || !own;
  return loopActing({
    span: loop.span,
    measured: { at0: loop.at0, at100 },
    believed: loopDefaults,
    gain,
    gainUncertainty: channel.gainUncertainty ?? 0,
    at0Uncertainty: loop.at0Uncertainty ?? 0,
    at100Uncertainty: checked ? 0 : (loop.at100Uncertainty ?? 0),
    sensorRatio: loop.isAll ? 1 : channel.configured / measured,
    sensorUncertainty: sensorCounts ? (channel.uncertainty ?? 0) : 0,
  });
}
