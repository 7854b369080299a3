import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type MemberOutPolicy,
  liveThreshold,
  liveVoteText,
  mixedVote,
} from '../../src/method/voting/liveVote.ts';
import { parseVoting, votedThreshold } from '../../src/method/voting/voting.ts';

describe('voting texts (terms of IEC 61508-6, text read: 1oo1, 1oo2, 2oo2, 2oo3)', () => {
  it('are read as people write them', () => {
    for (const text of [
      '2oo3',
      '2OO3',
      ' 2oo3 ',
      '2 oo 3',
      '2-oo-3',
      '2 out of 3',
      '2 OUT OF 3',
      '2 of 3',
      '2\u00a0oo\u00a03',
      '2- oo - 3',
      '2 out  of 3',
      '2oo3'.padEnd(30),
    ]) {
      expect(parseVoting(text)).toEqual({ m: 2, n: 3 });
    }
    expect(parseVoting('1oo1')).toEqual({ m: 1, n: 1 });
    expect(parseVoting('1oo99')).toEqual({ m: 1, n: 99 });
    expect(parseVoting('10oo12')).toEqual({ m: 10, n: 12 });
  });

  it('other texts are none', () => {
    for (const text of [
      '',
      '3oo2',
      '0oo2',
      '1oo0',
      '-1oo2',
      '1oo100',
      'oo',
      '2oo',
      'oo3',
      '2/3',
      '2.5oo3',
      '2oo3x',
      'majority',
      '2003',
      '__proto__',
      '2' + ' '.repeat(100_000),
      '2oo3'.padEnd(31),
    ]) {
      expect(parseVoting(text)).toBeUndefined();
    }
  });
});

describe('voted threshold', () => {
  it('is an order statistic (VOTING-ORDER-STATISTIC; derivation, no published source)', () => {
    const thresholds = [4.0, 4.3010752688172, 3.7];
    expect(votedThreshold(thresholds, 1)).toBe(3.7);
    expect(votedThreshold(thresholds, 2)).toBe(4.0);
    expect(votedThreshold(thresholds, 3)).toBe(4.3010752688172);
    expect(thresholds).toEqual([4.0, 4.3010752688172, 3.7]);
  });

  it('a member that cannot act counts as infinite: fewer than M others and the group cannot trip', () => {
    expect(votedThreshold([Infinity, 6.25], 1)).toBe(6.25);
    expect(votedThreshold([Infinity, 6.25], 2)).toBe(Infinity);
    expect(votedThreshold([Infinity, 6.25, 5], 2)).toBe(6.25);
    expect(votedThreshold([6.25], 2)).toBe(Infinity);
    expect(votedThreshold([], 1)).toBe(Infinity);
  });

  it('an unknown member or a senseless M gives NaN', () => {
    expect(votedThreshold([NaN, 5, 6], 1)).toBeNaN();
    expect(votedThreshold([6, NaN, 5], 1)).toBeNaN();
    expect(votedThreshold([5, 6, NaN], 1)).toBeNaN();
    for (const m of [0, -1, 1.5, NaN, Infinity]) expect(votedThreshold([5, 6], m)).toBeNaN();
  });

  it('is the smallest level at which M members have acted', () => {
    const level = fc.oneof(fc.double({ min: 0.1, max: 100, noNaN: true }), fc.constant(Infinity));
    fc.assert(
      fc.property(
        fc.array(level, { minLength: 1, maxLength: 12 }),
        fc.integer({ min: 1, max: 12 }),
        (thresholds, m) => {
          const voted = votedThreshold(thresholds, m);
          const acted = (x: number) => thresholds.filter((t) => t <= x && t < Infinity).length;
          if (voted === Infinity) {
            expect(acted(Number.MAX_VALUE)).toBeLessThan(m);
          } else {
            expect(acted(voted)).toBeGreaterThanOrEqual(m);
            expect(acted(voted * (1 - 1e-12))).toBeLessThan(m);
          }
        },
      ),
    );
  });
});

describe('members out for several reasons (by counting)', () => {
  const vote = (m: number, n: number, silent: number, cast: number, reduced: number) => {
    const found = mixedVote({ m, n }, { 'no-trip': silent, trip: cast, reduce: reduced });
    return found && liveVoteText(found);
  };

  it('leaves the vote of those that live', () => {
    expect(vote(2, 3, 1, 1, 0)).toBe('1oo1');
    expect(vote(2, 4, 1, 0, 1)).toBe('2oo2');
    expect(vote(3, 4, 0, 1, 2)).toBe('1oo1');
    expect(vote(2, 3, 0, 2, 0)).toBe('tripped');
    expect(vote(2, 3, 2, 0, 0)).toBe('cannot trip');
    expect(vote(2, 3, 0, 0, 3)).toBe('cannot trip');
    expect(vote(1, 1, 0, 0, 0)).toBe('1oo1');
  });

  it('is none where the numbers are none', () => {
    for (const [m, n] of [
      [0, 3],
      [4, 3],
      [1.5, 3],
      [2, 2.5],
      [NaN, 3],
    ] as const)
      expect(vote(m, n, 0, 0, 0)).toBeUndefined();
    for (const bad of [-1, 0.5, NaN, 4]) {
      expect(vote(2, 3, bad, 0, 0)).toBeUndefined();
      expect(vote(2, 3, 0, bad, 0)).toBeUndefined();
      expect(vote(2, 3, 0, 0, bad)).toBeUndefined();
    }
    // As many below 0 as above it do not make good.
    expect(vote(2, 3, -1, 1, 0)).toBeUndefined();
  });

  it('acts at once, never, or where the live members say', () => {
    const at = (out: boolean[], policy: MemberOutPolicy) => liveThreshold(2, [4, 4.3, 3.7], out, policy);
    expect(at([true, true, false], 'trip')).toEqual({ vote: 'tripped', threshold: 0 });
    expect(at([true, true, false], 'no-trip')).toEqual({ vote: 'cannot trip', threshold: Infinity });
    expect(at([true], 'no-trip')).toEqual({ vote: { m: 2, n: 2 }, threshold: 4.3 });
    expect(liveThreshold(4, [4, 4.3, 3.7], [], 'trip')).toBeUndefined();
  });
});
