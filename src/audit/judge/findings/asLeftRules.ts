import type { AsLeftReadings } from '../asLeft/readings.ts';
import type { Channel } from '../../model/channel.ts';
import { rank } from '../../model/order.ts';
import type { AsLeftThreshold } from '../../model/report.ts';
import { amount, percent } from '../../model/wording.ts';
import type { Audited, Say, Statement } from './rule.ts';
import { ruleName, subject } from './thresholdCell.ts';
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
  const note = (column: string, rule: string, message: string) => {
    say({ table: 'channels', column, rule, severity: 'note', message });
  };
  const { uncertainty, gapVoltage, kind, zeroMeasured } = found.channel;
  if (uncertainty !== null && readings.uncertainty === null) {
    note(
      'asLeftUncertainty',
      'as-left-uncertainty-missing',
      `The as-left uncertainty is missing, and that of the as-found reading (${percent(uncertainty)}) is not its own: as left the value alone decides. Enter it.`,
    );
  }
  if (kind === 'radial' && gapVoltage !== null && readings.gapVoltage === null) {
    note(
      'asLeftGapVoltage',
      'as-left-gap-voltage-missing',
      `The as-left gap voltage is missing; the linear reach as left was judged at the one as found, ${amount(gapVoltage, 'V')}. Enter it.`,
    );
  }
  if (kind === 'axial' && zeroMeasured !== null) {
    note(
      'asLeftGapVoltage',
      'as-left-zero-not-measured',
      `An as-left gap voltage is no zero voltage, so the zero as measured, ${amount(channel.zeroMeasured ?? NaN, 'V')}, was used as left too. Where chain or probe were changed, measure the zero anew and audit with it.`,
    );
  }
}

function ofThreshold(before: ThresholdResult, left: AsLeftThreshold, twice: AuditedTwice, say: Say): void {
  const { name, verdict } = left;
  const unit = twice.channel.unit.text;
  const whom = subject(left, twice.channel);
  const at = { table: 'channels', column: 'asLeftSensitivity' } as const;
  const grave = trips(name) ? 'critical' : 'warning';
  const tell = (what: string, severity: Statement['severity'], message: string) => {
    say({ rule: ruleName(name, what), severity, message: `${whom} ${message}`, ...at });
  };
  const acts = `acts at ${amount(left.effective ?? NaN, unit)} as left`;
  const by = `${amount(Math.abs(left.shift ?? NaN), unit)} (${percent(Math.abs(left.shiftFraction ?? NaN))})`;
  const asFound =
    before.verdict === 'unreachable'
      ? 'As found it was unreachable.'
      : `As found it was ${before.verdict}, at ${amount(before.effective ?? NaN, unit)}.`;
  if (verdict === 'late') tell('as-left-late', grave, `${acts}: ${by} late. ${asFound} Correct the chain.`);
  else if (verdict === 'unreachable') {
    const why = left.unreachable.join(' and ');
    tell('as-left-unreachable', grave, `can't be relied on to act as left: ${why}. ${asFound}`);
  } else if (verdict === 'undetermined') {
    const [low, high] = [amount(left.low ?? NaN, unit), amount(left.high ?? NaN, unit)];
    const why = `with an uncertainty of ${percent(twice.channel.uncertainty ?? NaN)} it can't be told whether that is within the tolerance`;
    tell('as-left-undetermined', grave, `acts somewhere from ${low} to ${high} as left: ${why}. ${asFound}`);
  } else if (verdict === 'early') {
    const spurious = `Expect spurious ${trips(name) ? 'trips' : 'alarms'}.`;
    tell('as-left-early', 'warning', `${acts}: ${by} early. ${asFound} ${spurious}`);
  } else if (left.change === 'cured') {
    tell('as-left-cured', 'note', `${acts}, within the tolerance. ${asFound}`);
  }
  const { limit } = twice.channel;
  if (limit !== null && isBeyondLimit(left, limit)) {
    const all = isBeyondLimit(before, limit) ? 'as it was as found' : 'as found it was not';
    tell(
      'as-left-beyond-limit',
      'critical',
      `acts at ${amount(left.effective ?? NaN, unit)} as left, beyond the limit of ${amount(limit, unit)}; ${all}.`,
    );
  }
  if (!isWorse(before, left, twice.found.policy.tolerance)) return;
  const verdicts = `${before.verdict} as found, ${verdict} as left`;
  const levels = `${amount(before.effective ?? NaN, unit)} and ${amount(left.effective ?? NaN, unit)}`;
  tell(
    'as-left-worse',
    'warning',
    `is worse as left than as found: ${verdicts}, at ${levels}. ${whatMoved(twice)}: find out what was changed.`,
  );
}

/** Whether a plain danger acts beyond the greatest real displacement that the machine allows, in the channel's unit. */
function isBeyondLimit({ name, multiplier, effective }: ThresholdResult, limit: number): boolean {
  return trips(name) && multiplier === 1 && effective !== null && Math.abs(effective) > limit;
}

/** The sensitivity before and after; the gap voltage too where it was read both times. */
function whatMoved({ found, channel, readings }: AuditedTwice): string {
  const { measured, gapVoltage } = found.channel;
  const unit = channel.sensitivityUnit.text;
  const sensitivity = `The sensitivity went from ${amount(measured, unit)} to ${amount(channel.measured, unit)}`;
  if (gapVoltage === null || readings.gapVoltage === null) return sensitivity;
  return `${sensitivity}, the gap voltage from ${amount(gapVoltage, 'V')} to ${amount(readings.gapVoltage, 'V')}`;
}

/** A worse verdict, or the same one with the threshold farther off by more than the tolerance. */
function isWorse(before: ThresholdResult, left: AsLeftThreshold, tolerance: number): boolean {
  if (left.verdict !== before.verdict) return rank(left.verdict) < rank(before.verdict);
  if (left.verdict !== 'late' && left.verdict !== 'early') return false;
  return Math.abs(left.shiftFraction ?? NaN) - Math.abs(before.shiftFraction ?? NaN) > tolerance;
}
