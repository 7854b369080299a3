import type { Fact, FactOf } from '../../model/findings.ts';
import type { RuleId } from '../../model/rules/rules.ts';
import { judgementMessages } from './judgementMessages.ts';
import { readingMessages } from './readingMessages.ts';

/** How each rule's finding is said. */
export type Messages<R extends RuleId> = { readonly [K in R]: (fact: FactOf<K>) => string };

const messages: Messages<RuleId> = { ...readingMessages, ...judgementMessages };

/** The sentence of a finding, for people. */
export function messageOf(fact: Fact): string {
  const say = messages[fact.rule] as (fact: Fact) => string;
  return say(fact);
}

/** Name of a rule in a report, after the threshold that it is about: `danger-late`, `counter-danger-late`. */
export function reportedRule({ rule, threshold }: Pick<Fact, 'rule' | 'threshold'>): string {
  return threshold === null ? rule : `${threshold.replace(' ', '-')}-${rule}`;
}
