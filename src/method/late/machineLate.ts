import { type LateGroup, groupLate, lateNeeded } from './groupLate.ts';
import { linkedLate } from './linkedLate.ts';
import { linkedGroups } from './linkedGroups.ts';
import { againstLimit } from './member.ts';

/** What can be late on a machine. */
export interface MachineLate {
  /** Probability that at least one group is late. */
  readonly any: number;
  /** Probability that every group is late. */
  readonly all: number;
  /** Expected number of late groups. */
  readonly expected: number;
}

/**
 * How likely it is that groups of one machine act later than their limits, with batches that reach across groups. Each
 * group as `groupLate` takes it; `undefined` without a group or where one cannot be used. `any` and `all` are `NaN` where
 * so many groups hang together by several batches that they are not worked out. Source: late counts of all groups
 * carried together through the recursion, batch by batch. Example: two groups late with ½ each, nothing shared → ¾, ¼, 1.
 */
export function machineLate(groups: readonly LateGroup[]): MachineLate | undefined {
  const singly = groups.map((group) => groupLate(group).late);
  if (singly.length === 0 || singly.some((late) => Number.isNaN(late))) return undefined;
  const voters = groups.map(({ m, limit, members }, at) => ({
    needed: lateNeeded({ m, members }),
    members: members.map((member) => againstLimit(member, limit)),
    late: singly[at] ?? NaN,
  }));
  let logNone = 0;
  let all = 1;
  for (const linked of linkedGroups(voters)) {
    const share = linkedLate(linked);
    logNone += Math.log1p(-share.any);
    all *= share.all;
  }
  return { any: -Math.expm1(logNone), all, expected: singly.reduce((sum, one) => sum + one, 0) };
}
