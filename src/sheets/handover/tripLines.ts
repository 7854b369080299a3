import { level } from '../../audit/model/wording.ts';
import { memberReasonText } from '../../audit/advise/groupSentences.ts';
import { tagKey } from '../../audit/read/tables/tagKey.ts';
import type { Attention, ChannelResult, GroupResult } from '../../audit/model/report.ts';
import { trips, type ThresholdResult, type ThresholdVerdict } from '../../audit/model/threshold.ts';
import { parseVoting } from '../../method/voting/voting.ts';
import type { Machine } from '../machines.ts';
import { unlistedIn } from './channelRows.ts';
import { clipped, listed } from './paper.ts';
import { shadeOf, signOf, verdictSigns } from './signs.ts';

/** How the vote of one group stands, running, the other way and at start-up. */
export interface TripLine {
  readonly sign: string;
  readonly shade: ThresholdVerdict;
  readonly words: string;
}

/** A line for each voting group that trips, worst first, and one for the channels that stand in none. */
export function tripLines(machine: Machine): readonly TripLine[] {
  const byName = new Map<string, GroupResult[]>();
  for (const group of machine.groups) {
    if (!trips(group.threshold)) continue;
    byName.set(group.name, [...(byName.get(group.name) ?? []), group]);
  }
  const lines = [...byName].map(([name, groups]) => ({
    line: lineOf(name, groups, machine),
    first: firstEntry(name, machine),
  }));
  lines.sort((one, other) => one.first - other.first || 0);
  return [...lines.map(({ line }) => line), ...alone(machine)];
}

function entriesOf(name: string, { attention }: Machine): readonly Attention[] {
  return attention.filter(
    ({ subject }) => subject.group === name && subject.threshold !== null && trips(subject.threshold),
  );
}

/** Place in the list of what needs action; past all of them where there is nothing. */
function firstEntry(name: string, machine: Machine): number {
  const [entry] = entriesOf(name, machine);
  return entry ? machine.attention.indexOf(entry) : machine.attention.length;
}

function lineOf(name: string, groups: readonly GroupResult[], machine: Machine): TripLine {
  const entries = entriesOf(name, machine);
  const entry = entries.find(({ code }) => code === 'group-beyond-limit') ?? entries[0];
  const channels = new Map(machine.channels.map((channel) => [tagKey(channel.tag), channel]));
  const ordered = groups.toSorted((one, other) => one.multiplier - other.multiplier);
  const clauses = ordered.map((group) => clauseOf(group, channels));
  const distrusted = distrustedIn(ordered, channels);
  const warning = distrusted.length === 0 ? '' : ` Do not count on ${listed(distrusted, 6, 40)}.`;
  const [{ voting, members } = { voting: '', members: [] }] = groups;
  const missing = (parseVoting(voting)?.n ?? 0) - members.length;
  const unknown = missing > 0 ? ` Not known: ${missing} of its ${missing + members.length} members.` : '';
  const reduced = distrusted.length > 0 || missing > 0;
  return {
    ...(entry
      ? { sign: signOf(entry), shade: shadeOf(entry.code) }
      : withoutEntry(ordered, distrusted, reduced, channels)),
    words: `${clipped(name, 60)} (${votingWords(voting)}): ${clauses.join('; ')}.${warning}${unknown}`,
  };
}

/** A vote that acts in time, and whether it does so by members that can be counted on. */
function withoutEntry(
  groups: readonly GroupResult[],
  distrusted: readonly string[],
  reduced: boolean,
  channels: ReadonlyMap<string, ChannelResult>,
): Pick<TripLine, 'sign' | 'shade'> {
  const deciding = groups.flatMap(({ decidedBy }) => decidedBy);
  if (!reduced) {
    const early = groups.some((group) => isEarly(group, channels));
    const sign = early ? 'early' : 'within';
    return { sign: verdictSigns[sign], shade: sign };
  }
  return deciding.some((tag) => distrusted.includes(tag))
    ? { sign: verdictSigns.undetermined, shade: 'undetermined' }
    : { sign: '! reduced', shade: 'undetermined' };
}

/** Whether a member by which the group trips is early there. */
function isEarly(group: GroupResult, channels: ReadonlyMap<string, ChannelResult>): boolean {
  return group.decidedBy.some((tag) => thresholdOf(tag, group, channels)?.verdict === 'early');
}

