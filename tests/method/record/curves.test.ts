import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CalibrationRecord } from '../../../src/method/record/calibrationRecord.ts';
import { methods } from '../../../src/method/record/curve.ts';
import { curveOf, monotoneCurve, cubicThrough } from '../../../src/method/record/curveOf.ts';
import { type OnCurve, thresholdOnCurve, axialOnCurve } from '../../../src/method/record/onCurve.ts';
import { relativeError } from '../ranges.ts';
import { RPN14, RPN14_BETWEEN } from './published.ts';
import { recordOf } from './records.ts';

/** Falling records of 3 to 20 points with steps and drops of any size that a record has. */
const falling = fc
  .array(
    fc.tuple(fc.double({ min: 0.5, max: 50, noNaN: true }), fc.double({ min: 0.01, max: 5, noNaN: true })),
    {
      minLength: 2,
      maxLength: 19,
    },
  )
  .map((steps) => {
    const gaps = [10];
    const volts = [-1];
    for (const [step, drop] of steps) {
      gaps.push(gaps.at(-1)! + step);
      volts.push(volts.at(-1)! - drop);
    }
    return recordOf(gaps, volts);
  });
const share = fc.double({ min: 0, max: 1, noNaN: true });
const method = fc.constantFrom(...methods);

describe('the monotone cubic', () => {
  it.each(RPN14_BETWEEN)('RPN 14 at %f is %f, as the NAG example prints it (within 5e-5)', (x, expected) => {
    expect(Math.abs(cubicThrough(RPN14.x, RPN14.f)(x) - expected)).toBeLessThanOrEqual(5e-5);
  });

  it('never leaves the span of its neighbours and never turns', () => {
    fc.assert(
      fc.property(falling, share, share, (record, one, other) => {
        const curve = monotoneCurve(record)!;
        const at = (part: number) => curve.from + part * (curve.to - curve.from);
        const [low, high] = [at(Math.min(one, other)), at(Math.max(one, other))];
        expect(curve.voltsAt(high)).toBeLessThanOrEqual(curve.voltsAt(low) + 1e-12);
        const next = record.gaps.findIndex((gap) => gap >= low);
        expect(curve.voltsAt(low)).toBeGreaterThanOrEqual(record.volts[next]!);
        expect(curve.voltsAt(low)).toBeLessThanOrEqual(record.volts[Math.max(0, next - 1)]!);
      }),
    );
  });

  it('joins two points by a straight line', () => {
    const line = cubicThrough([0, 4], [0, 8]);
    for (const x of [0, 1, 2.5, 4]) expect(line(x)).toBeCloseTo(2 * x, 14);
  });

  // Halfway along a step h, a cubic is the mean of its ends + h·(slope at the start − slope at the end)/8.
  it('has at its ends the slope of the parabola through three points, uneven as their steps are', () => {
    // y = x² at 0, 1, 3: its slope at 3 is 6. At 1 steps of 1 and 4 per unit meet, over 1 and 2 of x: weights 2·2 + 1 and
    // 2 + 2·1, 9/(5/1 + 4/4) = 1.5. Halfway from 1 to 3: (1 + 9)/2 + 2·(1.5 − 6)/8.
    expect(cubicThrough([0, 1, 3], [0, 1, 9])(2)).toBeCloseTo(3.875, 14);
    // y = (x + 1)²: its slope at 0 is 2. At 1 slopes of 3 and 6: 9/(5/3 + 4/6) = 27/7. Halfway: (1 + 4)/2 + (2 − 27/7)/8.
    expect(cubicThrough([0, 1, 3], [1, 4, 16])(0.5)).toBeCloseTo(2.5 + (2 - 27 / 7) / 8, 14);
  });

  it('whose points turn at once starts no steeper than three times its first step', () => {
    // Slopes 2 and −22: the parabola starts at (3·2 + 22)/2 = 14, kept to 6; level at the turn: (0 + 2)/2 + 6/8.
    expect(cubicThrough([0, 1, 2], [0, 2, -20])(0.5)).toBeCloseTo(1.75, 14);
    // Slopes 2 and −1: (3·2 + 1)/2 = 3.5 is less than 6 and stays: 1 + 3.5/8.
    expect(cubicThrough([0, 1, 2], [0, 2, 1])(0.5)).toBeCloseTo(1.4375, 14);
  });

  it('is not the straight pieces (by hand: slopes 1 and 3 meet at 6/(3/1 + 3/3) = 1.5, the end 4)', () => {
    const bent = recordOf([0, 1, 2], [0, -1, -4]);
    expect(curveOf(bent, 'monotone')!.voltsAt(1.5)).toBeCloseTo(-(2.5 + (1.5 - 4) / 8), 14);
    expect(curveOf(bent, 'linear')!.voltsAt(1.5)).toBe(-2.5);
  });

  it('turns nowhere else than its points where they rise and fall', () => {
    const wavy = cubicThrough([0, 1, 2, 3], [0, 5, 5, -2]);
    for (let x = 1; x <= 2; x += 0.05) expect(wavy(x)).toBe(5);
    // Level where it turns: so near the turn a slope of 1 would already show in the fourth digit.
    const peak = cubicThrough([0, 1, 2], [0, 5, 2]);
    for (const near of [0.9999, 1.0001]) expect(Math.abs(peak(near) - 5)).toBeLessThan(1e-6);
    expect(wavy(-0.01)).toBeNaN();
    expect(wavy(3.01)).toBeNaN();
  });
});

