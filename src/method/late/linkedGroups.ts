import type { AgainstLimit } from './member.ts';

/** A group against its limit. */
export interface Voters {
  /** How many late members make it late. */
  readonly needed: number;
  readonly members: readonly AgainstLimit[];
  /** Probability that it is late, by itself. */
  readonly late: number;
}

/** Groups that hang together by batches, and the batches that reach across them; by itself a group has none. */
export interface Linked {
  readonly groups: readonly Voters[];
  readonly batches: readonly string[];
}

/** Sorts groups into sets that share no batch with each other, and so are independent. */
export function linkedGroups(groups: readonly Voters[]): Linked[] {
  const setOf = groups.map((_, at) => at);
  const join = (one: number, other: number): void => {
    const [from, to] = [setOf[other], setOf[one]];
    for (const [at, own] of setOf.entries()) if (own === from) setOf[at] = to ?? own;
  };
  const groupsOf = new Map<string, Set<number>>();
  for (const [at, { members }] of groups.entries()) {
    for (const { batch } of members) {
      if (batch === null) continue;
      const holders = groupsOf.get(batch) ?? new Set();
      for (const holder of holders) join(holder, at);
      groupsOf.set(batch, holders.add(at));
    }
  }
  return [...new Set(setOf)].map((own) => ({
    groups: groups.filter((_, at) => setOf[at] === own),
    batches: [...groupsOf]
      .filter(([, holders]) => holders.size > 1 && [...holders].some((at) => setOf[at] === own))
      .map(([batch]) => batch),
  }));
}
