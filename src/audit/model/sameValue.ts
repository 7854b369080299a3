import { convert } from '../../units/unit.ts';
import { convertDetection } from '../../units/detection.ts';
import { parseUnit, type Detection } from '../../units/parse.ts';
import type { Value } from './snapshot.ts';

/** Relative difference below which two numbers are the same: more than a change of unit there and back leaves. */
const slack = 1e-9;

/** Whether two values say the same, whatever unit or detection each is written in. */
export function isSame(before: Value | null, now: Value | null): boolean {
  if (before === null || now === null) return before === now;
  if ('word' in before || 'word' in now) {
    return 'word' in before && 'word' in now && before.word.toLowerCase() === now.word.toLowerCase();
  }
  const converted = inUnitOf(before, now);
  return converted !== null && isSameNumber(converted, now.amount);
}

/** Whether two numbers in one unit agree to nine digits. */
export function isSameNumber(one: number, other: number): boolean {
  return Math.abs(one - other) <= slack * Math.max(Math.abs(one), Math.abs(other));
}

/**
 * A number in the unit and detection of another; exact between detections for a sinusoid alone. `null` where the units
 * are of different quantities or not known, or only one of the two names a detection.
 */
export function inUnitOf(
  value: Extract<Value, { amount: number }>,
  other: Pick<Extract<Value, { amount: number }>, 'unit' | 'detection'>,
): number | null {
  const level = value.unit === other.unit ? value.amount : converted(value.amount, value.unit, other.unit);
  if (level === null || value.detection === other.detection) return level;
  if (!isDetection(value.detection) || !isDetection(other.detection)) return null;
  return convertDetection(level, value.detection, other.detection);
}

function converted(amount: number, from: string, to: string): number | null {
  const [own, wanted] = [parseUnit(from), parseUnit(to)];
  const level = own && wanted ? convert(amount, own, wanted) : NaN;
  return Number.isNaN(level) ? null : level;
}

function isDetection(text: string | null): text is Detection {
  return text === 'p-p' || text === '0-p' || text === 'rms';
}