describe('a curve of either kind', () => {
  it('goes through its points, both ways', () => {
    fc.assert(
      fc.property(falling, method, (record, kind) => {
        const curve = curveOf(record, kind)!;
        for (const [at, gap] of record.gaps.entries()) {
          expect(curve.voltsAt(gap)).toBe(record.volts[at]);
          expect(curve.gapAt(record.volts[at]!)).toBe(gap);
        }
      }),
    );
  });

  it('read backwards returns its gaps', () => {
    fc.assert(
      fc.property(falling, method, share, (record, kind, part) => {
        const curve = curveOf(record, kind)!;
        const gap = curve.from + part * (curve.to - curve.from);
        // Between two points whose volts differ by a hundredth the last digit of the volts is worth more of the gap.
        const back = curve.gapAt(curve.voltsAt(gap));
        expect(Math.abs(curve.voltsAt(back) - curve.voltsAt(gap))).toBeLessThan(1e-13);
        if (kind === 'linear') expect(Math.abs(back - gap)).toBeLessThan(1e-10);
      }),
    );
  });

  it('is never extrapolated, and is refused where the voltage does not fall', () => {
    for (const kind of methods) {
      const curve = curveOf(recordOf([10, 20, 30], [-2, -4, -6]), kind)!;
      expect([curve.voltsAt(9.99), curve.voltsAt(30.01), curve.gapAt(-1.99), curve.gapAt(-6.01)]).toEqual([
        NaN,
        NaN,
        NaN,
        NaN,
      ]);
      expect([curve.voltsAt(NaN), curve.gapAt(NaN)]).toEqual([NaN, NaN]);
      expect(curveOf(recordOf([10, 20, 30], [-2, -4, -3.9]), kind)).toBeUndefined();
      expect(curveOf(recordOf([10, 20, 30], [-2, -2, -4]), kind)).toBeUndefined();
    }
  });

  it('of a straight record is that line (linear identity, by hand: −3 V at 15 mil)', () => {
    for (const kind of methods) {
      const curve = curveOf(recordOf([10, 20, 30], [-2, -4, -6]), kind)!;
      expect(curve.voltsAt(15)).toBeCloseTo(-3, 14);
      expect(curve.gapAt(-3)).toBeCloseTo(15, 13);
    }
  });
});

/** A straight record of 10 to 90 units of gap at a sensitivity in V per unit. */
function straight(sensitivity: number, points = 17): CalibrationRecord {
  const gaps = Array.from({ length: points }, (_, at) => 10 + (80 * at) / (points - 1));
  return recordOf(
    gaps,
    gaps.map((gap) => 0.5 - sensitivity * gap),
  );
}

const acts = (found: OnCurve | undefined) => (found && 'acts' in found ? found.acts : undefined);
const largest = (found: OnCurve | undefined) =>
  found && 'largestIndicated' in found ? found.largestIndicated : undefined;

