import { changeOf, mayBeLate } from '../../model/since.ts';
import type { Channel } from '../../model/channel.ts';
import { factOf, factOfThreshold, type Fact } from '../../model/findings.ts';
import { rank } from '../../model/order.ts';
import type { AsLeftRules, StillWrong } from '../../model/rules/asLeftRules.ts';
import type { ThresholdResult, ThresholdName } from '../../model/threshold.ts';
import type { AsLeftReadings } from '../asLeft/readings.ts';
import { type Audited, type AddFinding, setpointOf } from './rule.ts';
import { isoDate } from '../../../cells/cell.ts';
import { periodOfExposure } from '../asLeft/exposure.ts';

/** A channel as found and as left. */
export interface AuditedTwice {
  readonly found: Audited;
  readonly readings: AsLeftReadings;
  /** As left. */
  readonly channel: Channel;
  readonly thresholds: readonly ThresholdResult[];
}

/**
 * What was taken as found for want of a reading as left, and what became of each threshold. `block` is told what keeps
 * the channel from being judged.
 */
export function asLeftRules(twice: AuditedTwice, addFinding: AddFinding, block: AddFinding): void {
  notReadAgain(twice, addFinding, block);
  twice.thresholds.forEach((left, index) => {
    const before = twice.found.thresholds[index];
    if (before) ofThreshold(before, left, twice, addFinding);
  });
}

function notReadAgain(
  { found, readings, channel }: AuditedTwice,
  addFinding: AddFinding,
  block: AddFinding,
): void {
  const note = (column: string, fact: Fact) => {
    addFinding({ ...fact, table: 'channels', column });
  };
  const { measured, sensitivityUnit, uncertainty, gapVoltage, kind } = found.channel;
  if (readings.sensitivity === null) {
    const values = { measured, unit: sensitivityUnit.text };
    note('asLeftSensitivity', factOf('as-left-sensitivity-missing', 'note', values));
  }
  if (uncertainty !== null && readings.uncertainty === null && readings.sensitivity !== null) {
    note('asLeftUncertainty', factOf('as-left-uncertainty-missing', 'note', { uncertainty }));
  }
  if (kind === 'radial' && gapVoltage !== null && readings.gapVoltage === null) {
    note('asLeftGapVoltage', factOf('as-left-gap-voltage-missing', 'note', { gapVoltage }));
  }
  const { loop } = channel;
  if (loop?.isAll === true && readings.sensitivity !== null) {
    const { at0, at100 } = loop;
    note('loopAtZero', factOf('loop-ends-not-used', 'note', { kind: 'not measured again', at0, at100 }));
  }
  if (kind === 'axial' && readings.zero === null) {
    const fact = factOf('as-left-zero-not-measured', 'warning', {});
    block({ ...fact, table: 'channels', column: 'asLeftZero' });
  }
}

function ofThreshold(
  before: ThresholdResult,
  left: ThresholdResult,
  twice: AuditedTwice,
  addFinding: AddFinding,
): void {
  const tell = (fact: Fact) => {
    addFinding({ ...fact, table: 'channels', column: 'asLeftSensitivity' });
  };
  const known = { ...setpointOf(left, twice.channel), asFound: asFound(before) };
  const effective = left.effective ?? NaN;
  if (changeOf(before.verdict, left.verdict) === 'corrected')
    tell(factOfThreshold('as-left-cured', 'note', left, { ...known, effective }));
  if (!isWorse(before, left, twice.found.policy.tolerance)) return;
  const values = { ...known, verdict: left.verdict, effective, ...whatMoved(twice) };
  tell(factOfThreshold('as-left-worse', 'warning', left, values));
}

function asFound({ verdict, effective }: ThresholdResult): AsLeftRules['as-left-cured']['asFound'] {
  return { verdict, effective: effective ?? NaN };
}

/** The sensitivity before and after; the gap voltage too where it was read both times. */
function whatMoved({
  found,
  channel,
  readings,
}: AuditedTwice): Pick<AsLeftRules['as-left-worse'], 'sensitivity' | 'gapVoltage'> {
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
function isWorse(before: ThresholdResult, left: ThresholdResult, tolerance: number): boolean {
  if (before.verdict === 'incomplete' || left.verdict === 'incomplete') return false;
  if (left.verdict !== before.verdict) return rank(left.verdict) < rank(before.verdict);
  if (left.verdict !== 'late' && left.verdict !== 'early') return false;
  return Math.abs(left.shiftFraction ?? NaN) - Math.abs(before.shiftFraction ?? NaN) > tolerance;
}

/**
 * How long the protection may have been wrong: from when it was last known good to when the fault was measured, and
 * whether it goes on since (`now` is `null` where the channel was not measured again).
 */
export function exposureRule(
  { channel, thresholds, today, cell }: Audited,
  now: readonly ThresholdResult[] | null,
  addFinding: AddFinding,
): void {
  const { lastGoodOn, calibratedOn } = channel;
  if (calibratedOn === null) return;
  const at = { table: 'channels', column: 'lastGoodOn' } as const;
  if (lastGoodOn !== null && calibratedOn < lastGoodOn) {
    const values = {
      lastGoodOn: isoDate(lastGoodOn),
      lastGoodCell: cell('channels', 'lastGoodOn'),
      calibratedOn: isoDate(calibratedOn),
      calibratedCell: cell('channels', 'calibratedOn'),
    };
    addFinding({ ...factOf('dates-out-of-order', 'warning', values), ...at });
    return;
  }
  const bad = thresholds.filter(({ verdict }) => mayBeLate(verdict));
  const { from, to } = periodOfExposure(channel, today);
  if (bad.length === 0 || to === null) return;
  const known = { thresholds: namesOf(bad), to: isoDate(to), goesOn: goesOn(thresholds, now) };
  if (from === null) {
    const values = { ...known, lastGoodOn: lastGoodOn === null ? null : isoDate(lastGoodOn) };
    addFinding({ ...factOf('exposure-start-unknown', 'note', values), ...at });
    return;
  }
  const values = { ...known, from: isoDate(from), days: to - from };
  addFinding({ ...factOf('period-of-exposure', 'warning', values), ...at });
}

function namesOf(thresholds: readonly ThresholdResult[]): ThresholdName[] {
  return [...new Set(thresholds.map(({ name }) => name))];
}

/** Whether what was found goes on since, as far as was judged as left. */
function goesOn(thresholds: readonly ThresholdResult[], now: readonly ThresholdResult[] | null): StillWrong {
  if (!now) return null;
  const left = now.filter(({ verdict }, index) => {
    const found = thresholds[index];
    return found !== undefined && mayBeLate(found.verdict) && mayBeLate(verdict);
  });
  return {
    sure: namesOf(left.filter(({ verdict }) => verdict !== 'undetermined')),
    unsure: namesOf(left.filter(({ verdict }) => verdict === 'undetermined')),
  };
}
