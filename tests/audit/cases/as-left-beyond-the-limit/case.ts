import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand: Kc 200 mV/mil, danger 5 mil, limit 5.1 mil. As left 192 acts at 1000/192 = 5.2083 mil, 4.2 % late and so within 5 % (0.96 is above 0.95), but beyond 5.1 mil; as found 200 acts at 5 mil, 160 at 6.25 mil. As left 199 acts at 5.0251 mil.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Limit (mil)', 'As-left sensitivity (mV/mil)'],
        ['worse', 200, 5.1, 192],
        ['still', 160, 5.1, 192],
        ['right', 160, 5.1, 199],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...['worse', 'still', 'right'].map((tag) => [tag, 200, 3, 5]),
      ],
    ],
  ),
  channels: [
    ...(['still', 'right'] as const).map((tag, index) => ({
      tag,
      verdict: 'late' as const,
      findings: [
        `alert-late @ Monitor!C${index + 3}`,
        `danger-late @ Monitor!D${index + 3}`,
        `danger-beyond-limit @ Channels!C${index + 3}`,
        `alert-as-left-cured @ Channels!D${index + 3}`,
        `danger-as-left-cured @ Channels!D${index + 3}`,
        ...(tag === 'still' ? ['danger-as-left-beyond-limit @ Channels!D3'] : []),
      ],
      asLeft: { verdict: 'within' as const },
    })),
    { tag: 'worse', verdict: 'within', findings: ['danger-as-left-beyond-limit @ Channels!D2'] },
  ],
  says: [
    /acts at 5\.208 mil as left, beyond the limit of 5\.1 mil; as found it was not\.$/,
    /acts at 5\.208 mil as left, beyond the limit of 5\.1 mil; as it was as found\.$/,
  ],
};
