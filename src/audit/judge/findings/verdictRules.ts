import { amount, percent } from '../../model/wording.ts';
import { axialVoltageAt } from '../../../method/axial/voltageAt.ts';
import { linearReachOf } from '../evaluate/reach.ts';
import type { Audited, Rule, Statement } from './rule.ts';
import { columnOfThreshold, ruleName, subject } from './thresholdCell.ts';
import { trips, type ThresholdResult, type UnreachableReason } from '../../model/threshold.ts';

/** One finding for each threshold that is late, early or undetermined, and one for each reason why one can't be reached. */
export const verdictRules: Rule = (audited, say) => {
  for (const threshold of audited.thresholds) {
    const { name, verdict } = threshold;
    const at = { table: 'settings', column: columnOfThreshold(name) } as const;
    if (verdict === 'late') {
      const severity = trips(name) ? 'critical' : 'warning';
      say({ rule: ruleName(name, 'late'), severity, message: acts(threshold, audited, 'late'), ...at });
    } else if (verdict === 'early') {
      const message = `${acts(threshold, audited, 'early')} Expect spurious ${trips(name) ? 'trips' : 'alarms'}.`;
      say({ rule: ruleName(name, 'early'), severity: 'warning', message, ...at });
    } else if (verdict === 'undetermined') {
      say({
        rule: ruleName(name, 'undetermined'),
        severity: 'warning',
        message: undetermined(threshold, audited),
        ...at,
      });
    }
    for (const reason of threshold.unreachable) say(unreachable(threshold, reason, audited));
  }
};

function acts(threshold: ThresholdResult, { channel }: Audited, how: string): string {
  const unit = channel.unit.text;
  const shift = Math.abs(threshold.shift ?? NaN);
  const part = Math.abs(threshold.shiftFraction ?? NaN);
  return `${subject(threshold, channel)} acts at ${amount(threshold.effective ?? NaN, unit)}: ${amount(shift, unit)} (${percent(part)}) ${how}.`;
}

function undetermined(threshold: ThresholdResult, { channel, policy }: Audited): string {
  const unit = channel.unit.text;
  return (
    `${subject(threshold, channel)} acts somewhere from ${amount(threshold.low ?? NaN, unit)} to ${amount(threshold.high ?? NaN, unit)}: ` +
    `with an uncertainty of ${percent(channel.uncertainty ?? NaN)} it can't be told whether that is within the tolerance of ${percent(policy.tolerance)}. Measure more accurately.`
  );
}

const rules: Readonly<Record<UnreachableReason, string>> = {
  'above full scale': 'above-full-scale',
  'out of the linear reach': 'out-of-linear-reach',
  'on the other side of zero': 'on-the-other-side-of-zero',
};

function unreachable(threshold: ThresholdResult, reason: UnreachableReason, audited: Audited): Statement {
  const { name, multiplier } = threshold;
  return {
    rule: ruleName(name, multiplier === 1 ? rules[reason] : `multiplied-${rules[reason]}`),
    severity: trips(name) ? 'critical' : 'warning',
    message: `${subject(threshold, audited.channel)} ${whyUnreachable(threshold, reason, audited)}`,
    table: 'settings',
    column: multiplier === 1 ? columnOfThreshold(name) : 'multiplier',
  };
}

function whyUnreachable(
  threshold: ThresholdResult,
  reason: UnreachableReason,
  { channel, policy }: Audited,
): string {
  const unit = channel.unit.text;
  const effective = threshold.effective ?? NaN;
  const intended = threshold.multiplier * (threshold.setpoint ?? NaN);
  switch (reason) {
    case 'above full scale':
      return `is above the full scale of ${amount(channel.fullScale ?? NaN, unit)}: the monitor can't show it, so it can't act.`;
    case 'on the other side of zero':
      return `acts at ${amount(effective, unit)}, on the other side of the real zero: the zero voltage has moved from ${amount(channel.zeroConfigured ?? NaN, 'V')} to ${amount(channel.zeroMeasured ?? NaN, 'V')}. It acts at rest, or never in its own direction.`;
    case 'out of the linear reach': {
      const span = `${amount(policy.linearVolts.near, 'V')} to ${amount(policy.linearVolts.far, 'V')}`;
      const { zeroConfigured, direction } = channel;
      if (channel.kind === 'axial' && zeroConfigured !== null && direction !== null) {
        const volts = axialVoltageAt(
          intended,
          (1000 * channel.configured) / channel.unitsPerVolt,
          zeroConfigured,
          direction,
        );
        return `would act at ${amount(volts, 'V')}, outside the linear span of ${span}: it can't be relied on to act.`;
      }
      if (channel.recordReach !== null) {
        const acts = `acts at ${amount(effective, unit)}, but its gap voltage of ${amount(channel.gapVoltage ?? NaN, 'V')} lies`;
        return channel.recordReach === 0
          ? `${acts} outside the straight part of its calibration record: it can't be relied on to act.`
          : `${acts} so near the end of the straight part of its calibration record that it reaches only ${amount(linearReachOf(channel, policy) ?? NaN, unit)}: it can't be relied on to act.`;
      }
      return `acts at ${amount(effective, unit)}, but from a gap of ${amount(channel.gapVoltage ?? NaN, 'V')} the chain is linear only up to ${amount(linearReachOf(channel, policy) ?? NaN, unit)} (${span}): it can't be relied on to act.`;
    }
  }
}
