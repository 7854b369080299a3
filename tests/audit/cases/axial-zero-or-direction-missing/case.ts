import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Without both zero voltages nothing is known of where a position acts: incomplete, unless the sensitivities alone make it late, as 160 for 200 do (20·200/160 = 25 mil). With two that differ the direction decides, and is not guessed. A positive gap voltage has the wrong sign (common practice, no source): evidence that is there and unusable leaves the channel incomplete.',
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
      ['ratio', 'axial', 160, null, 'toward', null, 200, 15, 20, -10],
      ['direction', 'axial', 200, -11, null, null, 200, 15, 20, -10],
      ['same zero', 'axial', 200, -10, null, null, 200, 15, 20, -10],
      ['odd word', 'axial', 200, -11, 'up', null, 200, 15, 20, -10],
      ['sign', null, 200, null, null, 10, 200, 3, 5, null],
    ],
  ]),
  channels: [
    {
      tag: 'ratio',
      verdict: 'late',
      thresholds: {
        alert: { effective: 18.75, verdict: 'late', panel: null, interimSetpoint: null },
        danger: { effective: 25, verdict: 'late', panel: null, interimSetpoint: null },
      },
      findings: [
        'zero-voltage-missing @ All!D4',
        'alert-late @ All!H4',
        'danger-late @ All!I4',
        'alert-has-no-interim-setpoint @ All!A4',
        'danger-has-no-interim-setpoint @ All!A4',
      ],
    },
    { tag: 'measured', verdict: 'incomplete', findings: ['zero-voltage-missing @ All!D2'] },
    { tag: 'configured', verdict: 'incomplete', findings: ['zero-voltage-missing @ All!J3'] },
    { tag: 'direction', verdict: 'incomplete', findings: ['direction-missing @ All!E5'] },
    {
      tag: 'odd word',
      verdict: 'incomplete',
      findings: ['direction-missing @ All!E7', 'value-not-understood @ All!E7'],
    },
    {
      tag: 'sign',
      verdict: 'incomplete',
      inputs: { gapVoltage: null, linearReach: null },
      thresholds: {
        alert: { effective: 3, obstacles: ['a value that can’t be used'] },
        danger: { effective: 5, obstacles: ['a value that can’t be used'] },
      },
      findings: ['gap-voltage-positive @ All!F8'],
    },
    { tag: 'same zero', verdict: 'within' },
  ],
};
