import { decideOnThreshold } from '../../../method/decision/verdict.ts';
import { spreadBand } from '../../../method/ratio/acting.ts';
import type { Curve } from '../../../method/record/curve.ts';
import {
  thresholdOnCurve,
  axialOnCurve,
  type AxialOnCurve,
  axialIndicatedOnCurve,
  indicatedOnCurve,
} from '../../../method/record/onCurve.ts';
import { convertDetection } from '../../../units/detection.ts';
import { type Unit, convert } from '../../../units/unit.ts';
import type { Channel } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { RecordThreshold } from '../../model/records.ts';
import type { LineReason } from '../../model/threshold.ts';
import { voltsPerGap } from '../records/evaluateRecord.ts';
import {
  counted,
  isAboveFullScale,
  finiteOrNull,
  plainSpread,
  verdictOf,
  type Asked,
  type Line,
} from './line.ts';
import { divisorOf, ofBoth } from './spreads.ts';

/** A record's curve, by which a channel's thresholds can be worked out. */
export interface MeasuredCurve {
  readonly curve: Curve;
  readonly gapUnit: Unit;
  /** `null`: the gap voltage lies outside the record. Axial channels go by their zero voltages. */
  readonly operatingGap: number | null;
}

/** Where a threshold acts on a curve, in the channel's unit and detection. */
type OnCurve = Pick<RecordThreshold, 'onCurve' | 'largestIndicated'>;

/**
 * A threshold by the curve of the calibration record (method, section 6): beyond the measured gaps it can't be shown to
 * act. The record is taken by the method of the listed sensitivity, whose uncertainty counts for it too; so do those of the
 * monitor's gain and of a position's zero.
 */
export function curveLine(measured: MeasuredCurve, channel: Channel, policy: Policy, asked: Asked): Line {
  const uncertainty = ofBoth(channel);
  const ofScale = (factor: number): number | null =>
    onCurve(measured, channel, asked, factor)?.onCurve ?? null;
  const effective = ofScale(1);
  const farther = uncertainty === null ? null : ofScale(1 - uncertainty);
  const nearer = uncertainty === null ? null : ofScale(1 + uncertainty);
  const towardsZero = asked.setpoint < 0;
  const { zeroUncertainty } = channel;
  if (effective !== null && channel.kind === 'axial' && zeroUncertainty !== null)
    return positionLine(measured, channel, policy, asked, effective);
  const reasons = isAboveFullScale(channel, asked) ? (['above full scale'] as const) : [];
  return {
    by: 'calibration record',
    effective,
    low: towardsZero ? farther : nearer,
    high: towardsZero ? nearer : farther,
    ...(effective === null && reasons.length === 0
      ? { verdict: 'undetermined' as const, why: whyNot(measured, channel), reasons }
      : verdictOf(decided(channel, policy, asked, effective, nearer, farther), reasons)),
    panel: panelOn(measured, channel, asked, counted(uncertainty, policy)),
    spread: plainSpread(uncertainty),
    realAt: realOn(measured, channel, asked),
  };
}

/** What the shaft really does at a reading. */
function realOn(measured: MeasuredCurve, channel: Channel, asked: Asked): Line['realAt'] {
  return (reading) =>
    reading === 0
      ? 0
      : (onCurve(measured, channel, { ...asked, setpoint: reading, multiplier: 1 }, 1)?.onCurve ?? NaN);
}

/** A position on the curve whose zero is uncertain: the zero's part is that of the chain's one sensitivity. */
function positionLine(
  measured: MeasuredCurve,
  channel: Channel,
  policy: Policy,
  asked: Asked,
  effective: number,
): Line {
  const { multiplier, setpoint } = asked;
  const uncertainty = ofBoth(channel);
  const ofZero = ((channel.zeroUncertainty ?? 0) * channel.unitsPerVolt) / channel.measured;
  const spread = { ofDivisor: uncertainty ?? 0, ofNumerator: ofZero, both: 0 };
  const { low, high } = spreadBand(effective, spread);
  const reasons = isAboveFullScale(channel, asked) ? (['above full scale'] as const) : [];
  const guarded = policy.rule === 'guarded';
  const reach = Math.abs(setpoint);
  const least = guarded ? Math.hypot(uncertainty ?? 0, ofZero / reach) : 0;
  return {
    by: 'calibration record',
    effective,
    low: finiteOrNull(low),
    high: finiteOrNull(high),
    ...verdictOf(
      decideOnThreshold(multiplier * setpoint, effective, low, high, policy.tolerance, policy.rule),
      reasons,
    ),
    panel: panelOn(measured, channel, asked, least),
    spread,
    realAt: realOn(measured, channel, asked),
  };
}

/** The upper end counts as infinite where the record does not reach it. */
function decided(
  channel: Channel,
  { tolerance, rule }: Policy,
  { setpoint, multiplier }: Asked,
  effective: number | null,
  nearer: number | null,
  farther: number | null,
) {
  const sign = Math.sign(setpoint);
  const known = ofBoth(channel) !== null && nearer !== null;
  return decideOnThreshold(
    multiplier * setpoint,
    effective ?? sign * Infinity,
    known ? nearer : null,
    known ? (farther ?? sign * Infinity) : null,
    tolerance,
    rule,
  );
}

