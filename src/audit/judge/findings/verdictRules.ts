import { factOfThreshold, type Fact } from '../../model/findings.ts';
import type { OfSetpoint, ThresholdRules } from '../../model/rules/thresholdRules.ts';
import { trips, type ThresholdResult, type UnreachableReason } from '../../model/threshold.ts';
import { axialVoltageAt } from '../../../method/axial/voltageAt.ts';
import { linearReachOf } from '../evaluate/reach.ts';
import type { Audited, Rule } from './rule.ts';
import { columnOfThreshold, setpointOf } from './thresholdCell.ts';

/** One finding for each threshold that is late, early or undetermined, and one for each reason why one can't be reached. */
export const verdictRules: Rule = (audited, say) => {
  for (const threshold of audited.thresholds) {
    const { name, multiplier } = threshold;
    const fact = ofVerdict(threshold, audited);
    if (fact) say({ ...fact, table: 'settings', column: columnOfThreshold(name) });
    for (const reason of threshold.unreachable) {
      const column = multiplier === 1 ? columnOfThreshold(name) : 'multiplier';
      say({ ...unreachable(threshold, reason, audited), table: 'settings', column });
    }
  }
};

function ofVerdict(threshold: ThresholdResult, { channel, policy }: Audited): Fact | undefined {
  const level = setpointOf(threshold, channel);
  const moved = {
    ...level,
    effective: threshold.effective ?? NaN,
    shift: Math.abs(threshold.shift ?? NaN),
    shiftFraction: Math.abs(threshold.shiftFraction ?? NaN),
  };
  switch (threshold.verdict) {
    case 'late':
      return factOfThreshold('late', trips(threshold.name) ? 'critical' : 'warning', threshold, moved);
    case 'early':
      return factOfThreshold('early', 'warning', threshold, moved);
    case 'undetermined':
      return factOfThreshold('undetermined', 'warning', threshold, {
        ...level,
        low: threshold.low ?? NaN,
        high: threshold.high ?? NaN,
        uncertainty: channel.uncertainty ?? NaN,
        tolerance: policy.tolerance,
      });
    case 'unreachable':
    case 'incomplete':
    case 'within':
      return undefined;
  }
}

function unreachable(threshold: ThresholdResult, reason: UnreachableReason, audited: Audited): Fact {
  const { channel } = audited;
  const severity = trips(threshold.name) ? 'critical' : 'warning';
  const level = setpointOf(threshold, channel);
  const plain = threshold.multiplier === 1;
  switch (reason) {
    case 'above full scale': {
      const rule = plain ? 'above-full-scale' : 'multiplied-above-full-scale';
      return factOfThreshold(rule, severity, threshold, { ...level, fullScale: channel.fullScale ?? NaN });
    }
    case 'on the other side of zero': {
      const rule = plain ? 'on-the-other-side-of-zero' : 'multiplied-on-the-other-side-of-zero';
      return factOfThreshold(rule, severity, threshold, {
        ...level,
        effective: threshold.effective ?? NaN,
        zeroConfigured: channel.zeroConfigured ?? NaN,
        zeroMeasured: channel.zeroMeasured ?? NaN,
      });
    }
    case 'out of the linear reach': {
      const rule = plain ? 'out-of-linear-reach' : 'multiplied-out-of-linear-reach';
      return factOfThreshold(rule, severity, threshold, outOfReach(threshold, level, audited));
    }
  }
}

function outOfReach(
  threshold: ThresholdResult,
  level: OfSetpoint,
  { channel, policy }: Audited,
): ThresholdRules['out-of-linear-reach'] {
  const { zeroConfigured, direction } = channel;
  const span = policy.linearVolts;
  if (channel.kind === 'axial' && zeroConfigured !== null && direction !== null) {
    const intended = threshold.multiplier * (threshold.setpoint ?? NaN);
    const perUnit = (1000 * channel.configured) / channel.unitsPerVolt;
    const volts = axialVoltageAt(intended, perUnit, zeroConfigured, direction);
    return { kind: 'voltage', ...level, volts, span };
  }
  const swung = {
    ...level,
    effective: threshold.effective ?? NaN,
    gapVoltage: channel.gapVoltage ?? NaN,
  };
  if (channel.recordReach === 0) return { kind: 'outside the straight part', ...swung };
  const reach = linearReachOf(channel, policy) ?? NaN;
  return channel.recordReach === null
    ? { kind: 'swing', ...swung, reach, span }
    : { kind: 'near the end of the straight part', ...swung, reach };
}
