import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { uncertainZeroBand } from '../../src/method/axial/uncertainZero.ts';
import {
  type Acting,
  realOf,
  shownAs,
  shownAt,
  spreadBand,
  spreadBeyond,
  spreadOf,
} from '../../src/method/ratio/acting.ts';
import { loopActing, positionActing } from '../../src/method/ratio/chains.ts';
import { UGLY, upTo } from './ranges.ts';
import '../seed.ts';

const position = {
  ...{ configured: 200, gain: 1, gainUncertainty: 0, measured: 160, uncertainty: 0.03 },
  ...{ zeroConfigured: -10, zeroMeasured: -9.7, zeroUncertainty: 0.08, direction: 'toward' as const },
};
const loop = {
  ...{ gain: 1, gainUncertainty: 0, span: 20, measured: { at0: 4.05, at100: 19.8 } },
  ...{ believed: { at0: 4, at100: 20 }, at0Uncertainty: 0.04, at100Uncertainty: 0.04 },
  ...{ sensorRatio: 1, sensorUncertainty: 0 },
};

describe('a position chain', () => {
  it('acts by the ratio of sensitivities and by how far its zero moved (by hand)', () => {
    // 0.3 V of 160 mV/mil are 1.875 mil, 0.08 V half a mil; half the gain doubles the factor.
    expect(positionActing(position)).toEqual({
      factor: 1.25,
      shift: expect.closeTo(-1.875, 12) as number,
      ofDivisor: 0.03,
      ofShift: 0.5,
      ofGain: 0,
      both: 0,
    });
    const away = positionActing({ ...position, direction: 'away', gain: 0.5, gainUncertainty: 0.01 });
    expect(away.factor).toBe(2.5);
    expect(away.shift).toBeCloseTo(1.875, 12);
    expect(away.ofGain).toBe(0.01);
    for (const gain of [...UGLY, 0, -1]) expect(positionActing({ ...position, gain }).factor).toBeNaN();
  });

  it('shows 4 mil where it stands at 3.125, and the other way round (by hand)', () => {
    const acting = positionActing(position);
    expect(realOf(acting, 4)).toBeCloseTo(3.125, 12);
    expect(shownAs(acting, 3.125)).toBeCloseTo(4, 12);
  });

  it('whose gain and zero are uncertain has the interval that halving finds', () => {
    // Apart from this code: ends where (r − T)² = u² + (0.03·T)² by halving; Φ from the error function.
    const acting = positionActing({ ...position, gain: 0.98, gainUncertainty: 0.01 });
    const real = realOf(acting, 12);
    expect(real).toBeCloseTo(13.431122448979592, 12);
    const spread = spreadOf(acting, 12);
    expect(spread.ofNumerator).toBeCloseTo(0.5229031826660799, 12);
    const { low, high } = spreadBand(real, spread);
    expect(low).toBeCloseTo(12.782674434433048, 10);
    expect(high).toBeCloseTo(14.103768261952881, 10);
    expect(spreadBeyond(real, spread, 1, 14, 2)).toBeCloseTo(0.044906033572341346, 9);
    expect(spreadBeyond(real, spread, 1, 14, 3)).toBeCloseTo(0.0054703866030035115, 9);
    expect(spreadBeyond(-real, spread, -1, 14, 2)).toBeCloseTo(0.044906033572341346, 9);
  });

  it('with a perfect gain has the interval of an uncertain zero (identity)', () => {
    const acting = positionActing(position);
    const { low, high } = spreadBand(realOf(acting, -15), spreadOf(acting, -15));
    const other = uncertainZeroBand({ ...position, setpoint: -15 }, 2);
    expect(low).toBeCloseTo(other.low, 10);
    expect(high).toBeCloseTo(other.high, 10);
  });
});

