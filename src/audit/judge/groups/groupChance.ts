import { groupBand } from '../../../method/late/groupBand.ts';
import { type LateGroup, groupLate } from '../../../method/late/groupLate.ts';
import type { LateMember } from '../../../method/late/member.ts';
import type { LiveVote } from '../../../method/voting/liveVote.ts';
import type { GroupChance } from '../../model/report.ts';
import type { Spread } from '../../model/threshold.ts';

/** A live member's seat as the chances are worked out from it. */
export interface ChanceVoter {
  readonly tag: string;
  /** Away from zero; `null`: it cannot act. */
  readonly effective: number | null;
  /** Where it is meant to act, away from zero. */
  readonly setpoint: number | null;
  /** Expanded at the policy's coverage, in the group's unit; `null`: taken as exact. */
  readonly spread: Spread | null;
  readonly sharedUncertainty: number | null;
  readonly batch: string;
}

/** The level that a group is held against, away from zero. */
export interface ChanceLimit {
  readonly level: number;
  readonly of: GroupChance['of'];
}

/** What a group's chances are worked out with. */
export interface ChanceBasis {
  readonly group: LateGroup;
  readonly tags: readonly string[];
  /** `null` where no acting member has an uncertainty. */
  readonly chance: GroupChance | null;
}

/**
 * The chances of a group's live members against its limit, or against where its verdict turns late; `undefined` where it has
 * tripped already or something can't be used.
 */
export function groupChance(
  voters: readonly ChanceVoter[],
  left: LiveVote,
  limit: ChanceLimit,
  coverage: number,
): ChanceBasis | undefined {
  if (left === 'tripped') return undefined;
  const acting = voters.filter(({ effective }) => effective !== null);
  const members = voters.map((voter) => lateMember(voter, coverage));
  // A vote that cannot trip needs one more than there are.
  const m = left === 'cannot trip' ? Math.max(1, members.length) : left.m;
  const dead = { threshold: Infinity, shared: 0, own: 0, batch: null };
  const votes = left !== 'cannot trip' ? members : members.length > 0 ? members.map(() => dead) : [dead];
  const group: LateGroup = { m, limit: limit.level, members: votes };
  const later = groupLate(group).late;
  if (Number.isNaN(later)) return undefined;
  const known = acting.some(({ spread }) => spread !== null);
  return {
    group,
    tags: voters.map(({ tag }) => tag),
    chance: known ? chanceOf(group, later, acting, limit, coverage) : null,
  };
}

function chanceOf(
  group: LateGroup,
  later: number,
  acting: readonly ChanceVoter[],
  limit: ChanceLimit,
  coverage: number,
): GroupChance {
  const { low, high } = groupBand(group, coverage);
  const unlabelled = acting.some(({ spread, batch }) => spread !== null && batch === '');
  return {
    limit: limit.level,
    of: limit.of,
    later,
    low: Number.isNaN(low) ? null : low,
    high: Number.isNaN(high) ? null : high,
    ends: unlabelled && acting.length > 1 ? endsOf(group) : null,
    exact: acting.filter(({ spread }) => spread === null).map(({ tag }) => tag),
  };
}

function lateMember(
  { effective, spread, sharedUncertainty, batch }: ChanceVoter,
  coverage: number,
): LateMember {
  const whole = (spread?.ofDivisor ?? 0) / coverage;
  const shared = Math.min((sharedUncertainty ?? 0) / coverage, whole);
  return {
    threshold: effective ?? Infinity,
    shared,
    own: Math.sqrt((whole - shared) * (whole + shared)),
    offset: (spread?.ofNumerator ?? 0) / coverage,
    both: (spread?.both ?? 0) / coverage ** 2,
    batch: batch === '' ? null : batch.trim().replace(/\s+/gu, ' ').toLowerCase(),
  };
}

/** With every error independent, and with every error wholly shared. */
function endsOf(group: LateGroup): { readonly independent: number; readonly allShared: number } {
  const late = (of: (member: LateMember) => LateMember): number =>
    groupLate({ ...group, members: group.members.map(of) }).late;
  return {
    independent: late((member) => ({ ...member, batch: null })),
    allShared: late((member) => ({
      ...member,
      shared: Math.hypot(member.shared, member.own),
      own: 0,
      batch: 'all',
    })),
  };
}
