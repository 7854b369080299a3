import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bracketedRoot } from '../../../src/method/bracketedRoot.ts';
import { relativeError } from '../ranges.ts';

const DIGITS = 1e-15;

describe('a root between two ends', () => {
  it('of functions whose roots are known (√2; the fixed point of the cosine, from memory; ln 3)', () => {
    expect(
      relativeError(
        bracketedRoot((x) => x * x - 2, 0, 2),
        Math.SQRT2,
      ),
    ).toBeLessThan(DIGITS);
    expect(
      relativeError(
        bracketedRoot((x) => Math.cos(x) - x, 0, 1),
        0.7390851332151607,
      ),
    ).toBeLessThan(DIGITS);
    expect(
      relativeError(
        bracketedRoot((x) => 3 - Math.exp(x), 0, 700),
        Math.log(3),
      ),
    ).toBeLessThan(DIGITS);
    expect(Math.abs(bracketedRoot((x) => x ** 3, -1, 2))).toBeLessThan(1e-100);
  });

  it('at an end, or where the signs agree', () => {
    expect(bracketedRoot((x) => x - 1, 1, 2)).toBe(1);
    expect(bracketedRoot((x) => x - 2, 1, 2)).toBe(2);
    expect(bracketedRoot((x) => x * x + 1, -1, 1)).toBeNaN();
    expect(bracketedRoot(() => NaN, -1, 1)).toBeNaN();
  });

  it('ends and finds the change of sign whatever the function: steep, flat, or a jump', () => {
    const root = fc.double({ min: -50, max: 50, noNaN: true });
    const shape = fc.constantFrom<(x: number) => number>(
      (x) => x,
      (x) => x ** 5,
      (x) => Math.cbrt(x),
      (x) => Math.sign(x) || 1,
      (x) => Math.expm1(x),
      (x) => -Math.atan(1000 * x),
    );
    fc.assert(
      fc.property(root, shape, (wanted, f) => {
        let calls = 0;
        const found = bracketedRoot(
          (x) => {
            calls++;
            return f(x - wanted);
          },
          -60,
          60,
        );
        // A fifth power is 0, in doubles, about its root: x⁵ loses its sign below 1e-65.
        expect(Math.abs(found - wanted)).toBeLessThanOrEqual(1e-14 * Math.abs(wanted) + 1e-60);
        expect(calls).toBeLessThan(2500);
      }),
    );
  });
});
