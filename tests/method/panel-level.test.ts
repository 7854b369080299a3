import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axialEffective, axialPanelLevel } from '../../src/method/axial/threshold.ts';
import { calibrationRecord, isFault } from '../../src/method/record/calibrationRecord.ts';
import type { Curve } from '../../src/method/record/curve.ts';
import { curveOf } from '../../src/method/record/curveOf.ts';
import {
  thresholdOnCurve,
  axialOnCurve,
  axialIndicatedOnCurve,
  indicatedOnCurve,
} from '../../src/method/record/onCurve.ts';
import { roundToPanelStep } from '../../src/method/roundToEarlySide.ts';
import { atCoverage } from '../../src/method/uncertainty.ts';
import { effectiveThreshold } from '../../src/method/vibration/threshold.ts';
import { panelLevel } from '../../src/method/vibration/panelReading.ts';
import { UGLY, multiplier, relativeError, sensitivity, setpoint } from './ranges.ts';

const uncertainty = fc.double({ min: 0, max: 0.5, noNaN: true });

describe('panel level (by hand: 5 mil × 160 / 200 = 4 mil shown; 3 % of it counted against it leaves 3.88)', () => {
  it('is what the monitor shows at the setpoint meant, the uncertainty counted against it', () => {
    expect(panelLevel(5, 200, 160, 0, 1)).toBe(4);
    expect(panelLevel(5, 200, 160, 0.03, 1)).toBeCloseTo(3.88, 12);
    expect(panelLevel(5, 200, 160, 0.03, 3)).toBeCloseTo(11.64, 12);
  });

  it('is never reached later than meant by a chain anywhere inside the uncertainty', () => {
    fc.assert(
      fc.property(setpoint, sensitivity, sensitivity, uncertainty, multiplier, (s, kc, km, u, m) => {
        const level = panelLevel(s, kc, km, u, m);
        expect(effectiveThreshold(level, kc, km * (1 - u), 1)).toBeCloseTo(m * s, 6);
        for (const true_ of [km, km * (1 + u)])
          expect(effectiveThreshold(level, kc, true_, 1)).toBeLessThanOrEqual(m * s * (1 + 1e-12));
      }),
    );
  });

  it('is NaN out of range', () => {
    for (const bad of [...UGLY, 0, -1]) {
      expect(panelLevel(bad, 200, 160, 0, 1)).toBeNaN();
      expect(panelLevel(5, bad, 160, 0, 1)).toBeNaN();
      expect(panelLevel(5, 200, bad, 0, 1)).toBeNaN();
    }
    expect(panelLevel(5, 200, 160, 1, 1)).toBeNaN();
  });
});

describe('panel level of a position (by hand: 20 mil × 160 = 3200 mV; / 200 = 16 mil; 3 % less is 15.52)', () => {
  it('is what the monitor shows there', () => {
    expect(axialPanelLevel(20, 200, 160, -10, -10, 'toward', 0)).toBe(16);
    expect(axialPanelLevel(20, 200, 160, -10, -10, 'toward', 0.03)).toBeCloseTo(15.52, 12);
    // A zero found 1 V nearer shows 5 mil more at 200 mV/mil.
    expect(axialPanelLevel(20, 200, 160, -10, -9, 'toward', 0)).toBeCloseTo(21, 12);
    expect(axialPanelLevel(-20, 200, 160, -10, -10, 'away', 0.03)).toBeCloseTo(-15.52, 12);
  });

  it('is none where the zero has moved past it', () => {
    expect(axialPanelLevel(20, 200, 160, -10, -14, 'toward', 0)).toBeNaN();
    // 20 mil × 150 mV/mil = 3 V, and the zero has moved by just as much: the panel shows 0.
    expect(axialPanelLevel(20, 200, 150, -10, -13, 'toward', 0)).toBeNaN();
    expect(axialPanelLevel(0, 200, 160, -10, -9.2, 'toward', 0)).toBeNaN();
  });

  it('is none with an uncertainty that is none', () => {
    for (const bad of [NaN, 1, 1.5, -0.03])
      expect(axialPanelLevel(20, 200, 160, -10, -9, 'toward', bad)).toBeNaN();
  });

  it('acts where it was meant', () => {
    fc.assert(
      fc.property(
        setpoint,
        sensitivity,
        sensitivity,
        fc.double({ min: -12, max: -8, noNaN: true }),
        fc.constantFrom('toward' as const, 'away' as const),
        (s, kc, km, zero, direction) => {
          const level = axialPanelLevel(s, kc, km, -10, zero, direction, 0);
          if (Number.isNaN(level)) return;
          expect(relativeError(axialEffective(level, kc, km, -10, zero, direction), s)).toBeLessThan(1e-9);
        },
      ),
    );
  });
});

