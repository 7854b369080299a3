import normalReference from '@stdlib/stats-base-dists-normal-cdf';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { band } from '../../src/method/decision/band.ts';
import { normalCdf } from '../../src/method/decision/normal.ts';
import { probabilityLater, probabilityLaterOf } from '../../src/method/decision/probabilityLater.ts';
import { decide, decideOnThreshold, acceptanceBand } from '../../src/method/decision/verdict.ts';
import { effectiveThreshold, shift } from '../../src/method/vibration/threshold.ts';
import { UGLY, multiplier, relativeError, sensitivity, setpoint, tolerance, uncertainty } from './ranges.ts';

describe('Φ', () => {
  it('is that of an independent library (@stdlib normal CDF, by its own erfc) over the whole range', () => {
    let compared = 0;
    for (let z = -37; z <= 9; z += 0.0317) {
      // The reference rounds z/√2 before it squares it, which costs it z²·2⁻⁵³ in the tail.
      const referenceError = 1e-15 + z * z * 2.3e-16;
      expect(relativeError(normalCdf(z), normalReference(z, 0, 1))).toBeLessThan(referenceError);
      compared++;
    }
    expect(compared).toBeGreaterThan(1400);
  });

  it('keeps full precision far out (½·erfc(−z/√2) computed to 40 digits with the arbitrary-precision library mpmath)', () => {
    const EXACT: readonly (readonly [z: number, p: number])[] = [
      [-37.3, 8.205494844930773e-305],
      [-30.1, 2.422667217985759e-199],
      [-21.7, 1.025813952696874e-104],
      [-13.3, 1.157341628369033e-40],
      [-8.9, 2.792334374939647e-19],
      [-5.9, 1.817507863099428e-9],
      [-5.3, 5.790134039964594e-8],
      [-3.1, 0.0009676032132183566],
      [-1.7, 0.04456546275854304],
      [-0.6, 0.2742531177500736],
      [0.3, 0.6179114221889526],
      [1.1, 0.8643339390536173],
    ];
    for (const [z, p] of EXACT) expect(relativeError(normalCdf(z), p)).toBeLessThan(1e-15);
  });

  it('has the tail of its asymptotic series (Abramowitz & Stegun 26.2.12, from memory)', () => {
    for (const z of [20, 25, 30, 37]) {
      const terms = [1, -1, 3, -15, 105, -945].reduce((sum, c, k) => sum + c / z ** (2 * k), 0);
      const coarse = Math.trunc(z);
      const density = Math.exp((-coarse * coarse) / 2) / Math.sqrt(2 * Math.PI);
      expect(relativeError(normalCdf(-z), (density / z) * terms)).toBeLessThan(1e-11);
    }
  });

  it('ends at 0 and 1, is ½ at 0, symmetric and never falls', () => {
    expect(normalCdf(0)).toBe(0.5);
    expect(normalCdf(-Infinity)).toBe(0);
    expect(normalCdf(Infinity)).toBe(1);
    expect(normalCdf(-1e200)).toBe(0);
    expect([normalCdf(-Number.MAX_VALUE), normalCdf(Number.MAX_VALUE)]).toEqual([0, 1]);
    expect(normalCdf(NaN)).toBeNaN();
    let before = 0;
    for (let z = -40; z <= 10; z += 0.01) {
      const p = normalCdf(z);
      expect(p).toBeGreaterThanOrEqual(before);
      expect(Math.abs(p + normalCdf(-z) - 1)).toBeLessThan(3e-16);
      before = p;
    }
  });
});

