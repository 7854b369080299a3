import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Vectors by hand: A was slow-rolled while its chain was right, so 1 mil at 210° is 1 mil real; 4 mil at 30° shown are 5 real, and 5 + 1 = 6 mil at 30°. Danger acts at 6.25, where the shaft moves 5.25 to 7.25 mil, 7.25 at this angle. B: danger 5 at 200/200 and 2 mil of runout, 40 % of it: 3 to 7 mil. C: 6 mil of runout reach the danger by themselves. D has a 1X amplitude without a phase, E a 1X vector without a runout, F is no radial channel.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Kind',
          'Measured sensitivity (mV/mil)',
          'Runout amplitude (mil)',
          'Runout phase (°)',
          'Runout sensitivity (mV/mil)',
          '1X amplitude (mil)',
          '1X phase (°)',
          'Zero voltage (V)',
        ],
        ['A', 'radial', 160, 1, 210, 200, 4, 30, null],
        ['B', 'radial', 200, 2, null, null, null, null, null],
        ['C', 'radial', 200, 6, 0, null, null, null, null],
        ['D', 'radial', 200, 0.5, 90, null, 1, null, null],
        ['E', 'radial', 200, null, null, null, 1, 10, null],
        ['F', 'axial', 200, 3, 0, null, null, null, -10],
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
          'Configured zero voltage (V)',
        ],
        ...['A', 'B', 'C', 'D', 'E'].map((tag) => [tag, 200, 3, 5, null]),
        ['F', 200, 3, 5, -10],
      ],
    ],
  ),
  channels: [
    { tag: 'A', verdict: 'late', findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2'] },
    { tag: 'B', verdict: 'within', findings: ['danger-runout-large @ Channels!D3'] },
    { tag: 'C', verdict: 'within', findings: ['danger-runout-large @ Channels!D4'] },
    { tag: 'D', verdict: 'within', findings: ['vector-not-whole @ Channels!H5'] },
    {
      tag: 'E',
      verdict: 'within',
      findings: ['vector-not-whole @ Channels!D6', 'vector-not-whole @ Channels!E6'],
    },
    { tag: 'F', verdict: 'within' },
  ],
  says: [
    /really 2 mil, 40 % of the danger\. .* really moves 3 mil to 7 mil/u,
    /reaches it by itself/u,
    /1x phase is missing/u,
  ],
};