function curve(gaps: readonly number[], volts: readonly number[]): Curve {
  const record = calibrationRecord(gaps, volts, 3);
  const found = isFault(record) ? undefined : curveOf(record, 'monotone');
  if (!found) throw new Error('no curve');
  return found;
}

describe('what a monitor shows on a measured curve', () => {
  const straight = curve([10, 30, 50, 70, 90], [-2, -5.2, -8.4, -11.6, -14.8]);
  const bent = curve([10, 30, 50, 70, 90], [-2, -5, -9, -12.4, -14]);

  it('of a straight record of 0.16 V/mil, 5 mil real at 0.2 V/mil shows 4 mil (by hand)', () => {
    expect(indicatedOnCurve(straight, 50, 5, 0.2)).toBeCloseTo(4, 12);
    const axial = { configured: 0.2, zeroConfigured: -8.4, zeroMeasured: -8.4, sign: 1 } as const;
    expect(axialIndicatedOnCurve(straight, { ...axial, setpoint: 20 })).toBeCloseTo(16, 12);
    expect(axialIndicatedOnCurve(straight, { ...axial, setpoint: -20 })).toBeCloseTo(-16, 12);
  });

  it('is the inverse of where a setpoint acts', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 35, max: 65, noNaN: true }),
        fc.double({ min: 0.5, max: 30, noNaN: true }),
        (gap, real) => {
          const shown = indicatedOnCurve(bent, gap, real, 0.2);
          const acts = thresholdOnCurve(bent, gap, shown, 0.2, 1);
          expect(acts && 'acts' in acts ? relativeError(acts.acts, real) : NaN).toBeLessThan(1e-9);
        },
      ),
    );
    fc.assert(
      fc.property(fc.double({ min: -30, max: 30, noNaN: true }), (real) => {
        const axial = { configured: 0.2, zeroConfigured: -8, zeroMeasured: -9, sign: -1 } as const;
        const shown = axialIndicatedOnCurve(bent, { ...axial, setpoint: real });
        expect(axialOnCurve(bent, { ...axial, setpoint: shown })).toBeCloseTo(real, 8);
      }),
    );
  });

  it('is NaN where the shaft would leave the record', () => {
    expect(indicatedOnCurve(bent, 15, 20, 0.2)).toBeNaN();
    expect(indicatedOnCurve(bent, NaN, 2, 0.2)).toBeNaN();
    for (const bad of UGLY) {
      expect(indicatedOnCurve(bent, 50, bad, 0.2)).toBeNaN();
      expect(indicatedOnCurve(bent, 50, 2, bad)).toBeNaN();
      const with_ = { configured: bad, zeroConfigured: -8, zeroMeasured: -9, sign: 1 } as const;
      expect(axialIndicatedOnCurve(bent, { ...with_, setpoint: 5 })).toBeNaN();
    }
    const axial = { configured: 0.2, zeroConfigured: -8, zeroMeasured: -20, sign: 1 } as const;
    expect(axialIndicatedOnCurve(bent, { ...axial, setpoint: 5 })).toBeNaN();
  });
});

describe('a level as it is said', () => {
  it('is on the step of the instrument, or has two digits, never later', () => {
    expect(roundToPanelStep(3.88, 0.1)).toBe(3.8);
    expect(roundToPanelStep(158.9, 0.5)).toBe(158.5);
    expect(roundToPanelStep(3.88, null)).toBe(3.8);
    expect(roundToPanelStep(158.9, null)).toBe(150);
    expect(roundToPanelStep(0.0479, null)).toBe(0.047);
    expect(roundToPanelStep(-15.52, null)).toBe(-15);
    expect(roundToPanelStep(0, null)).toBe(0);
    expect(roundToPanelStep(NaN, null)).toBeNaN();
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (value) => {
        const said = roundToPanelStep(value, null);
        expect(said).toBeLessThanOrEqual(value * (1 + 1e-12));
        expect(said).toBeGreaterThan(value * 0.9);
      }),
    );
  });
});

describe('an uncertainty at another coverage factor (JCGM 100:2008 6.2.1, U = k·u)', () => {
  it('is in proportion to it', () => {
    expect(atCoverage(0.045, 3, 2)).toBeCloseTo(0.03, 15);
    expect(atCoverage(0.03, 2, 2)).toBe(0.03);
    expect(atCoverage(0, 3, 2)).toBe(0);
    for (const bad of [0, -1, NaN, Infinity]) expect(atCoverage(0.03, bad, 2)).toBeNaN();
    expect(atCoverage(-0.01, 2, 2)).toBeNaN();
  });
});
