import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axialBand } from '../../src/method/axial/threshold.ts';
import { uncertainZeroBand, positionChances, positionRatio } from '../../src/method/axial/uncertainZero.ts';
import { loopDefaults, loopEffective, loopRatio, loopReading } from '../../src/method/loop.ts';
import { productSpread, ratioBand, ratioBeyond, ratioSpread } from '../../src/method/ratio/ratio.ts';
import '../seed.ts';
import { normals } from './late/normals.ts';
import { UGLY, upTo } from './ranges.ts';

const a = fc.double({ min: -5000, max: 5000, noNaN: true });
const b = fc.double({ min: 50, max: 500, noNaN: true });
const w = upTo(0.2);
const ua = upTo(300);

describe('an uncertain ratio', () => {
  it('has an interval whose ends are where the equation holds, about the value', () => {
    fc.assert(
      fc.property(
        a,
        b,
        ua,
        w,
        fc.double({ min: -0.9, max: 0.9, noNaN: true }),
        (top, bottom, u, part, rho) => {
          const ub = part * bottom;
          const uab = rho * u * ub;
          const { low, high } = ratioBand({ a: top, b: bottom, ua: u, ub, uab }, 2);
          const t = top / bottom;
          const slack = 1e-9 * (1 + Math.abs(t));
          expect(low).toBeLessThanOrEqual(t + slack);
          expect(high).toBeGreaterThanOrEqual(t - slack);
          for (const end of [low, high]) {
            const miss = (top - end * bottom) ** 2 - 4 * (u * u - 2 * end * uab + end * end * ub * ub);
            expect(Math.abs(miss)).toBeLessThan(
              1e-6 * (top * top + u * u + 1) + 1e-9 * end * end * bottom * bottom,
            );
          }
        },
      ),
    );
  });

  it('without an uncertainty above is T/(1 ± U), and one of a zero that is exact is the band of today', () => {
    fc.assert(
      fc.property(a, b, upTo(0.9), (top, bottom, U) => {
        const t = top / bottom;
        const { low, high } = ratioBand({ a: top, b: bottom, ua: 0, ub: (U * bottom) / 2, uab: 0 }, 2);
        const ends = [t / (1 + U), t / (1 - U)].sort((one, other) => one - other);
        expect(low).toBeCloseTo(ends[0]!, 8);
        expect(high).toBeCloseTo(ends[1]!, 8);
      }),
    );
    for (const direction of ['toward', 'away'] as const) {
      const today = axialBand(-15, 200, 190, -10, -10.2, direction, 0.04);
      const now = uncertainZeroBand(
        {
          ...{ setpoint: -15, configured: 200, measured: 190, zeroConfigured: -10, zeroMeasured: -10.2 },
          ...{ direction, uncertainty: 0.04, zeroUncertainty: 0 },
        },
        2,
      );
      expect(now.low).toBeCloseTo(today.low, 12);
      expect(now.high).toBeCloseTo(today.high, 12);
    }
  });

  it('covers 95.45 % of a simulated ratio, and its probability beyond a limit is that of sampling', () => {
    const next = normals(7);
    const ratio = { a: 3700, b: 190, ua: 50, ub: 2.85, uab: 0 };
    const count = 200_000;
    let [within, beyond] = [0, 0];
    const { low, high } = ratioBand(ratio, 2);
    for (let at = 0; at < count; at++) {
      // Given the reading, the truth: A and B about their values.
      const [top, bottom] = [ratio.a + 50 * next(), ratio.b + 2.85 * next()];
      if (top / bottom > 20) beyond++;
      // The interval about a reading holds the truth.
      if (top >= 0 && low <= top / bottom && top / bottom <= high) within++;
    }
    expect(Math.abs(beyond / count - ratioBeyond(ratio, 20))).toBeLessThan(0.005);
    expect(Math.abs(within / count - 0.9545)).toBeLessThan(0.01);
  });

  it('refuses a denominator that may be 0, and ugly numbers', () => {
    const good = { a: 10, b: 5, ua: 1, ub: 1, uab: 0 };
    expect(ratioBand({ ...good, ub: 2.5 }, 2).low).toBeNaN();
    const ugly = [
      { b: 0 },
      { b: -1 },
      { b: -5 },
      { a: NaN },
      { a: Infinity },
      { ua: -1 },
      { ub: NaN },
      { ub: -1 },
    ];
    for (const bad of [...ugly, { uab: Infinity }]) {
      expect(ratioBand({ ...good, ...bad }, 2)).toEqual({ low: NaN, high: NaN });
      expect(ratioBeyond({ ...good, ...bad }, 1)).toBeNaN();
    }
    for (const bad of ugly)
      expect(ratioSpread({ ...good, ...bad })).toEqual({ first: NaN, second: NaN, mean: NaN });
    expect(ratioSpread({ ...good, ub: 0 }).first).toBeCloseTo(0.2, 12);
    expect(ratioBand(good, 0).low).toBeNaN();
    expect(ratioBand({ a: 0, b: 5, ua: 0, ub: 1, uab: 0 }, 2)).toEqual({ low: -0, high: 0 });
    expect(ratioBeyond({ a: 10, b: 5, ua: 0, ub: 0, uab: 0 }, 2)).toBe(0);
    expect(ratioBeyond({ a: 10, b: 5, ua: 0, ub: 0, uab: 0 }, 1.9)).toBe(1);
  });

  it('about 0, and from 0 on (by hand)', () => {
    // T²·(25 − 4) = 4; then 21·T² = 20·T.
    const about = ratioBand({ a: 0, b: 5, ua: 1, ub: 1, uab: 0 }, 2);
    expect(about.low).toBeCloseTo(-2 / Math.sqrt(21), 12);
    expect(about.high).toBeCloseTo(2 / Math.sqrt(21), 12);
    const from = ratioBand({ a: 2, b: 5, ua: 1, ub: 1, uab: 0 }, 2);
    expect(from.low).toBeCloseTo(0, 12);
    expect(from.high).toBeCloseTo(20 / 21, 12);
  });

  it('and a product: 3 ± 0.1 times 2 ± 0.2 (by hand)', () => {
    const { first, second } = productSpread(3, 0.1, 2, 0.2);
    expect(first).toBeCloseTo(Math.sqrt(0.04 + 0.36), 12);
    expect(second).toBeCloseTo(Math.sqrt(0.04 + 0.36 + 0.0004), 12);
  });

  it('of a position is later and at rest on the setpoint’s own side: mirrored setpoints have the same chances', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.5, max: 0.5, noNaN: true }), (shift) => {
        const of = (sign: 1 | -1) =>
          positionChances(
            {
              ...{ setpoint: sign * 20, configured: 200, measured: 190, zeroConfigured: -10 },
              ...{
                zeroMeasured: -10 + sign * shift,
                direction: 'toward',
                uncertainty: 0.03,
                zeroUncertainty: 0.1,
              },
            },
            21,
            2,
          );
        expect(of(-1).later).toBeCloseTo(of(1).later, 12);
        expect(of(-1).atRest).toBeCloseTo(of(1).atRest, 12);
      }),
    );
  });

  it('of a position whose zero is exact acts at rest for certain or not at all (by hand)', () => {
    const of = (zeroMeasured: number) =>
      positionChances(
        {
          ...{ setpoint: 2.5, configured: 200, measured: 190, zeroConfigured: -10, zeroMeasured },
          ...{ direction: 'toward' as const, uncertainty: 0.03, zeroUncertainty: 0 },
        },
        3,
        2,
      ).atRest;
    // 500 mV of setpoint less how far the zero moved, in mV: at 0 it is not yet beyond.
    expect([-9.75, -9.5, -9.25].map(of)).toEqual([0, 0, 1]);
  });

  it('of a position refuses what can not be', () => {
    const good = {
      ...{ setpoint: 20, configured: 200, measured: 190, zeroConfigured: -10, zeroMeasured: -9.7 },
      ...{ direction: 'toward' as const, uncertainty: 0.03, zeroUncertainty: 0.1 },
    };
    const nothing = { later: NaN, atRest: NaN };
    for (const bad of [
      { setpoint: NaN },
      { measured: 0 },
      { uncertainty: 1 },
      { uncertainty: -0.1 },
      { zeroUncertainty: -0.1 },
      { zeroUncertainty: Infinity },
      { zeroUncertainty: NaN },
    ]) {
      expect(positionRatio({ ...good, ...bad }, 2)).toBeUndefined();
      expect(uncertainZeroBand({ ...good, ...bad }, 2)).toEqual({ low: NaN, high: NaN });
      expect(positionChances({ ...good, ...bad }, 21, 2)).toEqual(nothing);
    }
    for (const bad of UGLY) {
      expect(positionRatio(good, bad)).toBeUndefined();
      expect(positionChances(good, bad, 2)).toEqual(nothing);
    }
  });
});

