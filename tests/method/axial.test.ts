import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Direction,
  axialVoltageAt,
  axialIndicated,
  axialActual,
} from '../../src/method/axial/position.ts';
import { axialEffective, axialBand } from '../../src/method/axial/threshold.ts';
import { band } from '../../src/method/decision/band.ts';
import { effectiveThreshold } from '../../src/method/vibration/threshold.ts';
import { relativeError, sensitivity, setpoint, uncertainty, volts } from './ranges.ts';

const direction = fc.constantFrom<Direction>('toward', 'away');
const position = fc.double({ min: -100, max: 100, noNaN: true }).filter((x) => Math.abs(x) > 0.01);

describe('a position channel by hand: 200 mV/mil configured, 160 measured, monitor zero −10 V', () => {
  it('20 mil toward the probe is reached at −6 V: gap voltages are negative and shrink towards the probe', () => {
    expect(axialVoltageAt(20, 200, -10, 'toward')).toBe(-6);
    expect(axialVoltageAt(20, 200, -10, 'away')).toBe(-14);
    expect(axialVoltageAt(-20, 200, -10, 'toward')).toBe(-14);
  });

  it('one zero in both: 4 V of swing at 160 mV/mil is 25 mil', () => {
    expect(axialEffective(20, 200, 160, -10, -10, 'toward')).toBe(25);
    expect(axialEffective(-20, 200, 160, -10, -10, 'toward')).toBe(-25);
    expect(axialEffective(20, 200, 160, -10, -10, 'away')).toBe(25);
    expect(axialIndicated(20, 200, 160, -10, -10, 'toward')).toBe(16);
    expect(axialActual(16, 200, 160, -10, -10, 'toward')).toBe(20);
  });

  it('a mechanical zero at −9.2 V brings −6 V nearer: 3.2 V at 160 mV/mil is 20 mil; away it takes 4.8 V, 30 mil', () => {
    expect(axialEffective(20, 200, 160, -10, -9.2, 'toward')).toBeCloseTo(20, 12);
    expect(axialEffective(20, 200, 160, -10, -9.2, 'away')).toBeCloseTo(30, 12);
    expect(axialEffective(-20, 200, 160, -10, -9.2, 'toward')).toBeCloseTo(-30, 12);
  });

  it('a zero beyond the trip voltage puts the threshold on the other side: it acts at rest', () => {
    expect(axialEffective(20, 200, 160, -10, -5, 'toward')).toBeCloseTo(-6.25, 12);
  });
});

describe('properties', () => {
  it('the setpoint acts at the voltage that the monitor shows as the setpoint', () => {
    fc.assert(
      fc.property(position, sensitivity, sensitivity, volts, volts, direction, (s, kc, km, v0c, v0m, d) => {
        const t = axialEffective(s, kc, km, v0c, v0m, d);
        const trueVoltage = axialVoltageAt(t, km, v0m, d);
        expect(Math.abs(trueVoltage - axialVoltageAt(s, kc, v0c, d))).toBeLessThan(1e-10);
        expect(Math.abs(axialIndicated(t, kc, km, v0c, v0m, d) - s)).toBeLessThan(1e-8);
      }),
    );
  });

  it('one zero in both is a vibration channel', () => {
    fc.assert(
      fc.property(
        setpoint,
        sensitivity,
        sensitivity,
        volts,
        direction,
        uncertainty,
        (s, kc, km, v0, d, u) => {
          expect(axialEffective(s, kc, km, v0, v0, d)).toBe(effectiveThreshold(s, kc, km, 1));
          expect(axialEffective(-s, kc, km, v0, v0, d)).toBe(-effectiveThreshold(s, kc, km, 1));
          expect(axialBand(s, kc, km, v0, v0, d, u)).toEqual(band(s, kc, km, u, 1));
        },
      ),
    );
  });

  it('the band contains T, low first, and its ends are T at the ends of Km', () => {
    fc.assert(
      fc.property(
        position,
        sensitivity,
        sensitivity,
        volts,
        volts,
        direction,
        uncertainty,
        (s, kc, km, v0c, v0m, d, u) => {
          const t = axialEffective(s, kc, km, v0c, v0m, d);
          const { low, high } = axialBand(s, kc, km, v0c, v0m, d, u);
          expect(low).toBeLessThanOrEqual(t);
          expect(high).toBeGreaterThanOrEqual(t);
          const ends = [1 + u, 1 - u]
            .map((f) => axialEffective(s, kc, km * f, v0c, v0m, d))
            .sort((a, b) => a - b);
          expect(relativeError(low, ends[0]!)).toBeLessThan(1e-14);
          expect(relativeError(high, ends[1]!)).toBeLessThan(1e-14);
        },
      ),
    );
  });

  it('mirroring the direction and both zeros changes nothing', () => {
    fc.assert(
      fc.property(position, sensitivity, sensitivity, volts, volts, (s, kc, km, v0c, v0m) => {
        const mirrored = axialEffective(s, kc, km, -v0c, -v0m, 'away');
        expect(mirrored).toBe(axialEffective(s, kc, km, v0c, v0m, 'toward'));
      }),
    );
  });
});

describe('ugly inputs give NaN', () => {
  for (const ugly of [NaN, Infinity, -Infinity]) {
    it(String(ugly), () => {
      expect(axialEffective(ugly, 200, 160, -10, -10, 'toward')).toBeNaN();
      expect(axialEffective(20, ugly, 160, -10, -10, 'toward')).toBeNaN();
      expect(axialEffective(20, 200, ugly, -10, -10, 'toward')).toBeNaN();
      expect(axialEffective(20, 200, 160, ugly, -10, 'toward')).toBeNaN();
      expect(axialEffective(20, 200, 160, -10, ugly, 'toward')).toBeNaN();
      expect(axialVoltageAt(20, ugly, -10, 'away')).toBeNaN();
      expect(axialVoltageAt(20, 200, ugly, 'away')).toBeNaN();
    });
  }

  it('a setpoint of 0, a sensitivity of 0 or below, an uncertainty of 1', () => {
    expect(axialEffective(0, 200, 160, -10, -10, 'toward')).toBeNaN();
    for (const k of [0, -200]) {
      expect(axialEffective(20, k, 160, -10, -10, 'toward')).toBeNaN();
      expect(axialActual(20, 200, k, -10, -10, 'toward')).toBeNaN();
      expect(axialVoltageAt(20, k, -10, 'toward')).toBeNaN();
    }
    expect(axialBand(20, 200, 160, -10, -10, 'toward', 1)).toEqual({ low: NaN, high: NaN });
  });
});
