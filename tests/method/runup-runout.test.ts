import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sensitivityAt, sensitivityByResponse, highPass, lowPass } from '../../src/method/frequency.ts';
import { isUpDownFault, upDown, nonlinearity } from '../../src/method/record/upDown.ts';
import { compensated, realAtDanger } from '../../src/method/runout.ts';
import { runUpTrip } from '../../src/method/runup/runUp.ts';
import { unbalanceCrossings, unbalancePeak, unbalanceResponse } from '../../src/method/runup/unbalance.ts';
import { UGLY, upTo } from './ranges.ts';
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
        fc.array(upTo(8), { minLength: 2, maxLength: 12 }),
        fc.double({ min: 0.5, max: 1, noNaN: true }),
        upTo(250),
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
    // 8 from 300 on, where the multiplier ends just there; and 4 on the way from 0 to 8, past its end.
    expect(runUpTrip(points, { ...SET, multiplier: 3, multiplierSpeed: 300, hold: 50 }).acts).toBe(350);
    expect(runUpTrip(points, { ...SET, multiplier: 2, multiplierSpeed: 120 }).acts).toBe(150);
    // Never 4: what a line would reach, drawn on backwards, is none of its values.
    expect(runUpTrip(pointsOf([0, 3, 0], 1), { ...SET, multiplierSpeed: 150 }).acts).toBeNaN();
  });

  it('starts the delay anew where the multiplied threshold was left before the multiplier ended (by hand)', () => {
    // 10 to 200, then 0 at 300: below 8 from 220 on, at 250 the plain 4 holds, which 5 is beyond until 260.
    const points = pointsOf([10, 10, 0], 1);
    const set = { ...SET, multiplier: 2, multiplierSpeed: 250 };
    expect(runUpTrip(points, { ...set, hold: 130 }).acts).toBeNaN();
    expect(runUpTrip(points, { ...set, hold: 110 }).acts).toBe(210);
    expect(runUpTrip(pointsOf([10, 10, 5, 5, 5], 1), { ...set, hold: 200 }).acts).toBe(450);
  });

  it('says how large the movement was where it acted, and the first of equal peaks (by hand)', () => {
    const points = pointsOf([0, 8, 8, 8], 0.8);
    const trip = runUpTrip(points, { ...SET, hold: 237.5 });
    // 4 shown is 5 real: reached at 162.5.
    expect([trip.acts, trip.realAtTrip, trip.peak, trip.peakSpeed]).toEqual([400, 8, 8, 200]);
    expect(runUpTrip(points, SET).realAtTrip).toBeCloseTo(5, 12);
  });
});

