import type { ThresholdResult } from '../../audit/model/threshold.ts';
import type { ChannelResult } from '../../audit/model/report.ts';
import { amount, capital } from '../../audit/model/wording.ts';
import { isBeyondLimit } from '../summary/sentence.ts';

/** A channel as it was left, in place of as it was found; `null` where it was not judged as left. The present reading is one as found. */
export function channelAsLeft(channel: ChannelResult): ChannelResult | null {
  const { asLeft, inputs } = channel;
  if (!asLeft) return null;
  const { sensitivity, thresholds, verdict, linearReach } = asLeft;
  return {
    ...channel,
    sensitivity,
    thresholds,
    verdict,
    record: null,
    inputs: {
      ...inputs,
      gapVoltage: asLeft.gapVoltage ?? inputs.gapVoltage,
      linearReach,
      reading: null,
      realReading: null,
    },
  };
}

/** The channel as it stands now: as left where that was judged, else as found. */
export function channelNow(channel: ChannelResult): ChannelResult {
  return channelAsLeft(channel) ?? channel;
}

/**
 * Where the plain settings of a channel act as left, all within the tolerance; a danger beyond the machine's limit all the
 * same, and what the judgement leans on, are said.
 */
export function withinSentence({ thresholds, unit, kind, inputs }: ChannelResult): string {
  const level = (value: number | null) => amount(value ?? NaN, unit ?? '');
  const acts = thresholds
    .filter(({ multiplier, effective }) => multiplier === 1 && effective !== null)
    .map(
      ({ name, effective, setpoint }: ThresholdResult) =>
        `${name} at ${level(effective)}, set for ${level(setpoint)}`,
    );
  const beyond = thresholds
    .filter((threshold) => isBeyondLimit(inputs.limit, threshold))
    .map(
      ({ name }) => ` Its ${name} lies beyond the machine’s limit of ${level(inputs.limit)} all the same.`,
    );
  const zero =
    kind === 'axial' && inputs.zeroMeasured !== null
      ? ` That holds with the zero as found, ${amount(inputs.zeroMeasured, 'V')}: it was not read as left.`
      : '';
  return `As left it acts within the tolerance: ${acts.join('; ')}.${beyond.join('')}${zero}`;
}

/** What a part of the sheet goes by, where some of it was judged as left. */
export function asFound(words: string, channels: readonly ChannelResult[]): string {
  return channels.some(({ asLeft }) => asLeft !== null) ? `${words}, as found` : words;
}

/** How many channels act within the tolerance as left, and how many do not; nothing where none was judged as left. */
export function leftSentence(channels: readonly ChannelResult[]): string {
  const judged = channels.flatMap(({ tag, asLeft }) => (asLeft ? [{ tag, verdict: asLeft.verdict }] : []));
  if (judged.length === 0) return '';
  const within = judged.filter(({ verdict }) => verdict === 'within').length;
  const all = `${judged.length} ${judged.length === 1 ? 'channel was' : 'channels were'} measured again as left`;
  return ` ${capital(all)}: ${within} within the tolerance${within === judged.length ? '' : `, ${judged.length - within} not`}.`;
}
