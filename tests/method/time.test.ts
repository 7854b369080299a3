import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  levelAtTripDoubling,
  levelAtTripLinear,
  lateByDoubling,
  lateByLinear,
  timeToGoDoubling,
  timeToGoLinear,
} from '../../src/method/time.ts';
import { relativeError } from './ranges.ts';

const level = fc.double({ min: 0.1, max: 100, noNaN: true });
const pace = fc.double({ min: 0.01, max: 100, noNaN: true });

describe('by hand', () => {
  it('1.25 mil at 0.1 mil a day is 12.5 days; early is negative', () => {
    expect(lateByLinear(6.25, 5, 0.1)).toBe(12.5);
    expect(lateByLinear(4, 5, 0.1)).toBe(-10);
    expect(timeToGoLinear(6.25, 2, 0.1)).toBe(42.5);
    expect(levelAtTripLinear(6.25, 0.5, 3)).toBe(7.75);
  });

  it('a threshold at twice the intent comes one doubling later', () => {
    expect(lateByDoubling(10, 5, 30)).toBe(30);
    expect(lateByDoubling(2.5, 5, 30)).toBe(-30);
    expect(timeToGoDoubling(8, 2, 30)).toBe(60);
    expect(levelAtTripDoubling(6, 3, 3)).toBe(12);
    expect(levelAtTripDoubling(6, 3, 0)).toBe(6);
  });

  it('a threshold already passed leaves no time; one that cannot act leaves all of it', () => {
    expect(timeToGoLinear(5, 6, 0.1)).toBe(0);
    expect(timeToGoDoubling(5, 6, 30)).toBe(0);
    expect(timeToGoLinear(Infinity, 6, 0.1)).toBe(Infinity);
    expect(timeToGoDoubling(Infinity, 6, 30)).toBe(Infinity);
    expect(lateByLinear(Infinity, 5, 0.1)).toBe(Infinity);
    expect(lateByDoubling(Infinity, 5, 30)).toBe(Infinity);
    expect(levelAtTripLinear(Infinity, 0.1, 3)).toBe(Infinity);
  });
});

describe('growth and time are inverse', () => {
  it('evenly growing vibration stands at T when its time has gone', () => {
    fc.assert(
      fc.property(level, level, pace, (t, now, rate) => {
        fc.pre(now < t);
        const then = timeToGoLinear(t, now, rate);
        expect(relativeError(now + rate * then, t)).toBeLessThan(1e-14);
        expect(relativeError(levelAtTripLinear(now, rate, then), t)).toBeLessThan(1e-14);
      }),
    );
  });

  it('doubling vibration stands at T when its time has gone', () => {
    fc.assert(
      fc.property(level, level, pace, (t, now, doubling) => {
        fc.pre(now < t);
        const then = timeToGoDoubling(t, now, doubling);
        expect(relativeError(now * Math.exp((Math.LN2 * then) / doubling), t)).toBeLessThan(1e-13);
        expect(relativeError(levelAtTripDoubling(now, doubling, then), t)).toBeLessThan(1e-13);
      }),
    );
  });

  it('lateness is the difference of the times to T and to S, whatever the level', () => {
    fc.assert(
      fc.property(level, level, pace, (t, s, p) => {
        const now = Math.min(t, s) / 2;
        const scale = Math.abs(timeToGoLinear(t, now, p)) + Math.abs(timeToGoLinear(s, now, p));
        const linear = timeToGoLinear(t, now, p) - timeToGoLinear(s, now, p);
        expect(Math.abs(lateByLinear(t, s, p) - linear)).toBeLessThan(1e-13 * scale);
        const doubling = timeToGoDoubling(t, now, p) - timeToGoDoubling(s, now, p);
        expect(Math.abs(lateByDoubling(t, s, p) - doubling)).toBeLessThan(1e-12 * p);
      }),
    );
  });
});

describe('ugly inputs give NaN', () => {
  for (const ugly of [NaN, 0, -1, Infinity]) {
    it(String(ugly), () => {
      expect(lateByLinear(6, 5, ugly)).toBeNaN();
      expect(lateByLinear(6, ugly, 0.1)).toBeNaN();
      expect(lateByDoubling(6, 5, ugly)).toBeNaN();
      expect(lateByDoubling(6, ugly, 30)).toBeNaN();
      expect(timeToGoLinear(6, 2, ugly)).toBeNaN();
      expect(timeToGoDoubling(6, ugly, 30)).toBeNaN();
      expect(timeToGoDoubling(6, 2, ugly)).toBeNaN();
      expect(levelAtTripDoubling(6, ugly, 3)).toBeNaN();
      if (ugly === Infinity) return;
      for (const f of [lateByLinear, lateByDoubling, timeToGoLinear, timeToGoDoubling, levelAtTripDoubling]) {
        expect(f(ugly, 5, 1)).toBeNaN();
      }
    });
  }

  it('no growth is not negative growth', () => {
    expect(levelAtTripLinear(6, 0, 3)).toBe(6);
    expect(levelAtTripLinear(6, -1, 3)).toBeNaN();
    expect(levelAtTripLinear(6, 1, -3)).toBeNaN();
    expect(levelAtTripLinear(6, Infinity, 3)).toBeNaN();
    expect(levelAtTripLinear(6, 1, Infinity)).toBeNaN();
    expect(levelAtTripDoubling(6, 3, Infinity)).toBeNaN();
    expect(timeToGoLinear(6, Infinity, 2)).toBeNaN();
    expect(levelAtTripLinear(0, 1, 3)).toBeNaN();
    expect(timeToGoLinear(6, 0, 2)).toBe(3);
    expect(timeToGoLinear(6, -1, 2)).toBeNaN();
  });
});
