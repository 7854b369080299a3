import type { ThresholdResult } from '../../model/threshold.ts';
import { axialOnCurve } from '../../../method/record/axialOnCurve.ts';
import type { Curve } from '../../../method/record/curve.ts';
import { thresholdOnCurve } from '../../../method/record/thresholdOnCurve.ts';
import { convert } from '../../../units/convert.ts';
import { convertDetection } from '../../../units/detection.ts';
import type { Unit } from '../../../units/unit.ts';
import type { Channel } from '../../model/channel.ts';
import type { RecordThreshold } from '../../model/report.ts';
import { voltsPerGap } from './evaluateRecord.ts';

/** Where the thresholds of a channel act on its record's curve, one for each that has a setpoint. */
export function curveThresholds(
  channel: Channel,
  thresholds: readonly ThresholdResult[],
  curve: Curve,
  gapUnit: Unit,
  operatingGap: number | null,
): RecordThreshold[] {
  const act = channel.kind === 'axial' ? axial : operatingGap === null ? undefined : radial;
  if (!act) return [];
  return thresholds.flatMap((threshold): RecordThreshold[] => {
    const { name, multiplier, setpoint } = threshold;
    if (setpoint === null) return [];
    const found = act(channel, setpoint, multiplier, curve, gapUnit, operatingGap ?? NaN);
    return found ? [{ name, multiplier, ...found }] : [];
  });
}

type Acts = Pick<RecordThreshold, 'onCurve' | 'largestIndicated'>;

function radial(
  { unit, detection, configured, sensitivityUnit }: Channel,
  setpoint: number,
  multiplier: number,
  curve: Curve,
  gapUnit: Unit,
  operatingGap: number,
): Acts | undefined {
  if (detection === null) return undefined;
  const found = thresholdOnCurve(
    curve,
    operatingGap,
    convert(convertDetection(setpoint, detection, 'p-p'), unit, gapUnit),
    voltsPerGap(configured, sensitivityUnit, gapUnit),
    multiplier,
  );
  if (!found) return undefined;
  const shown = (swing: number): number => convertDetection(convert(swing, gapUnit, unit), 'p-p', detection);
  return 'acts' in found
    ? { onCurve: shown(found.acts), largestIndicated: null }
    : { onCurve: null, largestIndicated: shown(found.largestIndicated) };
}

/**
 * Positions carry their sign; the largest indication is the one at the end of the record on the setpoint's side, `null`
 * where the record does not reach the mechanical zero, from which positions are counted.
 */
function axial(
  { unit, configured, sensitivityUnit, zeroConfigured, zeroMeasured, direction }: Channel,
  setpoint: number,
  multiplier: number,
  curve: Curve,
  gapUnit: Unit,
): Acts | undefined {
  if (zeroConfigured === null || zeroMeasured === null || direction === null) return undefined;
  const sign = direction === 'toward' ? 1 : -1;
  const perGap = voltsPerGap(configured, sensitivityUnit, gapUnit);
  const wanted = convert(multiplier * setpoint, unit, gapUnit);
  const position = axialOnCurve(curve, {
    setpoint: wanted,
    configured: perGap,
    zeroConfigured,
    zeroMeasured,
    sign,
  });
  if (Number.isFinite(position)) return { onCurve: convert(position, gapUnit, unit), largestIndicated: null };
  if (Number.isNaN(curve.gapAt(zeroMeasured))) return { onCurve: null, largestIndicated: null };
  const end = sign * Math.sign(wanted) > 0 ? curve.from : curve.to;
  const indicated = (sign * (curve.voltsAt(end) - zeroConfigured)) / perGap;
  return { onCurve: null, largestIndicated: convert(indicated, gapUnit, unit) };
}
