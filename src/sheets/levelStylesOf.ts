import type { Report } from '../audit/model/report.ts';
import { channelKey } from '../audit/read/tables/tagKey.ts';
import { levelDecimals } from './style/significant.ts';

/** Styles of levels that were worked out for a channel, near a size; one digit finer than the step of its instrument. */
export type LevelStyleOf = (
  channel: { readonly tag: string; readonly machine: string },
  size: number | null,
) => string;

/** The steps that the report knows of its channels, for sheets that tell of a channel by its tag and machine. */
export function levelStylesOf({ channels }: Report): LevelStyleOf {
  const steps = new Map(channels.map((channel) => [channelKey(channel), channel.inputs.resolution]));
  return (channel, size) => `level${levelDecimals(size, steps.get(channelKey(channel)) ?? null)}`;
}
