import { countAsLeft, mayBeLate } from '../model/change.ts';
import type { ChannelResult, GroupResult, Summary } from '../model/report.ts';
import { trips, type ThresholdResult } from '../model/threshold.ts';

/** Names of the voting groups that cannot trip: on danger, in either direction. An alert trips nothing. */
export function groupsThatCannotTrip(groups: readonly GroupResult[]): string[] {
  const idle = groups.filter((group) => !group.canTrip && trips(group.threshold));
  return [...new Set(idle.map((group) => group.name))];
}

/** Counts of a report: channels by their own verdict, and voting groups that cannot trip. */
export function summarise(channels: readonly ChannelResult[], groups: readonly GroupResult[]): Summary {
  const counts = { late: 0, early: 0, within: 0, undetermined: 0, unreachable: 0, incomplete: 0 };
  for (const channel of channels) counts[channel.verdict]++;
  return {
    channels: channels.length,
    ...counts,
    groupsThatCannotTrip: groupsThatCannotTrip(groups).length,
    asLeft: countAsLeft(channels),
  };
}

/** What `--strict` looks for: a danger that is late, unreachable or undetermined, as found or as left, or a group that cannot trip. */
export function needsAction(channels: readonly ChannelResult[], groups: readonly GroupResult[]): boolean {
  return (
    groupsThatCannotTrip(groups).length > 0 ||
    channels.some(
      ({ thresholds, asLeft }) => thresholds.some(isLateTrip) || asLeft?.thresholds.some(isLateTrip),
    )
  );
}

function isLateTrip({ name, verdict }: ThresholdResult): boolean {
  return trips(name) && mayBeLate(verdict);
}
