import fc from 'fast-check';
import { unit as referenceUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { convert } from '../../src/units/unit.ts';
import { convertDetection, parseDetection } from '../../src/units/detection.ts';
import { parseUnit, type Detection, type Unit } from '../../src/units/parse.ts';

function unitOf(text: string): Unit {
  const unit = parseUnit(text);
  if (unit === undefined) throw new Error(`no unit: ${text}`);
  return unit;
}

function converted(value: number, from: string, to: string): number {
  return convert(value, unitOf(from), unitOf(to));
}

function relativeError(value: number, expected: number): number {
  return Math.abs(value - expected) / Math.abs(expected);
}

describe('exact factors', () => {
  it('1 mil is 25.4 µm, 0.0254 mm, 0.001 in (UNIT-MIL; NIST SP 811 App. B.8, text read)', () => {
    expect(converted(1, 'mil', 'µm')).toBe(25.4);
    expect(converted(1, 'mil', 'mm')).toBe(0.0254);
    expect(converted(1, 'mil', 'in')).toBe(0.001);
    expect(converted(25.4, 'µm', 'mil')).toBe(1);
    expect(converted(25.4, 'mm', 'in')).toBe(1);
  });

  it('200 and 100 mV/mil in mV/µm and V/mm (SCALE-200MV-MIL; arithmetic from the exact mil)', () => {
    const expected = [
      [200, 7.874015748031496],
      [100, 3.937007874015748],
    ] as const;
    for (const [perMil, perMicrometre] of expected) {
      expect(relativeError(converted(perMil, 'mV/mil', 'mV/µm'), perMicrometre)).toBeLessThan(1e-12);
      expect(relativeError(converted(perMil, 'mV/mil', 'V/mm'), perMicrometre)).toBeLessThan(1e-12);
      expect(converted(perMil, 'mV/mil', 'V/mil')).toBe(perMil / 1000);
    }
  });

  it('V/mm is mV/µm, and a g is 9.80665 m/s² (3rd CGPM 1901; NIST SP 811 App. B.8)', () => {
    expect(converted(7.87, 'V/mm', 'mV/µm')).toBe(7.87);
    expect(converted(1, 'g', 'm/s²')).toBe(9.80665);
    expect(converted(1, 'in/s', 'mm/s')).toBe(25.4);
    expect(relativeError(converted(100, 'mV/g', 'mV/(m/s²)'), 100 / 9.80665)).toBeLessThan(1e-15);
  });

  it('go to the base unit of their dimension, whatever they are compared with', () => {
    const factors: readonly (readonly [string, number])[] = [
      ['µm', 1],
      ['mil', 25.4],
      ['mm/s', 1],
      ['in/s', 25.4],
      ['m/s²', 1],
      ['mm/s²', 0.001],
      ['g', 9.80665],
      ['%', 1],
      ['V', 1],
      ['mV', 0.001],
      ['mA', 1],
      ['A', 1000],
      ['Hz', 1],
      ['s', 1],
      ['week', 604_800],
      ['mV/µm', 1],
      ['V/mm', 1],
      ['mV/(mm/s)', 1],
      ['mV/(m/s²)', 1],
      ['mA/%', 1],
      ['A/%', 1000],
      ['µm/day', 1],
      ['(mm/s)/day', 1],
    ];
    for (const [text, factor] of factors) expect([text, unitOf(text).factor]).toEqual([text, factor]);
  });

  it('speeds, times and growths (ISO 80000-3: 1 h = 60 min = 3600 s)', () => {
    expect(converted(3600, 'r/min', 'Hz')).toBe(60);
    expect(converted(50, 'Hz', 'rpm')).toBe(3000);
    expect(converted(1, 'day', 's')).toBe(86_400);
    expect(converted(0.1, 'mil/day', 'µm/day')).toBe(2.54);
    expect(relativeError(converted(1, 'mil/h', 'mil/day'), 24)).toBeLessThan(1e-15);
  });
});

describe('against a general unit library (mathjs, its own factors)', () => {
  const PAIRS = [
    ['mil', 'µm', 'mil', 'um'],
    ['in', 'mm', 'inch', 'mm'],
    ['cm', 'mil', 'cm', 'mil'],
    ['mV/mil', 'V/mm', 'mV/mil', 'V/mm'],
    ['V/mil', 'mV/µm', 'V/mil', 'mV/um'],
    ['mV/(in/s)', 'mV/(mm/s)', 'mV/(inch/s)', 'mV/(mm/s)'],
    ['mV/(m/s²)', 'mV/g', 'mV/(m/s^2)', 'mV/gravity'],
    ['in/s²', 'm/s²', 'inch/s^2', 'm/s^2'],
    ['mA/(mm/s)', 'mA/(in/s)', 'mA/(mm/s)', 'mA/(inch/s)'],
    ['mil/day', 'mm/h', 'mil/day', 'mm/hour'],
    ['g/day', 'g/h', 'cm/day', 'cm/hour'],
    ['week', 'min', 'week', 'minute'],
  ] as const;
  for (const [from, to, referenceFrom, referenceTo] of PAIRS) {
    it(`${from} → ${to}`, () => {
      const text = referenceFrom.replace('gravity', '(9.80665 m/s^2)');
      const reference = referenceTo.includes('gravity')
        ? referenceUnit(123.4, text).toNumber('mV/(m/s^2)') * 9.80665
        : referenceUnit(123.4, text).toNumber(referenceTo);
      expect(relativeError(converted(123.4, from, to), reference)).toBeLessThan(1e-14);
    });
  }
});

describe('conversion as such', () => {
  const TEXTS = [
    'mil',
    'µm',
    'mm',
    'in',
    'mV/mil',
    'mV/µm',
    'V/mm',
    'mm/s',
    'in/s',
    'g',
    'm/s²',
    'mV/g',
    'V',
    'mV',
    'r/min',
    'Hz',
    'mil/day',
    'mm/h',
    's',
    'day',
    '%',
  ];
  const anyUnit = fc.constantFrom(...TEXTS).map(unitOf);
  const value = fc.double({ min: 1e-6, max: 1e9, noNaN: true });

  it('there and back is the same number, to rounding; between dimensions it is NaN', () => {
    fc.assert(
      fc.property(anyUnit, anyUnit, value, (from, to, x) => {
        const there = convert(x, from, to);
        if (from.dimension !== to.dimension) {
          expect(there).toBeNaN();
        } else {
          expect(relativeError(convert(there, to, from), x)).toBeLessThan(5e-16);
        }
      }),
    );
  });

  it('the same unit gives the very same number, ugly ones too', () => {
    fc.assert(
      fc.property(anyUnit, fc.double(), (unit, x) => {
        expect(convert(x, unit, unit)).toBe(x);
      }),
    );
  });
});

describe('detection', () => {
  const DETECTIONS: readonly Detection[] = ['p-p', '0-p', 'rms'];

  it('1 mil p-p at 60 Hz: 4.7878 mm/s 0-p is 3.3855 mm/s rms (SINE-1MIL-60HZ, computed)', () => {
    expect(
      relativeError(convertDetection(4.7877872040708445, '0-p', 'rms'), 3.3854767988766747),
    ).toBeLessThan(1e-12);
    expect(convertDetection(3, '0-p', 'p-p')).toBe(6);
    expect(relativeError(convertDetection(1, 'rms', 'p-p'), 2.8284271247461903)).toBeLessThan(1e-15);
  });

  it('agrees with a sampled sinusoid (definition of peak and root mean square)', () => {
    const samples = Array.from({ length: 4096 }, (_, i) => 3 * Math.sin((2 * Math.PI * i) / 4096));
    const rms = Math.sqrt(samples.reduce((sum, x) => sum + x * x, 0) / samples.length);
    expect(relativeError(convertDetection(rms, 'rms', '0-p'), Math.max(...samples))).toBeLessThan(1e-12);
    const swing = Math.max(...samples) - Math.min(...samples);
    expect(relativeError(convertDetection(rms, 'rms', 'p-p'), swing)).toBeLessThan(1e-12);
  });

  it('there and back is the same number; unchanged within one detection', () => {
    for (const from of DETECTIONS) {
      fc.assert(
        fc.property(fc.double(), (size) => {
          expect(convertDetection(size, from, from)).toBe(size);
        }),
      );
      for (const to of DETECTIONS) {
        expect(relativeError(convertDetection(convertDetection(7.3, from, to), to, from), 7.3)).toBeLessThan(
          1e-15,
        );
      }
    }
  });

  it('is read alone, as in a column of its own', () => {
    for (const text of ['p-p', 'P-P', 'pp', 'pk-pk', 'peak to peak', ' p-p ', 'Spp'])
      expect(parseDetection(text)).toBe('p-p');
    for (const text of ['0-p', '0-pk', 'pk', 'Peak', 'zero to peak'])
      expect(parseDetection(text)).toBe('0-p');
    for (const text of ['rms', 'RMS', 'r.m.s.']) expect(parseDetection(text)).toBe('rms');
    for (const text of ['', 'x', 'mil p-p', 'rms pk', 'p', '0', 'arms', 'rmsx'])
      expect(parseDetection(text)).toBeUndefined();
  });
});