function clauseOf(group: GroupResult, channels: ReadonlyMap<string, ChannelResult>): string {
  const { threshold, multiplier, effective, canTrip, decidedBy, unit, members, liveVoting, late, chance } =
    group;
  const when = [
    threshold.startsWith('counter') ? 'in the counter direction' : '',
    multiplier === 1 ? '' : `at start-up × ${multiplier}`,
  ].filter((part) => part !== '');
  const start = when.length === 0 ? '' : `${when.join(' ')} `;
  if (liveVoting === 'tripped') return `${start}HAS TRIPPED by ${listed(decidedBy, 3, 40)}, out of service`;
  if (!canTrip || effective === null) {
    const idle = members.flatMap(({ tag, why }) =>
      why === null ? [] : [`${clipped(tag, 40)} (${memberReasonText(why)})`],
    );
    return `${start}CANNOT TRIP${idle.length > 0 ? ` because of ${listed(idle, 4)}` : ''}`;
  }
  const steps = decidedBy.map((tag) => channels.get(tagKey(tag))?.inputs.resolution ?? null);
  const say = (value: number): string => level(value, steps[0] ?? null);
  const inUnit = unit === null ? '' : ` ${unit}`;
  const { low, high } = chance ?? { low: null, high: null };
  const sign = threshold.startsWith('counter') ? -1 : 1;
  const between =
    low === null || high === null ? '' : ` (between ${say(sign * low)} and ${say(sign * high)}${inUnit})`;
  const how = late ? 'trips late, at' : isEarly(group, channels) ? 'trips early, at' : 'trips at';
  return `${start}${how} ${say(effective)}${inUnit}${between} by ${listed(decidedBy, 3, 40)}`;
}

/** Members that cannot act or whose danger is not OK, but those by which a vote is said to be late, in the order of the list. */
function distrustedIn(
  groups: readonly GroupResult[],
  channels: ReadonlyMap<string, ChannelResult>,
): readonly string[] {
  const tags = groups
    .filter(({ multiplier }) => multiplier === 1)
    .flatMap((group) =>
      group.members
        .filter(({ tag, why }) => {
          if (group.late && group.decidedBy.includes(tag)) return false;
          const own = thresholdOf(tag, group, channels);
          return why !== null || !own || unreliable.has(own.verdict);
        })
        .map(({ tag }) => tag),
    );
  return [...new Set(tags)];
}

/** The threshold of a member that votes in a group. */
function thresholdOf(
  tag: string,
  { threshold, multiplier }: GroupResult,
  channels: ReadonlyMap<string, ChannelResult>,
): ThresholdResult | undefined {
  return channels
    .get(tagKey(tag))
    ?.thresholds.find((one) => one.name === threshold && one.multiplier === multiplier);
}

const unreliable: ReadonlySet<ThresholdVerdict> = new Set([
  'unreachable',
  'late',
  'undetermined',
  'incomplete',
]);

/** Channels that no group votes for, each with where it trips. */
function alone(machine: Machine): readonly TripLine[] {
  const { channels, groups } = machine;
  const voting = new Set(groups.flatMap(({ members }) => members.map(({ tag }) => tagKey(tag))));
  const single = channels.filter(({ tag }) => !voting.has(tagKey(tag)));
  const line = (
    start: string,
    those: readonly ChannelResult[],
    unlisted: readonly string[] = [],
  ): TripLine[] => {
    const words = [...those.map(aloneWords), ...unlisted.map((tag) => `${clipped(tag, 40)} not known`)];
    return words.length === 0
      ? []
      : [{ sign: '', shade: 'within', words: `${start}: ${listed(words, 8, 60)}.` }];
  };
  return [
    ...line(
      'Voting not known',
      single.filter(({ inputs }) => inputs.group !== ''),
      unlistedIn(machine)
        .map(({ subject }) => subject.tag)
        .filter((tag) => !voting.has(tagKey(tag))),
    ),
    ...line(
      'In no voting group',
      single.filter(({ inputs }) => inputs.group === ''),
    ),
  ];
}

function aloneWords({ tag, thresholds, inBypass, unit, inputs }: ChannelResult): string {
  const running = thresholds.filter(({ multiplier }) => multiplier === 1);
  const danger = running.find(({ name }) => name === 'danger');
  const counter = running.find(({ name }) => name === 'counter danger');
  const name = clipped(tag, 40);
  if (inBypass === true) return `${name} in bypass`;
  if (inBypass === null || !danger || danger.verdict === 'incomplete') return `${name} not known`;
  if (danger.verdict === 'unreachable' || danger.effective === null) return `${name} cannot trip`;
  const at = (one: ThresholdResult): string =>
    one.verdict === 'undetermined'
      ? [one.low, one.high].map((end) => level(end ?? NaN, inputs.resolution)).join(' to ')
      : level(one.effective ?? NaN, inputs.resolution);
  const other =
    !counter || counter.verdict === 'incomplete'
      ? ''
      : counter.verdict === 'unreachable' || counter.effective === null
        ? ', not in the counter direction'
        : ` and ${at(counter)}`;
  return `${name} at ${at(danger)}${other}${unit === null ? '' : ` ${unit}`}`;
}

/** A voting as people say it: `1oo2` → `either of two`. */
function votingWords(voting: string): string {
  const [, needed, of] = /^(\d+)oo(\d+)$/u.exec(voting) ?? [];
  if (needed === undefined || of === undefined) return clipped(voting, 30);
  if (of === '1') return 'alone';
  if (of === '2') return needed === '1' ? 'either of two' : 'both of two';
  return needed === of ? `all ${of}` : `any ${needed} of ${of}`;
}
