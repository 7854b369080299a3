import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  calibrationRecord,
  isFault,
  stepNotFalling,
  incrementalSensitivity,
} from '../../../src/method/record/calibrationRecord.ts';
import { deviations, fittedLine, ratedLine } from '../../../src/method/record/deviation.ts';
import { linearRange, rangeDeviations, recordReach } from '../../../src/method/record/linearRange.ts';
import { straightLine } from '../../../src/method/record/straightLine.ts';
import { recordOf } from './records.ts';

const finite = fc.double({ min: -1000, max: 1000, noNaN: true });

describe('points as a record', () => {
  it('are sorted by gap, and it says so (common practice, no source)', () => {
    expect(calibrationRecord([20, 10, 30], [-4, -2, -6])).toEqual({
      gaps: [10, 20, 30],
      volts: [-2, -4, -6],
      sorted: true,
    });
    expect(calibrationRecord([10, 20, 30], [-2, -4, -6])).toMatchObject({ sorted: false });
  });

  it('keep all their pairs, whatever the order', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.tuple(finite, finite), { minLength: 2, selector: ([gap]) => gap + 0 }),
        (points) => {
          const record = recordOf(
            points.map(([gap]) => gap),
            points.map(([, volt]) => volt),
          );
          const wanted = [...points].sort(([one], [other]) => one - other);
          expect(record.gaps.map((gap, at) => [gap, record.volts[at]!])).toEqual(wanted);
        },
      ),
    );
  });

  it('that are none say why and where', () => {
    expect(calibrationRecord([10, 20], [-2])).toEqual({ fault: 'lengths differ', at: 1 });
    expect(calibrationRecord([10, NaN], [-2, -4])).toEqual({ fault: 'not a number', at: 1 });
    expect(calibrationRecord([NaN, 10], [-2, -4])).toEqual({ fault: 'not a number', at: 0 });
    expect(calibrationRecord([10, 20], [-2, Infinity])).toEqual({ fault: 'not a number', at: 1 });
    expect(calibrationRecord([10], [-2])).toEqual({ fault: 'too few points', at: 1 });
    expect(calibrationRecord([10, 20], [-2, -4], 3)).toEqual({ fault: 'too few points', at: 2 });
    expect(calibrationRecord([30, 10, 20, 10], [-6, -2, -4, -2.1])).toEqual({ fault: 'gap repeated', at: 3 });
    expect(calibrationRecord([0, -0], [-2, -4])).toMatchObject({ fault: 'gap repeated' });
    expect(isFault(calibrationRecord([], []))).toBe(true);
  });

  it('know the step on which the voltage does not fall', () => {
    expect(stepNotFalling(recordOf([10, 20, 30], [-2, -4, -6]))).toBeUndefined();
    expect(stepNotFalling(recordOf([10, 20, 30], [-2, -4, -3]))).toBe(1);
    expect(stepNotFalling(recordOf([10, 20, 30], [-2, -2, -3]))).toBe(0);
  });
});

describe('incremental sensitivity', () => {
  it('by hand: 1.9, 2.1 and 1 V over 10, 10 and 5 mil', () => {
    const steps = incrementalSensitivity(recordOf([10, 20, 30, 35], [-2, -3.9, -6, -7]));
    expect(steps.map((step) => step.toFixed(12))).toEqual([
      '0.190000000000',
      '0.210000000000',
      '0.200000000000',
    ]);
  });

  it('weighted by its steps, averages to the drop over the whole record', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.double({ min: 0, max: 100, noNaN: true }), {
          minLength: 2,
          selector: (gap) => gap + 0,
        }),
        (gaps) => {
          const record = recordOf(
            gaps,
            gaps.map((gap) => -0.2 * gap + Math.sin(gap)),
          );
          const sum = incrementalSensitivity(record).reduce(
            (total, step, at) => total + step * (record.gaps[at + 1]! - record.gaps[at]!),
            0,
          );
          expect(Math.abs(sum - (record.volts[0]! - record.volts.at(-1)!))).toBeLessThan(1e-9);
        },
      ),
    );
  });
});

