import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FunctionError } from '../../src/functions/functionError.ts';
import { THERMOMETER } from '../method/record/published.ts';
import { runs } from '../seed.ts';
import { call, column, numbers, why } from './call.ts';

const GAPS = column([10, 20, 30, 40]);
const VOLTS = column([-2, -4, -6, -7]);

describe('published figures through the functions of records', () => {
  it('FIT has the thermometer of JCGM 100:2008 H.3 (text read), in thousandths', () => {
    const { t, b, t0 } = THERMOMETER;
    const [slope, uSlope, intercept, uIntercept, correlation, deviation, count] = numbers(
      call('FIT', column(t.map((one) => one - t0)), column(b.map((one) => -one))),
    );
    expect(Math.abs(slope! - 2.18)).toBeLessThan(5e-3);
    expect(Math.abs(uSlope! - 0.67)).toBeLessThan(5e-3);
    expect(Math.abs(intercept! - 0.1712)).toBeLessThan(5e-5);
    expect(Math.abs(uIntercept! - 0.0029)).toBeLessThan(5e-5);
    // Both signs are turned but that of the gaps, so the correlation's is as well.
    expect(Math.abs(correlation! - 0.93)).toBeLessThan(5e-4);
    expect(Math.abs(deviation! - 0.0035)).toBeLessThan(5e-5);
    expect(count).toBe(11);
  });
});

