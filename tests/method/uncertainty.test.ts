import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acceptanceBand } from '../../src/method/decision/verdict.ts';
import { band } from '../../src/method/decision/band.ts';
import { effectiveThreshold } from '../../src/method/vibration/threshold.ts';
import { UGLY, multiplier, relativeError, sensitivity, setpoint, tolerance, uncertainty } from './ranges.ts';

/** Slope of a function of one variable, by central difference. */
function slope(f: (x: number) => number, at: number): number {
  const step = Math.abs(at) * 1e-5;
  return (f(at + step) - f(at - step)) / (2 * step);
}

describe('the threshold as a ratio, JCGM 100:2008 annex H.2 (GUM-H2-RATIO, text read): Z = V/I, correlated inputs', () => {
  const V = { mean: 4.999, s: 0.0032 };
  const I = { mean: 19.661e-3, s: 0.0095e-3 };
  const slopeV = slope((v) => effectiveThreshold(v, 1, I.mean, 1), V.mean);
  const slopeI = slope((i) => effectiveThreshold(V.mean, 1, i, 1), I.mean);
  const combined = (r: number) =>
    Math.sqrt((slopeV * V.s) ** 2 + (slopeI * I.s) ** 2 + 2 * slopeV * slopeI * V.s * I.s * r);

  it('Z = 254.26 Ω', () => {
    expect(effectiveThreshold(V.mean, 1, I.mean, 1)).toBeCloseTo(254.26, 2);
  });

  it('u(Z) = 0.236 Ω with r = −0.36, and 0.204 Ω were they uncorrelated', () => {
    // The standard's inputs are printed to two digits (s(V̄) 0.0032, r −0.36), which is worth 0.5 % of u(Z).
    expect(relativeError(combined(-0.36), 0.236)).toBeLessThan(0.005);
    expect(relativeError(combined(0), 0.204)).toBeLessThan(0.005);
  });
});

describe('the threshold as a product, JCGM 100:2008 G.4.1 (GUM-G4.1-PRODUCT, text read): Y = b·X1·X2·X3', () => {
  it('0.25 %, 0.57 % and 0.82 % combine to 1.03 %', () => {
    const inputs: [number, number, number] = [5, 200, 2];
    const y = (x: readonly [number, number, number]) => effectiveThreshold(x[0], x[1], 160, x[2]);
    const parts = [0.25, 0.57, 0.82].map((percent, i) => {
      const along = slope(
        (x) => y(inputs.map((v, j) => (j === i ? x : v)) as [number, number, number]),
        inputs[i]!,
      );
      return (along * inputs[i]! * percent) / y(inputs);
    });
    expect(Math.abs(Math.hypot(...parts) - 1.0294658809304948)).toBeLessThan(1e-6);
    expect(Math.abs(Math.hypot(...parts) - 1.03)).toBeLessThan(0.005);
  });

  it('1 % of Km and 0.5 % of the setpoint combine to 1.118 % (EFF-UNCERTAINTY-RATIO, derived by JCGM 100 5.1.6)', () => {
    const t = effectiveThreshold(5, 200, 160, 1);
    const fromKm = (slope((km) => effectiveThreshold(5, 200, km, 1), 160) * 160 * 0.01) / t;
    const fromSetpoint = (slope((s) => effectiveThreshold(s, 200, 160, 1), 5) * 5 * 0.005) / t;
    expect(Math.abs(Math.hypot(fromKm, fromSetpoint) - 0.011180339887498949)).toBeLessThan(1e-9);
  });
});

