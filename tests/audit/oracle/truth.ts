import {
  verdicts,
  worstOf,
  type ChannelFacts,
  type Evidence,
  type PolicyFacts,
  type Verdict,
} from './facts.ts';
import { groupsOf, type GroupTruth } from './groups.ts';
import { thresholdsOf, type ThresholdTruth } from './judge.ts';
import {
  alreadyThere,
  isDanger,
  ofBypass,
  ofGroups,
  ofLimit,
  ofThresholds,
  type NeedsAction,
} from './needsAction.ts';
import { evidenceNow } from './now.ts';
import { slowRollOf, type SlowRollTruth } from './slowRoll.ts';

/** Something of a workbook that no reader may use and that must be said. */
export interface Unread {
  readonly what: 'sheet' | 'table' | 'column' | 'row' | 'value';
  readonly text: string;
  /** The meaning it nearly spells or looks like. */
  readonly looksLike: string;
  readonly severity: 'critical' | 'warning';
  readonly sheet: string;
}

interface ChannelTruth {
  readonly tag: string;
  readonly machine: string;
  readonly state: 'as found' | 'as left';
  readonly inBypass: boolean;
  readonly verdict: Verdict;
  readonly thresholds: readonly ThresholdTruth[];
  readonly runout: SlowRollTruth | null;
  readonly asFound: { readonly verdict: Verdict; readonly thresholds: readonly ThresholdTruth[] } | null;
}

/** What a report of the audit must say of a workbook. */
export interface Truth {
  readonly channels: readonly ChannelTruth[];
  readonly groups: readonly GroupTruth[];
  /** Critical ones complete; warnings those of verdicts, readings and groups. */
  readonly attention: readonly NeedsAction[];
  readonly notRead: readonly Unread[];
  readonly summary: Readonly<
    Record<Verdict | 'channels' | 'inBypass' | 'groupsThatCannotTrip' | 'notRead', number>
  >;
  /** Of an audit with `--strict`. */
  readonly exitCode: 0 | 1;
}

export function truthOf(
  station: readonly ChannelFacts[],
  policy: PolicyFacts,
  notRead: readonly Unread[] = [],
  hair = 0,
): Truth {
  const members = station.map((facts) => {
    const now = evidenceNow(facts);
    return { facts, now, thresholds: thresholdsOf(facts, now, policy, hair) };
  });
  const channels = members.map(({ facts, thresholds }) => channelTruth(facts, thresholds, policy, hair));
  const groups = groupsOf(members, policy, hair).map(({ truth }) => truth);
  const attention = [
    ...members.flatMap(({ facts, now, thresholds }) => [
      ...alreadyThere(facts, now, policy, thresholds, hair),
      ...ofThresholds(facts, thresholds),
      ...ofLimit(facts, thresholds, policy, hair),
      ...ofBypass(facts),
    ]),
    ...ofGroups(groups),
    ...notRead.map(({ severity }): NeedsAction => unread(severity)),
  ];
  const counted = channels.filter(({ inBypass }) => !inBypass);
  const counts = verdicts.map((verdict) => [
    verdict,
    counted.filter((one) => one.verdict === verdict).length,
  ]);
  return {
    channels,
    groups,
    attention,
    notRead,
    summary: {
      ...(Object.fromEntries(counts) as Record<Verdict, number>),
      channels: channels.length,
      inBypass: channels.length - counted.length,
      groupsThatCannotTrip: new Set(
        groups.flatMap(({ canTrip, threshold, machine, name }) =>
          !canTrip && isDanger(threshold) ? [JSON.stringify([machine, name])] : [],
        ),
      ).size,
      notRead: notRead.length,
    },
    exitCode: attention.some(({ severity }) => severity === 'critical') ? 1 : 0,
  };
}

function unread(severity: NeedsAction['severity']): NeedsAction {
  return { severity, code: 'not read', machine: '', tag: null, group: null, threshold: null, multiplier: 1 };
}

function channelTruth(
  facts: ChannelFacts,
  thresholds: readonly ThresholdTruth[],
  policy: PolicyFacts,
  hair: number,
): ChannelTruth {
  const found = (e: Evidence): ChannelTruth['asFound'] => {
    const then = thresholdsOf(facts, e, policy, hair);
    return { verdict: verdictOf(then), thresholds: then };
  };
  return {
    tag: facts.tag,
    machine: facts.machine,
    state: facts.left === null ? 'as found' : 'as left',
    inBypass: facts.bypass === true,
    verdict: verdictOf(thresholds),
    thresholds,
    runout: slowRollOf(facts, evidenceNow(facts), thresholds),
    asFound: facts.left === null ? null : found(facts.found),
  };
}

/** The worst of its thresholds, where danger counts before alert: without its danger a channel is not known. */
function verdictOf(thresholds: readonly ThresholdTruth[]): Verdict {
  const known = thresholds.some(({ name, setpoint }) => name === 'danger' && setpoint !== null);
  return known ? worstOf(thresholds.map(({ verdict }) => verdict)) : 'incomplete';
}

/** Whom the critical entries are about, each once: `machine / tag` or `machine / group name / threshold ×multiplier`. */
export function criticalSubjects({ attention }: Truth): string[] {
  const subjects = attention.flatMap(({ severity, machine, tag, group, threshold, multiplier }) => {
    if (severity !== 'critical') return [];
    if (tag !== null) return [`${machine} / ${tag}`];
    return group === null ? ['not read'] : [`${machine} / group ${group} / ${threshold} ×${multiplier}`];
  });
  return [...new Set(subjects)].toSorted();
}
