import type { ShownRecord } from './shown.ts';

export const pointVerdicts = ['within', 'step out', 'deviation out', 'both out'] as const;
export type PointVerdict = (typeof pointVerdicts)[number];

/** Slack for floating-point noise, as in the method's linear range. */
const slack = 1 + 1e-9;

/**
 * Whether the step that leads to a point, in mV per gap unit, and the point's deviation from the line of rated slope,
 * in gap units, are within tolerance. `NaN`, a first point without a step, counts as within.
 */
export function pointVerdict(
  { rated, tolerance, deviation }: Pick<ShownRecord, 'rated' | 'tolerance' | 'deviation'>,
  step: number,
  off: number,
): PointVerdict {
  const stepOut = Math.abs(step - (rated ?? NaN)) > tolerance * (rated ?? NaN) * slack;
  const pointOut = Math.abs(off) > deviation * slack;
  if (stepOut) return pointOut ? 'both out' : 'step out';
  return pointOut ? 'deviation out' : 'within';
}
