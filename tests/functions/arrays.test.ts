import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FunctionError } from '../../src/functions/functionError.ts';
import { call, why } from './call.ts';

/** What a cell can hold beside a usable number. */
const cell = fc.oneof(
  { weight: 6, arbitrary: fc.double({ min: 0.001, max: 1e6, noNaN: true }) },
  fc.constantFrom(0, -3, true, 'n/a', null, '', 1e308, 5e-324),
);

/** Ranges are read as plain cells, except that a number as text counts in a single cell alone: left out here. */
function columnOf(length: number) {
  return fc.array(fc.tuple(cell), { minLength: length, maxLength: length });
}

describe('arrays', () => {
  it('give, place by place, what single cells give', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 12 }).chain((n) => fc.tuple(columnOf(n), columnOf(n), columnOf(n))),
        ([setpoints, configured, measured]) => {
          const result = call('EFFECTIVE', setpoints, configured, measured) as unknown[][];
          expect(result).toHaveLength(setpoints.length);
          for (const [row, [value]] of result.entries()) {
            const blanks = [setpoints, configured, measured].map((column) => column[row]![0]);
            const skipped = blanks.every((one) => one === null || one === '');
            expect(value).toEqual(skipped ? '' : call('EFFECTIVE', ...blanks));
          }
        },
      ),
    );
  });

  it('of two dimensions and of single rows and columns spread like a spreadsheet spreads them (by hand)', () => {
    const block = [
      [4, 8],
      [12, 16],
    ];
    expect(call('EFFECTIVE', block, 200, 100)).toEqual([
      [8, 16],
      [24, 32],
    ]);
    expect(call('EFFECTIVE', block, [[200, 400]], 100)).toEqual([
      [8, 32],
      [24, 64],
    ]);
    expect(call('EFFECTIVE', [[1], [2]], [[200, 400]], 100)).toEqual([
      [2, 4],
      [4, 8],
    ]);
  });

  it('show #N/A where a range does not reach, naming it', () => {
    const result = call('EFFECTIVE', [[1], [2], [3]], [[200], [200]], 100) as unknown[][];
    expect(result.slice(0, 2)).toEqual([[2], [4]]);
    expect(why(result[2]![0])).toBe(
      '#N/A Configured ends before the other ranges: select as many cells in each.',
    );
  });

  it('of one bad cell leave the others their results', () => {
    const result = call('EFFECTIVE', [[5], [0], ['7'], [5]], 200, [
      [160],
      [160],
      [160],
      ['bad'],
    ]) as unknown[][];
    expect(result[0]).toEqual([6.25]);
    expect(why(result[1]![0])).toContain('Setpoint is zero or blank');
    expect(why(result[2]![0])).toBe('#VALUE! Setpoint has text "7" in a range: enter it as a number.');
    expect(why(result[3]![0])).toContain('Measured is text "bad"');
  });

  it('leave blank rows blank, and say which cell is missing in others', () => {
    const result = call('EFFECTIVE', [[null], [''], [5], [null]], 200, [
      [''],
      [' '],
      [undefined],
      [160],
    ]) as unknown[][];
    expect(result.slice(0, 2)).toEqual([[''], ['']]);
    expect(why(result[2]![0])).toContain('Measured is blank');
    expect(why(result[3]![0])).toContain('Setpoint is blank');
    expect(
      call('EFFECTIVE', [[5], [null]], 200, 160, [[2], [null]]),
      'an optional cell beside it too',
    ).toEqual([[12.5], ['']]);
    expect(call('EFFECTIVE', 5, 200, 160, [[null], [2]]), 'a blank optional cell is left out').toEqual([
      [6.25],
      [12.5],
    ]);
  });

  it('that are ragged or empty never break the shape of the result', () => {
    const ragged = call('EFFECTIVE', [[5, 10], [5], []], 200, 160) as unknown[][];
    expect(ragged.map((row) => row.length)).toEqual([2, 2, 2]);
    expect(ragged[1]).toEqual([6.25, '']);
    expect(why(call('EFFECTIVE', [], 200, 160))).toContain('Setpoint is blank');
    expect(why(call('EFFECTIVE', [[]], 200, 160))).toContain('Setpoint is blank');
  });

  it('whose result is past all numbers say so', () => {
    expect(why(call('EFFECTIVE', 1e300, 1e300, 1))).toBe(
      '#NUM! No finite result for these numbers: check their size and units.',
    );
  });

  it('of one cell are that cell, text numbers and all', () => {
    expect(call('EFFECTIVE', [['5']], [[200]], [[' 1.6e2 ']])).toBe(6.25);
    expect(call('EFFECTIVE', [[5]], [[200]], [[160]], [[null]])).toBe(6.25);
  });

  it('of one cell beside larger ones serve every place, as Excel sends single cells', () => {
    expect(call('EFFECTIVE', [[5], [10]], [['200']], [[160]], [[null]])).toEqual([[6.25], [12.5]]);
    expect(call('EFFECTIVE', [[5]], [[200], [400]], [[160]], null)).toEqual([[6.25], [12.5]]);
    expect(why(call('EFFECTIVE', [[5], [10]], [[null]], [[160]]))).toContain('Configured is blank');
    expect(why(call('EFFECTIVE', [[null]], [[200], [400]], [[160]]))).toContain('Setpoint is blank');
  });

  it('spread texts and units as well', () => {
    expect(call('ZONELIMIT', 'A/B', [[3600], [10_000]], 'um')).toEqual([[80], [48]]);
    expect(call('CONVERTUNIT', [[1, 2]], 'mil', [['um'], ['mm']])).toEqual([
      [25.4, 50.8],
      [0.0254, 0.0508],
    ]);
  });
});

describe('pairs', () => {
  it('go side by side for columns, low over high for a single row (by hand: 6.25/1.25, 6.25/0.75)', () => {
    const low = 5;
    const high = 6.25 / 0.75;
    expect(call('BAND', 5, 200, 160, 0.25)).toEqual([[low, high]]);
    expect(call('BAND', [[5], [10]], 200, 160, 0.25)).toEqual([
      [low, high],
      [2 * low, 2 * high],
    ]);
    expect(call('BAND', [[5, 10]], 200, 160, 0.25)).toEqual([
      [low, 2 * low],
      [high, 2 * high],
    ]);
  });

  it('show an error or a blank in both cells, and refuse a block', () => {
    const result = call('BAND', [[5], [-5], [null]], 200, [[160], [160], ['']], 0.25) as unknown[][];
    expect(result[1]![0]).toBeInstanceOf(FunctionError);
    expect(result[1]![1]).toBe(result[1]![0]);
    expect(result[2]).toEqual(['', '']);
    expect(
      why(
        call(
          'BAND',
          [
            [5, 6],
            [7, 8],
          ],
          200,
          160,
          0.25,
        ),
      ),
    ).toContain('Give columns');
  });
});
