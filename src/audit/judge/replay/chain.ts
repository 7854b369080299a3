import { axialIndicated, axialActual } from '../../../method/axial/position.ts';
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

function chainWith(
  { kind, sensitivity: { configured }, inputs }: Measured,
  measured: number | null,
  zeroMeasured: number | null,
): Chain | NoChain {
  if (configured === null || measured === null || !(configured > 0) || !(measured > 0))
    return 'no sensitivity';
  if (kind !== 'axial')
    return {
      measured,
      shownAt: (real) => (real * measured) / configured,
      realAt: (shown) => (shown * configured) / measured,
    };
  const { zeroConfigured, unitsPerVolt, direction } = inputs;
  if (zeroConfigured === null || zeroMeasured === null || unitsPerVolt === null) return 'no zero voltage';
  if (direction === null && zeroConfigured !== zeroMeasured) return 'no zero voltage';
  const perUnit = 1000 / unitsPerVolt;
  const [kc, km] = [configured * perUnit, measured * perUnit];
  const way = direction === 'away' ? 'away' : 'toward';
  const zeros = [zeroConfigured, zeroMeasured, way] as const;
  return {
    measured,
    shownAt: (real) => axialIndicated(real, kc, km, ...zeros),
    realAt: (shown) => axialActual(shown, kc, km, ...zeros),
  };
}
