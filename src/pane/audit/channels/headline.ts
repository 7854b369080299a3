import type { Finding } from '../../../audit/model/findings.ts';
import { worstThreshold } from '../../../audit/model/order.ts';
import type { ChannelResult } from '../../../audit/model/report.ts';
import { amount, capital, percent } from '../../../audit/model/wording.ts';

/** The worst of a channel in one short line for a list. */
export function headline(channel: ChannelResult): string {
  const worst = worstThreshold(channel.thresholds);
  if (channel.verdict === 'incomplete' || !worst || worst.setpoint === null) {
    return leadingFinding(channel)?.message ?? 'Its row can’t be used.';
  }
  const { name, setpoint, multiplier, effective, shiftFraction } = worst;
  const unit = channel.unit ?? '';
  const meant = `${capital(name)} ${amount(multiplier * setpoint, unit)}`;
  if (worst.unreachable.length > 0) return `${meant}: ${worst.unreachable.join(', ')}`;
  if (effective === null) return `${meant}: ${worst.verdict}`;
  const by = shiftFraction === null ? '' : ` (${shiftFraction > 0 ? '+' : ''}${percent(shiftFraction)})`;
  return `${meant} acts at ${amount(effective, unit)}${by}`;
}

/** The finding that says why a channel can't be used: the first that is more than a note. */
export function leadingFinding({ findings }: ChannelResult): Finding | undefined {
  return findings.find((finding) => finding.severity !== 'note') ?? findings[0];
}
