import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RPN14, RPN14_BETWEEN } from '../method/record/published.ts';
import { relativeError } from '../method/ranges.ts';
import { call, column, numbers, why } from './call.ts';

const GAPS = column([10, 20, 30, 40]);
const VOLTS = column([-2, -4, -6, -7]);

describe('LINEARRANGE', () => {
  it('spills from and to; #N/A where there is none (by hand: the last step is 50 % off)', () => {
    expect(call('LINEARRANGE', GAPS, VOLTS, 200)).toEqual([[10, 30]]);
    expect(call('LINEARRANGE', GAPS, VOLTS, 200, 0.6)).toEqual([[10, 40]]);
    // One mil off a last step of 10 mil: 1 V more than rated spreads 5 mil, 2.5 each way.
    expect(call('LINEARRANGE', GAPS, VOLTS, 200, 0.6, 2.4)).toEqual([[10, 30]]);
    expect(call('LINEARRANGE', GAPS, VOLTS, 200, 0.6, 2.6)).toEqual([[10, 40]]);
    expect(why(call('LINEARRANGE', GAPS, VOLTS, 200, null, null, 35))).toBe(
      '#N/A No step about gap 35 keeps to 200 mV per unit within its tolerance.',
    );
    expect(why(call('LINEARRANGE', GAPS, VOLTS, 150))).toMatch(/^#N\/A No step keeps/);
  });
});

describe('curves', () => {
  it('VOLTSAT has RPN 14 at the points of the NAG example (within 5e-5), turned downwards', () => {
    // Raised by 1, since 0 V is no gap voltage.
    const result = call(
      'VOLTSAT',
      column(RPN14.x),
      column(RPN14.f.map((one) => -1 - one)),
      column(RPN14_BETWEEN.map(([x]) => x)),
    );
    for (const [at, value] of numbers(result).entries())
      expect(Math.abs(value + 1 + RPN14_BETWEEN[at]![1])).toBeLessThanOrEqual(5e-5);
  });

  it('GAPAT undoes VOLTSAT, and neither goes beyond the record', () => {
    for (const method of ['monotone', 'linear', undefined]) {
      const asked = column([10, 12.5, 25, 39, 40]);
      const back = call('GAPAT', GAPS, VOLTS, call('VOLTSAT', GAPS, VOLTS, asked, method), method);
      for (const [at, gap] of numbers(back).entries()) expect(gap).toBeCloseTo(asked[at]![0] as number, 10);
    }
    expect(why(call('GAPAT', GAPS, VOLTS, -7.1))).toBe(
      '#N/A Voltage -7.1 V lies outside the record, -2 V to -7 V.',
    );
    expect(why(call('GAPAT', GAPS, VOLTS, 4))).toContain('outside the record');
    expect(why(call('VOLTSAT', GAPS, VOLTS, 9))).toBe('#N/A Gap 9 lies outside the record, 10 to 40.');
  });

  it('EFFECTIVEONCURVE of a straight record is EFFECTIVE', () => {
    const gaps = Array.from({ length: 9 }, (_, at) => 10 + 10 * at);
    const straight = gaps.map((gap) => 0.5 - 0.16 * gap);
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        fc.constantFrom(1, 2, 3),
        (setpoint, times) => {
          const on = call('EFFECTIVEONCURVE', setpoint, 200, [gaps], [straight], -7.5, times) as number;
          expect(relativeError(on, call('EFFECTIVE', setpoint, 200, 160, times) as number)).toBeLessThan(
            1e-12,
          );
        },
      ),
    );
  });

  it('EFFECTIVEONCURVE spreads over setpoints, and names the largest indication that the record supports', () => {
    const result = call(
      'EFFECTIVEONCURVE',
      column([5, 10, 15]),
      200,
      GAPS,
      column([-2, -4, -6, -8]),
      -4,
    ) as unknown[][];
    expect(result.slice(0, 2).flat()).toEqual([expect.closeTo(5, 11), expect.closeTo(10, 11)]);
    expect(call('EFFECTIVEONCURVE', 20, 200, GAPS, column([-2, -4, -6, -8]), -4)).toBeCloseTo(20, 10);
    expect(why(call('EFFECTIVEONCURVE', 20.1, 200, GAPS, column([-2, -4, -6, -8]), -4))).toBe(
      '#N/A Setpoint cannot be shown to act: the record supports indications up to 20.',
    );
    expect(why(call('EFFECTIVEONCURVE', 5, 200, GAPS, VOLTS, -9))).toBe(
      '#N/A Gap voltage -9 V lies outside the record, -2 V to -7 V.',
    );
  });
});
