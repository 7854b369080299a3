import cdf from '@stdlib/stats-base-dists-normal-cdf';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  standardUncertainty,
  combineUncertainties,
  TWO_SIGMA,
  coverageFactor,
} from '../../src/method/uncertainty.ts';
import { relativeError } from './ranges.ts';

describe('JCGM 100:2008 G.4.1 (text read): 0.25, 0.57 and 0.82 % from 10, 5 and 15 observations', () => {
  const found = combineUncertainties([
    { standard: 0.25, freedom: 9 },
    { standard: 0.57, freedom: 4 },
    { standard: 0.82, freedom: 14 },
  ])!;

  it('1.03 %, 19 degrees of freedom, t 2.09, U 2.2 %', () => {
    expect(Math.abs(found.standard - 1.03)).toBeLessThan(0.005);
    expect(Math.abs(found.freedom - 19)).toBeLessThan(0.05);
    expect(Math.abs(coverageFactor(0.95, 19) - 2.09)).toBeLessThan(0.005);
    expect(Math.abs(coverageFactor(0.95, found.freedom) * found.standard - 2.2)).toBeLessThan(0.05);
    // By hand with 17 digits from eq. (G.2b).
    expect(relativeError(found.freedom, 18.998742314267954)).toBeLessThan(1e-14);
  });
});

/** JCGM 100:2008 annex H.1 (end gauge), from memory: parts in nm with their degrees of freedom. */
describe('JCGM 100:2008 H.1 (from memory)', () => {
  it('25, 9.7, 2.9 and 16.6 nm with 18, 25.6, 50 and 2: 32 nm, 16 degrees, t 2.92 at 99 %, U 93 nm', () => {
    const found = combineUncertainties([
      { standard: 25, freedom: 18 },
      { standard: 9.7, freedom: 25.6 },
      { standard: 2.9, freedom: 50 },
      { standard: 16.6, freedom: 2 },
    ])!;
    expect(Math.abs(found.standard - 32)).toBeLessThan(0.5);
    // The standard keeps the whole part of 16.7.
    expect(Math.floor(found.freedom)).toBe(16);
    expect(Math.abs(coverageFactor(0.99, 16) - 2.92)).toBeLessThan(0.005);
    expect(Math.abs(found.standard * coverageFactor(0.99, 16) - 93)).toBeLessThan(1);
  });
});

describe('coverage factors, JCGM 100:2008 table G.2 (text read)', () => {
  // One, two and three sigma exactly, as the table's note says of 68.27, 95.45 and 99.73 %.
  const levels = [0.682689492137086, 0.9, 0.95, 0.954499736103642, 0.99, 0.99730020393674];
  const rows: readonly (readonly [number, ...number[]])[] = [
    [1, 1.84, 6.31, 12.71, 13.97, 63.66, 235.8],
    [2, 1.32, 2.92, 4.3, 4.53, 9.92, 19.21],
    [3, 1.2, 2.35, 3.18, 3.31, 5.84, 9.22],
    [5, 1.11, 2.02, 2.57, 2.65, 4.03, 5.51],
    [10, 1.05, 1.81, 2.23, 2.28, 3.17, 3.96],
    [20, 1.03, 1.72, 2.09, 2.13, 2.85, 3.42],
    [50, 1.01, 1.68, 2.01, 2.05, 2.68, 3.16],
    [100, 1.005, 1.66, 1.984, 2.025, 2.626, 3.077],
  ];

  it.each(rows)('%i degrees of freedom', (freedom, ...expected) => {
    for (const [at, t] of expected.entries()) {
      const lastDigit = t > 100 ? 0.1 : freedom === 100 ? 0.001 : 0.01;
      expect(Math.abs(coverageFactor(levels[at]!, freedom) - t), String(levels[at])).toBeLessThan(
        0.51 * lastDigit,
      );
    }
  });

  it('t at 97.5 % and more with 4 and 34 degrees (worked out with 40 digits)', () => {
    expect(relativeError(coverageFactor(0.95, 9), 2.262157162798206)).toBeLessThan(1e-13);
    expect(relativeError(coverageFactor(0.95, 4), 2.776445105197794)).toBeLessThan(1e-13);
    expect(relativeError(coverageFactor(0.95, 34), 2.032244509317719)).toBeLessThan(1e-13);
    expect(relativeError(coverageFactor(0.99, 16), 2.9207816224251)).toBeLessThan(1e-12);
  });

  it('without end to the degrees of freedom are those of the normal distribution (stdlib’s)', () => {
    expect(coverageFactor(TWO_SIGMA, Infinity)).toBeCloseTo(2, 12);
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.999, noNaN: true }), (level) => {
        const k = coverageFactor(level, Infinity);
        expect(Math.abs(cdf(k, 0, 1) - cdf(-k, 0, 1) - level)).toBeLessThan(1e-14);
        expect(Math.abs(coverageFactor(level, 1e9) - k)).toBeLessThan(1e-6);
      }),
    );
  });

  it('fall as the degrees of freedom grow, whole or not', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 200, noNaN: true }),
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        (one, more) => {
          expect(coverageFactor(0.95, one)).toBeGreaterThan(coverageFactor(0.95, one + more));
        },
      ),
    );
  });

  it('are refused for levels of 0 and 1, and for no degree of freedom', () => {
    for (const level of [0, 1, -0.1, 1.1, NaN]) expect(coverageFactor(level, 9)).toBeNaN();
    for (const freedom of [0, -1, NaN]) expect(coverageFactor(0.95, freedom)).toBeNaN();
  });
});