describe('the threshold on a curve', () => {
  it('of a straight record is m·S·Kc/Km to 12 digits', () => {
    const sensitivity = fc.double({ min: 0.05, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(
        sensitivity,
        sensitivity,
        fc.double({ min: 0.5, max: 4, noNaN: true }),
        fc.constantFrom(1, 2, 3),
        fc.double({ min: 49, max: 51, noNaN: true }),
        method,
        (measured, configured, setpoint, multiplier, gap, kind) => {
          const expected = (multiplier * setpoint * configured) / measured;
          fc.pre(expected < 77);
          const curve = curveOf(straight(measured), kind)!;
          const found = acts(thresholdOnCurve(curve, gap, setpoint, configured, multiplier))!;
          expect(relativeError(found, expected)).toBeLessThan(1e-12);
        },
      ),
    );
  });

  it('of two straight pieces (by hand: 0.2 V/mil below 50 mil, 0.1 above; 3 V from 50 mil take 10 mil each way)', () => {
    const curve = curveOf(recordOf([10, 50, 90], [-2, -10, -14]), 'linear')!;
    expect(acts(thresholdOnCurve(curve, 50, 15, 0.2, 1))).toBeCloseTo(20, 12);
    // From 40 mil: 10 mil each way stay on 0.2 V/mil, 4 V; then 0.3 V each further mil: 5.5 V at 15 mil.
    expect(acts(thresholdOnCurve(curve, 40, 27.5, 0.2, 1))).toBeCloseTo(30, 12);
  });

  it('solves its equation, whatever the curve', () => {
    const inside = fc.double({ min: 0.05, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(falling, method, inside, inside, (record, kind, part, size) => {
        const curve = curveOf(record, kind)!;
        const gap = curve.from + part * (curve.to - curve.from);
        const setpoint = size * largest(thresholdOnCurve(curve, gap, 1e6, 0.2, 1))!;
        const found = acts(thresholdOnCurve(curve, gap, setpoint, 0.2, 1))!;
        const swing = curve.voltsAt(gap - found / 2) - curve.voltsAt(gap + found / 2);
        expect(Math.abs(swing - setpoint * 0.2)).toBeLessThan(1e-11);
      }),
    );
  });

  it('beyond the record cannot be shown to act; the record supports so much (by hand)', () => {
    const curve = curveOf(straight(0.2), 'monotone')!;
    // 20 mil to the nearer end: ±20 mil are 8 V, 40 mil at 0.2 V/mil.
    const beyond = thresholdOnCurve(curve, 30, 41, 0.2, 1);
    expect(acts(beyond)).toBeUndefined();
    expect(largest(beyond)).toBeCloseTo(40, 12);
    expect(acts(thresholdOnCurve(curve, 30, 39.999, 0.2, 1))).toBeCloseTo(39.999, 9);
    expect(acts(thresholdOnCurve(curve, 30, 40, 0.2, 1))).toBeCloseTo(40, 9);
    // As much as the record supports, and a rounding more: the shaft is then at the record's end.
    for (const noise of [1, 1 + 2e-16, 1 + 5e-13])
      expect(acts(thresholdOnCurve(curve, 30, 40 * noise, 0.2, 1))).toBeCloseTo(40, 9);
    expect(acts(thresholdOnCurve(curve, 30, 40 * (1 + 5e-12), 0.2, 1))).toBeUndefined();
    expect(largest(thresholdOnCurve(curve, 95, 1, 0.2, 1))).toBe(0);
    expect(largest(thresholdOnCurve(curve, 10, 1, 0.2, 1))).toBe(0);
  });

  it('refuses what is out of range', () => {
    const curve = curveOf(straight(0.2), 'monotone')!;
    for (const bad of [0, -1, NaN, Infinity]) {
      expect(thresholdOnCurve(curve, 50, bad, 0.2, 1)).toBeUndefined();
      expect(thresholdOnCurve(curve, 50, 5, bad, 1)).toBeUndefined();
      expect(thresholdOnCurve(curve, 50, 5, 0.2, bad)).toBeUndefined();
    }
    expect(thresholdOnCurve(curve, NaN, 5, 0.2, 1)).toBeUndefined();
  });
});

describe('an axial setpoint on a curve', () => {
  it('of a straight record acts where the formula for one sensitivity says', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 0.3, noNaN: true }),
        fc.double({ min: -15, max: 15, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.constantFrom<1 | -1>(1, -1),
        (measured, setpoint, off, sign) => {
          const curve = curveOf(straight(measured), 'monotone')!;
          const zeroMeasured = curve.voltsAt(50);
          const zeroConfigured = zeroMeasured + off;
          const configured = 0.2;
          const expected = (setpoint * configured + sign * (zeroConfigured - zeroMeasured)) / measured;
          fc.pre(Math.abs(expected) < 39);
          const found = axialOnCurve(curve, { setpoint, configured, zeroConfigured, zeroMeasured, sign });
          expect(Math.abs(found - expected)).toBeLessThan(1e-10);
        },
      ),
    );
  });

  it('is refused outside the record', () => {
    const curve = curveOf(straight(0.2), 'linear')!;
    const channel = {
      setpoint: 41,
      configured: 0.2,
      zeroConfigured: -9.5,
      zeroMeasured: -9.5,
      sign: 1,
    } as const;
    expect(axialOnCurve(curve, channel)).toBeNaN();
    expect(axialOnCurve(curve, { ...channel, setpoint: 39, configured: 0 })).toBeNaN();
  });
});
