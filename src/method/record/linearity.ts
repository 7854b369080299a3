import type { CalibrationRecord } from './calibrationRecord.ts';

/** Largest deviations of a record from a straight line, in V. */
export interface Nonlinearity {
  /** From the line through its ends. */
  readonly terminal: number;
  /** From the line that makes it least. */
  readonly independent: number;
}

/**
 * Largest deviation of a record from the line through its ends, and from the line that makes it least, in V. The best
 * line runs along an edge of the record's hull, so each edge is tried. Source: definitions of terminal and independent
 * nonlinearity (wording from memory); Chebyshev's alternation. Example: 10, 50, 90 mil at −2, −10, −14 V → 2 and 1 V.
 */
export function nonlinearity(record: CalibrationRecord): Nonlinearity {
  const { gaps, volts } = record;
  const [g0 = NaN, v0 = NaN] = [gaps[0], volts[0]];
  const slope = ((volts.at(-1) ?? NaN) - v0) / ((gaps.at(-1) ?? NaN) - g0);
  const terminal = volts.map((volt, at) => Math.abs(volt - v0 - slope * ((gaps[at] ?? NaN) - g0)));
  const slopes = [...hullSlopes(record, 1), ...hullSlopes(record, -1)];
  return {
    terminal: largest(terminal),
    independent: slopes.reduce((least, one) => Math.min(least, spread(record, one)), Infinity) / 2,
  };
}

/** Width of the band of a slope that holds all points, in V. */
function spread({ gaps, volts }: CalibrationRecord, slope: number): number {
  const [g0 = NaN, v0 = NaN] = [gaps[0], volts[0]];
  const off = volts.map((volt, at) => volt - v0 - slope * ((gaps[at] ?? NaN) - g0));
  return largest(off) + largest(off.map((one) => -one));
}

function largest(values: readonly number[]): number {
  return values.reduce((most, one) => Math.max(most, one), -Infinity);
}

/** Slopes of the edges of the record's upper (1) or lower (−1) hull. */
function hullSlopes({ gaps, volts }: CalibrationRecord, side: 1 | -1): number[] {
  const hull: (readonly [gap: number, volt: number])[] = [];
  for (const [at, gap] of gaps.entries()) {
    const point = [gap, volts[at] ?? NaN] as const;
    for (;;) {
      const [one, two] = [hull.at(-2), hull.at(-1)];
      if (!one || !two || side * turn(one, two, point) < 0) break;
      hull.pop();
    }
    hull.push(point);
  }
  return hull
    .slice(1)
    .map(([gap, volt], at) => (volt - (hull[at]?.[1] ?? NaN)) / (gap - (hull[at]?.[0] ?? NaN)));
}

type Point = readonly [gap: number, volt: number];

/** Above 0 where the way from a over b to c turns upwards. */
function turn([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number {
  return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
}
