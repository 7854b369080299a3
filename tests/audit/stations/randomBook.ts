import type { GeneratorValue } from 'fast-check';
import type { ChannelFacts, PolicyFacts } from '../oracle/facts.ts';
import { truthOf, type Truth, type Unread } from '../oracle/truth.ts';
import { diceOf, type Dice } from '../records/plan.ts';
import { planVotes } from './chainFacts.ts';
import { mutations } from './mutations.ts';
import { planStation } from './plan.ts';
import { noSlips, withSlips, type Slipped } from './slips.ts';
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
  return bookOf(withSlips(dice, planStation(dice)), dice);
}

export interface MutatedBook extends RandomBook {
  readonly mutation: string;
  /** Whose danger the mutation spoils: it must be among the critical subjects. */
  readonly subject: string;
}

/** A workbook without slips in which one input of one channel is such that its danger is late or does not act. */
export function mutatedBook(gen: GeneratorValue): MutatedBook | undefined {
  const dice = diceOf(gen);
  const station = planStation(dice);
  const chosen = dice.pick(station.channels);
  const fitting = Object.entries(mutations).flatMap(([mutation, mutate]) => {
    const changed = mutate(chosen, station);
    return changed ? [{ mutation, changed }] : [];
  });
  if (fitting.length === 0) return undefined;
  const { mutation, changed } = dice.pick(fitting);
  const channels = station.channels.map((one) => (one === chosen ? changed : one));
  const { machine, tag } = changed.facts;
  const whole: Slipped = { ...noSlips, station: { ...station, channels } };
  return { ...bookOf(whole, dice), mutation, subject: `${machine} / ${tag}` };
}

function bookOf(slipped: Slipped, dice: Dice): RandomBook {
  const facts = slipped.station.channels.map((one) => one.facts);
  const policy: PolicyFacts = {
    tolerance: dice.pick([0.05, 0.05, 0.1]),
    rule: dice.pick(['guarded', 'guarded', 'simple']),
    coverage: dice.pick([2, 2, 3]),
    near: -2,
    far: -18,
    curve: dice.pick(['monotone cubic', 'linear']),
    ...planVotes(dice, facts),
  };
  const unread = unreadOf(slipped);
  const truth = truthOf(facts, policy, unread);
  const settled = [-1e-6, 1e-6].every(
    (hair) => JSON.stringify(truthOf(facts, policy, unread, hair)) === JSON.stringify(truth),
  );
  return {
    pages: writeStation(slipped, dice),
    policy,
    facts,
    slips: slipped.names,
    truth,
    mayBeRefused: slipped.secondPair,
    closeCall: !settled,
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
