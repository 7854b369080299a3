import { describe, expect, it } from 'vitest';
import { call, column, numbers, why } from './call.ts';

describe('SENSITIVITYUNCERTAINTY', () => {
  it('SENSITIVITYUNCERTAINTY has JCGM 100:2008 G.4.1 (text read): 1.03 %, 19.0, 2.09, 2.2 %', () => {
    const values = column([0.25, 0.57, 0.82]);
    const [expanded, k, freedom, standard] = numbers(
      call(
        'SENSITIVITYUNCERTAINTY',
        values,
        column(['standard', 'Standard', ' STANDARD ']),
        column([9, 4, 14]),
        0.95,
      ),
    );
    expect(Math.abs(standard! - 1.03)).toBeLessThan(0.005);
    expect(Math.abs(freedom! - 19)).toBeLessThan(0.05);
    expect(Math.abs(k! - 2.09)).toBeLessThan(0.005);
    expect(Math.abs(expanded! - 2.2)).toBeLessThan(0.05);
  });

  it('knows the divisors (JCGM 100:2008 4.3; by hand: 0.6/2, 0.3·√3/√3, √6·0.4/√6) and leaves blank lines out', () => {
    const values = column([0.6, 0.3 * Math.sqrt(3), null, 0.4 * Math.sqrt(6)]);
    const row = call(
      'SENSITIVITYUNCERTAINTY',
      values,
      column(['normal', 'rectangular', null, 'triangular']),
    ) as unknown[][];
    const standard = Math.sqrt(0.09 + 0.09 + 0.16);
    expect(row[0]![3]).toBeCloseTo(standard, 14);
    expect(row[0]![2]).toBe('infinite');
    expect(row[0]![1]).toBeCloseTo(2, 13);
    expect(row[0]![0]).toBeCloseTo(2 * standard, 13);
  });

  it('takes a blank for known and a great number for as good as known', () => {
    const spreads = column(['standard', 'standard']);
    const blank = numbers(call('SENSITIVITYUNCERTAINTY', column([3, 4]), spreads, column([9, null])));
    const great = numbers(call('SENSITIVITYUNCERTAINTY', column([3, 4]), spreads, column([9, 1e12])));
    // By hand: 5⁴/(3⁴/9) = 625/9.
    expect(blank[2]).toBeCloseTo(625 / 9, 10);
    expect(great[2]).toBeCloseTo(625 / 9, 6);
  });

  it('says what is missing', () => {
    const says = (...given: readonly unknown[][]) =>
      why(call('SENSITIVITYUNCERTAINTY', ...given.map(column)));
    expect(says([3, 4], ['standard'])).toBe(
      '#VALUE! Distributions has 1 cells beside 2 values: select as many cells in each.',
    );
    expect(says([3, null], ['standard', 'normal'])).toBe(
      '#VALUE! Values 2 is blank: enter the part or clear its line.',
    );
    expect(says([3, 4], ['standard', null])).toBe(
      '#VALUE! Distributions 2 is blank: enter how value 2 is spread.',
    );
    expect(says([3, 4], ['standard', 'even'])).toBe(
      '#VALUE! Distributions 2 is text "even": enter normal, rectangular, triangular or standard.',
    );
    expect(says([3, 4], ['standard', 'normal'], [9, 0])).toMatch(
      /^#VALUE! Degrees of freedom 2 is zero or blank/,
    );
    expect(says([3, -4], ['standard', 'normal'])).toBe('#VALUE! Values 2 is -4: enter a number above 0.');
    expect(says([null, null], [null, null])).toBe('#VALUE! Values is blank: select its cells.');
    expect(says([3, 4], ['standard', 'normal'], [9])).toBe(
      '#VALUE! Degrees of freedom has 1 cells beside 2 values: select as many cells in each.',
    );
    expect(says([null, 4], [null, 'normal'], [9, null])).toBe(
      '#VALUE! Values 1 is blank: enter the part or clear its line.',
    );
  });
});
