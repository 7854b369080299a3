import { changeOf } from '../model/since.ts';
import type { Attention, ChannelResult, GroupResult, NotRead, Summary } from '../model/report.ts';
import { trips } from '../model/threshold.ts';

/** Voting groups that cannot trip: on danger, in either direction, running or at start-up. An alert trips nothing. */
function groupsThatCannotTrip(
  groups: readonly GroupResult[],
): readonly Pick<GroupResult, 'machine' | 'name'>[] {
  const idle = groups.filter((group) => !group.canTrip && trips(group.threshold));
  return [
    ...new Map(
      idle.map(({ machine, name }) => [JSON.stringify([machine, name]), { machine, name }]),
    ).values(),
  ];
}

/** Counts of a report: channels by their own verdict now, those in bypass apart. */
export function summarise(
  channels: readonly ChannelResult[],
  groups: readonly GroupResult[],
  notRead: readonly NotRead[],
  attention: readonly Attention[],
): Summary {
  const counts = { late: 0, early: 0, within: 0, undetermined: 0, unreachable: 0, incomplete: 0 };
  let [inBypass, asLeft, corrected] = [0, 0, 0];
  for (const { verdict, inBypass: bypassed, asFound } of channels) {
    if (bypassed === true) inBypass++;
    else counts[verdict]++;
    if (!asFound) continue;
    asLeft++;
    if (changeOf(asFound.verdict, verdict) === 'corrected') corrected++;
  }
  const critical = attention.filter(({ severity }) => severity === 'critical').length;
  return {
    channels: channels.length,
    ...counts,
    inBypass,
    groupsThatCannotTrip: groupsThatCannotTrip(groups).length,
    notRead: notRead.length,
    critical,
    warnings: attention.length - critical,
    asLeft,
    corrected,
  };
}

/** What `--strict` looks for: whether the list of what needs action holds anything critical. */
export function isCritical({ attention }: { readonly attention: readonly Attention[] }): boolean {
  return attention.some(({ severity }) => severity === 'critical');
}
