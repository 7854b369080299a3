import type { ThresholdVerdict } from '../../../audit/model/threshold.ts';
import type { ChannelResult } from '../../../audit/model/report.ts';

export interface ChannelFilter {
  /** `null`: every verdict. */
  readonly verdict: ThresholdVerdict | null;
  readonly search: string;
}

export const everything: ChannelFilter = { verdict: null, search: '' };

/** Channels of a verdict whose tag, machine or location holds every word searched for; their order stays. */
export function filterChannels(
  channels: readonly ChannelResult[],
  { verdict, search }: ChannelFilter,
): readonly ChannelResult[] {
  const words = search.toLocaleLowerCase().split(/\s+/u).filter(Boolean);
  if (verdict === null && words.length === 0) return channels;
  return channels.filter((channel) => {
    if (verdict !== null && channel.verdict !== verdict) return false;
    const text = `${channel.tag} ${channel.machine} ${channel.location}`.toLocaleLowerCase();
    return words.every((word) => text.includes(word));
  });
}
