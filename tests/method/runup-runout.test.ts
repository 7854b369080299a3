import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sensitivityAt, highPass, lowPass } from '../../src/method/frequency.ts';
import { isUpDownFault, upDown, nonlinearity } from '../../src/method/record/upDown.ts';
import { compensated, realAtDanger } from '../../src/method/runout.ts';
import { runUpTrip } from '../../src/method/runup/runUp.ts';
import { unbalanceCrossings, unbalanceResponse } from '../../src/method/runup/unbalance.ts';
import { UGLY } from './ranges.ts';
import '../seed.ts';

const SET = { setpoint: 4, multiplier: 1, multiplierSpeed: Infinity, hold: 0 };
const pointsOf = (amplitudes: readonly number[], ratio: number) =>
  amplitudes.map((real, at) => ({ speed: 100 * (at + 1), real, indicated: real * ratio }));

describe('a run-up', () => {
  it('of an unbalanced rotor trips where the closed form crosses, the denser the closer', () => {
    const [e, zeta] = [1.2, 0.1];
    const points = Array.from({ length: 4000 }, (_, at) => {
      const speed = 1000 + at;
      const real = unbalanceResponse(e, zeta, speed / 2400);
      return { speed, real, indicated: 0.9 * real };
    });
    const { acts, should } = runUpTrip(points, SET);
    expect(should).toBeCloseTo(2400 * unbalanceCrossings(e, zeta, 4)[0]!, 2);
    expect(acts).toBeCloseTo(2400 * unbalanceCrossings(e, zeta, 4 / 0.9)[0]!, 2);
  });

  it('acts where the shown value is the threshold, never before it should where the monitor under-reads', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 8, noNaN: true }), { minLength: 2, maxLength: 12 }),
        fc.double({ min: 0.5, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 250, noNaN: true }),
        (amplitudes, ratio, hold) => {
          const trip = runUpTrip(pointsOf(amplitudes, ratio), { ...SET, hold });
          if (Number.isNaN(trip.acts)) return;
          expect(trip.should).toBeLessThanOrEqual(trip.acts + 1e-9);
          expect(trip.realAtTrip * ratio).toBeGreaterThanOrEqual(4 - 1e-9);
          if (hold === 0 && trip.acts > 100) expect(trip.realAtTrip * ratio).toBeCloseTo(4, 9);
        },
      ),
    );
  });

  it('holds for the delay, over the multiplier’s speed and to the last point (by hand)', () => {
    const points = pointsOf([0, 8, 8, 8], 1);
    expect(runUpTrip(points, { ...SET, hold: 50 }).acts).toBe(200);
    expect(runUpTrip(points, { ...SET, hold: 250 }).acts).toBe(400);
    expect(runUpTrip(points, { ...SET, hold: 251 }).acts).toBeNaN();
    // Twice the setpoint, 8, is reached at 200; the plain one holds from 150 on, where 4 is reached.
    expect(runUpTrip(points, { ...SET, multiplier: 2, multiplierSpeed: 150 }).acts).toBe(150);
    expect(runUpTrip(points, { ...SET, multiplier: 2, multiplierSpeed: 250 }).acts).toBe(200);
    expect(runUpTrip(points, { ...SET, multiplier: 3, multiplierSpeed: 250 }).acts).toBe(250);
    expect(runUpTrip(points, { ...SET, multiplier: 3, multiplierSpeed: 400 }).acts).toBe(400);
    expect(runUpTrip(points, { ...SET, multiplier: 3, multiplierSpeed: 401 }).acts).toBeNaN();
    expect(runUpTrip(points, { ...SET, multiplier: 3, multiplierSpeed: 50 }).acts).toBe(150);
    // Beyond 8 only below 250, then below 16: a multiplier under 1 clears nothing, one that ends raises the level.
    expect(
      runUpTrip(points, { ...SET, setpoint: 16, multiplier: 0.5, multiplierSpeed: 250, hold: 50 }).acts,
    ).toBeNaN();
    expect(
      runUpTrip(points, { ...SET, setpoint: 16, multiplier: 0.5, multiplierSpeed: 251, hold: 50 }).acts,
    ).toBe(250);
  });
});

describe('responses', () => {
  it('refuse ugly numbers, and stay finite for great and small ones', () => {
    for (const bad of UGLY) {
      expect([highPass(bad, 1, 1), highPass(1, bad, 1), highPass(1, 1, bad)]).toEqual([NaN, NaN, NaN]);
      expect([lowPass(bad, 1), lowPass(1, bad)]).toEqual([NaN, NaN]);
      expect(unbalanceCrossings(bad, 0.1, 1)).toEqual([]);
    }
    expect(highPass(1e300, 1e-300, 0.7)).toBe(1);
    expect(lowPass(1e-300, 1)).toBe(1);
    expect(highPass(1, 1, 0.25)).toBe(2);
  });

  it('between two points lie between their sensitivities, at a point are it, outside nothing', () => {
    const record = { frequencies: [10, 20, 40], sensitivities: [158, 181, 194] };
    expect([10, 15, 20, 30, 40].map((f) => sensitivityAt(record, f))).toEqual([158, 169.5, 181, 187.5, 194]);
    expect([9.99, 40.01, NaN].map((f) => sensitivityAt(record, f))).toEqual([NaN, NaN, NaN]);
  });
});

