import { factOfThreshold, type Fact } from '../../model/findings.ts';
import type { OfSetpoint, ThresholdRules } from '../../model/rules/thresholdRules.ts';
import { severityOf } from '../../model/severity.ts';
import type { Channel } from '../../model/channel.ts';
import type { ThresholdResult, UnreachableReason } from '../../model/threshold.ts';
import { actingVolts } from '../lines/axialLine.ts';
import { linearReachOf } from '../lines/vibrationLine.ts';
import { type Audited, type Rule, columnOfThreshold, setpointOf } from './rule.ts';

/** One finding for each threshold that is late, early or undetermined, and one for each reason why one can't be reached. */
export const verdictRules: Rule = (audited, addFinding) => {
  for (const threshold of audited.thresholds) {
    const { name, multiplier } = threshold;
    const fact = ofVerdict(threshold, audited);
    if (fact) addFinding({ ...fact, table: 'settings', column: columnOfThreshold(name) });
    for (const reason of threshold.unreachable) {
      const column = multiplier === 1 ? columnOfThreshold(name) : 'multiplier';
      addFinding({ ...unreachable(threshold, reason, audited), table: 'settings', column });
    }
  }
};

function ofVerdict(threshold: ThresholdResult, { channel, policy }: Audited): Fact | undefined {
  const { name, verdict } = threshold;
  const severity = severityOf(name, verdict) ?? 'note';
  const level = setpointOf(threshold, channel);
  switch (verdict) {
    case 'late':
      return factOfThreshold('late', severity, threshold, moved(threshold, level));
    case 'early':
      return factOfThreshold('early', severity, threshold, moved(threshold, level));
    case 'undetermined':
      return factOfThreshold('undetermined', severity, threshold, {
        ...level,
        low: threshold.low,
        high: threshold.high,
        governedBy: threshold.governedBy ?? 'listed sensitivity',
        uncertainty: uncertaintyOf(threshold, channel),
        tolerance: policy.tolerance,
      });
    case 'unreachable':
    case 'incomplete':
    case 'within':
      return undefined;
  }
}

/** Of the sensitivity that governs: the listed one, or that of a known vibration, where it is part of how widely it is known. */
function uncertaintyOf({ governedBy, spread }: ThresholdResult, { uncertainty }: Channel): number | null {
  return governedBy === 'known vibration' ? (spread?.ofDivisor ?? null) : uncertainty;
}

/** Where a threshold that is late or early acts, and how far off. */
function moved(
  { effective, shift, shiftFraction }: ThresholdResult,
  { setpoint, unit }: OfSetpoint,
): ThresholdRules['late'] {
  return {
    setpoint,
    unit,
    effective: effective ?? NaN,
    shift: Math.abs(shift ?? NaN),
    shiftFraction: Math.abs(shiftFraction ?? NaN),
  };
}

function unreachable(threshold: ThresholdResult, reason: UnreachableReason, audited: Audited): Fact {
  const { channel } = audited;
  const severity = severityOf(threshold.name, 'unreachable') ?? 'note';
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
        zeroConfigured: channel.zeroConfigured,
        zeroMeasured: channel.zeroMeasured,
      });
    }
    case 'out of the linear reach': {
      const rule = plain ? 'out-of-linear-reach' : 'multiplied-out-of-linear-reach';
      return factOfThreshold(rule, severity, threshold, outOfReach(threshold, level, audited));
    }
    case 'outside the fault limits': {
      const rule = plain ? 'outside-fault-limits' : 'multiplied-outside-fault-limits';
      const { setpoint, name, multiplier } = threshold;
      const volts = actingVolts(channel, { name, setpoint: setpoint ?? NaN, multiplier });
      const { faultLimits } = channel;
      return factOfThreshold(rule, severity, threshold, {
        ...level,
        volts,
        faultLimits: faultLimits ?? { near: null, far: null },
      });
    }
  }
}

function outOfReach(
  threshold: ThresholdResult,
  level: OfSetpoint,
  { channel, policy }: Audited,
): ThresholdRules['out-of-linear-reach'] {
  const span = policy.linearVolts;
  if (channel.kind === 'axial') {
    const { setpoint, name, multiplier } = threshold;
    const volts = actingVolts(channel, { name, setpoint: setpoint ?? NaN, multiplier });
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
