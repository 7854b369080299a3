import type { LateGroup } from '../late/groupLate.ts';
import { machineLate } from '../late/machineLate.ts';
import type { LateMember } from '../late/member.ts';
import type { Objective } from './rankCorrections.ts';

/** A member with its tag, and what it becomes once it is corrected. */
interface CorrectableMember extends LateMember {
  readonly tag: string;
  readonly corrected: LateMember;
}

export interface CorrectableGroup extends LateGroup {
  readonly members: readonly CorrectableMember[];
}

/** What is to be made small: the chance that anything on a machine is late, or the number of late groups. */
export type Goal = 'any' | 'expected';

/**
 * The objective of a machine's groups: with some channels corrected, the probability that any group is late, or the
 * expected number of late ones. A corrected channel has as a rule Km = Kc and its uncertainty and batch as before; what
 * it becomes stands with it. `NaN` as `machineLate`. Source: the probabilities of `machineLate` before and after.
 */
export function objectiveOf(groups: readonly CorrectableGroup[], goal: Goal): Objective {
  return (corrected) =>
    machineLate(
      groups.map((group) => ({
        ...group,
        members: group.members.map((member) => (corrected.has(member.tag) ? member.corrected : member)),
      })),
    )?.[goal] ?? NaN;
}
