import { book } from '../../book.ts';
import type { GoldenCase } from '../../golden.ts';

const speeds = [500, 1000, 1500, 2000, 2500, 3000, 3500, 4000];
const amplitudes = [0.4, 0.8, 2, 4.8, 6.4, 3.2, 2.4, 2.2];

export const golden: GoldenCase = {
  because:
    'By hand, amplitudes joined straight, 160 for 200 mV/mil, danger 4. R, real: 4 between 2 and 4.8 at 1500 + 500·2/2.8 = 1857.14; shown ' +
    'as 0.8 of it, 4 between 3.84 and 5.12 at 2000 + 500·0.16/1.28 = 2062.5, really 5. I, indicated by the channel: shown 4 at 1857.14, ' +
    'really 4 at 1500 + 500·1.5/3.5 = 1714.29. M, real, twice the setpoint below 2800 r/min: really 4.48 there, where the plain one comes ' +
    'into force, shown as 3.584; from there on it falls: never. D, real, at 100 r/min a second with a delay of 3 s: each 300 r/min later. ' +
    'E, 250 for 200: shown 4 at a real 3.2, at 1714.29. Source: worked examples, independent of this code.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Kind', 'Measured sensitivity (mV/mil)'],
        ['R', 'radial', 160],
        ['I', 'radial', 160],
        ['M', 'radial', 160],
        ['D', 'radial', 160],
        ['E', 'radial', 250],
      ],
    ],
    [
      'Monitor',
      [
        [
          'Tag',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
          'Danger delay (s)',
          'Multiplier',
        ],
        ['R', 200, 3.9, 4, 0, 1],
        ['I', 200, 3.9, 4, 0, 1],
        ['M', 200, 3.9, 4, 0, 2],
        ['D', 200, 3.9, 4, 3, 1],
        ['E', 200, 3.9, 4, 0, 1],
      ],
    ],
    [
      'Run-up',
      [
        ['Tag', 'Speed', 'Amplitude (mil)', 'Real or indicated', 'Multiplier below (r/min)', 'Rate'],
        ...speeds.flatMap((speed, at) => [
          ['R', speed, amplitudes[at]!, 'real', null, null],
          ['I', speed, amplitudes[at]!, 'indicated', null, null],
          ['M', speed, amplitudes[at]!, 'real', 2800, null],
          ['D', speed, amplitudes[at]!, 'real', null, 100],
          ['E', speed, amplitudes[at]!, 'real', null, null],
        ]),
      ],
    ],
  ),
  channels: [
    {
      tag: 'R',
      verdict: 'late',
      findings: [
        'alert-late @ Monitor!C2',
        'danger-late @ Monitor!D2',
        'danger-run-up-late @ Monitor!D2',
        'alert-run-up-late @ Monitor!C2',
      ],
    },
    {
      tag: 'I',
      verdict: 'late',
      findings: [
        'alert-late @ Monitor!C3',
        'danger-late @ Monitor!D3',
        'danger-run-up-late @ Monitor!D3',
        'alert-run-up-late @ Monitor!C3',
      ],
    },
    {
      tag: 'M',
      verdict: 'late',
      findings: [
        'alert-late @ Monitor!C4',
        'danger-late @ Monitor!D4',
        'alert-late @ Monitor!C4',
        'danger-late @ Monitor!D4',
        'danger-run-up-no-action @ Monitor!D4',
        'alert-run-up-no-action @ Monitor!C4',
      ],
    },
    {
      tag: 'D',
      verdict: 'late',
      findings: [
        'alert-late @ Monitor!C5',
        'danger-late @ Monitor!D5',
        'danger-run-up-late @ Monitor!D5',
        'alert-run-up-late @ Monitor!C5',
      ],
    },
    {
      tag: 'E',
      verdict: 'early',
      findings: [
        'alert-early @ Monitor!C6',
        'danger-early @ Monitor!D6',
        'danger-run-up-early @ Monitor!D6',
        'alert-run-up-early @ Monitor!C6',
        'linear-range-short @ Channels!C6',
      ],
    },
  ],
  headlines: [
    /^M danger × 2 below 2,800 r\/min on the run-up: would not have acted, though really/,
    /^R danger on the run-up: acts at 2,063 r\/min instead of 1,857 r\/min, by then really 5 mil/,
  ],
  runUps: {
    R: { danger: { outcome: 'late', acts: 2062.5, should: 1857.142857142857, realAtTrip: 5 } },
    I: { danger: { outcome: 'late', acts: 1857.142857142857, should: 1714.2857142857142, realAtTrip: 5 } },
    M: { 'danger ×2': { outcome: 'no action', acts: null, should: 2800, realAtTrip: null } },
    D: { danger: { outcome: 'late', acts: 2362.5, should: 2157.142857142857, realAtTrip: 5.96 } },
    E: { danger: { outcome: 'early', acts: 1714.2857142857142, should: 1857.142857142857, realAtTrip: 3.2 } },
  },
};