function whyNot({ curve, operatingGap }: MeasuredCurve, { kind, zeroMeasured }: Channel): LineReason {
  if (kind !== 'axial' && operatingGap === null) return 'the gap voltage lies outside the record';
  if (kind === 'axial' && Number.isNaN(curve.gapAt(zeroMeasured ?? NaN)))
    return 'the measured zero lies outside the record';
  return 'the record does not reach that far';
}

/**
 * Where a setpoint acts on the curve while the chain's sensitivity is the record's times `factor`, and where that can't be
 * shown the largest indication that the record supports. `undefined` where nothing can be said of this kind of channel.
 */
export function onCurve(
  measured: MeasuredCurve,
  channel: Channel,
  asked: Pick<Asked, 'setpoint' | 'multiplier'>,
  factor: number,
): OnCurve | undefined {
  return channel.kind === 'axial'
    ? axialPosition(measured, channel, asked, factor)
    : radialSwing(measured, channel, asked, factor);
}

function radialSwing(
  { curve, gapUnit, operatingGap }: MeasuredCurve,
  channel: Channel,
  { setpoint, multiplier }: Pick<Asked, 'setpoint' | 'multiplier'>,
  factor: number,
): OnCurve | undefined {
  const { unit, detection, sensitivityUnit } = channel;
  if (detection === null) return undefined;
  if (operatingGap === null) return { onCurve: null, largestIndicated: null };
  const found = thresholdOnCurve(
    curve,
    operatingGap,
    convert(convertDetection(setpoint, detection, 'p-p'), unit, gapUnit),
    voltsPerGap(divisorOf(channel), sensitivityUnit, gapUnit) / factor,
    multiplier,
  );
  if (!found) return undefined;
  const shown = (swing: number): number => convertDetection(convert(swing, gapUnit, unit), 'p-p', detection);
  return 'acts' in found
    ? { onCurve: shown(found.acts), largestIndicated: null }
    : { onCurve: null, largestIndicated: shown(found.largestIndicated) };
}

/** Positions carry their sign; the largest indication is the one at the end of the record on the setpoint's side. */
function axialPosition(
  { curve, gapUnit }: MeasuredCurve,
  channel: Channel,
  { setpoint, multiplier }: Pick<Asked, 'setpoint' | 'multiplier'>,
  factor: number,
): OnCurve | undefined {
  const { unit, zeroConfigured } = channel;
  const at = axialAt(channel, multiplier * setpoint, gapUnit);
  if (!at || zeroConfigured === null) return undefined;
  const position = axialOnCurve(curve, at) / factor;
  if (Number.isFinite(position)) return { onCurve: convert(position, gapUnit, unit), largestIndicated: null };
  if (Number.isNaN(curve.gapAt(at.zeroMeasured))) return { onCurve: null, largestIndicated: null };
  const end = at.sign * Math.sign(at.setpoint) > 0 ? curve.from : curve.to;
  const indicated = (at.sign * (curve.voltsAt(end) - zeroConfigured)) / at.configured;
  return { onCurve: null, largestIndicated: convert(indicated, gapUnit, unit) };
}

function axialAt(channel: Channel, level: number, gapUnit: Unit): AxialOnCurve | undefined {
  const { unit, sensitivityUnit, zeroConfigured, zeroMeasured, direction } = channel;
  if (zeroConfigured === null || zeroMeasured === null) return undefined;
  if (direction === null) return undefined;
  return {
    setpoint: convert(level, unit, gapUnit),
    configured: voltsPerGap(divisorOf(channel), sensitivityUnit, gapUnit),
    zeroConfigured,
    zeroMeasured,
    sign: direction === 'toward' ? 1 : -1,
  };
}

/** What the monitor shows on the curve when the shaft really moves as far as was meant; `null` beyond the record. */
function panelOn(
  { curve, gapUnit, operatingGap }: MeasuredCurve,
  channel: Channel,
  { setpoint }: Asked,
  uncertainty: number,
): number | null {
  const { kind, unit, detection, sensitivityUnit } = channel;
  if (kind === 'axial') {
    const at = axialAt(channel, setpoint * (1 - uncertainty), gapUnit);
    const shown = at ? convert(axialIndicatedOnCurve(curve, at), gapUnit, unit) : NaN;
    return shown * Math.sign(setpoint) > 0 ? finiteOrNull(shown) : null;
  }
  if (detection === null || operatingGap === null) return null;
  const real = convert(convertDetection(setpoint, detection, 'p-p'), unit, gapUnit);
  const shown = indicatedOnCurve(
    curve,
    operatingGap,
    real,
    voltsPerGap(divisorOf(channel), sensitivityUnit, gapUnit),
  );
  return finiteOrNull(convertDetection(convert(shown, gapUnit, unit), 'p-p', detection) * (1 - uncertainty));
}
