import { factOf, factOfThreshold, type Fact } from '../../model/findings.ts';
import type { Channel } from '../../model/channel.ts';
import { setpointOf } from '../findings/thresholdCell.ts';
import type { Policy } from '../../model/policy.ts';
import type { RecordResult, RecordThreshold } from '../../model/report.ts';
import { trips, type ThresholdResult } from '../../model/threshold.ts';

type Say = (fact: Fact) => void;

/** What the record's curve says of gap and thresholds. */
export function curveFindings(
  record: RecordResult,
  channel: Channel,
  thresholds: readonly ThresholdResult[],
  policy: Policy,
  say: Say,
): void {
  operatingPoint(record, channel, say);
  for (const onCurve of record.thresholds) {
    const simple = thresholds.find(
      ({ name, multiplier }) => name === onCurve.name && multiplier === onCurve.multiplier,
    );
    if (simple) compare(simple, onCurve, record, channel, policy, say);
  }
}

function operatingPoint(
  { operatingGap, straightPart, gapUnit, points }: RecordResult,
  { gapVoltage, kind }: Channel,
  say: Say,
): void {
  if (gapVoltage === null) {
    if (kind !== 'radial') return;
    say(factOf('record-without-gap-voltage', 'note', {}));
    return;
  }
  if (operatingGap === null) {
    const [from, to] = [points[0]?.volts ?? NaN, points.at(-1)?.volts ?? NaN];
    if (gapVoltage <= from && gapVoltage >= to) return;
    say(factOf('gap-outside-record', 'warning', { gapVoltage, from, to }));
  } else if (straightPart && (operatingGap < straightPart.from || operatingGap > straightPart.to)) {
    const { from, to } = straightPart;
    say(factOf('gap-outside-straight-part', 'warning', { operatingGap, from, to, gapUnit, gapVoltage }));
  }
}

function compare(
  simple: ThresholdResult,
  { onCurve, largestIndicated }: RecordThreshold,
  { gapUnit, points }: RecordResult,
  channel: Channel,
  policy: Policy,
  say: Say,
): void {
  const level = setpointOf(simple, channel);
  const { name, effective } = simple;
  if (onCurve === null) {
    const [from, to] = [points[0]?.gap ?? NaN, points.at(-1)?.gap ?? NaN];
    const { zeroMeasured } = channel;
    const values = { ...level, from, to, gapUnit, largestIndicated, zeroMeasured };
    say(factOfThreshold('curve-falls-short', trips(name) ? 'critical' : 'warning', simple, values));
    return;
  }
  if (effective === null || effective === 0) return;
  const off = onCurve / effective - 1;
  if (!(Math.abs(off) > policy.curveDifference)) return;
  const severity = trips(name) && off > 0 ? 'critical' : 'warning';
  say(factOfThreshold('curve-differs', severity, simple, { ...level, onCurve, effective, off }));
}