describe('probability of acting later than a limit', () => {
  it('JCGM 106:2012 one-sided limit (JCGM106-ZENER, from memory): y −5.47, u 0.05, limit −5.40 gives p_c 0.92', () => {
    expect(normalCdf((-5.4 + 5.47) / 0.05)).toBeCloseTo(0.92, 2);
    // The same distances as a sensitivity 547 ± 5 and the sensitivity 554 at which the threshold is the limit.
    expect(probabilityLater(5, 10, 1108, 547, 10 / 547, 2, 1)).toBeCloseTo(0.9192433407662289, 12);
  });

  it('is ½ where T is the limit itself (ILAC-G8:09/2019 4.2.1: simple acceptance risks up to 50 %)', () => {
    expect(probabilityLater(5, 6.25, 200, 160, 0.03, 2, 1)).toBe(0.5);
    expect(probabilityLater(5, 18.75, 200, 160, 0.03, 2, 3)).toBe(0.5);
  });

  it('is 0.02275 at the guarded acceptance limit, w = U with k = 2 (ILAC-G8-GUARD-BAND, text read)', () => {
    // Km lies U above the sensitivity at which the threshold would act exactly at the limit.
    const measured = 166.66666666666666 / (1 - 0.03);
    expect(
      relativeError(probabilityLater(5, 6, 200, measured, 0.03, 2, 1), 0.02275013194817921),
    ).toBeLessThan(1e-12);
    const ratios: readonly (readonly [r: number, pfa: number])[] = [
      [0, 0.5],
      [0.83, 0.048457226266722775],
      [1.5, 0.0013498980316301035],
      // Computed to 30 digits; one minus Φ(6) in double precision would lose eight of them.
      [3, 9.86587645037698e-10],
    ];
    for (const [r, pfa] of ratios) {
      const guarded = 1000 / 6 / (1 - r * 0.03);
      expect(relativeError(probabilityLater(5, 6, 200, guarded, 0.03, 2, 1), pfa)).toBeLessThan(1e-11);
    }
  });

  it('follows the independent Φ for any channel', () => {
    const u = fc.double({ min: 1e-3, max: 0.9, noNaN: true });
    const k = fc.constantFrom(1, 1.96, 2, 3);
    fc.assert(
      fc.property(setpoint, setpoint, sensitivity, sensitivity, u, k, (s, limit, kc, km, U, coverage) => {
        const z = ((s * kc) / limit - km) / ((U * km) / coverage);
        fc.pre(Math.abs(z) < 30);
        const p = probabilityLater(s, limit, kc, km, U, coverage, 1);
        expect(relativeError(p, normalReference(z, 0, 1))).toBeLessThan(1e-9);
        expect(probabilityLaterOf(s * kc, limit, km, U, coverage)).toBe(p);
      }),
    );
  });

  it('is 1 or 0 without uncertainty; NaN out of range', () => {
    expect(probabilityLater(5, 6, 200, 160, 0, 2, 1)).toBe(1);
    expect(probabilityLater(5, 6.25, 200, 160, 0, 2, 1)).toBe(0);
    expect(probabilityLater(5, 7, 200, 160, 0, 2, 1)).toBe(0);
    for (const ugly of UGLY) {
      expect(probabilityLater(ugly, 6, 200, 160, 0.03, 2, 1)).toBeNaN();
      expect(probabilityLater(5, ugly, 200, 160, 0.03, 2, 1)).toBeNaN();
      expect(probabilityLater(5, 6, ugly, 160, 0.03, 2, 1)).toBeNaN();
      expect(probabilityLater(5, 6, 200, ugly, 0.03, 2, 1)).toBeNaN();
      expect(probabilityLater(5, 6, 200, 160, 0.03, ugly, 1)).toBeNaN();
      expect(probabilityLater(5, 6, 200, 160, 0.03, 2, ugly)).toBeNaN();
    }
    expect(probabilityLater(5, 6, 200, 160, 1, 2, 1)).toBeNaN();
    expect(probabilityLaterOf(-1, 6, 160, 0.03, 2)).toBeNaN();
    expect(probabilityLaterOf(Infinity, 6, 160, 0.03, 2)).toBeNaN();
    // No swing at all acts at once: later than any limit with the probability Φ(−2/0.03).
    expect(probabilityLaterOf(0, 6, 160, 0.03, 2)).toBeLessThan(1e-300);
  });
});

describe('verdict, simple acceptance (ILAC-G8:09/2019 4.2.1, text read: accept at the tolerance limit)', () => {
  it('the limits themselves are within', () => {
    expect(decide(200, 190, 0.05, null, 'simple')).toBe('within');
    expect(decide(200, 210, 0.05, null, 'simple')).toBe('within');
    expect(decide(7.874, 7.874 * 0.95, 0.05, null, 'simple')).toBe('within');
    // 3.546/3.94 is 0.9 by hand, but just below it in double precision.
    expect(decide(3.94, 3.546, 0.1, null, 'simple')).toBe('within');
    expect(decide(200, 189.9, 0.05, null, 'simple')).toBe('late');
    expect(decide(200, 210.1, 0.05, null, 'simple')).toBe('early');
    expect(decide(200, 200, 0, null, 'simple')).toBe('within');
  });

  it('does not look at the uncertainty', () => {
    expect(decide(200, 191, 0.05, 0.04, 'simple')).toBe('within');
    expect(decide(200, 189, 0.05, 0.04, 'simple')).toBe('late');
  });
});

