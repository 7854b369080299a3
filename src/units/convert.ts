import type { Unit } from './unit.ts';

/**
 * A value in another unit of the same dimension; `NaN` where the dimensions differ. The same unit gives the value
 * back unchanged. The detection is not touched: see `convertDetection`. Factors: `unit.ts`.
 * Example: 200 mV/mil → 7.874… mV/µm.
 */
export function convert(value: number, from: Unit, to: Unit): number {
  if (from.dimension !== to.dimension) return NaN;
  // The ratio above 1 is the one that is a whole or short decimal number (25.4, 60), so it carries no rounding.
  return from.factor > to.factor ? value * (from.factor / to.factor) : value / (to.factor / from.factor);
}
