import type {
  ChannelFacts,
  Evidence,
  GroupPolicy,
  Kind,
  LoopEnds,
  PolicyFacts,
  SlowRoll,
} from '../oracle/facts.ts';
import { outPolicies } from '../oracle/facts.ts';
import type { Dice } from '../records/plan.ts';
import type { Units } from './units.ts';

/** What the rows of a channel may say besides its sensitivities, voltages and levels. */
export type ChainFacts = Pick<
  ChannelFacts,
  | 'gain'
  | 'gainUncertainty'
  | 'zeroUncertainty'
  | 'loop'
  | 'batch'
  | 'sharedUncertainty'
  | 'slowRoll'
  | 'chainLength'
>;

/** Sizes are common practice, no source. */
export function planChain(dice: Dice, kind: Kind, units: Units, danger: number, found: Evidence): ChainFacts {
  const { pick, real } = dice;
  const maybe = <T>(chance: number, value: () => T): T | null => (real(0, 1) < chance ? value() : null);
  const rounded = (value: number, digits: number): number => Number(value.toPrecision(digits));
  return {
    gain: maybe(0.25, () => pick([0.9, 0.96, 0.98, 1, 1.01, 1.04, 1.2])),
    gainUncertainty: maybe(0.2, () => pick([0, 0.005, 0.01, 0.03])),
    zeroUncertainty: kind === 'axial' && found.zero !== null ? maybe(0.4, () => pick([0, 0.05, 0.2])) : null,
    loop: kind === 'loop' ? maybe(0.6, () => planLoop(dice)) : null,
    batch: pick(['', '', '', 'Lot 1', 'lot 1 ', 'Lot 2']),
    sharedUncertainty:
      found.uncertainty === null
        ? null
        : maybe(0.4, () => rounded((found.uncertainty ?? 0) * pick([0, 0.3, 0.8, 1]), 6)),
    slowRoll: kind === 'radial' ? maybe(0.2, () => planSlowRoll(dice, units, danger)) : null,
    chainLength: units.displacement ? maybe(0.2, () => pick([5, 9])) : null,
  };
}

function planLoop({ pick, real }: Dice): LoopEnds {
  const near = (milliamperes: number, off: number): number =>
    Number((milliamperes + real(-off, off)).toFixed(2));
  return {
    at0: pick([4, near(4, 0.05), near(4, 0.5)]),
    at100: pick([20, near(20, 0.1), near(20, 1)]),
    at0Uncertainty: pick([null, null, 0, 0.02, 0.1]),
    at100Uncertainty: pick([null, 0.02, 0.2]),
  };
}

function planSlowRoll({ pick, real, whole }: Dice, units: Units, danger: number): SlowRoll {
  const part = (from: number, to: number): number => Number((danger * real(from, to)).toPrecision(3));
  return {
    amplitude: pick([part(0.02, 0.2), part(0.2, 0.6), part(1.2, 1.5)]),
    phase: pick([whole(0, 359), whole(0, 359), null]),
    sensitivityThen: pick([null, Number((units.sensitivity * real(0.8, 1.1)).toPrecision(4))]),
    now: pick([null, { amplitude: part(0.1, 0.9), phase: whole(-180, 359) }]),
  };
}

/** What site and groups say of votes that are out. */
export function planVotes(
  { pick, whole }: Dice,
  channels: readonly Pick<ChannelFacts, 'machine' | 'group'>[],
): Pick<PolicyFacts, 'bypassed' | 'faulty' | 'groups'> {
  const said = [null, null, ...outPolicies] as const;
  const groups = channels.flatMap(({ machine, group }): GroupPolicy[] => {
    if (group === null || whole(0, 5) > 0) return [];
    return [{ machine: pick(['', machine]), group, bypassed: pick(said), faulty: pick(said) }];
  });
  return { bypassed: pick(said), faulty: pick(said), groups };
}
