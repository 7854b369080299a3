import type { AsLeftReadings } from '../asLeft/readings.ts';
import type { Channel } from '../../model/channel.ts';
import type { LeftRules } from '../../model/rules/leftRules.ts';
import { rank } from '../../model/order.ts';
import type { AsLeftThreshold } from '../../model/report.ts';
import { factOf, factOfThreshold, type Fact } from '../../model/findings.ts';
import type { Audited, Say } from './rule.ts';
import { setpointOf } from './thresholdCell.ts';
import { trips, type ThresholdResult } from '../../model/threshold.ts';

/** A channel as found and as left. */
export interface AuditedTwice {
  readonly found: Audited;
  readonly readings: AsLeftReadings;
  /** As left. */
  readonly channel: Channel;
  readonly thresholds: readonly AsLeftThreshold[];
}

/** What was taken as found for want of a reading as left, and what became of each threshold. */
export function asLeftRules(twice: AuditedTwice, say: Say): void {
  notReadAgain(twice, say);
  twice.thresholds.forEach((left, index) => {
    const before = twice.found.thresholds[index];
    if (before && left.change !== 'not judged') ofThreshold(before, left, twice, say);
  });
}

function notReadAgain({ found, readings, channel }: AuditedTwice, say: Say): void {
  const note = (column: string, fact: Fact) => {
    say({ ...fact, table: 'channels', column });
  };
  const { uncertainty, gapVoltage, kind, zeroMeasured } = found.channel;
  if (uncertainty !== null && readings.uncertainty === null) {
    note('asLeftUncertainty', factOf('as-left-uncertainty-missing', 'note', { uncertainty }));
  }
  if (kind === 'radial' && gapVoltage !== null && readings.gapVoltage === null) {
    note('asLeftGapVoltage', factOf('as-left-gap-voltage-missing', 'note', { gapVoltage }));
  }
  if (kind === 'axial' && zeroMeasured !== null) {
    const values = { zeroMeasured: channel.zeroMeasured ?? NaN };
    note('asLeftGapVoltage', factOf('as-left-zero-not-measured', 'note', values));
  }
}

function ofThreshold(before: ThresholdResult, left: AsLeftThreshold, twice: AuditedTwice, say: Say): void {
  const tell = (fact: Fact) => {
    say({ ...fact, table: 'channels', column: 'asLeftSensitivity' });
  };
  const became = whatBecame(before, left, twice.channel);
  if (became) tell(became);
  const level = setpointOf(left, twice.channel);
  const effective = left.effective ?? NaN;
  const { limit } = twice.channel;
  if (limit !== null && isBeyondLimit(left, limit)) {
    const values = { ...level, effective, limit, wasBeyond: isBeyondLimit(before, limit) };
    tell(factOfThreshold('as-left-beyond-limit', 'critical', left, values));
  }
  if (!isWorse(before, left, twice.found.policy.tolerance)) return;
  const values = {
    ...level,
    asFound: asFound(before),
    verdict: left.verdict,
    effective,
    ...whatMoved(twice),
  };
  tell(factOfThreshold('as-left-worse', 'warning', left, values));
}

function whatBecame(before: ThresholdResult, left: AsLeftThreshold, channel: Channel): Fact | undefined {
  const grave = trips(left.name) ? 'critical' : 'warning';
  const known = { ...setpointOf(left, channel), asFound: asFound(before) };
  const effective = left.effective ?? NaN;
  const moved = {
    ...known,
    effective,
    shift: Math.abs(left.shift ?? NaN),
    shiftFraction: Math.abs(left.shiftFraction ?? NaN),
  };
  switch (left.verdict) {
    case 'late':
      return factOfThreshold('as-left-late', grave, left, moved);
    case 'early':
      return factOfThreshold('as-left-early', 'warning', left, moved);
    case 'unreachable':
      return factOfThreshold('as-left-unreachable', grave, left, { ...known, reasons: left.unreachable });
    case 'undetermined':
      return factOfThreshold('as-left-undetermined', grave, left, {
        ...known,
        low: left.low ?? NaN,
        high: left.high ?? NaN,
        uncertainty: channel.uncertainty ?? NaN,
      });
    case 'within':
    case 'incomplete':
      if (left.change !== 'cured') return undefined;
      return factOfThreshold('as-left-cured', 'note', left, { ...known, effective });
  }
}

function asFound({ verdict, effective }: ThresholdResult): LeftRules['as-left-cured']['asFound'] {
  return { verdict, effective: effective ?? NaN };
}

/** Whether a plain danger acts beyond the greatest real displacement that the machine allows, in the channel's unit. */
function isBeyondLimit({ name, multiplier, effective }: ThresholdResult, limit: number): boolean {
  return trips(name) && multiplier === 1 && effective !== null && Math.abs(effective) > limit;
}

/** The sensitivity before and after; the gap voltage too where it was read both times. */
function whatMoved({
  found,
  channel,
  readings,
}: AuditedTwice): Pick<LeftRules['as-left-worse'], 'sensitivity' | 'gapVoltage'> {
  const { measured, gapVoltage } = found.channel;
  return {
    sensitivity: { found: measured, left: channel.measured, unit: channel.sensitivityUnit.text },
    gapVoltage:
      gapVoltage === null || readings.gapVoltage === null
        ? null
        : { found: gapVoltage, left: readings.gapVoltage },
  };
}

/** A worse verdict, or the same one with the threshold farther off by more than the tolerance. */
function isWorse(before: ThresholdResult, left: AsLeftThreshold, tolerance: number): boolean {
  if (left.verdict !== before.verdict) return rank(left.verdict) < rank(before.verdict);
  if (left.verdict !== 'late' && left.verdict !== 'early') return false;
  return Math.abs(left.shiftFraction ?? NaN) - Math.abs(before.shiftFraction ?? NaN) > tolerance;
}
