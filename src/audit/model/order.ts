import { thresholdNames, verdicts, type ThresholdResult, type ThresholdVerdict } from './threshold.ts';
import { type ChannelResult } from './report.ts';

/** Place of a verdict from worst (0) on: unreachable, late, undetermined, early, incomplete, within. */
export function rank(verdict: ThresholdVerdict): number {
  return verdicts.indexOf(verdict);
}

/** What of a threshold counts for its channel's verdict. */
type Judged = Pick<ThresholdResult, 'name' | 'multiplier' | 'verdict'>;

/** The threshold that gives a channel its verdict: the worst, and of equals danger before alert, then the latest. */
export function worstThreshold<T extends Judged>(thresholds: readonly T[]): T | undefined {
  let worst: T | undefined;
  for (const threshold of thresholds)
    if (!worst || compareThresholds(threshold, worst) < 0) worst = threshold;
  return worst;
}

function compareThresholds(a: Judged, b: Judged): number {
  return (
    rank(a.verdict) - rank(b.verdict) ||
    thresholdNames.indexOf(a.name) - thresholdNames.indexOf(b.name) ||
    a.multiplier - b.multiplier
  );
}

/** The verdict of a channel: the worst of its thresholds; without a danger it is incomplete, however its alert acts. */
export function channelVerdict(
  thresholds: readonly (Judged & Pick<ThresholdResult, 'setpoint'>)[],
): ThresholdVerdict {
  const danger = thresholds.find((threshold) => threshold.name === 'danger');
  if (!danger || danger.setpoint === null) return 'incomplete';
  return worstThreshold(thresholds)?.verdict ?? 'incomplete';
}

/** Channels worst first, those in bypass with those that can't act; of equals those whose danger is concerned, then the larger shift, then as they were listed. */
export function worstFirst(channels: readonly ChannelResult[]): ChannelResult[] {
  const keyed = channels.map((channel, index) => {
    const worst = worstThreshold(channel.thresholds);
    return {
      channel,
      index,
      verdict: channel.inBypass === true ? bypassed : rank(channel.verdict),
      name: worst ? thresholdNames.indexOf(worst.name) : thresholdNames.length,
      shift: Math.abs(worst?.shiftFraction ?? 0),
    };
  });
  keyed.sort((a, b) => a.verdict - b.verdict || a.name - b.name || b.shift - a.shift || a.index - b.index);
  return keyed.map((entry) => entry.channel);
}

/** Place of a channel in bypass, which protects nothing: with those that can't act. */
const bypassed = 0;