describe('a current loop', () => {
  it('acts by both ends, its sensor before it (apart from this code: roots of Fieller’s quadratic)', () => {
    const acting = loopActing({ ...loop, sensorRatio: 100 / 95, sensorUncertainty: 0.02 });
    expect(acting.factor).toBeCloseTo(1.0693400167084377, 12);
    expect(acting.shift).toBeCloseTo(-0.06683375104427712, 12);
    expect(acting.ofDivisor).toBeCloseTo(0.020319940324832076, 12);
    expect(acting.ofShift).toBeCloseTo(0.053467000835421885, 12);
    expect(acting.both).toBeCloseTo(0.00013578920847091272, 14);
    const [real, spread] = [realOf(acting, 7.1), spreadOf(acting, 7.1)];
    expect(real).toBeCloseTo(7.52548036758563, 12);
    const { low, high } = spreadBand(real, spread);
    expect(low).toBeCloseTo(7.37283335023183, 10);
    expect(high).toBeCloseTo(7.6840728026936675, 10);
    expect(spreadBeyond(real, spread, 1, 7.6, 2)).toBeCloseTo(0.1712100507348174, 9);
  });

  it('does not care which way its current runs, and shows less with less gain (by hand)', () => {
    const acting = loopActing(loop);
    expect(acting.factor).toBeCloseTo(16 / 15.75, 12);
    // 24 mA less each current: the same loop, falling.
    const falling = loopActing({
      ...loop,
      measured: { at0: 19.95, at100: 4.2 },
      believed: { at0: 20, at100: 4 },
    });
    for (const [name, value] of Object.entries(acting) as [keyof Acting, number][])
      expect(falling[name]).toBeCloseTo(value, 12);
    const weak = loopActing({ ...loop, gain: 0.8, gainUncertainty: 0.02 });
    expect(weak.factor).toBeCloseTo(16 / 15.75 / 0.8, 12);
    expect(weak.ofGain).toBe(0.02);
  });

  it('has no factor where its ends run against each other or are one, or a part is no number above 0', () => {
    for (const bad of [
      { measured: { at0: 19.8, at100: 4.05 } },
      { measured: { at0: 5, at100: 5 } },
      { believed: { at0: 5, at100: 5 } },
      ...UGLY.flatMap((ugly) => [{ span: ugly }, { gain: ugly }, { sensorRatio: ugly }]),
    ])
      expect(loopActing({ ...loop, ...bad }).factor).toBeNaN();
  });
});

describe('the setpoint that acts at a real value', () => {
  const plain: Acting = { factor: 1.25, shift: 0, ofDivisor: 0.03, ofShift: 0, ofGain: 0, both: 0 };

  it('is the real value’s near end over the factor (by hand)', () => {
    expect(shownAt(plain, 5, true)).toBeCloseTo(3.88, 12);
    expect(shownAt(plain, -5, true)).toBeCloseTo(-3.88, 12);
    expect(shownAt(plain, 5, false)).toBe(4);
    expect(shownAt({ ...plain, shift: -1.875 }, 3.125, false)).toBe(4);
  });

  it('falls nowhere on zero, on its other side, or without a factor', () => {
    for (const counted of [true, false]) {
      expect(shownAt(plain, 0, counted)).toBeNaN();
      expect(shownAt({ ...plain, shift: 3 }, 2, counted)).toBeNaN();
      expect(shownAt({ ...plain, shift: -3 }, -2, counted)).toBeNaN();
      for (const factor of UGLY) expect(shownAt({ ...plain, factor }, 5, counted)).toBeNaN();
    }
    expect(shownAt({ ...plain, shift: 2 }, 2, false)).toBeNaN();
    // Known to ±1 about −0.5, 0.4 would have to be shown as less than nothing.
    expect(shownAt({ ...plain, shift: -0.5, ofShift: 1 }, 0.4, true)).toBeNaN();
  });

  it('has an interval that ends there, whatever is uncertain (identity)', () => {
    const either = (max: number) => upTo(2 * max).map((value) => value - max);
    fc.assert(
      fc.property(
        upTo(45).map((more) => 5 + more),
        fc.constantFrom(1, -1),
        upTo(0.5).map((more) => 0.8 + more),
        either(2),
        fc.tuple(upTo(0.2), upTo(0.8), upTo(0.2), either(0.9)),
        (size, side, factor, shift, [ofDivisor, ofShift, ofGain, rho]) => {
          const acting = { factor, shift, ofDivisor, ofShift, ofGain, both: rho * ofDivisor * ofShift };
          const real = side * size;
          const shown = shownAt(acting, real, true);
          if (Number.isNaN(shown)) return;
          const { low, high } = spreadBand(realOf(acting, shown), spreadOf(acting, shown));
          expect(side > 0 ? high : low).toBeCloseTo(real, 8);
        },
      ),
    );
  });
});

it('refuses a limit or a coverage that is no number above 0, and a real value that is none', () => {
  const spread = { ofDivisor: 0.03, ofNumerator: 0.5, both: 0 };
  for (const bad of UGLY) {
    expect(spreadBeyond(10, spread, 1, bad, 2)).toBeNaN();
    expect(spreadBeyond(10, spread, 1, 11, bad)).toBeNaN();
  }
  expect(spreadBeyond(10, { ...spread, ofNumerator: 0, ofDivisor: 0 }, 1, 11, 2)).toBe(0);
  for (const bad of [NaN, Infinity, -Infinity])
    expect(spreadBand(bad, spread)).toEqual({ low: NaN, high: NaN });
});
