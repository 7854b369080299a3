import type { GoldenCase } from '../../golden.ts';
import type { GroupResult } from '../../../../src/audit/model/group.ts';
import { book } from '../../book.ts';

/** 4 % in all; half of its square is shared: 4 %/√2. */
const shared = 4 / Math.SQRT2;
const rows = [
  ['1X', '1oo2', 'Lot 7'],
  ['1Y', '1oo2', 'lot 7'],
  ['2X', '1oo2', null],
  ['2Y', '1oo2', 'Lot 8'],
  ['3X', '2oo2', 'Lot 9'],
  ['3Y', '2oo2', 'LOT 9 '],
] as const;
const undetermined = (row: number) => [
  `alert-undetermined @ Monitor!C${row}`,
  `danger-undetermined @ Monitor!D${row}`,
];
const chance = (part: Partial<GroupResult['chance']>) => part as GroupResult['chance'];

export const golden: GoldenCase = {
  because:
    'All act at 5·200/190 = 5.2632 mil, just where late begins (5/0.95), so each is late with ½. With half of the variance shared all N are late with 1/(N + 1), here ⅓ (Dunnett’s equicorrelated normals, ρ = ½), so 1oo2 of one lot is late with ⅓ and not with the ¼ of two lots; 2oo2, late where either is, with 1 − ⅓ = ⅔. With no label given for 2X both ends are said: nothing shared ¼, all shared ½.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Machine',
          'Measured sensitivity (mV/mil)',
          'Uncertainty (%)',
          'Shared uncertainty (%)',
          'Cable lot',
        ],
        ...rows.map(([tag, , lot]) => [tag, 'K-1', 190, 4, shared, lot]),
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Group', 'Voting'],
        ...rows.map(([tag, voting]) => [tag, 200, 3, 5, `Bearing ${tag[0]}`, voting]),
      ],
    ],
  ),
  channels: rows.map(([tag], at) => ({ tag, verdict: 'undetermined', findings: undetermined(at + 2) })),
  groups: [
    {
      ...{ name: 'Bearing 1', threshold: 'danger', effective: 1000 / 190 },
      chance: chance({ limit: 5 / 0.95, of: 'where late begins', later: 1 / 3, ends: null }),
    },
    { name: 'Bearing 1', threshold: 'alert' },
    {
      ...{ name: 'Bearing 2', threshold: 'danger' },
      chance: chance({ later: 1 / 4, ends: { independent: 1 / 4, allShared: 1 / 2 } }),
    },
    { name: 'Bearing 2', threshold: 'alert' },
    { name: 'Bearing 3', threshold: 'danger', chance: chance({ later: 2 / 3, ends: null }) },
    { name: 'Bearing 3', threshold: 'alert' },
  ],
};