describe('deviation from a straight line', () => {
  it('of rated slope, largest as small as can be (by hand: +0.25, −0.25, +0.25 mil; by Chebyshev’s alternation)', () => {
    const record = recordOf([10, 20, 30], [-2, -4.1, -6]);
    const off = deviations(record, ratedLine(record, 0.2)!);
    expect(off.map((one) => one.toFixed(12))).toEqual([
      '0.250000000000',
      '-0.250000000000',
      '0.250000000000',
    ]);
  });

  it('no other offset of that slope does better', () => {
    const volts = fc.array(fc.double({ min: -24, max: 0, noNaN: true }), { minLength: 3, maxLength: 20 });
    fc.assert(
      fc.property(volts, fc.double({ min: -1, max: 1, noNaN: true }), (measured, shift) => {
        const record = recordOf(
          measured.map((_, at) => at),
          measured,
        );
        const line = ratedLine(record, 0.2)!;
        const largest = (intercept: number) =>
          Math.max(...deviations(record, { ...line, intercept }).map((one) => Math.abs(one)));
        expect(largest(line.intercept)).toBeLessThanOrEqual(largest(line.intercept + shift) + 1e-9);
      }),
    );
  });

  it('of the fitted line sums to nothing (the first normal equation)', () => {
    const record = recordOf([10, 20, 30, 40], [-2, -4.1, -6, -8.3]);
    const off = deviations(record, fittedLine(straightLine(record.gaps, record.volts)!)!);
    expect(Math.abs(off.reduce((sum, one) => sum + one, 0))).toBeLessThan(1e-12);
    expect(Math.max(...off.map((one) => Math.abs(one)))).toBeGreaterThan(0.1);
  });

  it('refuses a rated sensitivity of 0 and below, and a voltage that rises', () => {
    const record = recordOf([10, 20], [-2, -4]);
    for (const bad of [0, -0.2, NaN, Infinity]) expect(ratedLine(record, bad)).toBeUndefined();
    expect(fittedLine(straightLine([10, 20], [-4, -2])!)).toBeUndefined();
    expect(fittedLine(straightLine([10, 20], [-4, -4])!)).toBeUndefined();
  });
});

/** API 670, from memory: ±5 % and ±1 mil. */
const API = { rated: 0.2, tolerance: 0.05, deviation: 1 };

/** A record of steps of 10 mil from 10 mil and −2 V, each at its sensitivity in V/mil. */
function stepped(...sensitivities: readonly number[]) {
  const volts = [-2];
  for (const one of sensitivities) volts.push(volts.at(-1)! - 10 * one);
  return recordOf(
    volts.map((_, at) => 10 * (at + 1)),
    volts,
  );
}

