import type { ChannelResult } from '../../../audit/model/report.ts';
import { standingOf, type Standing } from './standing.ts';

export interface ChannelFilter {
  /** `null`: all channels. */
  readonly standing: Standing | null;
  readonly search: string;
}

export const noFilter: ChannelFilter = { standing: null, search: '' };

/** Whether a filter leaves every channel. */
export function isEverything({ standing, search }: ChannelFilter): boolean {
  return standing === null && search.trim() === '';
}

/** Channels that stand so and whose tag, machine or location holds every word searched for; their order stays. */
export function filterChannels(
  channels: readonly ChannelResult[],
  { standing, search }: ChannelFilter,
): readonly ChannelResult[] {
  const words = search.toLocaleLowerCase().split(/\s+/u).filter(Boolean);
  if (standing === null && words.length === 0) return channels;
  return channels.filter((channel) => {
    if (standing !== null && standingOf(channel) !== standing) return false;
    const text = `${channel.tag} ${channel.machine} ${channel.location}`.toLocaleLowerCase();
    return words.every((word) => text.includes(word));
  });
}
