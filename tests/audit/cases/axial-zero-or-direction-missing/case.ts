import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Without a zero voltage a moved zero is not judged, and that is said; with two that differ the direction decides, and is not guessed. A positive gap voltage has the wrong sign (common practice, no source) and is not used.',
  book: book([
    'All',
    [
      [
        'Tag',
        'Kind',
        'Measured sensitivity (mV/mil)',
        'Measured zero voltage (V)',
        'Positive direction',
        'Gap voltage (V)',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'Danger (mil)',
        'Configured zero voltage (V)',
      ],
      ['measured', 'axial', 200, null, 'toward', null, 200, 15, 20, -10],
      ['configured', 'axial', 200, -10, 'away', null, 200, 15, 20, null],
      ['direction', 'axial', 200, -11, null, null, 200, 15, 20, -10],
      ['same zero', 'axial', 200, -10, null, null, 200, 15, 20, -10],
      ['odd word', 'axial', 200, -11, 'up', null, 200, 15, 20, -10],
      ['sign', null, 200, null, null, 10, 200, 3, 5, null],
    ],
  ]),
  channels: [
    { tag: 'direction', verdict: 'incomplete', findings: ['direction-missing @ All!E4'] },
    {
      tag: 'odd word',
      verdict: 'incomplete',
      findings: ['direction-missing @ All!E6', 'value-not-understood @ All!E6'],
    },
    { tag: 'measured', verdict: 'within', findings: ['zero-voltage-missing @ All!D2'] },
    { tag: 'configured', verdict: 'within', findings: ['zero-voltage-missing @ All!J3'] },
    { tag: 'same zero', verdict: 'within' },
    {
      tag: 'sign',
      verdict: 'within',
      inputs: { gapVoltage: null, linearReach: null },
      findings: ['gap-voltage-positive @ All!F7'],
    },
  ],
};
