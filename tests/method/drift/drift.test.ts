import fc from 'fast-check';
import { sampleCorrelation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { reachesLevelSpan, reachesLevel, driftPerYear, driftCorrelation } from '../../../src/method/drift.ts';
import { lineUncertainty, straightLine, type StraightLine } from '../../../src/method/record/straightLine.ts';
import { coverageFactor } from '../../../src/method/uncertainty.ts';
import { relativeError } from '../ranges.ts';
import { NORRIS } from '../record/published.ts';

/** Reaction chamber of F. A. Graybill and H. K. Iyer, Regression Analysis (1994), p. 433; second-hand, from the tests of investr. */
const DIAL = [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100];
const CHAMBER = [206.36, 225.52, 252.18, 289.33, 318.11, 349.49, 383.03, 410.7, 444.4, 469.14, 501.16];

const lineOf = (x: readonly number[], y: readonly number[]): StraightLine => {
  const line = straightLine(x, y);
  if (!line) throw new Error('no line');
  return line;
};

describe('where a line reaches a level', () => {
  it('the reaction chamber reaches 400 °F at 66.5 on the dial, between 65.07 and 68.03 at 99 %', () => {
    const line = lineOf(DIAL, CHAMBER);
    expect(reachesLevel(line, 400).toFixed(1)).toBe('66.5');
    const { from, to } = reachesLevelSpan(line, 400, coverageFactor(0.99, 9));
    expect([from.toFixed(2), to.toFixed(2)]).toEqual(['65.07', '68.03']);
  });

  // By hand: y = 200, 198, 197, 195 at x = 0, 1, 2, 3: mean 197.5, spread of x 5, slope (−1.5·200 − 0.5·198 + 0.5·197 +
  // 1.5·195)/5 = −8/5; residuals 0.1, −0.3, 0.3, −0.1: squares 0.2, residual deviation √0.1.
  it('four readings worked out by hand', () => {
    const line = lineOf([0, 1, 2, 3], [200, 198, 197, 195]);
    expect(line.slope).toBeCloseTo(-1.6, 12);
    expect(line.residualDeviation).toBeCloseTo(Math.sqrt(0.1), 12);
    expect(line.slopeUncertainty).toBeCloseTo(Math.sqrt(0.02), 12);
    expect(driftCorrelation(line)).toBeCloseTo(-1.6 * Math.sqrt(5 / 13), 12);
    // 190 = 197.5 − 1.6·(x − 1.5): x = 1.5 + 7.5/1.6.
    expect(reachesLevel(line, 190)).toBeCloseTo(6.1875, 12);
    // Factor 2: (1.6·d − 7.5)² = 0.4·(1/4 + d²/5): 2.48·d² − 24·d + 56.15 = 0, d = (24 ± √(576 − 557.008))/4.96.
    const { from, to } = reachesLevelSpan(line, 190, 2);
    expect(from).toBeCloseTo(1.5 + (24 - Math.sqrt(18.992)) / 4.96, 10);
    expect(to).toBeCloseTo(1.5 + (24 + Math.sqrt(18.992)) / 4.96, 10);
  });

  it('open where the slope can not be told from 0', () => {
    // By hand: mean 200.25, slope (−300 − 101 + 99 + 301.5)/5 = −0.1, scatter large: the lower edge meets 180 some day, the
    // upper never.
    const line = lineOf([0, 1, 2, 3], [200, 202, 198, 201]);
    const { from, to } = reachesLevelSpan(line, 180, 4);
    expect(from).toBeGreaterThan(3);
    expect(to).toBe(Infinity);
    // 200 lies inside the band already at the mean.
    expect(reachesLevelSpan(line, 200, 4)).toEqual({ from: -Infinity, to: Infinity });
  });

  /** A line through 0 at the mean x = 0 of four readings, whose squares of x about it sum to 4. */
  const through = (slope: number, scatter: number): StraightLine => ({
    ...lineOf([-1, 0, 0, 1], [-1, 0, 0, 1]),
    slope,
    intercept: 0,
    meanX: 0,
    spreadX: 4,
    count: 4,
    residualDeviation: scatter,
  });

  // With factor 2 and scatter 1 the band is line ± √(4/4 + 4·d²/4) = line ± √(1 + d²).
  it('as wide as the slope is steep, the band meets a level once (by hand: d − 10 = ±√(1 + d²), d = 99/20)', () => {
    expect(reachesLevelSpan(through(1, 1), 10, 2)).toEqual({ from: 4.95, to: Infinity });
    expect(reachesLevelSpan(through(-1, 1), -10, 2)).toEqual({ from: 4.95, to: Infinity });
    // All of the band lies beyond −10 at the mean: it has by −4.95.
    expect(reachesLevelSpan(through(1, 1), -10, 2)).toEqual({ from: -Infinity, to: -4.95 });
    expect(reachesLevelSpan(through(1, 1), 0.9, 2)).toEqual({ from: -Infinity, to: Infinity });
  });

  it('an edge that meets the level at the mean itself (by hand: 2·d ∓ 1 = ±√(1 + d²), d = 0 and ±4/3)', () => {
    const rising = reachesLevelSpan(through(2, 1), 1, 2);
    expect(rising.from).toBe(0);
    expect(rising.to).toBeCloseTo(4 / 3, 14);
    const before = reachesLevelSpan(through(2, 1), -1, 2);
    expect(before.from).toBeCloseTo(-4 / 3, 14);
    expect(before.to).toBeCloseTo(0, 14);
    // Without scatter there is no band: y = x is 1 at 1.
    expect(reachesLevelSpan(lineOf([0, 1, 2], [0, 1, 2]), 1, 2)).toEqual({ from: 1, to: 1 });
  });

  it('never where the line is level, and no number where it is none', () => {
    const level = lineOf([0, 1, 2], [5, 5, 5]);
    expect(reachesLevel(level, 6)).toBe(Infinity);
    expect(reachesLevel(level, 4)).toBe(Infinity);
    expect(reachesLevel(level, 5)).toBeNaN();
    expect(reachesLevel(level, NaN)).toBeNaN();
    expect(reachesLevelSpan(level, 6, 2)).toEqual({ from: NaN, to: NaN });
    expect(driftCorrelation(level)).toBeNaN();
    expect(reachesLevelSpan(lineOf([0, 1], [5, 6]), 7, 2)).toEqual({ from: NaN, to: NaN });
  });

  it('a year has 365.25 days', () => {
    expect(driftPerYear(0.01)).toBeCloseTo(3.6525, 12);
  });
});

describe('correlation', () => {
  it('of the Norris data is that of simple-statistics', () => {
    const { x, y } = NORRIS;
    const wanted = sampleCorrelation([...x], [...y]);
    expect(relativeError(driftCorrelation(lineOf(x, y)), wanted)).toBeLessThan(1e-12);
  });
});

const readings = fc
  .uniqueArray(fc.integer({ min: 0, max: 3000 }), { minLength: 3, maxLength: 12 })
  .chain((days) =>
    fc.record({
      days: fc.constant(days),
      values: fc.array(fc.integer({ min: 150_000, max: 250_000 }), {
        minLength: days.length,
        maxLength: days.length,
      }),
    }),
  )
  .map(({ days, values }) => ({ days, values: values.map((value) => value / 1000) }));
const levels = fc.double({ min: 120, max: 280, noNaN: true });
const factors = fc.double({ min: 0, max: 15, noNaN: true });

describe('for any readings', () => {
  it('the edges of the band meet the level where the span says', () => {
    fc.assert(
      fc.property(readings, levels, factors, ({ days, values }, level, factor) => {
        const line = lineOf(days, values);
        fc.pre(Math.abs(line.slope) > 1e-6);
        const { from, to } = reachesLevelSpan(line, level, factor);
        const side = Math.sign(line.slope);
        const edge = (x: number, lead: 1 | -1) =>
          side * (line.intercept + line.slope * x - level) + lead * factor * lineUncertainty(line, x);
        const scale = (x: number) =>
          1e-6 * (1 + Math.abs(line.slope * x) + factor * lineUncertainty(line, x) + 300);
        if (Number.isFinite(from)) expect(Math.abs(edge(from, 1))).toBeLessThan(scale(from));
        if (Number.isFinite(to)) expect(Math.abs(edge(to, -1))).toBeLessThan(scale(to));
        const at = reachesLevel(line, level);
        expect(from).toBeLessThanOrEqual(at + 1e-6 * Math.abs(at));
        if (Number.isFinite(from)) expect(to).toBeGreaterThanOrEqual(at - 1e-6 * Math.abs(at));
      }),
    );
  });

  it('the order of the readings and the units do not matter', () => {
    fc.assert(
      fc.property(readings, levels, factors, ({ days, values }, level, factor) => {
        const line = lineOf(days, values);
        fc.pre(Math.abs(line.slope) > 1e-4);
        const same = (other: StraightLine, at: number) => {
          const [one, two] = [reachesLevelSpan(line, level, factor), reachesLevelSpan(other, at, factor)];
          for (const end of ['from', 'to'] as const) {
            if (!Number.isFinite(one[end])) expect(two[end]).toBe(one[end]);
            else if (Math.abs(one[end]) < 1e7)
              expect(Math.abs(two[end] - one[end])).toBeLessThan(1e-4 * (1 + Math.abs(one[end])));
          }
          expect(driftCorrelation(other)).toBeCloseTo(driftCorrelation(line), 9);
        };
        same(lineOf(days.toReversed(), values.toReversed()), level);
        same(
          lineOf(
            days,
            values.map((value) => value / 25.4),
          ),
          level / 25.4,
        );
      }),
    );
  });
});
