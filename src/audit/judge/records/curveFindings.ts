import { factOf, factOfThreshold, type Fact } from '../../model/findings.ts';
import type { Channel } from '../../model/channel.ts';
import { setpointOf } from '../findings/rule.ts';
import type { Policy } from '../../model/policy.ts';
import type { RecordResult } from '../../model/report.ts';
import { trips, type ThresholdResult } from '../../model/threshold.ts';

type AddFinding = (fact: Fact) => void;

/** What the record says of the gap at which the channel works. */
export function operatingPoint(
  { operatingGap, straightPart, gapUnit, points }: RecordResult,
  { gapVoltage, kind }: Channel,
  addFinding: AddFinding,
): void {
  if (gapVoltage === null) {
    if (kind !== 'radial') return;
    addFinding(factOf('record-without-gap-voltage', 'note', {}));
    return;
  }
  if (operatingGap === null) {
    const [from, to] = [points[0]?.volts ?? NaN, points.at(-1)?.volts ?? NaN];
    if (gapVoltage <= from && gapVoltage >= to) return;
    addFinding(factOf('gap-outside-record', 'warning', { gapVoltage, from, to }));
  } else if (straightPart && (operatingGap < straightPart.from || operatingGap > straightPart.to)) {
    const { from, to } = straightPart;
    addFinding(
      factOf('gap-outside-straight-part', 'warning', { operatingGap, from, to, gapUnit, gapVoltage }),
    );
  }
}

/**
 * What the record's curve says of each threshold beside its other lines of evidence: that it can't be shown to act, or that
 * it acts elsewhere than by the listed sensitivity, with both numbers.
 */
export function curveFindings(
  { gapUnit, points, thresholds: onCurves }: RecordResult,
  channel: Channel,
  thresholds: readonly ThresholdResult[],
  policy: Policy,
): Fact[] {
  return thresholds.flatMap((threshold): Fact[] => {
    const { name, multiplier, lines } = threshold;
    const curve = lines.find(({ by }) => by === 'calibration record');
    if (!curve) return [];
    const level = setpointOf(threshold, channel);
    if (curve.effective === null) {
      const [from, to] = [points[0]?.gap ?? NaN, points.at(-1)?.gap ?? NaN];
      const largestIndicated =
        onCurves.find((one) => one.name === name && one.multiplier === multiplier)?.largestIndicated ?? null;
      const { zeroMeasured } = channel;
      const values = { ...level, from, to, gapUnit, largestIndicated, zeroMeasured };
      return [factOfThreshold('curve-falls-short', trips(name) ? 'critical' : 'warning', threshold, values)];
    }
    const listed = lines.find(({ by }) => by === 'listed sensitivity')?.effective ?? null;
    if (listed === null || listed === 0) return [];
    const off = curve.effective / listed - 1;
    if (!(Math.abs(off) > policy.curveDifference)) return [];
    const values = { ...level, onCurve: curve.effective, effective: listed, off };
    return [factOfThreshold('curve-differs', 'warning', threshold, values)];
  });
}