describe('a ratio beyond first order, JCGM 101:2008 9.3 (JCGM101-9.3-MASS, text read)', () => {
  /** mulberry32: a small generator with a fixed seed, so that the trials are the same every time. */
  function randomNumbers(seed: number): () => number {
    let state = seed;
    return () => {
      state = (state + 0x6d2b79f5) | 0;
      let t = Math.imul(state ^ (state >>> 15), 1 | state);
      t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
      return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
    };
  }

  it('the mass model, its reciprocals taken as thresholds, spreads by 0.0754 where first order says 0.0539', () => {
    const next = randomNumbers(20080101);
    const uniform = (a: number, b: number) => a + (b - a) * next();
    const normal = (mean: number, s: number) =>
      mean + s * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
    const inverse = (density: number) => effectiveThreshold(1, 1, density, 1);
    const trials = Float64Array.from({ length: 200_000 }, () => {
      const mass = normal(100_000, 0.05) + normal(1.234, 0.02);
      const buoyancy =
        (uniform(1.1, 1.3) - 1.2) * (inverse(uniform(7000, 9000)) - inverse(uniform(7950, 8050)));
      return mass * (1 + buoyancy) - 100_000;
    }).sort();
    const mean = trials.reduce((sum, x) => sum + x, 0) / trials.length;
    const spread = Math.sqrt(trials.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (trials.length - 1));
    expect(Math.abs(mean - 1.2341)).toBeLessThan(0.0005);
    expect(Math.abs(spread - 0.0754)).toBeLessThan(0.001);
    // The shortest 95 % interval is flat at its minimum; the symmetric one of this symmetric result is the same.
    expect(Math.abs(trials[Math.round(0.025 * trials.length)]! - 1.0834)).toBeLessThan(0.003);
    expect(Math.abs(trials[Math.round(0.975 * trials.length)]! - 1.3825)).toBeLessThan(0.003);
  });
});

describe('band of the threshold', () => {
  it('5 mil, 200 configured, 160 measured ± 3 % (by hand: 1000/164.8 and 1000/155.2)', () => {
    const { low, high } = band(5, 200, 160, 0.03, 1);
    expect(relativeError(low, 1000 / 164.8)).toBeLessThan(1e-15);
    expect(relativeError(high, 1000 / 155.2)).toBeLessThan(1e-15);
  });

  it('is where the ends of the interval of Km put the threshold', () => {
    fc.assert(
      fc.property(setpoint, sensitivity, sensitivity, uncertainty, multiplier, (s, kc, km, u, m) => {
        const { low, high } = band(s, kc, km, u, m);
        expect(relativeError(low, effectiveThreshold(s, kc, km * (1 + u), m))).toBeLessThan(1e-15);
        expect(relativeError(high, effectiveThreshold(s, kc, km * (1 - u), m))).toBeLessThan(1e-14);
      }),
    );
  });

  it('contains T, and reaches farther on the late side', () => {
    fc.assert(
      fc.property(setpoint, sensitivity, sensitivity, uncertainty, multiplier, (s, kc, km, u, m) => {
        const t = effectiveThreshold(s, kc, km, m);
        const { low, high } = band(s, kc, km, u, m);
        expect(low).toBeLessThanOrEqual(t);
        expect(high).toBeGreaterThanOrEqual(t);
        if (u > 1e-6) expect(high - t).toBeGreaterThan(t - low);
      }),
    );
  });

  it('an uncertainty of 100 % or more, or below 0, is refused', () => {
    for (const u of [1, 1.5, Infinity, -0.01, NaN])
      expect(band(5, 200, 160, u, 1)).toEqual({ low: NaN, high: NaN });
    for (const ugly of UGLY) expect(band(5, 200, ugly, 0.03, 1)).toEqual({ low: NaN, high: NaN });
    expect(band(5, 200, 160, 0, 1)).toEqual({ low: 6.25, high: 6.25 });
  });
});

describe('acceptance band', () => {
  it('holds the thresholds whose Km/Kc is within 1 ± t', () => {
    fc.assert(
      fc.property(setpoint, sensitivity, tolerance, multiplier, (s, kc, t, m) => {
        const { low, high } = acceptanceBand(s, t, m);
        expect(relativeError(effectiveThreshold(s, kc, kc * (1 + t), m), low)).toBeLessThan(1e-15);
        expect(relativeError(effectiveThreshold(s, kc, kc * (1 - t), m), high)).toBeLessThan(1e-14);
      }),
    );
  });

  it('refuses ugly inputs', () => {
    for (const ugly of UGLY) expect(acceptanceBand(ugly, 0.05, 1)).toEqual({ low: NaN, high: NaN });
    for (const t of [1, -0.1, NaN]) expect(acceptanceBand(5, t, 1)).toEqual({ low: NaN, high: NaN });
  });
});
