import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Rough rule of practice, no source: 1 % of length takes 1 to 4/3 % of the sensitivity. By hand: 180 of 200 with −9 of −10 V is 10 % low both, so 7.5 to 10 % too long, 0.675 to 0.9 m of 9 m; 216 with −10.8 V 8 % high, 6 to 8 % too short, 0.3 to 0.4 m of 5 m. 150 with −7.5 V would be more than a fifth. 180 with −7 V are off by 10 and 30 %, which are not alike: no length.',
  book: book([
    'All',
    [
      [
        'Tag',
        'Chain length (m)',
        'Measured sensitivity (mV/mil)',
        'Gap voltage (V)',
        'Reference gap voltage (V)',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'Danger (mil)',
      ],
      ['long', 9, 180, -9, -10, 200, 3, 5],
      ['short', 5, 216, -10.8, -10, 200, 3, 5],
      ['beyond', 9, 150, -7.5, -10, 200, 3, 5],
      ['unlike', 9, 180, -7, -10, 200, 3, 5],
      ['none', null, 180, -9, -10, 200, 3, 5],
      ['zero', 0, 200, -10, -10, 200, 3, 5],
    ],
  ]),
  channels: [
    { tag: 'beyond', verdict: 'late', findings: verdictsAndHint('beyond', 'late') },
    { tag: 'long', verdict: 'late', findings: verdictsAndHint('long', 'late') },
    { tag: 'unlike', verdict: 'late', findings: verdictsAndHint('unlike', 'late') },
    { tag: 'none', verdict: 'late', findings: verdictsAndHint('none', 'late') },
    {
      tag: 'short',
      verdict: 'early',
      findings: [...verdictsAndHint('short', 'early'), 'linear-range-short @ All!C3'],
    },
    { tag: 'zero', verdict: 'within', findings: ['value-out-of-range @ All!B7'] },
  ],
  says: [
    /about 8 to 10 % too long: near 0\.7 to 0\.9 m of 9 m \(a rough rule, no measurement\)/u,
    /about 6 to 8 % too short: near 0\.3 to 0\.4 m of 5 m/u,
    /would be more than a fifth of the length/u,
  ],
};

function verdictsAndHint(tag: string, verdict: string): string[] {
  const row = ['long', 'short', 'beyond', 'unlike', 'none'].indexOf(tag) + 2;
  return [
    `alert-${verdict} @ All!G${row}`,
    `danger-${verdict} @ All!H${row}`,
    `readings-point-to-a-cause @ All!D${row}`,
  ];
}
