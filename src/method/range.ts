/** Whether a number is finite and above zero: a sensitivity, a setpoint, a speed. `NaN` is not. */
export function positive(value: number): boolean {
  return value > 0 && value < Infinity;
}

/** Whether a fraction lies in [0, 1): an expanded uncertainty or a tolerance that still says something. */
export function fraction(value: number): boolean {
  return value >= 0 && value < 1;
}

/** A span of values, `low` ≤ `high`; both `NaN` where an input is out of range. */
export interface Band {
  readonly low: number;
  readonly high: number;
}

export const NO_BAND: Band = { low: NaN, high: NaN };
