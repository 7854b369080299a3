import { curveOf } from '../../method/record/curveOf.ts';
import type { Curve } from '../../method/record/curve.ts';
import { deviations, fittedLine, ratedLine } from '../../method/record/deviation.ts';
import { incrementalSensitivity } from '../../method/record/incremental.ts';
import { linearRange } from '../../method/record/linearRange.ts';
import { linearReach } from '../../method/reach/linearReach.ts';
import { convert } from '../../units/convert.ts';
import { parseUnit } from '../../units/parse.ts';
import type { Unit } from '../../units/unit.ts';
import type { Channel } from '../evaluate/channel.ts';
import type { Policy } from '../policy/policy.ts';
import type { RecordPoint, RecordResult } from '../report/types.ts';
import { isoDate } from '../tables/found.ts';
import type { Usable } from './chooseRecord.ts';
import { recordLine } from './recordLine.ts';

/** What a record says, all but the thresholds on its curve; and the curve itself, `undefined` where it can't be read backwards. */
export interface EvaluatedRecord {
  readonly result: Omit<RecordResult, 'thresholds' | 'others'>;
  readonly curve: Curve | undefined;
  readonly gapUnit: Unit;
  /** Peak-to-peak swing in the channel's unit over which the record is straight; `null` where it can't be told. */
  readonly reach: number | null;
}

/** Works out a record of a displacement channel. `undefined` where no falling line fits it. */
export function evaluateRecord(
  { raw, record }: Usable,
  channel: Channel,
  policy: Policy,
): EvaluatedRecord | undefined {
  const { gapUnit } = raw;
  const { incremental: tolerance } = policy.recordTolerance;
  const deviation = inGapUnit(policy.recordTolerance.deviation, gapUnit);
  const curve = curveOf(record, policy.curve);
  const operatingGap = gapAtVolts(curve, operatingVolts(channel));
  const fitted = recordLine(record, tolerance, deviation, operatingGap ?? undefined);
  const fittedVolts = fitted && fittedLine(fitted.line);
  if (!fitted || !fittedVolts) return undefined;
  const { line, straight, span } = fitted;
  const rated = ratedVolts(channel, policy, gapUnit);
  const range =
    rated === null
      ? undefined
      : linearRange(record, {
          rated,
          tolerance,
          deviation,
          ...(operatingGap !== null && { midGap: operatingGap }),
        });
  const offRated = rated === null ? undefined : ratedLine(record, rated);
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
        deviations(record, fittedVolts),
      ),
      average: 1000 * fittedVolts.sensitivity,
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
        : convert(linearReach(operatingGap, straight.from, straight.to), gapUnit, channel.unit),
  };
}

/** mV per unit of a sensitivity unit in V per gap unit. */
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

function gapAtVolts(curve: Curve | undefined, volts: number | null): number | null {
  return volts === null || !curve ? null : known(curve.gapAt(volts));
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
 * `evaluateRecord` reports for a channel at this voltage; `null` where the voltage is not known.
 */
export function averageOf(
  { raw, record }: Usable,
  volts: number | null,
  policy: Policy,
): { value: number; unit: Unit } | undefined {
  const deviation = inGapUnit(policy.recordTolerance.deviation, raw.gapUnit);
  const gap = gapAtVolts(curveOf(record, policy.curve), volts);
  const fitted = recordLine(record, policy.recordTolerance.incremental, deviation, gap ?? undefined);
  const line = fitted && fittedLine(fitted.line);
  return line && { value: 1000 * line.sensitivity, unit: perGap(raw.gapUnit) };
}
