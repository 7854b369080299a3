import { describe, expect, it } from 'vitest';
import { parseUnit } from '../../src/units/parse.ts';

/** What people write, by the canonical unit it means; the spellings are common practice, no source. */
const WRITTEN: readonly (readonly [canonical: string, dimension: string, spellings: readonly string[]])[] = [
  [
    'mil',
    'displacement',
    ['mil', 'mils', 'MIL', 'Mils.', 'thou', ' mil ', '\u00a0mil\u00a0', '(mil)', '[mils]'],
  ],
  [
    'µm',
    'displacement',
    ['\u00b5m', '\u03bcm', '\u039cM', 'um', 'UM', 'micron', 'microns', 'micrometre', 'micrometers'],
  ],
  ['mm', 'displacement', ['mm', 'MM', 'millimetre', 'millimeters']],
  ['in', 'displacement', ['in', 'in.', 'inch', 'inches', '"', '\u2033']],
  ['cm', 'displacement', ['cm']],
  [
    'mV/mil',
    'voltage/displacement',
    [
      'mV*s/(mil*s)',
      'mV/mil',
      'mv/mil',
      'MV/mil',
      'MV/MIL',
      'mV / mil',
      'mV per mil',
      'millivolts per mil',
      'mV/mil.',
    ],
  ],
  ['mV/µm', 'voltage/displacement', ['mV/\u00b5m', 'mV/\u03bcm', 'mV/um', 'mV per micron']],
  ['mV/mm', 'voltage/displacement', ['mV/mm']],
  ['V/mm', 'voltage/displacement', ['V/mm', 'v/MM', 'volts per millimetre', 'V DC/mm']],
  ['V/mil', 'voltage/displacement', ['V/mil', 'volts/mil']],
  [
    'mV/(mm/s)',
    'voltage/velocity',
    ['mV/(mm/s)', 'mV/mm/s', 'mV\u00b7s/mm', 'mV s/mm', 'mV*s/mm', 'mV per mm/s', 'mV/[mm/s]'],
  ],
  [
    'mV/(in/s)',
    'voltage/velocity',
    ['mV/(in/s)', 'mV/in/s', 'mV per in/s', 'mV/ips', 'mV/(in/sec)', 'millivolts per inch per second'],
  ],
  ['mV/g', 'voltage/acceleration', ['mV/g', 'mV/G', 'mv per g']],
  [
    'mV/(m/s²)',
    'voltage/acceleration',
    ['mV/(m/s²)', 'mV/(m/s2)', 'mV/(m/s^2)', 'mV/m/s²', 'mV\u00b7s²/m', 'mV/(m/s/s)'],
  ],
  ['mA/(mm/s)', 'current/velocity', ['mA/(mm/s)', 'mA/mm/s', 'MA/(mm/s)']],
  ['mA/µm', 'current/displacement', ['mA/\u00b5m', 'mA/um']],
  ['mA/%', 'current/percent', ['mA/%', 'mA per %']],
  ['%', 'percent', ['%', 'percent', 'per cent', 'per  cent', 'pct']],
  [
    'r/min',
    'frequency',
    [
      'r/min',
      'rpm',
      'RPM',
      'r.p.m.',
      'rev/min',
      'cpm',
      '1/min',
      'min\u207b\u00b9',
      'min-1',
      'revolutions per minute',
    ],
  ],
  ['Hz', 'frequency', ['Hz', 'hz', 'HZ', '1/s']],
  ['mm/s', 'velocity', ['mm/s', 'mm/sec', 'MM/S', 'mm per second', 'mm\u2044s', 'mm\u2215s']],
  ['in/s', 'velocity', ['in/s', 'ips', 'IPS', 'in./sec', 'inches per second']],
  ['g', 'acceleration', ['g', 'G', "g's"]],
  ['m/s²', 'acceleration', ['m/s²', 'm/s2', 'm/s^2', 'm/s/s', 'metres per second squared']],
  ['V', 'voltage', ['V', 'V DC', 'Vdc', 'VDC', 'V d.c.', 'V (DC)', 'volts', 'Volts DC', 'Volt DC', 'V - DC']],
  ['mV', 'voltage', ['mV', 'mVdc', 'MV', 'millivolt']],
  ['mA', 'current', ['mA', 'ma', 'MA', 'mA DC']],
  ['A', 'current', ['A', 'amp', 'amps', 'ampere', 'amperes', 'Amp DC', 'amps d.c.']],
  ['s', 'time', ['s', 'sec', 'sec.', 'secs', 'seconds', 'S']],
  ['ms', 'time', ['ms', 'msec']],
  ['min', 'time', ['min', 'minutes']],
  ['h', 'time', ['h', 'hrs', 'hours']],
  ['day', 'time', ['d', 'day', 'days']],
  ['week', 'time', ['wk', 'wks', 'week', 'weeks']],
  ['mil/day', 'displacement/time', ['mil/day', 'mils/d', 'mil per day', 'mils per day']],
  ['µm/day', 'displacement/time', ['\u00b5m/d', 'um/day', 'microns per day']],
  ['(mm/s)/day', 'velocity/time', ['mm/s/day', 'mm/s per day', '(mm/s)/d']],
  ['g/day', 'acceleration/time', ['g/day', 'g per day']],
  ['g/s', 'acceleration/time', ['g/s']],
  ['%/h', 'percent/time', ['%/h']],
];

