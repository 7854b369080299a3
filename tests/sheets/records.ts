import { audit } from '../../src/audit/audit.ts';
import { defaultPolicy } from '../../src/audit/model/policy.ts';
import type { ChannelResult, RecordResult, Report } from '../../src/audit/model/report.ts';
import { deviations, fittedLine, ratedLine } from '../../src/method/record/deviation.ts';
import { incrementalSensitivity } from '../../src/method/record/calibrationRecord.ts';
import { linearRange } from '../../src/method/record/linearRange.ts';
import { monotoneCurve } from '../../src/method/record/curveOf.ts';
import { straightLine } from '../../src/method/record/straightLine.ts';
import { thresholdOnCurve } from '../../src/method/record/onCurve.ts';
import { workbookOf, type Listed } from './tables.ts';

/** Gaps from `first` on, `count` of them. */
export function gapsFrom(first: number, step: number, count: number): number[] {
  return Array.from({ length: count }, (_, index) => first + index * step);
}

/**
 * An invented probe: `sensitivity` in V per gap unit in the middle of its range, bent at both ends, to the millivolt,
 * with some millivolts of scatter that are the same each time.
 */
export function bentVolts(gaps: readonly number[], sensitivity: number, near: number, far: number): number[] {
  return gaps.map((gap, index) => {
    const bend = Math.max(0, near - gap) ** 1.3 - Math.max(0, gap - far) ** 1.3;
    const straight = -sensitivity * gap + 0.012 * sensitivity * bend * 5;
    return Number((straight + 0.004 * Math.sin(index * 2.4)).toFixed(3));
  });
}

/** A calibration record as the audit would report it, worked out by the method over all points. */
export function recordOf(
  channel: ChannelResult,
  gaps: readonly number[],
  volts: readonly number[],
  rated: number | null,
  gapUnit = 'mil',
): RecordResult {
  const points = { gaps, volts, sorted: false };
  const line = straightLine(gaps, volts)!;
  const own = fittedLine(line)!;
  const steps = incrementalSensitivity(points);
  const onRated = rated === null ? null : deviations(points, ratedLine(points, rated / 1000)!);
  const onFitted = deviations(points, own);
  const range =
    rated === null
      ? undefined
      : linearRange(points, {
          rated: rated / 1000,
          tolerance: 0.05,
          deviation: gapUnit === 'mil' ? 1 : 25.4,
        });
  const curve = monotoneCurve(points)!;
  const gap = channel.inputs.gapVoltage === null ? NaN : curve.gapAt(channel.inputs.gapVoltage);
  const operatingGap = Number.isFinite(gap) ? gap : null;
  const perGap = (channel.sensitivity.configured ?? NaN) / 1000;
  return {
    sheet: 'Probe records',
    row: 5,
    series: 'as found',
    temperature: '',
    takenOn: '2025-02-11',
    gapUnit,
    points: gaps.map((value, at) => ({
      gap: value,
      volts: volts[at] ?? NaN,
      incremental: at < steps.length ? 1000 * steps[at]! : null,
      incrementalError: at < steps.length && rated !== null ? (1000 * steps[at]!) / rated - 1 : null,
      deviation: onRated?.[at] ?? null,
      deviationFitted: onFitted[at] ?? null,
    })),
    average: 1000 * own.sensitivity,
    averageUncertainty: 1000 * line.slopeUncertainty,
    intercept: line.intercept,
    interceptUncertainty: line.interceptUncertainty,
    correlation: line.correlation,
    residualDeviation: line.residualDeviation,
    span: { from: gaps[0]!, to: gaps.at(-1)! },
    rated,
    linearRange: range ? { from: range.from, to: range.to } : null,
    straightPart: null,
    operatingGap,
    thresholds: channel.thresholds
      .filter(({ setpoint }) => setpoint !== null)
      .map(({ name, multiplier, setpoint }) => {
        const found =
          operatingGap === null
            ? undefined
            : thresholdOnCurve(curve, operatingGap, Math.abs(setpoint ?? NaN), perGap, multiplier);
        return {
          name,
          multiplier,
          onCurve: found && 'acts' in found ? found.acts : null,
          largestIndicated: found && 'largestIndicated' in found ? found.largestIndicated : null,
        };
      }),
    upDown: null,
    others: [
      { series: 'as left', temperature: '', average: 199.4, gapUnit },
      { series: '', temperature: '', average: null, gapUnit },
    ],
  };
}

/** A report of channels, some of which get a record. */
export function reportWith(
  listed: readonly Listed[],
  records: Readonly<Record<string, (channel: ChannelResult) => RecordResult>>,
): Report {
  const report = audit(workbookOf(listed), { policy: defaultPolicy, now: new Date('2025-03-14T08:05:00Z') });
  const channels = report.channels.map((channel) => {
    const record = records[channel.tag]?.(channel);
    return record ? { ...channel, record } : channel;
  });
  return { ...report, channels };
}