describe('verdict, guarded with w = U (ILAC-G8:09/2019 4.2.2 and 4.2.3, text read: pass below TL − w, fail above TL + w)', () => {
  it('decides only with the whole interval on one side', () => {
    expect(decide(200, 200, 0.05, 0.03, 'guarded')).toBe('within');
    expect(decide(200, 195, 0.05, 0.03, 'guarded')).toBe('undetermined');
    expect(decide(200, 185, 0.05, 0.03, 'guarded')).toBe('undetermined');
    expect(decide(200, 180, 0.05, 0.03, 'guarded')).toBe('late');
    expect(decide(200, 207, 0.05, 0.03, 'guarded')).toBe('undetermined');
    expect(decide(200, 220, 0.05, 0.03, 'guarded')).toBe('early');
    expect(decide(200, 200, 0.05, 0.05, 'guarded')).toBe('within');
    expect(decide(200, 200, 0.05, 0.06, 'guarded')).toBe('undetermined');
  });

  it('decides as simple where no uncertainty is known', () => {
    expect(decide(200, 191, 0.05, null, 'guarded')).toBe('within');
    expect(decide(200, 189, 0.05, null, 'guarded')).toBe('late');
  });

  it('a false acceptance is less likely than 2.5 % (ILAC-G8:09/2019 4.2.2)', () => {
    const U = fc.double({ min: 0.001, max: 0.05, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 150, max: 250, noNaN: true }), U, (km, u) => {
        fc.pre(decide(200, km, 0.05, u, 'guarded') === 'within');
        const { high } = acceptanceBand(5, 0.05, 1);
        expect(probabilityLater(5, high, 200, km, u, 2, 1)).toBeLessThan(0.025);
      }),
    );
  });
});

describe('the two forms of the decision', () => {
  const rule = fc.constantFrom('simple' as const, 'guarded' as const);

  it('agree for vibration: Km/Kc in 1 ± t is T in [m·S/(1 + t), m·S/(1 − t)]', () => {
    fc.assert(
      fc.property(
        setpoint,
        sensitivity,
        sensitivity,
        tolerance,
        uncertainty,
        multiplier,
        rule,
        (s, kc, km, t, u, m, r) => {
          const { low, high } = band(s, kc, km, u, m);
          const onThreshold = decideOnThreshold(m * s, effectiveThreshold(s, kc, km, m), low, high, t, r);
          expect(onThreshold).toBe(decide(kc, km, t, u, r));
        },
      ),
    );
  });

  it('the sign of the shift is the verdict at no tolerance', () => {
    fc.assert(
      fc.property(setpoint, sensitivity, sensitivity, multiplier, (s, kc, km, m) => {
        fc.pre(Math.abs(kc / km - 1) > 1e-9);
        expect(decide(kc, km, 0, null, 'simple')).toBe(shift(s, kc, km, m) > 0 ? 'late' : 'early');
      }),
    );
  });

  it('the counter direction mirrors; the other side of zero acts at rest, early; a threshold without end is late', () => {
    expect(decideOnThreshold(-20, -25, -25.8, -24.3, 0.05, 'guarded')).toBe('late');
    expect(decideOnThreshold(-20, -16, -16.5, -15.5, 0.05, 'guarded')).toBe('early');
    expect(decideOnThreshold(-20, -20, -20.2, -19.8, 0.05, 'guarded')).toBe('within');
    expect(decideOnThreshold(20, -3, -3.1, -2.9, 0.05, 'guarded')).toBe('early');
    expect(decideOnThreshold(-20, 30, null, null, 0.05, 'simple')).toBe('early');
    expect(decideOnThreshold(20, Infinity, null, null, 0.05, 'guarded')).toBe('late');
    expect(decideOnThreshold(20, 22, 20.5, 23.5, 0.05, 'guarded')).toBe('undetermined');
    expect(decideOnThreshold(20, 22, 20.5, 23.5, 0.05, 'simple')).toBe('late');
    expect(decideOnThreshold(20, 22, null, null, 0.05, 'guarded')).toBe('late');
    expect(decideOnThreshold(20, 22, null, 23.5, 0.05, 'guarded')).toBe('late');
    expect(decideOnThreshold(20, 22, 20.5, null, 0.05, 'guarded')).toBe('late');
  });

  it('ugly inputs decide nothing', () => {
    for (const ugly of UGLY) {
      expect(decide(ugly, 160, 0.05, null, 'simple')).toBe('undetermined');
      expect(decide(200, ugly, 0.05, null, 'simple')).toBe('undetermined');
    }
    for (const bad of [NaN, -0.1, 1, Infinity]) {
      expect(decide(200, 200, bad, null, 'simple')).toBe('undetermined');
      expect(decide(200, 200, 0.05, bad, 'guarded')).toBe('undetermined');
      expect(decideOnThreshold(20, 20, null, null, bad, 'simple')).toBe('undetermined');
    }
    for (const ugly of [NaN, 0, Infinity])
      expect(decideOnThreshold(ugly, 20, null, null, 0.05, 'simple')).toBe('undetermined');
    expect(decideOnThreshold(20, NaN, null, null, 0.05, 'simple')).toBe('undetermined');
    expect(decideOnThreshold(20, 20, NaN, NaN, 0.05, 'guarded')).toBe('undetermined');
  });
});
