import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundToEarlySide } from '../../src/method/roundToEarlySide.ts';
import {
  effectiveThreshold,
  shift,
  shiftFraction,
  interimSetpoint,
} from '../../src/method/vibration/threshold.ts';
import { indicated, actual, headroom } from '../../src/method/vibration/panelReading.ts';
import { sensitivityError, configuredFromGain } from '../../src/method/vibration/sensitivity.ts';
import { UGLY, multiplier, relativeError, sensitivity, setpoint } from './ranges.ts';

describe('5 mil at 200 mV/mil configured, 160 measured (by hand: 5 mil × 200 mV/mil = 1000 mV; 1000 / 160 = 6.25 mil)', () => {
  it('acts at 6.25 mil, 1.25 mil or 25 % late, though the sensitivity is 20 % low', () => {
    expect(effectiveThreshold(5, 200, 160, 1)).toBe(6.25);
    expect(effectiveThreshold(5, 200, 160, 3)).toBe(18.75);
    expect(shift(5, 200, 160, 1)).toBe(1.25);
    expect(shift(5, 200, 160, 2)).toBe(2.5);
    expect(shiftFraction(200, 160)).toBe(0.25);
    expect(sensitivityError(200, 160)).toBe(-0.2);
  });

  it('shows 4 mil at 5 mil real; 2 mil shown leaves 3.75 mil', () => {
    expect(indicated(5, 200, 160)).toBe(4);
    expect(actual(4, 200, 160)).toBe(5);
    expect(headroom(6.25, 2, 200, 160)).toBe(3.75);
    expect(headroom(6.25, 8, 200, 160)).toBe(-3.75);
    expect(headroom(Infinity, 2, 200, 160)).toBe(Infinity);
  });

  it('a monitor that shows 98 % of an injected signal divides by 200/0.98', () => {
    expect(configuredFromGain(200, 1)).toBe(200);
    expect(relativeError(configuredFromGain(200, 0.98) * 0.98, 200)).toBeLessThan(1e-15);
  });
});

describe('interim setpoint', () => {
  it('is on the step it falls on, noise or not, and prints as one', () => {
    expect(interimSetpoint(5, 200, 160, 0.1)).toBe(4);
    expect(interimSetpoint(5, 200, 160, null)).toBe(4);
    expect(interimSetpoint(5, 200, 157, 0.1)).toBe(3.9);
    expect(interimSetpoint(5, 200, 220, 0.25)).toBe(5.5);
    expect(interimSetpoint(5, 200, 219, 0.25)).toBe(5.25);
    expect(interimSetpoint(0.4, 200, 160, 0.5)).toBeNaN();
    expect(roundToEarlySide(0.1 + 0.2, 0.1)).toBe(0.3);
    expect(roundToEarlySide(0.3 - 1e-16, 0.1)).toBe(0.3);
    expect(roundToEarlySide(0.29999, 0.1)).toBe(0.2);
    expect(roundToEarlySide(-4.37, 0.1)).toBe(-4.3);
    expect(roundToEarlySide(-0.04, 0.1)).toBe(0);
    expect(roundToEarlySide(127.4, 2.54)).toBe(127);
  });

  it('is never later than the intent, and less than a step from it', () => {
    const resolution = fc.constantFrom(0.001, 0.01, 0.02, 0.05, 0.1, 0.25, 0.5, 1, 2.54);
    fc.assert(
      fc.property(setpoint, sensitivity, sensitivity, resolution, (s, kc, km, step) => {
        const interim = interimSetpoint(s, kc, km, step);
        const exact = interimSetpoint(s, kc, km, null);
        if (Number.isNaN(interim)) {
          expect(exact).toBeLessThan(step);
          return;
        }
        expect(interim).toBeLessThanOrEqual(exact * (1 + 2e-12) + step * 2e-12);
        expect(exact - interim).toBeLessThan(step);
        expect(effectiveThreshold(interim, kc, km, 1)).toBeLessThanOrEqual(s * (1 + 1e-9));
        expect(roundToEarlySide(interim, step)).toBe(interim);
      }),
    );
  });
});

