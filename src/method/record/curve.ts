/** Volts over gap between the first and last gap of a record; never beyond. */
export interface Curve {
  /** Smallest and largest gap measured. */
  readonly from: number;
  readonly to: number;
  /** V at a gap; `NaN` outside the measured gaps. */
  readonly voltsAt: (gap: number) => number;
  /** Gap at a voltage; `NaN` outside the measured voltages. */
  readonly gapAt: (volts: number) => number;
}

export const methods = ['monotone', 'linear'] as const;
export type CurveMethod = (typeof methods)[number];

/** The segment, from 0, of rising `knots` in which a value lies; −1 outside, `NaN` included. */
export function segmentOf(knots: readonly number[], value: number): number {
  const last = knots.length - 1;
  if (!(value >= (knots[0] ?? NaN) && value <= (knots[last] ?? NaN))) return -1;
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (value >= (knots[middle] ?? NaN)) low = middle;
    else high = middle;
  }
  return low;
}
