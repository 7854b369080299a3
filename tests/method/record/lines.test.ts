import fc from 'fast-check';
import { linearRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { lineUncertainty, straightLine } from '../../../src/method/record/straightLine.ts';
import { weightedLine } from '../../../src/method/record/weightedLine.ts';
import { relativeError } from '../ranges.ts';
import { NORRIS, THERMOMETER } from './published.ts';

describe('least squares, NIST StRD Norris (certified to 15 digits, read)', () => {
  it('has at least 12 digits of every certified value', () => {
    const line = straightLine(NORRIS.x, NORRIS.y)!;
    expect(relativeError(line.intercept, NORRIS.intercept)).toBeLessThan(1e-12);
    expect(relativeError(line.slope, NORRIS.slope)).toBeLessThan(1e-12);
    expect(relativeError(line.interceptUncertainty, NORRIS.interceptDeviation)).toBeLessThan(1e-12);
    expect(relativeError(line.slopeUncertainty, NORRIS.slopeDeviation)).toBeLessThan(1e-12);
    expect(relativeError(line.residualDeviation, NORRIS.residualDeviation)).toBeLessThan(1e-12);
    expect(line.count).toBe(36);
  });
});

describe('least squares, JCGM 100:2008 annex H.3 (text read)', () => {
  const { t, b, t0 } = THERMOMETER;
  const line = straightLine(
    t.map((one) => one - t0),
    b,
  )!;

  it('the fit, eq. (H.13a) to (H.13g)', () => {
    expect(Math.abs(line.intercept - -0.1712)).toBeLessThan(5e-5);
    expect(Math.abs(line.interceptUncertainty - 0.0029)).toBeLessThan(5e-5);
    expect(Math.abs(line.slope - 0.00218)).toBeLessThan(5e-6);
    expect(Math.abs(line.slopeUncertainty - 0.00067)).toBeLessThan(5e-6);
    expect(Math.abs(line.correlation - -0.93)).toBeLessThan(5e-4);
    expect(Math.abs(line.residualDeviation - 0.0035)).toBeLessThan(5e-5);
  });

  it('what it predicts, table H.6', () => {
    const predicted = [
      -0.1679, -0.1668, -0.1657, -0.1646, -0.1635, -0.1625, -0.1614, -0.1603, -0.1592, -0.1581, -0.157,
    ];
    for (const [at, one] of t.entries()) {
      expect(Math.abs(line.intercept + line.slope * (one - t0) - predicted[at]!)).toBeLessThan(6e-5);
    }
  });

  it('at 30 °C, eq. (H.15): −0.1494 with u 0.0041, and 0.0054 for one reading (worked out with 40 digits)', () => {
    expect(Math.abs(line.intercept + 10 * line.slope - -0.1494)).toBeLessThan(5e-5);
    expect(Math.abs(lineUncertainty(line, 10) - 0.0041)).toBeLessThan(5e-5);
    expect(relativeError(lineUncertainty(line, 10), 0.00413859575285495)).toBeLessThan(1e-12);
    expect(relativeError(lineUncertainty(line, 10, true), 0.00541857255044)).toBeLessThan(1e-10);
  });

  it('about the mean, H.3.5: no correlation, and the same at 30 °C', () => {
    const mean = 24.0084545454545;
    const centred = straightLine(
      t.map((one) => one - mean),
      b,
    )!;
    expect(Math.abs(centred.intercept - -0.1625)).toBeLessThan(5e-5);
    expect(Math.abs(centred.interceptUncertainty - 0.0011)).toBeLessThan(5e-5);
    expect(Math.abs(centred.correlation)).toBeLessThan(1e-12);
    expect(relativeError(lineUncertainty(centred, 30 - mean), lineUncertainty(line, 10))).toBeLessThan(1e-12);
  });
});

describe('weighted least squares, ISO/TS 28037:2010 6.3 (published values, from a transcription)', () => {
  const x = [1, 2, 3, 4, 5, 6];
  const y = [3.3, 5.6, 7.1, 9.3, 10.7, 12.1];

  it('equal weights', () => {
    const line = weightedLine(x, y, [0.5, 0.5, 0.5, 0.5, 0.5, 0.5])!;
    expect(Math.abs(line.intercept - 1.867)).toBeLessThan(6e-4);
    expect(Math.abs(line.interceptUncertainty - 0.465)).toBeLessThan(6e-4);
    expect(Math.abs(line.slope - 1.757)).toBeLessThan(6e-4);
    expect(Math.abs(line.slopeUncertainty - 0.12)).toBeLessThan(6e-4);
    expect(Math.abs(line.covariance - -0.05)).toBeLessThan(6e-4);
    expect(Math.abs(line.chiSquared - 1.665)).toBeLessThan(6e-4);
  });

  it('a point of half the uncertainty counts as four (by the normal equations)', () => {
    const once = weightedLine(x, y, [1, 1, 0.5, 1, 1, 1])!;
    const four = straightLine([...x, 3, 3, 3], [...y, 7.1, 7.1, 7.1])!;
    expect(relativeError(once.slope, four.slope)).toBeLessThan(1e-13);
    expect(relativeError(once.intercept, four.intercept)).toBeLessThan(1e-13);
  });

  it('two points make a line', () => {
    expect(weightedLine([1, 2], [3, 5], [1, 1])).toMatchObject({ slope: 2, intercept: 1, count: 2 });
  });

  it('refuses uncertainties of 0 and below, lists of unequal length and a single x', () => {
    for (const bad of [0, -1, NaN, Infinity]) expect(weightedLine([1, 2], [3, 4], [1, bad])).toBeUndefined();
    expect(weightedLine([1, 2, 3], [3, 4, 5], [1, 1, Infinity])).toBeUndefined();
    expect(weightedLine([1, 2], [3, 4], [1])).toBeUndefined();
    expect(weightedLine([1, 2], [3, 4, 9], [1, 1])).toBeUndefined();
    expect(weightedLine([1, 2], [3, NaN], [1, 1])).toBeUndefined();
    expect(weightedLine([1, 1], [3, 4], [1, 1])).toBeUndefined();
  });
});

describe('least squares on random points', () => {
  const points = fc.array(
    fc.tuple(fc.double({ min: 0, max: 2000, noNaN: true }), fc.double({ min: -24, max: 0, noNaN: true })),
    {
      minLength: 3,
      maxLength: 40,
    },
  );

  it('agrees with simple-statistics, a second working', () => {
    fc.assert(
      fc.property(points, (pairs) => {
        const x = pairs.map(([one]) => one);
        const spread = Math.max(...x) - Math.min(...x);
        fc.pre(spread > 1);
        const line = straightLine(
          x,
          pairs.map(([, one]) => one),
        )!;
        const { m, b } = linearRegression(pairs);
        // That library sums plain squares, which costs it digits where the points lie far from 0.
        expect(Math.abs(line.slope - m)).toBeLessThan(1e-7);
        expect(Math.abs(line.intercept - b)).toBeLessThan(1e-4);
      }),
    );
  });

  it('with one weight throughout, is the weighted line', () => {
    fc.assert(
      fc.property(points, (pairs) => {
        const [x, y] = [pairs.map(([one]) => one), pairs.map(([, one]) => one)];
        fc.pre(Math.max(...x) - Math.min(...x) > 1);
        const plain = straightLine(x, y)!;
        const weighted = weightedLine(
          x,
          y,
          x.map(() => plain.residualDeviation),
        )!;
        fc.pre(plain.residualDeviation > 1e-9);
        expect(Math.abs(plain.slope - weighted.slope)).toBeLessThan(1e-9);
        expect(relativeError(weighted.slopeUncertainty, plain.slopeUncertainty)).toBeLessThan(1e-9);
        expect(relativeError(weighted.chiSquared, x.length - 2)).toBeLessThan(1e-9);
      }),
    );
  });

  it('of two points gives the line, and no uncertainty; of one, or of one x, nothing', () => {
    expect(straightLine([10, 20], [-2, -4])).toMatchObject({
      slope: -0.2,
      intercept: 0,
      slopeUncertainty: NaN,
    });
    fc.assert(
      fc.property(points, ([one, other]) => {
        fc.pre(Math.abs(one![0] - other![0]) > 1);
        const line = straightLine([one![0], other![0]], [one![1], other![1]])!;
        expect([line.residualDeviation, line.slopeUncertainty]).toEqual([NaN, NaN]);
      }),
    );
    expect(straightLine([10], [-2])).toBeUndefined();
    expect(straightLine([10, 10, 10], [-2, -3, -4])).toBeUndefined();
    expect(straightLine([10, NaN, 30], [-2, -3, -4])).toBeUndefined();
    expect(straightLine([10, 20], [-2])).toBeUndefined();
    expect(straightLine([10, 20], [-2, -4, -6])).toBeUndefined();
  });
});
