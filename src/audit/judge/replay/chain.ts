import { signOf } from '../../../method/axial/position.ts';
import { loopDefaults } from '../../../method/loop.ts';
import { type Acting, realOf, shownAs } from '../../../method/ratio/acting.ts';
import { loopActing } from '../../../method/ratio/chains.ts';
import type { ChannelResult } from '../../model/report.ts';

/** What a monitor shows of a real level, and what is really there at a reading, with one measured sensitivity. */
export interface Chain {
  readonly measured: number;
  readonly shownAt: (real: number) => number;
  readonly realAt: (shown: number) => number;
}

/** A chain as it was through the time of a record; `from`: day since 1970 from which the later one held. */
export interface ChainOverTime {
  readonly first: Chain;
  readonly later: { readonly from: number; readonly chain: Chain } | null;
}

/** Why nothing is known of what a monitor showed. */
export type NoChain = 'no sensitivity' | 'no zero voltage' | 'no day of the correction';

type Measured = Omit<ChannelResult, 'findings'>;

/** The chain of a channel; where it was measured again, as found before that day and as left from it on. */
export function chainOf(channel: Measured): ChainOverTime | NoChain {
  const { sensitivity, inputs, asFound } = channel;
  const now = chainWith(channel, sensitivity.measured, inputs.zeroMeasured);
  if (typeof now === 'string' || !asFound) return typeof now === 'string' ? now : { first: now, later: null };
  const before = chainWith(channel, asFound.sensitivity.measured, asFound.zeroMeasured);
  if (typeof before === 'string') return before;
  if (inputs.calibratedOn === null) return 'no day of the correction';
  return { first: before, later: { from: Date.parse(inputs.calibratedOn) / 86_400_000, chain: now } };
}

function chainWith(channel: Measured, measured: number | null, zeroMeasured: number | null): Chain | NoChain {
  const acting = measured === null ? null : actingWith(channel, measured);
  if (measured === null || acting === null) return 'no sensitivity';
  if (channel.kind !== 'axial') return asItActs(measured, acting);
  const { zeroConfigured, unitsPerVolt, direction } = channel.inputs;
  if (zeroConfigured === null || zeroMeasured === null || unitsPerVolt === null) return 'no zero voltage';
  if (direction === null && zeroConfigured !== zeroMeasured) return 'no zero voltage';
  const way = direction === 'away' ? 'away' : 'toward';
  const moved = signOf(way) * (zeroConfigured - zeroMeasured);
  return asItActs(measured, { ...acting, shift: (moved * unitsPerVolt) / measured });
}

function asItActs(measured: number, acting: Acting): Chain {
  return {
    measured,
    shownAt: (real) => shownAs(acting, real),
    realAt: (shown) => realOf(acting, shown),
  };
}

/**
 * How a channel turns what its monitor shows into what is real, by this measured sensitivity, the monitor's gain and the
 * ends of a loop; without the shift of a zero. `null` where a sensitivity is not known. Where the listed sensitivity is
 * the loop's own, another one counts against it.
 */
export function actingWith(
  { sensitivity: { configured, measured: listed }, inputs: { gain, loop } }: Measured,
  measured: number,
): Acting | null {
  if (configured === null || !(configured > 0) || !(measured > 0)) return null;
  const exact = { ofDivisor: 0, ofShift: 0, ofGain: 0, both: 0 };
  if (loop === null) return { factor: configured / gain / measured, shift: 0, ...exact };
  return loopActing({
    ...{ span: loop.span, measured: loop, believed: loopDefaults, gain, gainUncertainty: 0 },
    ...{ at0Uncertainty: 0, at100Uncertainty: 0, sensorUncertainty: 0 },
    sensorRatio: (loop.isAll ? (listed ?? measured) : configured) / measured,
  });
}
