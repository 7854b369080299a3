import type { Direction } from '../../method/axial/position.ts';
import { loopDefaults } from '../../method/loop.ts';
import type { Acting } from '../../method/ratio/acting.ts';
import { loopActing, positionActing } from '../../method/ratio/chains.ts';
import type { ChannelResult } from '../../audit/model/report.ts';

/** Configured sensitivity as the monitor really divides by it, its gain counted; `null` where it is not known. */
export function divisorOf({ sensitivity, inputs }: ChannelResult): number | null {
  return sensitivity.configured === null ? null : sensitivity.configured / inputs.gain;
}

/** Whether T = S·Kc/Km and the shift of a zero are all there is, so that the plain formulas hold. */
export function isPlain({ inputs }: ChannelResult): boolean {
  return inputs.gain === 1 && inputs.loop === null && hasPlainInterval({ inputs });
}

/** Whether what is shown is to what is real as Km to Kc: no position, no gain, no measured ends of a loop. */
export function isRatio({ kind, inputs }: Pick<ChannelResult, 'kind' | 'inputs'>): boolean {
  return kind !== 'axial' && inputs.gain === 1 && inputs.loop === null;
}

/** Whether the interval is T/(1 ± U), U that of the sensitivity alone. */
export function hasPlainInterval({ inputs }: Pick<ChannelResult, 'inputs'>): boolean {
  return inputs.gainUncertainty === null && inputs.zeroUncertainty === null && inputs.loop === null;
}

/**
 * How the listed sensitivity has a channel's setpoints act, from what the report shows of it; `null` where a sensitivity is
 * not known. A position without its zeros has no shift.
 */
export function actingOf({ channel }: { readonly channel: ChannelResult }): Acting | null {
  const { configured, measured, uncertainty } = channel.sensitivity;
  const {
    gain,
    gainUncertainty,
    zeroUncertainty,
    zeroConfigured,
    zeroMeasured,
    direction,
    unitsPerVolt,
    loop,
  } = channel.inputs;
  if (configured === null || measured === null) return null;
  if (loop !== null) {
    const { at0, at100, at0Uncertainty, at100Uncertainty, span, isAll } = loop;
    const own = at0Uncertainty !== null || at100Uncertainty !== null;
    return loopActing({
      span,
      measured: { at0, at100 },
      believed: loopDefaults,
      gain,
      gainUncertainty: gainUncertainty ?? 0,
      at0Uncertainty: at0Uncertainty ?? 0,
      at100Uncertainty: at100Uncertainty ?? 0,
      sensorRatio: isAll ? 1 : configured / measured,
      sensorUncertainty: isAll && own ? 0 : (uncertainty ?? 0),
    });
  }
  const known =
    unitsPerVolt !== null &&
    zeroConfigured !== null &&
    zeroMeasured !== null &&
    (direction !== null || zeroConfigured === zeroMeasured);
  if (known) {
    const perUnit = 1000 / unitsPerVolt;
    return positionActing({
      configured: configured * perUnit,
      gain,
      gainUncertainty: gainUncertainty ?? 0,
      measured: measured * perUnit,
      uncertainty: uncertainty ?? 0,
      zeroConfigured,
      zeroMeasured,
      zeroUncertainty: zeroUncertainty ?? 0,
      direction: (direction as Direction | null) ?? 'toward',
    });
  }
  return {
    factor: configured / gain / measured,
    shift: 0,
    ofDivisor: Math.hypot(uncertainty ?? 0, gainUncertainty ?? 0),
    ofShift: 0,
    ofGain: 0,
    both: 0,
  };
}
