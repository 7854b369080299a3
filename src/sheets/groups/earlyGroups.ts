import { channelKey } from '../../audit/read/tables/tagKey.ts';
import type { GroupResult, Report } from '../../audit/model/report.ts';

/** Whether a member by which a group acts is early there, by the verdicts of the channels. */
export function earlyGroups({ channels }: Report): (group: GroupResult) => boolean {
  const byKey = new Map(channels.map((channel) => [channelKey(channel), channel]));
  return ({ machine, decidedBy, threshold, multiplier }) =>
    decidedBy.some((tag) =>
      byKey
        .get(channelKey({ machine, tag }))
        ?.thresholds.some(
          (one) => one.name === threshold && one.multiplier === multiplier && one.verdict === 'early',
        ),
    );
}
