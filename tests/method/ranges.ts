import fc from 'fast-check';

/** From 0 to a most in even steps: arbitrary doubles from 0 on are mostly next to nothing. */
export const upTo = (most: number) =>
  fc.integer({ min: 0, max: 1000 }).map((thousandths) => (most * thousandths) / 1000);

/** Inputs of the size that channels have, and beyond. */
export const setpoint = fc.double({ min: 0.01, max: 1000, noNaN: true });
export const sensitivity = fc.double({ min: 1, max: 1000, noNaN: true });
export const multiplier = fc.constantFrom(1, 2, 3);
export const uncertainty = upTo(0.9);
export const tolerance = upTo(0.5);
export const volts = fc.double({ min: -24, max: -1, noNaN: true });

/** No sensitivity, setpoint, speed or time. */
export const UGLY = [NaN, 0, -0, -1, -Infinity, Infinity];

export function relativeError(value: number, expected: number): number {
  return value === expected ? 0 : Math.abs(value - expected) / Math.abs(expected);
}
