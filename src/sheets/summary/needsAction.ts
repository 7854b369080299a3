import type { ChannelResult, GroupResult, Report } from '../../audit/model/report.ts';
import { isBeyondLimit } from './sentence.ts';
import {
  trips,
  type ThresholdName,
  type ThresholdResult,
  type ThresholdVerdict,
  verdicts,
} from '../../audit/model/threshold.ts';

/** What needs action: a group, or a threshold with its channel. */
export type Subject =
  { readonly group: GroupResult } | { readonly channel: ChannelResult; readonly threshold: ThresholdResult };

/** `rank` is its place among others of its kind and verdict, of any report: worst is 0. */
export type Item = Subject & { readonly rank: number };

export interface NeedsAction {
  readonly items: readonly Item[];
  readonly total: number;
}

/** What trips before what warns. */
const names: readonly ThresholdName[] = ['danger', 'counter danger', 'alert', 'counter alert'];

/**
 * The worst `most` things to act on: groups that cannot trip, then thresholds by verdict, danger before alert, then groups
 * that act late or beyond their limit; of equals in the report's order.
 */
export function needsAction({ groups, channels }: Report, most: number): NeedsAction {
  const ranked: Item[][] = [];
  let total = 0;
  const add = (rank: number, subject: Subject): void => {
    total++;
    const own = (ranked[rank] ??= []);
    if (own.length < most) own.push({ ...subject, rank });
  };
  const rankOf = (verdict: ThresholdVerdict, name: ThresholdName) =>
    1 + verdicts.indexOf(verdict) * names.length + names.indexOf(name);
  for (const group of groups) {
    const tripping = trips(group.threshold);
    if (!group.canTrip) add(tripping ? 0 : rankOf('unreachable', group.threshold), { group });
    else if (group.findings.length > 0) add(rankOf('within', 'counter alert') + 1, { group });
  }
  for (const channel of channels) {
    for (const threshold of channel.thresholds) {
      if (!calls(channel, threshold)) continue;
      add(rankOf(threshold.verdict, threshold.name), { channel, threshold });
    }
  }
  return { items: ranked.flat().slice(0, most), total };
}

function calls({ inputs }: ChannelResult, threshold: ThresholdResult): boolean {
  const { verdict } = threshold;
  if (verdict === 'incomplete') return false;
  return verdict !== 'within' || isBeyondLimit(inputs.limit, threshold);
}
