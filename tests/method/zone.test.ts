import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { zone, zoneLimit, compressorLimit } from '../../src/method/zone.ts';
import { UGLY } from './ranges.ts';

describe('zone boundaries, ISO 7919-3 (ISO7919-3-ZONES; second-hand, the formulas agree with a general process library)', () => {
  const SPEEDS = [1500, 1800, 3000, 3600, 5000, 6000, 10_000, 12_000, 15_000];
  const EXPECTED = {
    'A/B': [123.935467, 113.137085, 87.635609, 80.0, 67.882251, 61.967734, 48.0, 43.817805, 39.191836],
    'B/C': [232.379001, 212.132034, 164.316767, 150.0, 127.279221, 116.1895, 90.0, 82.158384, 73.484692],
    'C/D': [340.822534, 311.126984, 240.997925, 220.0, 186.67619, 170.411267, 132.0, 120.498963, 107.777549],
  } as const;
  for (const boundary of ['A/B', 'B/C', 'C/D'] as const) {
    it(boundary, () => {
      SPEEDS.forEach((speed, i) => {
        // The values are given to six decimals.
        expect(Math.abs(zoneLimit(boundary, speed) - EXPECTED[boundary][i]!)).toBeLessThan(5.1e-7);
      });
    });
  }

  it('lie within 3 µm of the rounded tables for 3000 and 3600 r/min (second-hand)', () => {
    const TABLES = [
      [3000, 90, 165, 240],
      [3600, 80, 150, 220],
    ] as const;
    for (const [speed, ...limits] of TABLES) {
      (['A/B', 'B/C', 'C/D'] as const).forEach((boundary, i) => {
        expect(Math.abs(zoneLimit(boundary, speed) - limits[i]!)).toBeLessThanOrEqual(3);
      });
    }
  });
});

describe('zone of a vibration', () => {
  it('at 3600 r/min: 80, 150 and 220 µm belong to the better zone', () => {
    expect([0, 80, 80.001, 150, 150.001, 220, 220.001, Infinity].map((d) => zone(d, 3600))).toEqual([
      'A',
      'A',
      'B',
      'B',
      'C',
      'C',
      'D',
      'D',
    ]);
  });

  it('5 mil intended is zone B at 3600 r/min, the 6.25 mil at which it acts zone C', () => {
    expect(zone(5 * 25.4, 3600)).toBe('B');
    expect(zone(6.25 * 25.4, 3600)).toBe('C');
  });

  it('never gets better with more vibration or more speed', () => {
    const size = fc.double({ min: 0, max: 500, noNaN: true });
    const speed = fc.double({ min: 100, max: 20_000, noNaN: true });
    fc.assert(
      fc.property(size, size, speed, speed, (d1, d2, n1, n2) => {
        const better = zone(Math.min(d1, d2), Math.min(n1, n2))!;
        const worse = zone(Math.max(d1, d2), Math.max(n1, n2))!;
        expect(better <= worse).toBe(true);
      }),
    );
  });

  it('ugly inputs have no zone', () => {
    for (const ugly of UGLY) {
      expect(zone(100, ugly)).toBeUndefined();
      expect(zoneLimit('A/B', ugly)).toBeNaN();
      expect(compressorLimit(ugly, null)).toBeNaN();
      expect(compressorLimit(3000, ugly)).toBeNaN();
    }
    expect(zone(-1, 3600)).toBeUndefined();
    expect(zone(NaN, 3600)).toBeUndefined();
  });
});

describe('compressor acceptance limit, API 617 (API617-LIMIT; second-hand, the cap is disputed)', () => {
  it('25.4·√(12000/N) µm p-p with and without its cap', () => {
    const CASES = [
      [3000, 50.8, 25.4],
      [12_000, 25.4, 25.4],
      [48_000, 12.7, 12.7],
    ] as const;
    for (const [speed, uncapped, capped] of CASES) {
      expect(Math.abs(compressorLimit(speed, null) - uncapped)).toBeLessThan(1e-9);
      expect(Math.abs(compressorLimit(speed, 25.4) - capped)).toBeLessThan(1e-9);
      expect(Math.abs(compressorLimit(speed, 50.8) - uncapped)).toBeLessThan(1e-9);
    }
  });
});
