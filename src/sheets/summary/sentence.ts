import type { ChannelResult, GroupResult } from '../../audit/model/report.ts';
import { amount, capital, percent } from '../../audit/model/wording.ts';
import { trips, type ThresholdResult, type UnreachableReason } from '../../audit/model/threshold.ts';

/** What is the matter with a threshold, in plain sentences for people who don't know the method. */
export function thresholdSentence(channel: ChannelResult, threshold: ThresholdResult): string {
  const sentences = [start(threshold), ...reasons(channel, threshold), ...effect(channel, threshold)];
  return [...sentences, ...beyondLimit(channel, threshold)].filter((text) => text !== '').join(' ');
}

/** What is the matter with a group: its findings, as they stand. */
export function groupSentence(group: GroupResult): string {
  if (group.findings.length > 0) return group.findings.map((finding) => finding.message).join(' ');
  const idle = group.members.map((member) => `${member.tag} (${member.why ?? 'can act'})`).join(', ');
  return `Too few of its members can act: ${idle}.`;
}

function start({ multiplier }: ThresholdResult): string {
  return multiplier === 1 ? '' : `At start-up, with the setpoint multiplied by ${multiplier}:`;
}

function reasons(
  channel: ChannelResult,
  { unreachable, effective, setpoint, multiplier }: ThresholdResult,
): string[] {
  const level = (value: number | null) => amount(value ?? NaN, channel.unit ?? '');
  const { fullScale, linearReach } = channel.inputs;
  const said: Readonly<Record<UnreachableReason, string>> = {
    'above full scale': `Can’t act: ${level(multiplier * (setpoint ?? NaN))} is above the full scale of ${level(fullScale)}, which the monitor can’t show.`,
    'out of the linear reach':
      linearReach === null
        ? `Can’t be relied on to act: the gap voltage at which it acts lies outside the linear span.`
        : `Can’t be relied on to act: it would act at ${level(effective)}, but ${linearReach === 0 ? 'its gap lies outside the linear range of the chain' : `the chain is linear only up to ${level(linearReach)}`}.`,
    'on the other side of zero': `Acts at ${level(effective)}, on the other side of the real zero: at rest, or never in its own direction.`,
  };
  return unreachable.map((reason) => said[reason]);
}

function effect(channel: ChannelResult, threshold: ThresholdResult): string[] {
  const { verdict, effective, low, high, shift, shiftFraction, setpoint, multiplier } = threshold;
  const level = (value: number | null) => amount(value ?? NaN, channel.unit ?? '');
  const meant = level(multiplier * (setpoint ?? NaN));
  const by = `${level(Math.abs(shift ?? NaN))} (${percent(Math.abs(shiftFraction ?? NaN))})`;
  switch (verdict) {
    case 'late':
      return [`Acts only at ${level(effective)} instead of ${meant}: ${by} late.`];
    case 'early':
      return [`Acts already at ${level(effective)} instead of ${meant}: ${by} early.`];
    case 'undetermined':
      return [
        `Acts somewhere from ${level(low)} to ${level(high)} instead of at ${meant}; measure more accurately.`,
      ];
    case 'within':
      return [`Acts at ${level(effective)}, set for ${meant}.`];
    case 'unreachable':
    case 'incomplete':
      return [];
  }
}

function beyondLimit({ inputs, unit }: ChannelResult, threshold: ThresholdResult): string[] {
  if (!isBeyondLimit(inputs.limit, threshold)) return [];
  return [`${capital('beyond the machine’s limit of')} ${amount(inputs.limit ?? NaN, unit ?? '')}.`];
}

/** Whether a danger acts beyond the machine's limit, given in the setpoint's unit; that of start-up is meant to. */
export function isBeyondLimit(
  limit: number | null,
  { name, effective, multiplier }: ThresholdResult,
): boolean {
  if (limit === null || effective === null || multiplier !== 1) return false;
  return trips(name) && Math.abs(effective) > limit;
}

/** How many channels are late as left, one or more; without a full stop. */
export function asLeftSentence(count: number): string {
  return `As left, ${count} ${count === 1 ? 'channel is' : 'channels are'} late, unreachable or undetermined`;
}
