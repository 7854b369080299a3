import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Either table may hold any column. A full scale of 10 mil in one and 4 in the other contradict each other: neither is chosen, and the channel is incomplete; 254 µm and 10 mil are the same. Marks of bypass that say no here and yes there contradict each other too, a blank one contradicts nothing.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Full scale (µm)', 'Bypass'],
        ['apart', 200, 101.6, null],
        ['marks', 200, null, 'no'],
        ['blank', 200, null, null],
        ['same', 200, 254, 'no'],
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
          'Full scale (mil)',
          'Bypass',
        ],
        ['apart', 200, 3, 5, 10, null],
        ['marks', 200, 3, 5, 10, 'yes'],
        ['blank', 200, 3, 5, 10, 'yes'],
        ['same', 200, 3, 5, 10, 'no'],
      ],
    ],
  ),
  channels: [
    {
      tag: 'blank',
      verdict: 'within',
      is: { inBypass: true },
      findings: ['channel-in-bypass @ Monitor!F4'],
    },
    {
      tag: 'apart',
      verdict: 'incomplete',
      inputs: { fullScale: null },
      thresholds: { alert: {}, danger: { obstacles: ['two values contradict each other'] } },
      findings: ['tables-contradict @ Channels!C2'],
    },
    {
      tag: 'marks',
      verdict: 'incomplete',
      is: { inBypass: null },
      findings: ['tables-contradict @ Channels!D3'],
    },
    { tag: 'same', verdict: 'within', inputs: { fullScale: 10 } },
  ],
  attention: [
    'critical in-bypass blank',
    'critical incomplete apart danger',
    'critical incomplete marks danger',
  ],
};
