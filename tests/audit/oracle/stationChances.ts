import { bothEnds, groupChance, machineChances } from './chances.ts';
import type { ChannelFacts, PolicyFacts } from './facts.ts';
import { groupsOf, type GroupTruth, type WorkedGroup } from './groups.ts';
import { thresholdsOf } from './judge.ts';
import { evidenceNow } from './now.ts';

/** How likely a group acts later than its limit. */
interface GroupChance {
  readonly limit: number;
  readonly of: 'its limit' | 'where late begins';
  readonly later: number;
  /** Where a label is missing: nothing shared, and all of it. */
  readonly ends: { readonly independent: number; readonly allShared: number } | null;
  readonly exact: readonly string[];
}

/** Of the danger groups of a machine while it runs. */
interface MachineChance {
  readonly machine: string;
  readonly groups: number;
  /** That any of them acts later than its limit, that all do, and how many are to be expected. */
  readonly any: number;
  readonly all: number;
  readonly expected: number;
}

export interface StationChances {
  readonly groups: readonly {
    readonly of: GroupTruth;
    /** `null` where no acting member has an uncertainty. */
    readonly chance: GroupChance | null;
    /** That the group has acted at a level, where there is a chance. */
    readonly actedAt: (level: number) => number;
  }[];
  /** Machines of which anything is uncertain; a group that has tripped is not late. */
  readonly machines: readonly MachineChance[];
}

/** All chances of a station (section 15). */
export function chancesOf(station: readonly ChannelFacts[], policy: PolicyFacts): StationChances {
  const members = station.map((facts) => ({
    facts,
    thresholds: thresholdsOf(facts, evidenceNow(facts), policy),
  }));
  const worked = groupsOf(members, policy);
  const running = worked.filter(({ truth, vote }) => truth.multiplier === 1 && vote !== null);
  return {
    groups: worked.map((one) => ({
      of: one.truth,
      chance: chanceOf(one),
      actedAt: (limit) => 1 - groupChance({ ...one.vote!, limit }),
    })),
    machines: [...new Set(running.map(({ truth }) => truth.machine))].flatMap((machine) => {
      const own = running.filter(({ truth }) => truth.machine === machine);
      if (!own.some(isUncertain)) return [];
      const votes = own.flatMap(({ vote }) => vote ?? []);
      return [{ machine, groups: votes.length, ...machineChances(votes) }];
    }),
  };
}

function isUncertain({ live }: WorkedGroup): boolean {
  return live.some((voter) => voter.isUncertain);
}

function chanceOf(group: WorkedGroup): GroupChance | null {
  const { vote, live, hasLimit } = group;
  if (vote === null || !isUncertain(group)) return null;
  const acting = live.filter(({ effective }) => effective !== Infinity);
  const isUnlabelled = acting.some((voter) => voter.isUncertain && voter.chance.batch === null);
  return {
    limit: vote.limit,
    of: hasLimit ? 'its limit' : 'where late begins',
    later: groupChance(vote),
    ends: isUnlabelled && acting.length > 1 ? bothEnds(vote) : null,
    exact: acting.filter((voter) => !voter.isUncertain).map(({ tag }) => tag),
  };
}
