import { countsGiven, lateCounts, lateGiven, withMember } from './lateCounts.ts';
import type { Linked, Voters } from './linkedGroups.ts';
import { sharedNormal } from './sharedNormal.ts';

/**
 * Joint late counts of several groups, each count capped where its group is late: `shares[index]`, the index counting
 * with the sizes as the digits of a number, the first group's count the slowest.
 */
interface JointCounts {
  readonly sizes: readonly number[];
  readonly shares: Float64Array;
}

/** Joint counts of more states than this are not worked out. */
const MOST_STATES = 20_000;

/** Probability that any of the groups is late, and that all are. */
export interface AnyAndAll {
  readonly any: number;
  readonly all: number;
}

/**
 * Any and all of groups that hang together by batches. For one value of the normal of the batch that reaches farthest the
 * groups are tied by the other batches alone; those, as a rule none, are carried as joint late counts, each count capped
 * where its group is late. Both `NaN` where the joint counts would be too many. Source: as `machineLate`.
 */
export function linkedLate({ groups, batches }: Linked): AnyAndAll {
  const [only] = groups;
  if (only && groups.length === 1) return { any: only.late, all: only.late };
  const reach = (batch: string): number => groups.filter((group) => holds(group, batch)).length;
  const [farthest = '', ...others] = batches.toSorted((one, other) => reach(other) - reach(one));
  const tied = groups.filter((group) => others.some((batch) => holds(group, batch)));
  if (statesOf(tied.map(({ needed }) => needed + 1)) > MOST_STATES) return { any: NaN, all: NaN };
  const loose = groups.filter((group) => !tied.includes(group));

  const local = (group: Voters): number[] =>
    lateCounts(group.members.filter(({ batch }) => batch === null || !batches.includes(batch)));
  const independent = loose.map((group) => {
    const so = local(group);
    const members = ofBatch(group, farthest);
    return { so, members, needed: group.needed, counts: new Float64Array(so.length + members.length) };
  });
  let joint = independentJoint(tied.map((group) => capped(local(group), group.needed)));
  for (const batch of others) joint = addedJoint(joint, jointOfBatch(tied, batch));

  const { nodes, weights } = sharedNormal(groups.flatMap((group) => ofBatch(group, farthest)));
  let [any, all] = [0, 0];
  for (const [at, z] of nodes.entries()) {
    let logNone = 0;
    let every = 1;
    for (const { so, members, needed, counts } of independent) {
      countsGiven(so, members, z, counts);
      let late = 0;
      for (let j = needed; j < counts.length; j++) late += counts[j] ?? 0;
      logNone += Math.log1p(-Math.min(1, late));
      every *= late;
    }
    const more = tied.map((group) => grown([1], group, farthest, z));
    const none =
      tied.length === 0
        ? 1
        : meanOfProduct(
            joint,
            tied.map((group, g) => short(more[g] ?? [], group.needed)),
          );
    const both =
      tied.length === 0
        ? 1
        : meanOfProduct(
            joint,
            tied.map((group, g) => enough(more[g] ?? [], group.needed)),
          );
    const weight = weights[at] ?? 0;
    any += weight * (none === 1 ? -Math.expm1(logNone) : 1 - none * Math.exp(logNone));
    all += weight * every * both;
  }
  return { any: Math.min(1, any), all: Math.min(1, all) };
}

function holds({ members }: Voters, batch: string): boolean {
  return members.some((member) => member.batch === batch);
}

function ofBatch({ members }: Voters, batch: string) {
  return members.filter((member) => member.batch === batch);
}

/** Late counts with the members of a batch added, the normal that they share being `z`. */
function grown(counts: readonly number[], group: Voters, batch: string, z: number): number[] {
  return ofBatch(group, batch).reduce<number[]>(
    (so, member) => withMember(so, lateGiven(member, z)),
    [...counts],
  );
}

/** Probability, for each count so far, that `more` late members leave the group in time. */
function short(more: readonly number[], needed: number): number[] {
  return Array.from({ length: needed + 1 }, (_, so) =>
    more.slice(0, Math.max(0, needed - so)).reduce((sum, share) => sum + share, 0),
  );
}

/** Probability, for each count so far, that `more` late members make the group late. */
function enough(more: readonly number[], needed: number): number[] {
  return Array.from({ length: needed + 1 }, (_, so) =>
    more.slice(Math.max(0, needed - so)).reduce((sum, share) => sum + share, 0),
  );
}

/** Joint counts of the members of one batch, over the normal that they share. */
function jointOfBatch(groups: readonly Voters[], batch: string): JointCounts {
  const sizes = groups.map(({ needed }) => needed + 1);
  const sums = new Float64Array(statesOf(sizes));
  const { nodes, weights } = sharedNormal(groups.flatMap((group) => ofBatch(group, batch)));
  for (const [at, z] of nodes.entries()) {
    const { shares } = independentJoint(
      groups.map((group) => capped(grown([1], group, batch, z), group.needed)),
    );
    for (const [state, share] of shares.entries())
      sums[state] = (sums[state] ?? 0) + (weights[at] ?? 0) * share;
  }
  return { sizes, shares: sums };
}

/** How many joint states groups of these sizes have. */
function statesOf(sizes: readonly number[]): number {
  return sizes.reduce((product, size) => product * size, 1);
}

/** Late counts with all from `needed` on as one. */
function capped(counts: readonly number[], needed: number): number[] {
  const shares = new Array<number>(needed + 1).fill(0);
  for (const [count, share] of counts.entries()) {
    const at = Math.min(count, needed);
    shares[at] = (shares[at] ?? 0) + share;
  }
  return shares;
}

/** Joint counts of groups that share nothing. */
function independentJoint(groups: readonly (readonly number[])[]): JointCounts {
  const sizes = groups.map((shares) => shares.length);
  let shares: number[] = [1];
  for (const one of groups) shares = shares.flatMap((share) => one.map((other) => share * other));
  return { sizes, shares: Float64Array.from(shares) };
}

/** Joint counts of two sets of members of the same groups that share nothing: sums, capped. */
function addedJoint({ sizes, shares }: JointCounts, other: JointCounts): JointCounts {
  const sums = new Float64Array(shares.length);
  for (const [i, share] of shares.entries()) {
    if (share === 0) continue;
    for (const [j, more] of other.shares.entries()) {
      if (more === 0) continue;
      const at = indexOfSum(i, j, sizes);
      sums[at] = (sums[at] ?? 0) + share * more;
    }
  }
  return { sizes, shares: sums };
}

function indexOfSum(one: number, other: number, sizes: readonly number[]): number {
  let index = 0;
  let stride = 1;
  for (let at = sizes.length - 1; at >= 0; at--) {
    const size = sizes[at] ?? 1;
    const sum = (Math.floor(one / stride) % size) + (Math.floor(other / stride) % size);
    index += Math.min(sum, size - 1) * stride;
    stride *= size;
  }
  return index;
}

/** The mean over all states of the product of what each group has for its count. */
function meanOfProduct({ sizes, shares }: JointCounts, values: readonly (readonly number[])[]): number {
  let products: number[] = [1];
  for (const [at, size] of sizes.entries()) {
    const own = Array.from({ length: size }, (_, count) => values[at]?.[count] ?? 0);
    products = products.flatMap((product) => own.map((value) => product * value));
  }
  return products.reduce((sum, product, at) => sum + product * (shares[at] ?? 0), 0);
}