describe('properties of the effective threshold', () => {
  it('T·Km = m·S·Kc', () => {
    fc.assert(
      fc.property(setpoint, sensitivity, sensitivity, multiplier, (s, kc, km, m) => {
        expect(relativeError(effectiveThreshold(s, kc, km, m) * km, m * s * kc)).toBeLessThan(1e-15);
      }),
    );
  });

  it('does not depend on the unit of the sensitivities, and scales with the unit of the setpoint', () => {
    const scale = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(setpoint, sensitivity, sensitivity, multiplier, scale, (s, kc, km, m, c) => {
        const t = effectiveThreshold(s, kc, km, m);
        expect(relativeError(effectiveThreshold(s, kc * c, km * c, m), t)).toBeLessThan(2e-15);
        expect(relativeError(effectiveThreshold(s * c, kc, km, m), t * c)).toBeLessThan(2e-15);
      }),
    );
  });

  it('the shift is T − m·S and its fraction is Kc/Km − 1', () => {
    fc.assert(
      fc.property(setpoint, sensitivity, sensitivity, multiplier, (s, kc, km, m) => {
        const t = effectiveThreshold(s, kc, km, m);
        expect(Math.abs(shift(s, kc, km, m) - (t - m * s))).toBeLessThan(1e-14 * Math.max(t, m * s));
        expect(Math.abs(shiftFraction(kc, km) - (kc / km - 1))).toBeLessThan(1e-15 * Math.max(1, kc / km));
        expect(Math.abs((1 + sensitivityError(kc, km)) * (1 + shiftFraction(kc, km)) - 1)).toBeLessThan(
          1e-14 * (1 + kc / km) * (1 + km / kc),
        );
      }),
    );
  });

  it('the monitor shows m·S exactly when the shaft moves T, and headroom is then none', () => {
    fc.assert(
      fc.property(setpoint, sensitivity, sensitivity, (s, kc, km) => {
        const t = effectiveThreshold(s, kc, km, 1);
        expect(relativeError(indicated(t, kc, km), s)).toBeLessThan(1e-15);
        expect(relativeError(actual(indicated(s, kc, km), kc, km), s)).toBeLessThan(1e-15);
        expect(Math.abs(headroom(t, s, kc, km))).toBeLessThan(1e-15 * t);
      }),
    );
  });
});

describe('ugly inputs give NaN', () => {
  for (const ugly of UGLY) {
    it(String(ugly), () => {
      expect(effectiveThreshold(ugly, 200, 160, 1)).toBeNaN();
      expect(effectiveThreshold(5, ugly, 160, 1)).toBeNaN();
      expect(effectiveThreshold(5, 200, ugly, 1)).toBeNaN();
      expect(effectiveThreshold(5, 200, 160, ugly)).toBeNaN();
      expect(shift(5, 200, ugly, 1)).toBeNaN();
      expect(shift(ugly, 200, 160, 1)).toBeNaN();
      expect(shiftFraction(ugly, 160)).toBeNaN();
      expect(shiftFraction(200, ugly)).toBeNaN();
      expect(sensitivityError(ugly, 160)).toBeNaN();
      expect(sensitivityError(200, ugly)).toBeNaN();
      expect(indicated(5, ugly, 160)).toBeNaN();
      expect(actual(5, 200, ugly)).toBeNaN();
      expect(configuredFromGain(ugly, 1)).toBeNaN();
      expect(configuredFromGain(200, ugly)).toBeNaN();
      expect(interimSetpoint(ugly, 200, 160, 0.1)).toBeNaN();
      expect(interimSetpoint(5, 200, 160, ugly)).toBeNaN();
      expect(headroom(6.25, 2, ugly, 160)).toBeNaN();
      if (ugly !== Infinity) expect(headroom(ugly, 2, 200, 160)).toBeNaN();
    });
  }

  it('a reading of 0 is a reading; a negative or endless one is none', () => {
    expect(indicated(0, 200, 160)).toBe(0);
    expect(indicated(-1, 200, 160)).toBeNaN();
    expect(actual(Infinity, 200, 160)).toBeNaN();
    expect(roundToEarlySide(NaN, 0.1)).toBeNaN();
    expect(roundToEarlySide(Infinity, 0.1)).toBeNaN();
  });
});
