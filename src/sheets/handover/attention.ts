import type { ThresholdResult } from '../../audit/model/threshold.ts';
import type { Finding } from '../../audit/model/findings.ts';
import type { ChannelResult } from '../../audit/model/report.ts';
import { isBeyondLimit } from '../summary/sentence.ts';

/** Whether a threshold does not act where it was meant to, or beyond the machine's limit. */
export function isWrong({ inputs }: ChannelResult, threshold: ThresholdResult): boolean {
  const { verdict } = threshold;
  if (verdict === 'incomplete') return false;
  return verdict !== 'within' || isBeyondLimit(inputs.limit, threshold);
}

/** Whether a judged channel has a place of its own on the sheet: a threshold is wrong, or it protects nothing. */
export function needsAttention(channel: ChannelResult): boolean {
  if (channel.verdict === 'incomplete') return false;
  return (
    channel.inputs.bypass !== false ||
    channel.thresholds.some((threshold) => isWrong(channel, threshold)) ||
    (channel.asLeft?.thresholds ?? []).some((threshold) => isWrong(channel, threshold)) ||
    channel.findings.some(({ severity, rule }) => severity === 'critical' && !aboutGroup.test(rule))
  );
}

/** What is said of a group stands with the groups, not with the member at whose row it was found. */
const aboutGroup = /^group-(late|cannot|beyond)/u;

/** Rules whose findings the sheet says in words of its own, or in a part of its own. */
const saidElsewhere =
  /-(late|early|undetermined|above-full-scale|out-of-linear-reach|other-side-of-zero|beyond-limit|below-reading)$|^readings-point|^gap-voltage-hides|^channel-in-bypass/u;

/** What else was found of a channel that people should look at; notes are left to the audit's own sheets. */
export function furtherFindings({ findings }: ChannelResult): readonly Finding[] {
  return findings.filter(
    ({ rule, severity }) => severity !== 'note' && !saidElsewhere.test(rule) && !aboutGroup.test(rule),
  );
}
