import { expect, it } from 'vitest';
import { lengthOff } from '../../src/method/lengthOff.ts';
import { UGLY } from './ranges.ts';

it('a sensitivity and a gap voltage both 10 % low: 7.5 to 10 % too long (by hand)', () => {
  const found = lengthOff(180, 200, -9, -10);
  if (typeof found !== 'object') throw new Error(String(found));
  expect(found.most).toBeCloseTo(0.1, 12);
  expect(found.least).toBeCloseTo(0.075, 12);
});

it('both 6 % high: too short, whatever sign the voltages have (by hand)', () => {
  for (const [gap, reference] of [
    [-10.6, -10],
    [10.6, 10],
  ] as const) {
    const found = lengthOff(212, 200, gap, reference);
    if (typeof found !== 'object') throw new Error(String(found));
    expect(found.most).toBeCloseTo(-0.06, 12);
    expect(found.least).toBeCloseTo(-0.045, 12);
  }
});

it('the two may differ by a third of the larger, whichever it is; unlike ones say nothing', () => {
  // 10 % and 6.7 % are alike, 10 % and 6.6 % are not.
  expect(lengthOff(180, 200, -9.33, -10)).toBeTypeOf('object');
  expect(lengthOff(180, 200, -9.34, -10)).toBeUndefined();
  expect(lengthOff(186.6, 200, -9, -10)).toBeTypeOf('object');
  expect(lengthOff(186.8, 200, -9, -10)).toBeUndefined();
  // A half and three quarters of the way, exactly in doubles: 12.5 % and 25 %, 50 % of it.
  expect(lengthOff(0.875, 1, -0.75, -1)).toBeUndefined();
  // One too high, the other too low; one not off at all.
  expect(lengthOff(180, 200, -11, -10)).toBeUndefined();
  expect(lengthOff(220, 200, -9, -10)).toBeUndefined();
  expect(lengthOff(200, 200, -9, -10)).toBeUndefined();
  expect(lengthOff(180, 200, -10, -10)).toBeUndefined();
  expect(lengthOff(200, 200, -10, -10)).toBeUndefined();
});

it('says no length beyond a fifth, and a fifth itself', () => {
  expect(lengthOff(160, 200, -8, -10)).toBeTypeOf('object');
  expect(lengthOff(240, 200, -12, -10)).toBeTypeOf('object');
  expect(lengthOff(159, 200, -8, -10)).toBe('beyond');
  expect(lengthOff(241, 200, -12, -10)).toBe('beyond');
});

it('refuses what is no sensitivity above 0, and voltages without one sign', () => {
  for (const bad of UGLY) {
    expect(lengthOff(bad, 200, -9, -10)).toBeUndefined();
    expect(lengthOff(180, bad, -9, -10)).toBeUndefined();
  }
  for (const [gap, reference] of [
    [-9, 10],
    [9, -10],
    [0, -10],
    [-9, 0],
    [NaN, -10],
    [-9, Infinity],
  ] as const)
    expect(lengthOff(180, 200, gap, reference)).toBeUndefined();
});
