import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leavesFaultLimits, swing, linearReach, voltReach } from '../../src/method/reach.ts';
import { UGLY, sensitivity, setpoint, volts } from './ranges.ts';

describe('linear reach (geometry; 10 to 90 mil and −2 to −18 V are common practice, no source)', () => {
  it('is twice the way to the nearer end, 0 outside', () => {
    expect(linearReach(50, 10, 90)).toBe(80);
    expect(linearReach(30, 10, 90)).toBe(40);
    expect(linearReach(80, 10, 90)).toBe(20);
    expect(linearReach(10, 10, 90)).toBe(0);
    expect(linearReach(5, 10, 90)).toBe(0);
    expect(linearReach(95, 10, 90)).toBe(0);
  });

  it('the swing it allows just touches the range', () => {
    const gap = fc.double({ min: 10, max: 90, noNaN: true });
    fc.assert(
      fc.property(gap, (g) => {
        const half = linearReach(g, 10, 90) / 2;
        expect(g - half).toBeGreaterThanOrEqual(10 - 1e-12);
        expect(g + half).toBeLessThanOrEqual(90 + 1e-12);
        expect(Math.min(g - half - 10, 90 - g - half)).toBeCloseTo(0, 12);
      }),
    );
  });

  it('in volts: 8 V each way at 200 mV/mil is 40 mil each way', () => {
    expect(voltReach(-10, -2, -18, 200)).toBe(80);
    expect(voltReach(-10, -18, -2, 200)).toBe(80);
    expect(voltReach(-4, -2, -18, 160)).toBe(25);
    expect(voltReach(-1.5, -2, -18, 200)).toBe(0);
    expect(voltReach(-19, -2, -18, 200)).toBe(0);
  });

  it('ugly inputs give NaN', () => {
    expect(linearReach(50, 90, 10)).toBeNaN();
    expect(linearReach(50, 10, 10)).toBeNaN();
    for (const ugly of UGLY) expect(voltReach(-10, -2, -18, ugly)).toBeNaN();
    for (const ugly of [NaN, Infinity]) {
      expect(linearReach(ugly, 10, 90)).toBeNaN();
      expect(linearReach(50, ugly, 90)).toBeNaN();
      expect(linearReach(50, 10, ugly)).toBeNaN();
      expect(voltReach(ugly, -2, -18, 200)).toBeNaN();
    }
  });
});

describe('swing against circuit-fault limits', () => {
  it('5 mil p-p at 200 mV/mil swings 0.5 V each way about the gap voltage', () => {
    expect(swing(-10, 5, 200, 1)).toEqual({ nearest: -9.5, farthest: -10.5 });
    expect(swing(-10, 5, 200, 3)).toEqual({ nearest: -8.5, farthest: -11.5 });
  });

  it('is about the gap voltage, m·S·Kc wide', () => {
    fc.assert(
      fc.property(volts, setpoint, sensitivity, (v0, s, kc) => {
        const { nearest, farthest } = swing(v0, s, kc, 1);
        expect(nearest - farthest).toBeCloseTo((s * kc) / 1000, 8);
        expect((nearest + farthest) / 2).toBeCloseTo(v0, 8);
      }),
    );
  });

  it('leaves the limits on either side; touching is not leaving', () => {
    expect(leavesFaultLimits(-10, 5, 200, 1, -2.75, -18)).toBe(false);
    expect(leavesFaultLimits(-3, 5, 200, 1, -2.75, -18)).toBe(true);
    expect(leavesFaultLimits(-17.75, 5, 200, 1, -18, -2.75)).toBe(true);
    expect(leavesFaultLimits(-3.25, 5, 200, 1, -2.75, -18)).toBe(false);
    expect(leavesFaultLimits(-17.5, 5, 200, 1, -2.75, -18)).toBe(false);
    expect(leavesFaultLimits(-17.51, 5, 200, 1, -2.75, -18)).toBe(true);
    expect(leavesFaultLimits(-3.25, 5, 200, 2, -2.75, -18)).toBe(true);
  });

  it('ugly inputs cannot be judged', () => {
    for (const ugly of UGLY) {
      expect(swing(-10, ugly, 200, 1)).toEqual({ nearest: NaN, farthest: NaN });
      expect(leavesFaultLimits(-10, 5, ugly, 1, -2.75, -18)).toBeUndefined();
      expect(leavesFaultLimits(-10, 5, 200, ugly, -2.75, -18)).toBeUndefined();
    }
    expect(leavesFaultLimits(NaN, 5, 200, 1, -2.75, -18)).toBeUndefined();
    expect(leavesFaultLimits(-10, 5, 200, 1, NaN, -18)).toBeUndefined();
  });
});
