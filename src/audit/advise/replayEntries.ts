import { replaySeverity, type ReplayResult } from '../model/replay.ts';
import { noNumbers, replayCodes } from '../model/report.ts';
import { channelKey } from '../read/tables/tagKey.ts';
import { placesOf, type AdvisedChannel } from './advised.ts';
import type { EntryFacts } from './sentences.ts';

/** What of recorded readings needs action: a threshold that did not act or acted late, or of which they do not tell. */
export function ofReplay(replay: ReplayResult | null, channels: readonly AdvisedChannel[]): EntryFacts[] {
  if (!replay) return [];
  const byName = new Map(channels.map(({ result }) => [channelKey(result), result]));
  return replay.channels.flatMap((channel) => {
    const own = byName.get(channelKey(channel));
    return channel.thresholds.flatMap((threshold): EntryFacts[] => {
      const { name, setpoint, shouldActAt, outcome } = threshold;
      const of = own?.thresholds.find((one) => one.name === name && one.multiplier === 1);
      const [code, severity] = [replayCodes[outcome], replaySeverity(threshold, of?.verdict)];
      if (!own || code === undefined || severity === null || severity === 'note') return [];
      const { machine, tag, unit } = own;
      return [
        {
          replayed: [channel, threshold],
          entry: {
            ...noNumbers,
            severity,
            code,
            subject: { machine, tag, threshold: name, multiplier: 1, group: null },
            set: setpoint,
            real: of?.effective ?? null,
            panel: shouldActAt,
            unit,
            places: placesOf(own),
          },
        },
      ];
    });
  });
}
