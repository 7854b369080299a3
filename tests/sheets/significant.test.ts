import { describe, expect, it } from 'vitest';
import { givenStyle, levelDecimals } from '../../src/sheets/style/significant.ts';

describe('decimals of levels on sheets', () => {
  // By hand: one digit finer than the step; without a step three significant digits of the size.
  it.each([
    [6.25, 0.1, 2],
    [500, 1, 1],
    [500, 5, 1],
    [500, 10, 0],
    [0.35, 0.01, 3],
    [6.25, null, 2],
    [158.7, null, 0],
    [0.0352, null, 4],
    [null, null, 2],
  ])('%s in steps of %s have %i', (size, step, decimals) => {
    expect(levelDecimals(size, step)).toBe(decimals);
  });

  it('are those that were given where a few digits say it, without zeros behind', () => {
    expect([2.8, 9, 199, 7.874, null].map(givenStyle)).toEqual(Array.from({ length: 5 }, () => 'given'));
    expect(givenStyle(63.5 / 3)).toBe('level2');
    expect(givenStyle(7.874015748)).toBe('level3');
  });
});
