import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'A header’s k is that of its own column. A: 3 % at k = 3 is 2 % at 2, the gain’s 1 % states none and stands at 2, the zero’s 0.1 V at k = 1 is 0.2 V. So for danger 20: A 4000 mV with √(200² + 40²), B 200 with 4: Fieller’s (200² − 4²)T² − 2·4000·200·T + 4000² − 41600 = 0. B’s row states k = 1 for all of its uncertainties: 6 %, 2 % and 0.2 V; (200² − 12²)T² − 1600000·T + 4000² − 46400 = 0.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Kind',
          'Measured sensitivity (mV/mil)',
          'Uncertainty (%, k=3)',
          'Coverage factor',
          'Zero voltage (V)',
          'Zero voltage uncertainty (V, k=1)',
          'Direction',
        ],
        ['A', 'axial', 200, 3, null, -10, 0.1, 'toward'],
        ['B', 'axial', 200, 3, 1, -10, 0.1, 'toward'],
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
          'Monitor gain uncertainty (%)',
        ],
        ['A', 200, 15, 20, -10, 1],
        ['B', 200, 15, 20, -10, 1],
      ],
    ],
  ),
  channels: [
    channel('A', 2, 4, 41_600, { gainUncertainty: 0.01, zeroUncertainty: 0.2 }),
    channel('B', 3, 12, 46_400, { gainUncertainty: 0.02, zeroUncertainty: 0.2 }),
  ],
};

function channel(tag: string, row: number, ub: number, ua2: number, inputs: object) {
  const [square, half, least] = [200 ** 2 - ub ** 2, 800_000, 4000 ** 2 - ua2];
  const root = Math.sqrt(half ** 2 - square * least);
  return {
    tag,
    verdict: 'undetermined',
    inputs,
    thresholds: { alert: {}, danger: { low: (half - root) / square, high: (half + root) / square } },
    findings: [`alert-undetermined @ Monitor!C${row}`, `danger-undetermined @ Monitor!D${row}`],
  } as const;
}
