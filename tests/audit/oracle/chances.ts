import normal from '@stdlib/stats-base-dists-normal-cdf';

/** A member of a voting group; standard uncertainties are parts of its sensitivity, that of its zero is a displacement. */
export interface Voter {
  /** Where it acts by its best values; infinite: it cannot act, is not known or is out without a vote. */
  readonly threshold: number;
  readonly shared: number;
  readonly own: number;
  readonly zero: number;
  /** Covariance of numerator and sensitivity, in the unit of the displacement; 0 but for loops. */
  readonly both?: number;
  /** `null`: a batch of its own. */
  readonly batch: string | null;
}

/** A group that must not act later than its limit; `votes` of its members have to act. */
export interface Vote {
  readonly votes: number;
  readonly limit: number;
  readonly members: readonly Voter[];
}

/** Sets of late members, each a number whose bits are the members, with their probabilities. */
type Sets = Float64Array;

const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/** Late given the normal of its batch: T falls short of L·(1 + c·z) by less than its own scatter. */
function lateAt({ threshold, shared, own, zero, both = 0 }: Voter, limit: number, z: number): number {
  if (threshold === Infinity) return 1;
  const margin = threshold - limit * (1 + shared * z);
  const scatter = Math.sqrt(Math.max(0, (limit * own) ** 2 - 2 * limit * both + zero ** 2));
  if (scatter === 0) return margin > 0 ? 1 : 0;
  return normal(margin / scatter, 0, 1);
}

/** Its errors all its own. */
function alone(voter: Voter): Voter {
  return { ...voter, shared: 0, own: Math.hypot(voter.shared, voter.own), batch: null };
}

/** Simpson's rule between places where a member turns from late to in time and one every half. */
function meanOver(
  some: readonly { readonly voter: Voter; readonly limit: number }[],
  add: (z: number, weight: number) => void,
): void {
  const places = new Set(Array.from({ length: 37 }, (_, at) => at / 2 - 9));
  for (const { voter, limit } of some) {
    if (voter.shared === 0 || voter.threshold === Infinity) continue;
    const centre = (voter.threshold / limit - 1) / voter.shared;
    const width = Math.hypot(voter.own, voter.zero / limit) / voter.shared;
    for (let step = -8; step <= 8; step++) {
      const place = centre + step * width;
      if (place > -9 && place < 9) places.add(place);
    }
  }
  const sorted = [...places].toSorted((one, other) => one - other);
  const parts = 60;
  for (let at = 1; at < sorted.length; at++) {
    const [from, to] = [sorted[at - 1]!, sorted[at]!];
    const step = (to - from) / parts;
    for (let node = 0; node <= parts; node++) {
      const simpson = node === 0 || node === parts ? 1 : node % 2 === 1 ? 4 : 2;
      // Just inside the ends, where a member without scatter of its own jumps.
      const inside = node === 0 ? 1e-12 : node === parts ? -1e-12 : 0;
      const z = from + node * step + inside * (to - from);
      add(z, (simpson * step * density(z)) / 3);
    }
  }
}

/** How likely each set of late members is, all groups together: batches are independent, members of one share its normal. */
function setsOf(votes: readonly Vote[]): Sets {
  const all = votes.flatMap(({ members, limit }) => members.map((voter) => ({ voter, limit })));
  const batches = new Map<string, number[]>();
  const single: number[] = [];
  for (const [at, { voter }] of all.entries()) {
    if (voter.batch === null) single.push(at);
    else batches.set(voter.batch, [...(batches.get(voter.batch) ?? []), at]);
  }
  let sets: Sets = new Float64Array(2 ** all.length);
  sets[0] = 1;
  const with_ = (some: readonly number[], chances: Sets): void => {
    const next = new Float64Array(sets.length);
    for (let before = 0; before < sets.length; before++) {
      if (sets[before] === 0) continue;
      for (let set = 0; set < chances.length; set++) {
        const bits = some.reduce((sum, at, bit) => sum | ((set >> bit) & 1 ? 1 << at : 0), 0);
        next[before | bits]! += sets[before]! * chances[set]!;
      }
    }
    sets = next;
  };
  for (const at of single) {
    const { voter, limit } = all[at]!;
    const late = lateAt(alone(voter), limit, 0);
    with_([at], Float64Array.of(1 - late, late));
  }
  for (const some of batches.values()) {
    const chances = new Float64Array(2 ** some.length);
    const voters = some.map((at) => all[at]!);
    meanOver(voters, (z, weight) => {
      const late = voters.map(({ voter, limit }) => lateAt(voter, limit, z));
      for (let set = 0; set < chances.length; set++)
        chances[set]! += late.reduce((product, p, bit) => product * ((set >> bit) & 1 ? p : 1 - p), weight);
    });
    with_(some, chances);
  }
  return sets;
}

/** Which groups are late, by the set of late members: N − M + 1 late ones leave fewer than M to act in time. */
function lateGroups(votes: readonly Vote[], set: number): boolean[] {
  let bit = 0;
  return votes.map(({ votes: needed, members }) => {
    let late = 0;
    for (let at = 0; at < members.length; at++, bit++) late += (set >> bit) & 1;
    return late >= members.length - needed + 1;
  });
}

/** Any group late, all late, and how many are to be expected. */
export function machineChances(votes: readonly Vote[]): { any: number; all: number; expected: number } {
  const found = { any: 0, all: 0, expected: 0 };
  setsOf(votes).forEach((chance, set) => {
    const late = lateGroups(votes, set);
    if (late.some(Boolean)) found.any += chance;
    if (late.every(Boolean)) found.all += chance;
    found.expected += chance * late.filter(Boolean).length;
  });
  return found;
}

/** One group later than its limit. */
export function groupChance(vote: Vote): number {
  return machineChances([vote]).any;
}

/** Both ends where labels are missing: nothing shared, and all of every error shared by all. */
export function bothEnds(vote: Vote): { independent: number; allShared: number } {
  const one = (voter: Voter): Voter => ({
    ...voter,
    shared: Math.hypot(voter.shared, voter.own),
    own: 0,
    batch: 'one for all',
  });
  return {
    independent: groupChance({ ...vote, members: vote.members.map(alone) }),
    allShared: groupChance({ ...vote, members: vote.members.map(one) }),
  };
}

/** Where the group has acted with probability Φ(−k) and with Φ(k): roots in ln L by bisection. */
export function interval(vote: Vote, coverage: number): { low: number; high: number } {
  const [low, high] = [-coverage, coverage].map((at) => {
    const acted = normal(at, 0, 1);
    const best = vote.members.map(({ threshold }) => threshold).toSorted((a, b) => a - b)[vote.votes - 1]!;
    let [from, to] = [Math.log(best) - 0.7, Math.log(best) + 0.7];
    for (let step = 0; step < 60; step++) {
      const middle = (from + to) / 2;
      if (1 - groupChance({ ...vote, limit: Math.exp(middle) }) < acted) from = middle;
      else to = middle;
    }
    return Math.exp((from + to) / 2);
  });
  return { low: low!, high: high! };
}
