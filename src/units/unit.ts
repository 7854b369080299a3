/** How the size of a vibration is counted: peak-to-peak, zero-to-peak, or root mean square. */
export type Detection = 'p-p' | '0-p' | 'rms';

/** What a sensor measures. */
export type Quantity = 'displacement' | 'velocity' | 'acceleration' | 'percent';

/** What a unit measures: a quantity, something electrical, a sensitivity (electrical per quantity) or a growth. */
export type Dimension =
  | Quantity
  | 'voltage'
  | 'current'
  | 'frequency'
  | 'time'
  | `${'voltage' | 'current'}/${Quantity}`
  | `${Quantity}/time`;

/**
 * A unit as read from text. `factor` takes a value in this unit to the base unit of its dimension:
 * displacement µm; velocity mm/s; acceleration m/s²; percent %; voltage V; current mA; frequency Hz; time s;
 * sensitivity mV (or mA) per base unit of its quantity; growth base unit of its quantity per day.
 */
export interface Unit {
  /** One canonical spelling, without the detection: `mil`, `mV/(mm/s)`, `mil/day`, `r/min`. */
  readonly text: string;
  readonly dimension: Dimension;
  readonly factor: number;
  /** Present where the text named one (`mil p-p`). */
  readonly detection?: Detection;
}

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