describe('linear range (limits of API 670, from memory; cases by hand)', () => {
  it('ends where a step leaves ±5 %', () => {
    expect(linearRange(stepped(0.2, 0.2, 0.2, 0.15), API)).toMatchObject({ from: 10, to: 40 });
    expect(linearRange(stepped(0.15, 0.2, 0.2, 0.2), API)).toMatchObject({ from: 20, to: 50 });
    expect(linearRange(stepped(0.2, 0.21, 0.19), API)).toMatchObject({ from: 10, to: 40 });
    expect(linearRange(stepped(0.2, 0.2101), API)).toMatchObject({ from: 10, to: 20 });
  });

  it('ends where the points leave ±1 mil of the line of rated slope', () => {
    // Each step of 0.209 V/mil drops 0.09 V more than rated, 0.45 mil: four of them spread 1.8 mil, five 2.25.
    const record = stepped(0.209, 0.209, 0.209, 0.209, 0.209);
    expect(linearRange(record, API)).toMatchObject({ from: 10, to: 50 });
    const range = linearRange(record, API)!;
    expect(Math.max(...rangeDeviations(record, range, 0.2).map((one) => Math.abs(one)))).toBeCloseTo(0.9, 12);
  });

  it('reaches up to ±1 mil itself, and with no deviation allowed as far as the record is straight', () => {
    // 40 mil at 0.25 V/mil drop 10 V; 10.5 V are 0.5 V more, ±0.25 V or ±1 mil about the line between.
    const touching = { rated: 0.25, tolerance: 0.05, deviation: 1 };
    expect(linearRange(recordOf([0, 40], [-1, -11.5]), touching)).toMatchObject({ from: 0, to: 40 });
    expect(linearRange(recordOf([0, 40], [-1, -11.51]), { ...touching, tolerance: 0.1 })).toBeUndefined();
    const straight = recordOf([0, 1, 2, 3], [-1, -1.25, -1.5, -1.75]);
    expect(linearRange(straight, { ...touching, deviation: 0 })).toMatchObject({ from: 0, to: 3 });
  });

  it('has its deviations from the line that fits it, wherever in the record it lies', () => {
    // From the second point on: steps of 0.209 V/mil take 0.09 V, 0.45 mil, more than rated each: −0.9 to 0.9 mil.
    const record = stepped(0.15, 0.209, 0.209, 0.209, 0.209);
    const range = linearRange(record, API)!;
    expect(range).toMatchObject({ from: 20, to: 60 });
    const found = rangeDeviations(record, range, 0.2);
    expect(found).toHaveLength(5);
    for (const [at, off] of [0.9, 0.45, 0, -0.45, -0.9].entries()) expect(found[at]).toBeCloseTo(off, 12);
    expect(rangeDeviations(record, range, 0)).toEqual([]);
  });

  it('is the longest, or the longest that holds the mid-gap', () => {
    const record = stepped(0.2, 0.2, 0.1, 0.2, 0.2, 0.2);
    expect(linearRange(record, API)).toMatchObject({ from: 40, to: 70 });
    expect(linearRange(stepped(0.2, 0.2, 0.1, 0.2, 0.2), API)).toMatchObject({ from: 10, to: 30 });
    expect(linearRange(record, { ...API, midGap: 20 })).toMatchObject({ from: 10, to: 30 });
    for (const end of [10, 30])
      expect(linearRange(record, { ...API, midGap: end })).toMatchObject({ from: 10, to: 30 });
    expect(linearRange(record, { ...API, midGap: 35 })).toBeUndefined();
    expect(linearRange(stepped(0.1, 0.1), API)).toBeUndefined();
  });

  it('holds to its limits and can’t be made longer by a step', () => {
    const steps = fc.array(fc.double({ min: 0.185, max: 0.215, noNaN: true }), {
      minLength: 2,
      maxLength: 20,
    });
    fc.assert(
      fc.property(steps, (sensitivities) => {
        const record = stepped(...sensitivities);
        const sound = (first: number, last: number) =>
          sensitivities.slice(first, last).every((one) => Math.abs(one - 0.2) <= 0.01 + 1e-9) &&
          spread(
            record.gaps.slice(first, last + 1).map((gap, at) => record.volts[first + at]! + 0.2 * gap),
          ) <=
            0.4 + 1e-9;
        const range = linearRange(record, API);
        const runs = record.gaps.flatMap((_, first) =>
          record.gaps.flatMap((__, last) => (last > first && sound(first, last) ? [last - first] : [])),
        );
        expect(range ? range.last - range.first : 0).toBe(Math.max(0, ...runs));
        if (range) expect(sound(range.first, range.last)).toBe(true);
      }),
    );
  });

  it('and its reach about a gap (geometry: 60 mil about 50 in 10 to 80)', () => {
    expect(recordReach({ from: 10, to: 80, first: 0, last: 7 }, 50)).toBe(60);
    expect(recordReach({ from: 10, to: 80, first: 0, last: 7 }, 85)).toBe(0);
    expect(recordReach({ from: 10, to: 80, first: 0, last: 7 }, NaN)).toBeNaN();
  });

  it('refuses limits out of range', () => {
    const record = stepped(0.2, 0.2);
    expect(linearRange(record, { ...API, rated: 0 })).toBeUndefined();
    expect(linearRange(record, { ...API, tolerance: 1 })).toBeUndefined();
    expect(linearRange(record, { ...API, deviation: -1 })).toBeUndefined();
    expect(linearRange(record, { ...API, midGap: NaN })).toBeUndefined();
  });
});

function spread(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
