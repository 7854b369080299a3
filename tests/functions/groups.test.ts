import { describe, expect, it } from 'vitest';
import { FunctionError } from '../../src/functions/functionError.ts';
import { call, column, numbers, why } from './call.ts';

const THREE = [column([5, 5, 5]), 200, column([188, 192, 197]), 0.015, 0.01, 5 / 0.95] as const;

describe('VOTELATER', () => {
  it('takes rows, columns, one cell for all, and batches by name in any case (worked by hand and by simulation)', () => {
    const one = 0.27372408749340055;
    expect(call('VOTELATER', 2, ...THREE, column(['b1', ' B1', 'b1 ']))).toBeCloseTo(one, 13);
    expect(
      call(
        'VOTELATER',
        2,
        [[5, 5, 5]],
        [[200, 200, 200]],
        [[188, 192, 197]],
        [[0.015, 0.015, 0.015]],
        0.01,
        5 / 0.95,
        [['x', 'x', 'x']],
      ),
    ).toBeCloseTo(one, 13);
    expect(call('VOTELATER', 2, ...THREE, column([7, 7, 7]))).toBeCloseTo(one, 13);
    expect(call('VOTELATER', 2, ...THREE, 'b1')).toBeCloseTo(one, 13);
    const none = 0.21805450455956285;
    expect(call('VOTELATER', 2, ...THREE)).toBeCloseTo(none, 13);
    expect(call('VOTELATER', 2, ...THREE, column(['', '', '']))).toBeCloseTo(none, 13);
    expect(call('VOTELATER', 2, ...THREE, column(['a', null, '']))).toBeCloseTo(none, 13);
  });

  it('leaves out lines that are blank, and counts text and errors as members that cannot act', () => {
    const blanks = [
      column([5, null, 5, 5]),
      200,
      column([188, '', 192, 197]),
      0.015,
      0.01,
      5 / 0.95,
      column(['b', 'b', 'b', 'b']),
    ];
    expect(call('VOTELATER', 2, ...blanks)).toBeCloseTo(0.27372408749340055, 13);
    const dead = 0.7324224369420768;
    for (const what of ['fault', { code: '#N/A' }]) {
      expect(
        call('VOTELATER', 2, column([5, 5, 5]), 200, column([188, 192, what]), 0.015, 0.01, 5 / 0.95, 'b'),
      ).toBeCloseTo(dead, 13);
      expect(
        call('VOTELATER', 2, column([5, 5, what]), 200, column([188, 192, 197]), 0.015, 0.01, 5 / 0.95, 'b'),
      ).toBeCloseTo(dead, 13);
    }
    expect(call('VOTELATER', 2, column([5, 5]), 200, column([188, 'x']), 0.015, 0.01, 50)).toBe(1);
  });

  it('with the multiplier, and over several limits (worked by hand; a limit beyond reach is 0)', () => {
    expect(
      call('VOTELATER', 2, column([4, 4, 4.2]), 200, column([170, 195, 193]), 0.01, 0.01, 12.5, 'b1', 3),
    ).toBeCloseTo(0.9991865380804872, 12);
    const limits = numbers(call('VOTELATER', 2, ...THREE.slice(0, 5), [[1], [5 / 0.95], [50]], 'b'));
    expect(limits[0]).toBeCloseTo(1, 14);
    expect(limits[1]).toBeCloseTo(0.27372408749340055, 13);
    expect(limits[2]).toBeLessThan(1e-15);
  });

  it('says which cell to put right', () => {
    const says = (...given: unknown[]) => why(call('VOTELATER', ...given));
    expect(says(2, column([5, 5]), 200, column([188, null]), 0.015, 0.01, 5.2)).toBe(
      '#VALUE! Measured 2 is blank: enter it, or clear the line of that member.',
    );
    expect(says(3, column([5, 5]), 200, column([188, 190]), 0.015, 0.01, 5.2)).toBe(
      '#VALUE! Votes is 3 with 2 members: enter how many of them must act.',
    );
    expect(says(2, column([5, 5, 5]), 200, column([188, 190]), 0.015, 0.01, 5.2)).toBe(
      '#VALUE! Measured has 2 cells beside 3 members: select as many cells in each.',
    );
    expect(says(1, 5, 200, 'bad', 0.015, 0.01, 5.2)).toBe(
      '#VALUE! Measured 1 is text "bad": enter a number above 0.',
    );
    expect(says(1, column([5, 5]), 200, column([188, '190']), 0.015, 0.01, 5.2)).toBe(
      '#VALUE! Measured 2 has text "190" in a range: enter it as a number.',
    );
    expect(says(1, column([5, 5]), 200, 190, column([0.015, 1]), 0.01, 5.2)).toMatch(
      /^#VALUE! Shared 2 is 1: enter a fraction/,
    );
    expect(says(1, column(Array(120).fill(5)), 200, 190, 0.01, 0.01, 5.2)).toMatch(
      /^#VALUE! Setpoints has 120 members/,
    );
    expect(
      says(
        1,
        [
          [5, 5],
          [5, 5],
        ],
        200,
        190,
        0.01,
        0.01,
        5.2,
      ),
    ).toMatch(/^#VALUE! Setpoints is a block/);
  });
});

describe('VOTEBAND', () => {
  it('spills low and high; the middle 95 % is where the worked quantiles are', () => {
    // Φ(−1.959963984540054) = 0.025.
    const [low, high] = numbers(
      call('VOTEBAND', 2, ...THREE.slice(0, 5), column(['b1', 'b1', 'b1']), 1, 1.959963984540054),
    );
    expect(low).toBeCloseTo(5.032898093422475, 8);
    expect(high).toBeCloseTo(5.3928024292351235, 8);
    const [low2, high2] = numbers(call('VOTEBAND', 2, ...THREE.slice(0, 5), column(['b1', 'b1', 'b1'])));
    expect(low2).toBeLessThan(low!);
    expect(high2).toBeGreaterThan(high!);
  });

  it('of one member is BAND', () => {
    expect(numbers(call('VOTEBAND', 1, 5, 200, 160, 0.012, 0.009))[0]).toBeCloseTo(
      numbers(call('BAND', 5, 200, 160, 0.03))[0]!,
      13,
    );
  });

  it('has no ends where the group cannot trip, or where the uncertainty is too great', () => {
    expect(why(call('VOTEBAND', 2, column([5, 5]), 200, column([188, 'x']), 0.01, 0.01))).toBe(
      '#N/A Measured: 1 of 2 members can act, 2 needed: the group cannot trip.',
    );
    expect(why(call('VOTEBAND', 1, 5, 200, 160, 0.5, 0))).toMatch(/^#NUM! Coverage 2 has no upper end/);
  });
});

describe('LIVEVOTE', () => {
  it('spreads, in any case of the policy, and refuses more out than there are', () => {
    expect(call('LIVEVOTE', 2, 3, [[0], [1], [2], [3]], 'Trip')).toEqual([
      ['2oo3'],
      ['1oo2'],
      ['tripped'],
      ['tripped'],
    ]);
    expect(call('LIVEVOTE', 2, 3, 2, ' NO-TRIP ')).toBe('cannot trip');
    expect(why(call('LIVEVOTE', 2, 3, 4, 'trip'))).toBe('#VALUE! Out is 4 of 3 members: enter 3 at most.');
    expect(why(call('LIVEVOTE', 4, 3, 0, 'trip'))).toBe('#VALUE! Votes is 4 of 3 members: enter 3 at most.');
    expect(why(call('LIVEVOTE', 2, 3, 1, 'ignore'))).toContain('enter "no-trip" or "trip" or "reduce"');
    expect(why(call('LIVEVOTE', 2, 3, -1, 'trip'))).toContain('whole number, 0 or above');
  });
});

describe('TRIPTIME, RUNUPTRIP, HYSTERESIS, SENSITIVITYAT', () => {
  it('TRIPTIME: unknown readings keep proven and earliest apart (worked by a timer stepped through the record)', () => {
    const times = column([0, 2, 3, 12, 14, 16].map((second) => second / 86_400));
    for (const bad of [null, 'bad', { code: '#N/A' }]) {
      const [proven, earliest] = numbers(call('TRIPTIME', times, column([3, 5, bad, 5, 5, 5]), 4, 3, 5));
      expect(proven! * 86_400).toBeCloseTo(15, 9);
      expect(earliest! * 86_400).toBeCloseTo(4, 9);
    }
  });

  it('TRIPTIME: hold is TRUE, 1 or "hold"; what does not act is #N/A with its reason', () => {
    const given = [column([0, 1, 2]), column([5, 3, 3]), 4, 54_000] as const;
    for (const hold of [true, 1, 'TRUE', ' Hold '])
      expect(call('TRIPTIME', ...given, '', hold)).toEqual([[0.625, 0.625]]);
    for (const hold of [false, 0, 'linear', '']) {
      const [[proven]] = call('TRIPTIME', ...given, '', hold) as [unknown[]];
      expect(why(proven)).toBe('#N/A It does not act within the record, as far as is proven.');
    }
    expect(why(call('TRIPTIME', ...given, '', 'perhaps'))).toBe(
      '#VALUE! Hold is text "perhaps": enter TRUE or FALSE.',
    );
    expect(why(call('TRIPTIME', column([0, null]), column([5, 3]), 4))).toBe(
      '#VALUE! Times 2 is blank beside a reading: enter its time.',
    );
    expect(call('TRIPTIME', column([0, 1, null]), column([5, 5, null]), 4)).toEqual([[0, 0]]);
  });

  it('RUNUPTRIP: in any order, one sensitivity for all or one each, what does not act is #N/A (worked by hand)', () => {
    const speeds = column([2000, 500, 2500, 1000, 1500, 3000, 3500, 4000]);
    const real = column([4.8, 0.4, 6.4, 0.8, 2, 3.2, 2.4, 2.2]);
    expect(call('RUNUPTRIP', speeds, real, 160, 4, 200)).toEqual([[2062.5, 1857.142857142857]]);
    expect(call('RUNUPTRIP', speeds, real, column(Array(8).fill(160)), 4, 200)).toEqual([
      [2062.5, 1857.142857142857],
    ]);
    const [[acts, should]] = call('RUNUPTRIP', speeds, real, 160, 4, 200, 2, 2800) as [unknown[]];
    expect(why(acts)).toBe('#N/A It would not have acted on this run-up: shown up to 5.12.');
    expect(should).toBe(2800);
    expect(why(call('RUNUPTRIP', column([1, 2, 2]), column([1, 2, 3]), 160, 4, 200))).toBe(
      '#VALUE! Speeds 3 repeats 2: keep one of the two.',
    );
    expect(why(call('RUNUPTRIP', column([1, 2]), column([1, null]), 160, 4, 200))).toBe(
      '#VALUE! Real 2 is blank: enter it, or clear the line.',
    );
  });

  it('HYSTERESIS: says what the record is not', () => {
    expect(why(call('HYSTERESIS', column([10, 20, 30]), column([-2, -4, -6])))).toMatch(
      /^#VALUE! Gaps runs one way only/,
    );
    expect(
      why(call('HYSTERESIS', column([10, 20, null, 20, 30, 20]), column([-2, -4, null, -4, -6, -4]))),
    ).toBe('#VALUE! Gaps 4 repeats the gap 20 on one way: keep one reading of the two.');
    const result = call('HYSTERESIS', [[10, 30, 50, 30, 10]], [[-2, -6, -10, -6.5, -2]]);
    expect(result).not.toBeInstanceOf(FunctionError);
    expect(numbers(result)).toHaveLength(3);
  });

  it('SENSITIVITYAT: over several frequencies, never beyond the record', () => {
    const [inside, outside] = call(
      'SENSITIVITYAT',
      [[10, 20, 40]],
      [[158, 181, 194]],
      [[25], [8]],
    ) as unknown[][];
    expect(inside).toEqual([184.25]);
    expect(why(outside![0])).toBe('#N/A Frequency 8 lies outside the record, 10 to 40.');
  });
});
