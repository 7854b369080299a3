import type { Detection, Unit } from '../../../units/parse.ts';
import type { Place } from '../../model/findings.ts';
import type { MemberReason } from '../../model/report.ts';
import type { ThresholdResult } from '../../model/threshold.ts';

/** A channel as a member of its voting group, whether or not it could be audited. */
export interface Member {
  readonly tag: string;
  /** A group belongs to its machine: the same name on two machines is two groups. */
  readonly machine: string;
  readonly group: string;
  readonly voting: string;
  /** Where its group and its voting stand. */
  readonly places: { readonly group: Place; readonly voting: Place };
  readonly bypass: boolean | null;
  /** Whether the monitor marks it faulty now: its gap voltage lies outside the fault limits. */
  readonly faulty: boolean;
  readonly batch: string;
  /** The part of its uncertainty that the batch shares, expanded, a fraction. */
  readonly sharedUncertainty: number | null;
  readonly limit: number | null;
  readonly unit: Unit | null;
  readonly detection: Detection | null;
  /** As it is now. */
  readonly thresholds: readonly ThresholdResult[];
  /** As it was found, where it was measured again since; else `null`. */
  readonly asFound: readonly ThresholdResult[] | null;
  /** Why nothing of it could be worked out; `null` where it was audited. */
  readonly notAudited: MemberReason | null;
}

/**
 * Members of the same group: its machine and its name tell it from others. One that names no machine belongs to the group of
 * that name where there is just one.
 */
export function membersByGroup(members: readonly Member[]): Member[][] {
  const byName = new Map<string, Map<string, Member[]>>();
  for (const member of members) {
    if (member.group === '') continue;
    const machines = entry(byName, keyOf(member.group), () => new Map<string, Member[]>());
    entry(machines, keyOf(member.machine), (): Member[] => []).push(member);
  }
  return [...byName.values()].flatMap((machines) => {
    const nameless = machines.get('');
    if (!nameless || machines.size !== 2) return [...machines.values()];
    const named = [...machines].flatMap(([machine, all]) => (machine === '' ? [] : all));
    return [[...named, ...nameless]];
  });
}

function keyOf(text: string): string {
  return text.trim().replace(/\s+/gu, ' ').toLowerCase();
}

function entry<K, V>(map: Map<K, V>, key: K, empty: () => V): V {
  const there = map.get(key);
  if (there !== undefined) return there;
  const made = empty();
  map.set(key, made);
  return made;
}
