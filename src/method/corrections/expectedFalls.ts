import { groupLate } from '../late/groupLate.ts';
import type { CorrectableGroup } from './corrected.ts';
import { SAME, inOrder } from './rankCorrections.ts';

/** What one correction takes off the expected number of late groups. */
export interface ExpectedFall {
  readonly tag: string;
  readonly fall: number;
}

/**
 * What each correction by itself takes off the expected number of late groups, the most helpful first, equal ones by tag;
 * those that take nothing off are left out. The expectation adds up over groups, so that falls of several machines compare.
 * Groups that cannot be used are left out. Source: linearity of the expectation. Example: one channel alone in a 1oo1, late
 * with 0.7, in time once corrected → 0.7.
 */
export function expectedFalls(groups: readonly CorrectableGroup[]): ExpectedFall[] {
  const falls = new Map<string, number>();
  for (const group of groups) {
    const now = groupLate(group).late;
    if (Number.isNaN(now)) continue;
    for (const tag of new Set(group.members.map((member) => member.tag))) {
      const members = group.members.map((member) => (member.tag === tag ? member.corrected : member));
      falls.set(tag, (falls.get(tag) ?? 0) + now - groupLate({ ...group, members }).late);
    }
  }
  return inOrder([...falls.keys()])
    .map((tag) => ({ tag, fall: falls.get(tag) ?? 0 }))
    .filter(({ fall }) => fall > SAME)
    .sort((one, other) => Math.round(other.fall / SAME) - Math.round(one.fall / SAME));
}