describe('a loop', () => {
  it('at the effective setpoint shows the setpoint: read with the believed ends (identity)', () => {
    const end = fc.double({ min: -0.5, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 20, noNaN: true }), end, end, (setpoint, off0, off100) => {
        const ends = { at0: 4 + off0, at100: 20 + off100 };
        const real = loopEffective(setpoint, 20, ends, { at0: 4, at100: 20 });
        const current = ends.at0 + (real / 20) * (ends.at100 - ends.at0);
        expect(loopReading(current, 20, 4, 20)).toBeCloseTo(setpoint, 10);
        const mirrored = { at0: 24 - ends.at0, at100: 24 - ends.at100 };
        const both = loopEffective(setpoint, 20, mirrored, { at0: 20, at100: 4 });
        expect(both).toBeCloseTo(real, 10);
      }),
    );
  });

  it('of which nothing else is said ends at 4 and 20 mA', () => {
    expect(loopEffective(7.1, 20, { at0: 4.05, at100: 19.8 }, loopDefaults)).toBeCloseTo(
      7.14920634920635,
      12,
    );
  });

  it('refuses ends that are one, or run against each other', () => {
    const believed = { at0: 4, at100: 20 };
    for (const ends of [
      { at0: 4, at100: 4 },
      { at0: 20, at100: 4 },
      { at0: NaN, at100: 20 },
    ])
      expect(loopEffective(7, 20, ends, believed)).toBeNaN();
    expect(loopEffective(0, 20, believed, believed)).toBeNaN();
    expect(ratioBand(loopRatio(7, 20, { at0: 5, at100: 5 }, believed, 0.1, 0.1), 2).low).toBeNaN();
  });
});
