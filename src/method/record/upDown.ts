import { type CalibrationRecord, calibrationRecord, isFault } from './calibrationRecord.ts';
import { type GapReading, type Run, type RunFault, isRunFault, runsOf } from './runs.ts';
import { straightLine } from './straightLine.ts';

/** Largest deviations of a record from a straight line, in V. */
interface Nonlinearity {
  /** From the line through its ends. */
  readonly terminal: number;
  /** From the line that makes it least. */
  readonly independent: number;
}

type Point = readonly [gap: number, volt: number];

/** An amount in V, as a fraction of the output span, and as displacement in the unit of the gaps. */
interface Spread {
  readonly volts: number;
  readonly ofSpan: number;
  readonly displacement: number;
}

/** What a record that was read up and down says. */
export interface UpDown {
  /** Mean of the means of both directions, at the gaps that were read both ways. */
  readonly mean: CalibrationRecord;
  /** Volts between the ends of the mean curve. */
  readonly span: number;
  /** Average sensitivity of the mean curve, V per gap unit, above 0. */
  readonly sensitivity: number;
  readonly hysteresis: Spread;
  /** `undefined` with one cycle alone. */
  readonly repeatability: Spread | undefined;
  readonly terminal: Spread;
  readonly independent: Spread;
  /** Gaps that were read one way only, in order; they stay out. */
  readonly oneWay: readonly number[];
}

/** Why readings are no record of both directions. */
export type UpDownFault = RunFault | 'one direction' | 'too few gaps' | 'does not fall';

/**
 * Hysteresis, repeatability, mean curve and nonlinearity of a record read up and down, in the order in which it was
 * taken; gaps in one unit, volts with their sign, both finite. A cycle is a run and the one that follows it. Hysteresis:
 * largest difference of both directions of one cycle at one gap; repeatability: largest spread of one direction at one
 * gap over two or more cycles. At least three gaps read both ways. Source: 43 CFR 3175.135(a) (read); nonlinearity from
 * memory of ISA-51.1. Example: −10 V up and −10.12 V down at 50 mil, 15.98 V of span → 0.12 V, 0.75 %.
 */
export function upDown(readings: readonly GapReading[]): UpDown | UpDownFault {
  const runs = runsOf(readings);
  if (isRunFault(runs)) return runs;
  if (runs.length < 2) return 'one direction';
  const [up, down] = [byGap(runs.filter((run) => run.up)), byGap(runs.filter((run) => !run.up))];
  const both = [...up.keys()].filter((gap) => down.has(gap)).sort((one, other) => one - other);
  const mean = calibrationRecord(
    both,
    both.map((gap) => (meanOf(up.get(gap)) + meanOf(down.get(gap))) / 2),
    3,
  );
  if (isFault(mean)) return 'too few gaps';
  const slope = straightLine(mean.gaps, mean.volts)?.slope ?? NaN;
  const span = Math.abs((mean.volts.at(-1) ?? NaN) - (mean.volts[0] ?? NaN));
  if (!(slope < 0) || !(span > 0)) return 'does not fall';

  const spread = (volts: number): Spread => ({ volts, ofSpan: volts / span, displacement: volts / -slope });
  const { terminal, independent } = nonlinearity(mean);
  const spreads = [...up, ...down]
    .filter(([gap, volts]) => both.includes(gap) && volts.length > 1)
    .map(([, volts]) => rangeOf(volts));
  return {
    mean,
    span,
    sensitivity: -slope,
    hysteresis: spread(hysteresisOf(runs)),
    repeatability: spreads.length > 0 ? spread(Math.max(...spreads)) : undefined,
    terminal: spread(terminal),
    independent: spread(independent),
    oneWay: [...new Set([...up.keys(), ...down.keys()])]
      .filter((gap) => !both.includes(gap))
      .sort((one, other) => one - other),
  };
}

/** Whether readings are no record of both directions. */
export function isUpDownFault(found: UpDown | UpDownFault): found is UpDownFault {
  return typeof found === 'string' || 'repeated' in found;
}

function byGap(runs: readonly Run[]): Map<number, number[]> {
  const volts = new Map<number, number[]>();
  for (const { readings } of runs)
    for (const one of readings) volts.set(one.gap, [...(volts.get(one.gap) ?? []), one.volts]);
  return volts;
}

function meanOf(volts: readonly number[] = []): number {
  return volts.reduce((sum, one) => sum + one, 0) / volts.length;
}

function rangeOf(volts: readonly number[]): number {
  return Math.max(...volts) - Math.min(...volts);
}

/** Over the cycles, each a run and the next one. */
function hysteresisOf(runs: readonly Run[]): number {
  let most = 0;
  for (let at = 0; at + 1 < runs.length; at += 2) {
    const back = byGap(runs.slice(at + 1, at + 2));
    for (const { gap, volts } of runs[at]?.readings ?? [])
      for (const other of back.get(gap) ?? []) most = Math.max(most, Math.abs(volts - other));
  }
  return most;
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

/** Above 0 where the way from a over b to c turns upwards. */
function turn([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number {
  return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
}
