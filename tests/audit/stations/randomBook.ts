import type { GeneratorValue } from 'fast-check';
import type { ChannelFacts, PolicyFacts } from '../oracle/facts.ts';
import { truthOf, type Truth, type Unread } from '../oracle/truth.ts';
import { diceOf } from '../records/plan.ts';
import { planStation } from './plan.ts';
import { withSlips, type Slipped } from './slips.ts';
import { writeStation, type Page } from './write.ts';

/** A workbook of plain cells and the truth about it, worked out by the oracle. */
export interface RandomBook {
  readonly pages: readonly Page[];
  readonly policy: PolicyFacts;
  readonly facts: readonly ChannelFacts[];
  /** Names of what was spoilt. */
  readonly slips: readonly string[];
  readonly truth: Truth;
  /** Instead of naming a second pair of tables as not read, the audit may refuse the workbook. */
  readonly mayBeRefused: boolean;
  /** Whether some limit is met to within rounding: either answer is right. */
  readonly closeCall: boolean;
}

/** To be called inside a property over `fc.gen()`. */
export function randomBook(gen: GeneratorValue): RandomBook {
  const dice = diceOf(gen);
  const policy: PolicyFacts = {
    tolerance: dice.pick([0.05, 0.05, 0.1]),
    rule: dice.pick(['guarded', 'guarded', 'simple']),
    coverage: dice.pick([2, 2, 3]),
    near: -2,
    far: -18,
    curve: dice.pick(['monotone cubic', 'linear']),
  };
  const slipped = withSlips(dice, planStation(dice));
  const facts = slipped.station.channels.map((one) => one.facts);
  const unread = unreadOf(slipped);
  const [less, truth, more] = [-1e-6, 0, 1e-6].map((hair) => truthOf(facts, policy, unread, hair));
  const same = (one: Truth | undefined, other: Truth | undefined): boolean =>
    JSON.stringify(one) === JSON.stringify(other);
  return {
    pages: writeStation(slipped, dice),
    policy,
    facts,
    slips: slipped.names,
    truth: truth!,
    mayBeRefused: slipped.secondPair,
    closeCall: !same(less, truth) || !same(truth, more),
  };
}

function unreadOf({ misspelled, secondPair }: Slipped): Unread[] {
  const columns = [...misspelled].map(([usual, text]): Unread => ({
    what: 'column',
    text,
    looksLike: usual.toLowerCase(),
    severity: 'critical',
    sheet: usual === 'Uncertainty' ? 'Channels' : 'Monitor',
  }));
  const pair = [
    ['Channels 2', 'channel list'],
    ['Monitor 2', 'monitor settings'],
  ].map(([sheet = '', looksLike = '']): Unread => ({
    what: 'table',
    text: sheet,
    looksLike,
    severity: 'critical',
    sheet,
  }));
  return [...columns, ...(secondPair ? pair : [])];
}