describe('standard uncertainties of parts (JCGM 100:2008 4.3.3, 4.3.7, 4.3.9)', () => {
  it('are the half-width over √3 of a rectangle, over √6 of a triangle, the expanded over 2', () => {
    expect(standardUncertainty(0.5, 'rectangular')).toBeCloseTo(0.5 / 1.7320508075688772, 15);
    expect(standardUncertainty(0.5, 'triangular')).toBeCloseTo(0.5 / 2.449489742783178, 15);
    expect(standardUncertainty(0.5, 'normal')).toBe(0.25);
    expect(standardUncertainty(0.5, 'standard')).toBe(0.5);
    expect(standardUncertainty(-0.1, 'normal')).toBeNaN();
    expect(standardUncertainty(Infinity, 'normal')).toBeNaN();
  });

  it('have the spread of their distribution (the variance as an integral, by the midpoint rule)', () => {
    const spread = (density: (x: number) => number) => {
      let [mass, square] = [0, 0];
      for (let x = -0.9995; x < 1; x += 0.001) {
        mass += density(x);
        square += x * x * density(x);
      }
      return Math.sqrt(square / mass);
    };
    expect(Math.abs(standardUncertainty(1, 'rectangular') - spread(() => 1))).toBeLessThan(1e-6);
    expect(Math.abs(standardUncertainty(1, 'triangular') - spread((x) => 1 - Math.abs(x)))).toBeLessThan(
      1e-6,
    );
  });
});

describe('a budget', () => {
  it('of nothing, or of parts out of range, is none', () => {
    expect(combineUncertainties([])).toBeUndefined();
    expect(combineUncertainties([{ standard: 0, freedom: 9 }])).toBeUndefined();
    const sound = { standard: 0.3, freedom: 9 };
    expect(combineUncertainties([sound, { standard: -1, freedom: 9 }])).toBeUndefined();
    expect(combineUncertainties([{ standard: 1, freedom: NaN }, sound])).toBeUndefined();
    // A part of no spread takes nothing from the other's freedom.
    const alone = combineUncertainties([sound, { standard: 0, freedom: 2 }])!;
    expect([alone.standard, alone.freedom]).toEqual([0.3, 9]);
    expect(standardUncertainty(0, 'rectangular')).toBe(0);
    for (const standard of [-1, NaN, Infinity])
      expect(combineUncertainties([{ standard, freedom: 9 }])).toBeUndefined();
    for (const freedom of [0, -1, NaN])
      expect(combineUncertainties([{ standard: 1, freedom }])).toBeUndefined();
  });

  it('has at least the freedom of its least free part and at most the sum of all (JCGM 100:2008 G.4.1, note)', () => {
    const part = fc.record({
      standard: fc.double({ min: 0.01, max: 10, noNaN: true }),
      freedom: fc.double({ min: 1, max: 100, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 8 }), (parts) => {
        const { freedom } = combineUncertainties(parts)!;
        const each = parts.map((one) => one.freedom);
        expect(freedom).toBeGreaterThanOrEqual(Math.min(...each) * (1 - 1e-12));
        expect(freedom).toBeLessThanOrEqual(each.reduce((sum, one) => sum + one, 0) * (1 + 1e-12));
      }),
    );
  });

  it('whose parts are all known has no limit to its freedom', () => {
    expect(
      combineUncertainties([
        { standard: 3, freedom: Infinity },
        { standard: 4, freedom: Infinity },
      ]),
    ).toEqual({
      standard: 5,
      freedom: Infinity,
    });
  });
});