describe('a record from ranges', () => {
  it('is read alike from rows and columns, up and down; results run along the gaps', () => {
    expect(call('INCREMENTAL', GAPS, VOLTS)).toEqual([[200], [200], [100]]);
    expect(call('INCREMENTAL', [[10, 20, 30]], column([-2, -4, -7]))).toEqual([[200, 300]]);
    expect(call('INCREMENTAL', GAPS.toReversed(), VOLTS.toReversed())).toEqual([[100], [200], [200]]);
    expect(call('FIT', GAPS.toReversed(), VOLTS.toReversed())).toEqual(call('FIT', GAPS, VOLTS));
    expect(call('FIT', [GAPS.flat()], VOLTS)).toEqual(call('FIT', GAPS, VOLTS));
  });

  it('leaves out places that are blank in both, and keeps the results beside their points', () => {
    const gaps = column([10, '', 20, 30, null]);
    const volts = column([-2, null, -4.5, -6, ' ']);
    expect(call('DEVIATION', gaps, volts, 200)).toEqual([[1.25], [''], [-1.25], [1.25], ['']]);
    expect(call('INCREMENTAL', gaps, volts)).toEqual([[250], [''], [150], ['']]);
    expect(numbers(call('FIT', gaps, volts))[6]).toBe(3);
    expect(call('DEVIATION', column([30, 10, 20]), column([-6, -2, -4.5]), 200)).toEqual([
      [1.25],
      [1.25],
      [-1.25],
    ]);
  });

  it('that is none says why and where', () => {
    const fit = (gaps: readonly unknown[], volts: readonly unknown[]) =>
      why(call('FIT', column(gaps), column(volts)));
    expect(fit([10, 20], [-2, -4])).toBe('#VALUE! Gaps has 2 points: a record needs 3 or more.');
    expect(fit([10, 20, 30, 20], [-2, -4, -6, -4.1])).toBe(
      '#VALUE! Gaps 4 repeats the gap 20: keep one point for each gap.',
    );
    expect(fit([10, 20, 30], [-2, -4])).toBe('#VALUE! Volts ends before Gaps: select as many cells in each.');
    expect(fit([10, 20], [-2, -4, -6])).toBe('#VALUE! Gaps ends before Volts: select as many cells in each.');
    expect(fit([10, 20, null, 30], [-2, -4, -5, -6])).toBe(
      '#VALUE! Gaps 3 is blank beside -5 V: enter the gap.',
    );
    expect(fit([10, 20, 25, 30], [-2, -4, '', -6])).toBe(
      '#VALUE! Volts 3 is blank at gap 25: enter the voltage.',
    );
    expect(fit([10, 'twenty', 30], [-2, -4, -6])).toBe('#VALUE! Gaps 2 is text "twenty": enter a number.');
    expect(fit([10, '20', 30], [-2, -4, -6])).toBe(
      '#VALUE! Gaps 2 has text "20" in a range: enter it as a number.',
    );
    expect(fit([10, 20, 30], [-2, NaN, -6])).toMatch(/^#NUM! Volts 2 is not a finite number/);
    expect(fit([10, 20, 30, 0], [-2, -4, -6, 0])).toBe(
      '#VALUE! Volts 4 is zero or blank: enter the voltage, or select filled cells alone.',
    );
    expect(fit([10, 20, 30], [2, 4, 6])).toBe(
      '#VALUE! Volts does not fall as the gap grows: enter gap voltages with their minus sign.',
    );
    expect(fit([10, 20, 30], [-2, { code: '#N/A', message: 'why' }, -6])).toBe('#N/A why');
    expect(
      why(
        call(
          'FIT',
          [
            [10, 20],
            [30, 40],
          ],
          VOLTS,
        ),
      ),
    ).toBe('#VALUE! Gaps is a block: select one row or one column.');
    expect(why(call('INCREMENTAL', column([10, 30, 20]), column([-2, -6, -4])))).toContain(
      'Gaps is not in order',
    );
  });

  it('whose voltage rises on a step is fitted but has no curve', () => {
    const volts = column([-2, -5, -4, -7]);
    expect(numbers(call('FIT', GAPS, volts))[6]).toBe(4);
    expect(call('INCREMENTAL', GAPS, volts)).toEqual([[300], [-100], [300]]);
    const said = '#VALUE! Volts does not fall from gap 20 to 30: leave one of the two points out.';
    expect(why(call('GAPAT', GAPS, volts, -3))).toBe(said);
    expect(why(call('VOLTSAT', GAPS, volts, 15))).toBe(said);
    expect(why(call('EFFECTIVEONCURVE', 5, 200, GAPS, volts, -4.5))).toBe(said);
  });

  it('takes single cells beside it; FIT of a range of spans is refused', () => {
    expect(why(call('FIT', GAPS, VOLTS, column([10, 20])))).toBe('#VALUE! From is a range: give one cell.');
    expect(why(call('DEVIATION', GAPS, VOLTS, column([200, 100])))).toBe(
      '#VALUE! Rated is a range: give one cell.',
    );
  });
});

describe('a record whose last voltage is not below its first', () => {
  it.each([-1, -2])('is refused, whatever it does between: %d V', (last) => {
    expect(why(call('FIT', GAPS, column([-2, -4, -6, last])))).toContain('Volts does not fall');
  });
});

describe('DEVIATION without a rated sensitivity', () => {
  it('is off the least-squares line (by hand: slope −0.2, −1/6 V at 0; 1/6 V over 0.2 V/mil)', () => {
    expect(numbers(call('DEVIATION', column([10, 20, 30]), column([-2, -4.5, -6])))).toEqual([
      expect.closeTo(5 / 6, 12),
      expect.closeTo(-5 / 3, 12),
      expect.closeTo(5 / 6, 12),
    ]);
    expect(why(call('DEVIATION', column([10, 20, 30]), column([-6, -4.5, -2])))).toContain(
      'Volts does not fall',
    );
  });
});

describe('FIT', () => {
  it('takes the points from one gap to another, both ends included (by hand)', () => {
    expect(numbers(call('FIT', GAPS, VOLTS, 10, 30)).slice(0, 4)).toEqual([
      expect.closeTo(200, 10),
      expect.closeTo(0, 10),
      expect.closeTo(0, 12),
      expect.closeTo(0, 12),
    ]);
    expect(why(call('FIT', GAPS, VOLTS, 20.5))).toBe(
      '#VALUE! From and To hold 2 points: a fit needs 3 or more.',
    );
    expect(why(call('FIT', GAPS, VOLTS, 40, 10))).toContain('hold 0 points');
  });
});

describe('POINTSTO (common practice, no source)', () => {
  it('has one sentence for each pattern', () => {
    const says = (measured: number, gap: number) => call('POINTSTO', measured, 200, gap, -10);
    expect(says(160, -8)).toContain('too much cable');
    expect(says(240, -12)).toContain('too little cable');
    expect(says(201, -12)).toContain('probe position');
    expect(says(160, -10.2)).toContain('hides it');
    expect(says(160, -12)).toContain('no usual pattern');
    expect(says(201, -10.2)).toContain('does not clear the channel');
    expect(call('POINTSTO', 160, 200, -8, -10, 0.25, 3)).toContain('agree');
  });
});

describe('any record', () => {
  const cell = fc.oneof(
    { weight: 5, arbitrary: fc.double({ min: -30, max: 100, noNaN: true }) },
    fc.constantFrom<unknown>(0, null, '', 'x', '5', true, NaN, 1e308, { code: '#N/A' }),
  );
  const range = fc.array(cell, { minLength: 1, maxLength: 8 }).map(column);

  it('gives finite numbers of the right shape, or one plain reason under 100 letters', () => {
    const ids = fc.constantFrom('FIT', 'INCREMENTAL', 'DEVIATION', 'LINEARRANGE', 'GAPAT', 'VOLTSAT');
    fc.assert(
      fc.property(ids, range, range, fc.oneof(cell, fc.constant(50)), (id, gaps, volts, more) => {
        const result = call(id, gaps, volts, more);
        if (result instanceof FunctionError) {
          expect(result.message.length).toBeLessThan(100);
        } else {
          for (const one of [result].flat(2))
            if (typeof one === 'number') expect(one).toSatisfy(Number.isFinite);
        }
      }),
      { numRuns: runs(3000) },
    );
  });
});