describe('responses', () => {
  it('refuse ugly numbers, and stay finite for great and small ones', () => {
    for (const bad of UGLY) {
      expect([highPass(bad, 1, 1), highPass(1, bad, 1), highPass(1, 1, bad)]).toEqual([NaN, NaN, NaN]);
      expect([lowPass(bad, 1), lowPass(1, bad)]).toEqual([NaN, NaN]);
      for (const crossings of [
        unbalanceCrossings(bad, 0.1, 1),
        unbalanceCrossings(1, bad, 1),
        unbalanceCrossings(1, 0.1, bad),
      ])
        expect(crossings).toEqual([]);
      expect([unbalanceResponse(bad, 1, 1), unbalanceResponse(1, bad, 1)]).toEqual([NaN, NaN]);
      expect(unbalanceResponse(1, 1, bad)).toBeNaN();
      for (const none of [unbalancePeak(bad, 0.1), unbalancePeak(1, bad)])
        expect(none).toEqual({ ratio: NaN, amplitude: NaN });
    }
    // As much damping as leaves no peak; a response that tends to the eccentricity crosses it once, at r = 1 for ζ 0.5.
    expect(unbalancePeak(1, 0.8)).toEqual({ ratio: NaN, amplitude: NaN });
    expect(unbalanceCrossings(1.2, 0.5, 1.2)).toEqual([1]);
    expect(unbalanceCrossings(1.2, 0.1, 1)).toHaveLength(1);
    for (const bad of [NaN, 0, -1]) expect(sensitivityByResponse(500, 0.85, bad)).toBeNaN();
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
  const amplitude = upTo(10);
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
      fc.property(upTo(5), phase, (rho, angle) => {
        const { real, least, most } = realAtDanger(6, rho, angle);
        const rad = (angle * Math.PI) / 180;
        expect(Math.hypot(real + rho * Math.cos(rad), rho * Math.sin(rad))).toBeCloseTo(6, 10);
        expect(real).toBeGreaterThanOrEqual(least - 1e-9);
        expect(real).toBeLessThanOrEqual(most + 1e-9);
      }),
    );
    // As much runout as threshold: against it the shaft moves twice that, with it not at all.
    expect(realAtDanger(5, 5, 180).real).toBeCloseTo(10, 12);
    expect(realAtDanger(5, 5, 0)).toEqual({ real: 0, least: 0, most: 10 });
    const [one, none] = [
      { amplitude: 1, phase: 0 },
      { amplitude: NaN, phase: NaN },
    ];
    for (const nothing of [realAtDanger(1, 2, 0), realAtDanger(1, -0.1, 0), realAtDanger(0, 0, 0)])
      expect(nothing).toEqual({ real: NaN, least: NaN, most: NaN });
    expect(compensated({ amplitude: -1, phase: 0 }, one, 1, 1, 1)).toEqual(none);
    expect(compensated(one, { amplitude: -1, phase: 0 }, 1, 1, 1)).toEqual(none);
    for (const bad of [NaN, Infinity]) {
      for (const broken of [
        { amplitude: bad, phase: 0 },
        { amplitude: 1, phase: bad },
      ]) {
        expect(compensated(broken, one, 1, 1, 1)).toEqual(none);
        expect(compensated(one, broken, 1, 1, 1)).toEqual(none);
      }
    }
    for (const bad of UGLY)
      for (const [configured, measured, then] of [
        [bad, 1, 1],
        [1, bad, 1],
        [1, 1, bad],
      ] as const)
        expect(compensated(one, one, configured, measured, then)).toEqual(none);
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
          // The best line runs through two of the points, or beside them: every pair tried.
          const pairs = gaps.flatMap((gap, one) =>
            gaps.slice(0, one).map((before, at) => (volts[one]! - volts[at]!) / (gap - before)),
          );
          const widths = pairs.map((of) => {
            const rest = volts.map((volt, at) => volt - of * gaps[at]!);
            return Math.max(...rest) - Math.min(...rest);
          });
          expect(independent).toBeCloseTo(Math.min(...widths) / 2, 9);
          expect(independent).toBeLessThanOrEqual(terminal + 1e-9);
        },
      ),
    );
  });

  it('counts each gap by itself, in the order of the gaps, whichever run it came in (by hand)', () => {
    const readings = [
      ...[10, 25, 50, 90].map((gap) => ({ gap, volts: -gap / 5 })),
      ...[90, 50, 15, 10].map((gap) => ({ gap, volts: -gap / 5 - 0.1 })),
      ...[10, 30, 90].map((gap) => ({ gap, volts: -gap / 5 })),
      ...[90, 30, 10].map((gap) => ({ gap, volts: -gap / 5 - 0.2 })),
    ];
    const found = upDown(readings);
    if (isUpDownFault(found)) throw new Error(JSON.stringify(found));
    expect(found.mean.gaps).toEqual([10, 30, 50, 90]);
    expect(found.oneWay).toEqual([15, 25]);
    expect(found.hysteresis.volts).toBeCloseTo(0.2, 12);
    expect(found.repeatability?.volts).toBeCloseTo(0.1, 12);
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
    // Falling on the whole, but as high at the end as at the start.
    const valley = [10, 20, 90, 90, 20, 10].map((gap) => ({ gap, volts: gap === 20 ? -3 : -5 }));
    expect(upDown(valley)).toBe('does not fall');
    for (const fault of [of([10, 20, 30]), of([10, 10, 20])]) expect(isUpDownFault(fault)).toBe(true);
    expect(isUpDownFault(found)).toBe(false);
  });
});
