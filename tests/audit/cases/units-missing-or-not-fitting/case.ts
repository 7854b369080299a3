import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'No unit is guessed for a sensitivity or setpoint; a unit of another kind, two units for one cell or an unknown one make the row incomplete. ' +
    'A full scale without any unit is taken in that of the setpoints, and that is said; one in a unit that does not fit is evidence that can’t be used: incomplete; what stands in brackets and is no unit is said too.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Kind', 'Measured sensitivity (per the last sheet)', 'Measured sensitivity unit'],
        ['none', null, 200, null],
        ['other', 'radial', 200, 'mV/g'],
        ['unknown', null, 200, 'furlongs'],
        ['kind', 'velocity', 200, 'mV/mil'],
        ['good', null, 200, 'mV/mil'],
        ['levels', 'radial', 200, 'mV/mil'],
        ['wide', null, 200, 'mV/mil'],
        ['bare', null, 200, 'mV/mil'],
      ],
    ],
    [
      'Monitor',
      [
        [
          'Tag',
          'Configured sensitivity (mV/mil)',
          'Alert',
          'Alert unit',
          'Danger',
          'Danger unit',
          'Full scale',
          'Full scale unit',
        ],
        ...['none', 'other', 'unknown', 'kind'].map((tag) => [tag, 200, 3, 'mil', 5, 'mil', null, null]),
        ['good', 200, 3, 'mil', 5, 'mil', 10, null],
        ['levels', 200, 3, 'mm/s', 5, 'mm/s', null, null],
        ['wide', 200, 3, 'mil', 5, 'mil', 10, 'mm/s'],
        ['bare', 200, 3, null, 5, null, null, null],
      ],
    ],
  ),
  channels: [
    { tag: 'none', verdict: 'incomplete', findings: ['unit-missing @ Channels!C2'] },
    { tag: 'other', verdict: 'incomplete', findings: ['unit-does-not-fit @ Channels!C3'] },
    { tag: 'unknown', verdict: 'incomplete', findings: ['unit-not-clear @ Channels!C4'] },
    { tag: 'kind', verdict: 'incomplete', findings: ['unit-does-not-fit @ Monitor!B5'] },
    { tag: 'levels', verdict: 'incomplete', findings: ['unit-does-not-fit @ Monitor!E7'] },
    {
      tag: 'wide',
      verdict: 'incomplete',
      inputs: { fullScale: null },
      findings: ['unit-does-not-fit @ Monitor!G8'],
    },
    { tag: 'bare', verdict: 'incomplete', findings: ['unit-missing @ Monitor!E9'] },
    { tag: 'good', verdict: 'within', inputs: { fullScale: 10 } },
  ],
  problems: ['header-remark @ Channels!C1', 'unit-assumed @ Monitor!G1'],
};
