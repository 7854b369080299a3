import { isoDate } from '../../../cells/cell.ts';
import { type CalibrationRecord, incrementalSensitivity } from '../../../method/record/calibrationRecord.ts';
import { curveOf } from '../../../method/record/curveOf.ts';
import type { Curve } from '../../../method/record/curve.ts';
import { deviations, fittedLine, ratedLine, type VoltageLine } from '../../../method/record/deviation.ts';
import {
  linearRange,
  type LinearRange,
  type LinearLimits,
  recordReach,
} from '../../../method/record/linearRange.ts';
import { isRunFault, runsOf } from '../../../method/record/runs.ts';
import { parseUnit } from '../../../units/parse.ts';
import { type Unit, convert } from '../../../units/unit.ts';
import type { Channel } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { RecordPoint, RecordResult, UpDownResult } from '../../model/report.ts';
import type { Usable } from './chooseRecord.ts';
import { type StraightLine, straightLine } from '../../../method/record/straightLine.ts';

/** The straight part of a record and the line through it. Sensitivities in V per gap unit. */
interface RecordLine {
  /** `undefined` where no two steps agree. */
  readonly straight: LinearRange | undefined;
  readonly line: StraightLine;
  readonly span: { readonly from: number; readonly to: number };
}

/** What a record says, all but the thresholds on its curve; and the curve itself, `undefined` where it can't be read backwards. */
export interface EvaluatedRecord {
  readonly result: Omit<RecordResult, 'thresholds' | 'others'>;
  readonly curve: Curve | undefined;
  readonly gapUnit: Unit;
  /** Peak-to-peak swing in the channel's unit over which the record is straight; `null` where it can't be told. */
  readonly reach: number | null;
}

/** The curve of a record, the gap at a voltage on it, and the line through its straight part about that gap. */
interface FittedRecord extends RecordLine {
  readonly curve: Curve | undefined;
  readonly operatingGap: number | null;
  readonly volts: VoltageLine;
  /** Accepted deviation, in gap units. */
  readonly deviation: number;
}

/** `undefined` where no falling line fits the record. */
function fit({ raw, record }: Usable, volts: number | null, policy: Policy): FittedRecord | undefined {
  const { incremental, deviation: accepted } = policy.recordTolerance;
  const deviation = inGapUnit(accepted, raw.gapUnit);
  const curve = curveOf(record, policy.curve);
  const operatingGap = volts === null || !curve ? null : known(curve.gapAt(volts));
  const fitted = recordLine(record, incremental, deviation, operatingGap ?? undefined);
  const falling = fitted && fittedLine(fitted.line);
  return fitted && falling && { ...fitted, curve, operatingGap, volts: falling, deviation };
}

/** Works out a record of a displacement channel. `undefined` where no falling line fits it. */
export function evaluateRecord(
  usable: Usable,
  channel: Channel,
  policy: Policy,
): EvaluatedRecord | undefined {
  const fitted = fit(usable, operatingVolts(channel), policy);
  if (!fitted) return undefined;
  const { raw, record } = usable;
  const { gapUnit } = raw;
  const { curve, operatingGap, line, straight, span, volts } = fitted;
  const rated = ratedVolts(channel, policy, gapUnit);
  const range = rated === null ? undefined : ratedRange(record, rated, fitted, policy);
  const offRated = rated === null ? undefined : ratedLine(within(record, span), rated);
  return {
    result: {
      sheet: raw.sheet,
      row: raw.row,
      series: raw.series,
      temperature: raw.temperature,
      takenOn: raw.takenOn === null ? null : isoDate(raw.takenOn),
      gapUnit: gapUnit.text,
      points: pointsOf(
        record,
        rated,
        offRated ? deviations(record, offRated) : [],
        deviations(record, volts),
      ),
      upDown: upDownResult(usable),
      average: 1000 * volts.sensitivity,
      averageUncertainty: known(1000 * line.slopeUncertainty),
      intercept: line.intercept,
      interceptUncertainty: known(line.interceptUncertainty),
      correlation: known(line.correlation),
      residualDeviation: known(line.residualDeviation),
      span,
      rated: rated === null ? null : 1000 * rated,
      linearRange: range ? { from: range.from, to: range.to } : null,
      straightPart: straight ? { from: straight.from, to: straight.to } : null,
      operatingGap,
    },
    curve,
    gapUnit,
    reach:
      operatingGap === null || !straight
        ? null
        : convert(recordReach(straight, operatingGap), gapUnit, channel.unit),
  };
}

/** The linear range about the operating gap; where that lies in none, the longest there is. */
function ratedRange(
  record: CalibrationRecord,
  rated: number,
  { operatingGap, deviation }: FittedRecord,
  policy: Policy,
): LinearRange | undefined {
  const limits = { rated, tolerance: policy.recordTolerance.incremental, deviation };
  const about = operatingGap === null ? undefined : linearRange(record, { ...limits, midGap: operatingGap });
  return about ?? linearRange(record, limits);
}

