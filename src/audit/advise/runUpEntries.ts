import { noNumbers, runUpCodes } from '../model/report.ts';
import { runUpSeverity, type RunUpResult } from '../model/runUp.ts';
import { channelKey } from '../read/tables/tagKey.ts';
import { placesOf, type AdvisedChannel } from './advised.ts';
import type { EntryFacts } from './sentences.ts';

/** What of run-ups needs action: a threshold that would not have acted, or acts late. */
export function ofRunUps(runUps: RunUpResult | null, channels: readonly AdvisedChannel[]): EntryFacts[] {
  if (!runUps) return [];
  const byName = new Map(channels.map(({ result }) => [channelKey(result), result]));
  return runUps.channels.flatMap((channel) => {
    const own = byName.get(channelKey(channel));
    return channel.thresholds.flatMap((threshold): EntryFacts[] => {
      const { name, multiplier, setpoint, realAtTrip, outcome } = threshold;
      const of = own?.thresholds.find((one) => one.name === name && one.multiplier === multiplier);
      const [code, severity] = [runUpCodes[outcome], runUpSeverity(threshold, of?.verdict)];
      if (!own || code === undefined || severity === null || severity === 'note') return [];
      const { machine, tag, unit } = own;
      return [
        {
          runUp: [channel, threshold],
          entry: {
            ...noNumbers,
            severity,
            code,
            subject: { machine, tag, threshold: name, multiplier, group: null },
            set: multiplier * setpoint,
            real: realAtTrip,
            unit,
            places: placesOf(own),
          },
        },
      ];
    });
  });
}