describe('unit texts as people write them', () => {
  for (const [canonical, dimension, spellings] of WRITTEN) {
    it(`${canonical} is a ${dimension}`, () => {
      for (const spelling of [canonical, ...spellings]) {
        const unit = parseUnit(spelling);
        expect(unit && [spelling, unit.text, unit.dimension]).toEqual([spelling, canonical, dimension]);
        expect(unit?.detection).toBeUndefined();
      }
    });
  }
});

describe('detection words beside a unit', () => {
  const DETECTED: readonly (readonly [string, string, string])[] = [
    ...[
      'mil p-p',
      'mils pp',
      'mil pk-pk',
      'mil peak to peak',
      'mil peak-to-peak',
      'MIL P-P',
      'p-p mil',
      'mil (p-p)',
      '[mil, pp]',
      'mil Spp',
      'milpp',
      'mil-pp',
      'mil\u00a0p\u2011p',
      'mil p/p',
      'mil ( p-p )',
      'p-p - mil',
    ].map((text) => [text, 'mil', 'p-p'] as const),
    ...[
      'mm/s 0-p',
      'mm/s pk',
      'mm/s peak',
      'mm/s 0-pk',
      'mm/s zero to peak',
      'mm/s zero-peak',
      'pk mm/s',
      'mm/s (pk)',
      'mm/s peak 0-p',
    ].map((text) => [text, 'mm/s', '0-p'] as const),
    ...['mm/s rms', 'mm/s RMS', 'mm/s r.m.s.', 'mm/s, rms', 'rms mm/s', 'mm/srms'].map(
      (text) => [text, 'mm/s', 'rms'] as const,
    ),
    ['in/s pk', 'in/s', '0-p'],
    ['ipspk', 'in/s', '0-p'],
    ['g pk', 'g', '0-p'],
    ['grms', 'g', 'rms'],
    ['µm S(p-p)', 'µm', 'p-p'],
    ['mV/mil pp', 'mV/mil', 'p-p'],
    ['mils per day p-p', 'mil/day', 'p-p'],
  ];
  for (const [text, unit, detection] of DETECTED) {
    it(text, () => {
      expect(parseUnit(text)).toMatchObject({ text: unit, detection });
    });
  }
});

describe('the longest text that is read', () => {
  it('has 64 letters', () => {
    expect(parseUnit('mil'.padEnd(64))?.text).toBe('mil');
    expect(parseUnit('mil'.padEnd(65))).toBeUndefined();
  });
});

describe('texts that name no unit', () => {
  const NOT_UNITS = [
    '',
    ' ',
    'units',
    'unit',
    'eu',
    'remarks',
    'tag',
    'kg',
    '°C',
    'AL1',
    '1',
    '0.5',
    '200',
    '5 mil',
    '-V dc',
    'mV/',
    '/mil',
    'mV//mil',
    'mil)',
    '((mil)',
    'mil mil',
    'mil*mil',
    'mV/mil/day',
    'mV/mV',
    'm/s3',
    's²',
    's*mil',
    'g/mil',
    'µm/g',
    'm(p-p)m',
    'mm/s speak',
    'mm/s peaks',
    'mil^-',
    'mil^1.5',
    'V^-1',
    'p-p',
    'Spp',
    'rms',
    'mm/s rms pk',
    'mil p-p 0-p',
    'per',
    '^2',
    'not',
    'in(mil)',
    'µ',
    'µV²',
    'MPa',
  ];
  for (const text of NOT_UNITS) {
    it(JSON.stringify(text), () => {
      expect(parseUnit(text)).toBeUndefined();
    });
  }
});

describe('hostile texts', () => {
  const HOSTILE = [
    '__proto__',
    'constructor',
    'toString',
    'hasOwnProperty',
    'mil.constructor',
    'mil["constructor"]',
    'f(x)=1',
    'import("mil")',
    '=1+1',
    '<b>mil</b>',
    'mil\u0000',
    '('.repeat(60),
    'mil/'.repeat(15),
    '\ufdfa'.repeat(64),
    'p'.repeat(64),
    'p-'.repeat(32),
    'mil'.padEnd(1_000_000, ' '),
    '/('.repeat(5_000_000),
  ];
  for (const text of HOSTILE) {
    it(JSON.stringify(text.slice(0, 30)), () => {
      expect(parseUnit(text)).toBeUndefined();
    });
  }

  it('any number of distinct texts leaves known ones readable', () => {
    for (let i = 0; i < 5000; i++)
      expect(parseUnit(`mil ${'x'.repeat(1 + (i % 40))}${String(i)}`)).toBeUndefined();
    expect(parseUnit('thou')?.text).toBe('mil');
    expect(parseUnit('mil  pk-pk')?.detection).toBe('p-p');
  });
});
