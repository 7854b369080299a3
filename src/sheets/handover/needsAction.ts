import type { Machine } from '../machines.ts';
import { needsAttention } from './attention.ts';

/** Whether there is anything about a machine that people must know before it starts. */
export function machineNeedsAction({ channels, groups }: Machine): boolean {
  return (
    groups.some((group) => !group.canTrip || group.findings.length > 0) ||
    channels.some((channel) => channel.verdict === 'incomplete' || needsAttention(channel))
  );
}
