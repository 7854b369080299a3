import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Velocity, acceleration and loop channels obey T = S·Kc/Km in their own unit. By hand: 0.5 in/s × 100/80 = 0.625; 10 mm/s × 4/4.2 = 9.52 (1.05: on the band); 5 g × 100/90 = 5.56; loop 80 % × 0.16/0.15 = 85.3 %. 1 in/s is 25.4 mm/s: 3.937 mV/(mm/s) is 100 mV/(in/s).',
  book: book([
    'All',
    [
      [
        'Tag',
        'Kind',
        'Measured sensitivity',
        'Measured sensitivity unit',
        'Configured sensitivity',
        'Configured sensitivity unit',
        'Alert',
        'Alert unit',
        'Danger',
        'Danger unit',
      ],
      ['v', 'velocity', 80 / 25.4, 'mV/(mm/s)', 100, 'mV/in/s', 0.3, 'in/s pk', 0.5, 'ips pk'],
      ['mm', 'velocity', 4.2, 'mV per mm/s', 4, 'mV/(mm/s)', 7, 'mm/s rms', 10, 'mm/s rms'],
      ['a', 'acceleration', 90, 'mV/g', 100, 'mV/g', 3, 'g pk', 5, 'g pk'],
      ['l', '4-20 mA', 0.15, 'mA/%', 0.16, 'mA/%', 50, '%', 80, '%'],
      ['wrong', 'acceleration', 4, 'mV/(mm/s)', 4, 'mV/(mm/s)', 7, 'mm/s', 10, 'mm/s'],
    ],
  ]),
  channels: [
    {
      tag: 'v',
      verdict: 'late',
      is: { unit: 'in/s', detection: '0-p' },
      sensitivity: { measured: 80, unit: 'mV/(in/s)' },
      thresholds: { alert: { effective: 0.375 }, danger: { effective: 0.625, shiftFraction: 0.25 } },
      findings: ['alert-late @ All!G2', 'danger-late @ All!I2'],
    },
    {
      tag: 'a',
      verdict: 'late',
      is: { unit: 'g' },
      thresholds: { alert: { effective: 10 / 3 }, danger: { effective: 50 / 9 } },
      findings: ['alert-late @ All!G4', 'danger-late @ All!I4'],
    },
    {
      tag: 'l',
      verdict: 'late',
      is: { unit: '%', detection: null },
      thresholds: { alert: { effective: 160 / 3 }, danger: { effective: 256 / 3 } },
      findings: ['alert-late @ All!G5', 'danger-late @ All!I5'],
    },
    { tag: 'wrong', verdict: 'incomplete', findings: ['unit-does-not-fit @ All!E6'] },
    {
      tag: 'mm',
      verdict: 'within',
      is: { unit: 'mm/s', detection: 'rms' },
      thresholds: { alert: {}, danger: { effective: 40 / 4.2 } },
    },
  ],
  problems: ['units-mixed @ All!E3', 'units-mixed @ All!G3'],
};
