import type { Severity } from '../../model/findings.ts';
import type { Channel } from '../../model/channel.ts';
import { ruleName, subject } from '../findings/thresholdCell.ts';
import type { Policy } from '../../model/policy.ts';
import type { RecordResult, RecordThreshold } from '../../model/report.ts';
import { amount, percent } from '../../model/wording.ts';
import { trips, type ThresholdResult } from '../../model/threshold.ts';

type Say = (rule: string, severity: Severity, message: string) => void;

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
    const message =
      'There is a calibration record but no gap voltage, so it is not known about which gap the shaft moves: neither thresholds on the curve nor the reach were worked out from it. Enter the gap voltage.';
    say('record-without-gap-voltage', 'note', message);
    return;
  }
  if (operatingGap === null) {
    const [first, last] = [points[0]?.volts ?? NaN, points.at(-1)?.volts ?? NaN];
    if (gapVoltage <= first && gapVoltage >= last) return;
    say(
      'gap-outside-record',
      'warning',
      `The gap voltage ${amount(gapVoltage, 'V')} lies outside the record, ${amount(first, 'V')} to ${amount(last, 'V')}: nothing is known of the chain there. Check the gap, or take the record further.`,
    );
  } else if (straightPart && (operatingGap < straightPart.from || operatingGap > straightPart.to)) {
    say(
      'gap-outside-straight-part',
      'warning',
      `The operating gap of ${amount(operatingGap, gapUnit)} (${amount(gapVoltage, 'V')}) lies outside the straight part of the record, ${amount(straightPart.from, gapUnit)} to ${amount(straightPart.to, gapUnit)}. Set the probe near the middle of it.`,
    );
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
  const unit = channel.unit.text;
  const { name, effective } = simple;
  if (onCurve === null) {
    const [from, to] = [points[0]?.gap ?? NaN, points.at(-1)?.gap ?? NaN];
    const span = `${amount(from, gapUnit)} to ${amount(to, gapUnit)}`;
    const why =
      largestIndicated === null
        ? `the record (${span}) does not reach the measured zero voltage of ${amount(channel.zeroMeasured ?? NaN, 'V')}, from which positions are counted. Take the record further.`
        : `from its operating gap the record (${span}) supports indications up to ${amount(largestIndicated, unit)} only.`;
    say(
      ruleName(name, 'curve-falls-short'),
      trips(name) ? 'critical' : 'warning',
      `${subject(simple, channel)} cannot be shown to act: ${why}`,
    );
    return;
  }
  if (effective === null || effective === 0) return;
  const off = onCurve / effective - 1;
  if (!(Math.abs(off) > policy.curveDifference)) return;
  say(
    ruleName(name, 'curve-differs'),
    trips(name) && off > 0 ? 'critical' : 'warning',
    `${subject(simple, channel)} acts at ${amount(onCurve, unit)} on the curve of the calibration record, ${percent(off)} away from the ${amount(effective, unit)} that the one measured sensitivity gives. Where the record is of this very chain, the curve is the better figure.`,
  );
}