describe('runout', () => {
  const amplitude = fc.double({ min: 0, max: 10, noNaN: true });
  const phase = fc.double({ min: -720, max: 720, noNaN: true });

  it('added again gives what was shown (identity), and phases lie from 0 to below 360', () => {
    fc.assert(
      fc.property(amplitude, phase, amplitude, phase, (v, a, r, b) => {
        const real = compensated({ amplitude: v, phase: a }, { amplitude: r, phase: b }, 200, 160, 190);
        expect(real.phase >= 0 && real.phase < 360).toBe(true);
        const rad = Math.PI / 180;
        const x = real.amplitude * Math.cos(real.phase * rad) + ((r * 200) / 190) * Math.cos(b * rad);
        const y = real.amplitude * Math.sin(real.phase * rad) + ((r * 200) / 190) * Math.sin(b * rad);
        expect(x).toBeCloseTo(((v * 200) / 160) * Math.cos(a * rad), 10);
        expect(y).toBeCloseTo(((v * 200) / 160) * Math.sin(a * rad), 10);
      }),
    );
  });

  it('at danger the movement and the runout together are the threshold (identity)', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5, noNaN: true }), phase, (rho, angle) => {
        const { real, least, most } = realAtDanger(6, rho, angle);
        const rad = (angle * Math.PI) / 180;
        expect(Math.hypot(real + rho * Math.cos(rad), rho * Math.sin(rad))).toBeCloseTo(6, 10);
        expect(real).toBeGreaterThanOrEqual(least - 1e-9);
        expect(real).toBeLessThanOrEqual(most + 1e-9);
      }),
    );
    expect(realAtDanger(1, 2, 0).real).toBeNaN();
    expect(compensated({ amplitude: -1, phase: 0 }, { amplitude: 0, phase: 0 }, 1, 1, 1).amplitude).toBeNaN();
    expect(compensated({ amplitude: 2, phase: 40 }, { amplitude: 2, phase: 400 }, 200, 160, 160)).toEqual({
      amplitude: 0,
      phase: 0,
    });
  });
});

describe('a record up and down', () => {
  it('read the same both ways has no hysteresis and is the record itself', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.2, max: 4, noNaN: true }), { minLength: 3, maxLength: 12 }),
        (steps) => {
          let volts = 0;
          const up = steps.map((step, at) => ({ gap: 10 * at, volts: (volts -= step) }));
          const found = upDown([...up, ...up.toReversed()]);
          if (isUpDownFault(found)) throw new Error(JSON.stringify(found));
          expect(found.hysteresis.volts).toBe(0);
          expect(found.mean.volts).toEqual(up.map((one) => one.volts));
          expect(found.independent.volts).toBeLessThanOrEqual(found.terminal.volts + 1e-12);
          // Down first, or with the turning point read once, is the same record.
          const other = upDown([...up.toReversed(), ...up.slice(1)]);
          expect(isUpDownFault(other) ? other : other.mean.volts).toEqual(found.mean.volts);
        },
      ),
    );
  });

  it('the line that makes the deviation least is no worse than any other slope', () => {
    const point = fc.double({ min: -20, max: 0, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(point, { minLength: 3, maxLength: 9 }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (volts, slope) => {
          const gaps = volts.map((_, at) => 5 * at);
          const off = volts.map((volt, at) => volt - slope * gaps[at]!);
          const other = (Math.max(...off) - Math.min(...off)) / 2;
          const { independent, terminal } = nonlinearity({ gaps, volts, sorted: false });
          expect(independent).toBeLessThanOrEqual(other + 1e-9);
          expect(independent).toBeLessThanOrEqual(terminal + 1e-9);
        },
      ),
    );
  });

  it('says what it is not: one direction, a gap twice, too few gaps, gaps one way only', () => {
    const of = (gaps: readonly number[]) =>
      upDown(gaps.map((gap, at) => ({ gap, volts: -gap / 5 - at / 1000 })));
    expect(of([10, 20, 30, 40])).toBe('one direction');
    expect(of([10, 20, 20, 30, 20, 10])).toEqual({ repeated: 2 });
    expect(of([10, 10, 20, 10])).toEqual({ repeated: 1 });
    expect(of([10, 20, 30, 30])).toEqual({ repeated: 3 });
    expect(of([10, 20, 20, 10])).toBe('too few gaps');
    expect(of([])).toBe('one direction');
    const found = of([10, 15, 20, 30, 30, 20, 10]);
    expect(isUpDownFault(found) ? found : found.oneWay).toEqual([15]);
    expect(upDown([10, 20, 30, 20, 10].map((gap) => ({ gap, volts: gap })))).toBe('does not fall');
  });
});