/** The points of a record between two gaps. */
function within(
  { gaps, volts, sorted }: CalibrationRecord,
  { from, to }: RecordLine['span'],
): CalibrationRecord {
  const inside = [...gaps.keys()].filter((at) => (gaps[at] ?? NaN) >= from && (gaps[at] ?? NaN) <= to);
  return { gaps: inside.map((at) => gaps[at] ?? NaN), volts: inside.map((at) => volts[at] ?? NaN), sorted };
}

/** What both directions of a record say, as the report shows it. */
export function upDownResult({ raw, upDown }: Usable): UpDownResult | null {
  if (!upDown) return null;
  const { span, hysteresis, repeatability = null, terminal, independent, oneWay } = upDown;
  const runs = runsOf(raw.points);
  const cycles = isRunFault(runs) ? 0 : Math.floor(runs.length / 2);
  return { cycles, span, hysteresis, repeatability, terminal, independent, oneWay };
}

/** A sensitivity in V per gap unit. */
export function voltsPerGap(value: number, sensitivityUnit: Unit, gapUnit: Unit): number {
  return convert(value, sensitivityUnit, perGap(gapUnit)) / 1000;
}

/** The unit mV per gap unit. */
export function perGap(gapUnit: Unit): Unit {
  const unit = parseUnit(`mV/${gapUnit.text}`);
  if (!unit) throw new Error(`no sensitivity per ${gapUnit.text}`);
  return unit;
}

/** Voltage at which a chain works: its gap voltage; of an axial channel its measured zero, where no gap voltage is given. */
function operatingVolts({ kind, gapVoltage, zeroMeasured }: Channel): number | null {
  return gapVoltage ?? (kind === 'axial' ? zeroMeasured : null);
}

function ratedVolts({ kind }: Channel, policy: Policy, gapUnit: Unit): number | null {
  const rated = policy.ratedSensitivity[kind];
  const unit = rated && parseUnit(rated.unit);
  if (!rated || !unit) return null;
  const volts = voltsPerGap(rated.value, unit, gapUnit);
  return Number.isFinite(volts) ? volts : null;
}

function inGapUnit({ value, unit }: Policy['recordTolerance']['deviation'], gapUnit: Unit): number {
  const named = parseUnit(unit);
  return named ? convert(value, named, gapUnit) : NaN;
}

function pointsOf(
  record: Usable['record'],
  rated: number | null,
  offRated: readonly number[],
  offFitted: readonly number[],
): RecordPoint[] {
  const steps = incrementalSensitivity(record);
  return record.gaps.map((gap, at) => {
    const step = steps[at];
    return {
      gap,
      volts: record.volts[at] ?? NaN,
      incremental: step === undefined ? null : 1000 * step,
      incrementalError: step === undefined || rated === null ? null : step / rated - 1,
      deviation: offRated[at] ?? null,
      deviationFitted: offFitted[at] ?? null,
    };
  });
}

function known(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

/**
 * The measured sensitivity that a record gives where the channel list has none, with its unit: that of the line which
 * `evaluateRecord` reports for a channel at this voltage, `null` where it is not known. `undefined` where no falling line fits.
 */
export function averageOf(
  usable: Usable,
  volts: number | null,
  policy: Policy,
): { value: number; unit: Unit } | undefined {
  const fitted = fit(usable, volts, policy);
  return fitted && { value: 1000 * fitted.volts.sensitivity, unit: perGap(usable.raw.gapUnit) };
}

/**
 * The line of a record: least squares through its straight part, or through all points where that has fewer than three.
 * Straight is what keeps within the tolerances about the record's own sensitivity, the median of its steps: a chain that
 * is 20 % low all along is straight, though nowhere near its rated sensitivity.
 */
function recordLine(
  record: CalibrationRecord,
  tolerance: number,
  deviation: number,
  midGap: number | undefined,
): RecordLine | undefined {
  const own = median(incrementalSensitivity(record));
  const limits: LinearLimits = { rated: own, tolerance, deviation };
  const straight =
    (midGap === undefined ? undefined : linearRange(record, { ...limits, midGap })) ??
    linearRange(record, limits);
  const { gaps, volts } = record;
  const enough = straight && straight.last - straight.first >= 2;
  const [first, last] = enough ? [straight.first, straight.last] : [0, gaps.length - 1];
  const line = straightLine(gaps.slice(first, last + 1), volts.slice(first, last + 1));
  return line && { straight, line, span: { from: gaps[first] ?? NaN, to: gaps[last] ?? NaN } };
}

function median(values: readonly number[]): number {
  const inOrder = values.toSorted((one, other) => one - other);
  const middle = (inOrder.length - 1) / 2;
  return ((inOrder[Math.floor(middle)] ?? NaN) + (inOrder[Math.ceil(middle)] ?? NaN)) / 2;
}
