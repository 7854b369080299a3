import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

/** Groups of three, 2oo3, each with one member out; effective thresholds 4, 4.3 and 3.7 mil by the measured sensitivity. */
const groups = ['site', 'casts', 'reduces', 'tripped'];
const members = groups.flatMap((group) =>
  (['a', 'b', 'c'] as const).map((voter, at) => ({
    tag: `${group} ${voter}`,
    group,
    measured: [200, 800 / 4.3, 800 / 3.7][at]!,
    bypass: voter === 'a' || (group === 'tripped' && voter === 'b') ? 'yes' : 'no',
  })),
);

const late = (row: number) => [`alert-late @ Monitor!C${row}`, `danger-late @ Monitor!D${row}`];
const early = (row: number) => [
  `alert-early @ Monitor!C${row}`,
  `danger-early @ Monitor!D${row}`,
  `linear-range-short @ Channels!B${row}`,
];
const out = (row: number) => [`channel-in-bypass @ Monitor!G${row}`];
const lateGroup = (row: number) => [`group-late @ Monitor!F${row}`, `group-late @ Monitor!F${row}`];
const trippedGroup = (row: number) => [`group-tripped @ Monitor!F${row}`, `group-tripped @ Monitor!F${row}`];
const both = { threshold: 'alert' as const };

export const golden: GoldenCase = {
  because:
    'Worked by hand (members 4, 4.3, 3.7 mil, the first out): no vote leaves 2oo2 at 4.3, a vote cast 1oo2 at 3.7, the others voting 2oo2 at 4.3; with two votes cast it has tripped. The site says no vote, three groups otherwise.',
  book: book(
    [
      'Channels',
      [['Tag', 'Measured sensitivity (mV/mil)'], ...members.map(({ tag, measured }) => [tag, measured])],
    ],
    [
      'Monitor',
      [
        [
          'Tag',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
          'Group',
          'Voting',
          'Bypass',
        ],
        ...members.map(({ tag, group, bypass }) => [tag, 200, 3, 4, group, '2oo3', bypass]),
      ],
    ],
  ),
  policy: {
    bypassed: 'no-trip',
    groups: [
      { group: 'Casts', bypassed: 'trip' },
      { group: 'reduces', machine: '', bypassed: 'reduce' },
      { group: 'tripped', bypassed: 'trip' },
    ],
  },
  channels: [
    { tag: 'tripped b', verdict: 'late', findings: [...late(12), ...out(12), ...trippedGroup(12)] },
    { tag: 'site a', verdict: 'within', findings: [...out(2), ...lateGroup(2)] },
    { tag: 'casts a', verdict: 'within', findings: out(5) },
    { tag: 'reduces a', verdict: 'within', findings: [...out(8), ...lateGroup(8)] },
    { tag: 'tripped a', verdict: 'within', findings: [...out(11), ...trippedGroup(11)] },
    { tag: 'site b', verdict: 'late', findings: [...late(3), ...lateGroup(3)] },
    { tag: 'casts b', verdict: 'late', findings: late(6) },
    { tag: 'reduces b', verdict: 'late', findings: [...late(9), ...lateGroup(9)] },
    { tag: 'site c', verdict: 'early', findings: [...early(4), ...lateGroup(4)] },
    { tag: 'casts c', verdict: 'early', findings: early(7) },
    { tag: 'reduces c', verdict: 'early', findings: [...early(10), ...lateGroup(10)] },
    { tag: 'tripped c', verdict: 'early', findings: [...early(13), ...trippedGroup(13)] },
  ],
  groups: [
    {
      ...{ name: 'site', threshold: 'danger', effective: 4.3, canTrip: true, liveVoting: '2oo2' },
      out: [{ tag: 'site a', because: 'bypassed', policy: 'no-trip', saidBy: 'site' }],
      findings: ['group-late @ Monitor!F2'],
    },
    { name: 'site', ...both, effective: 3.225, findings: ['group-late @ Monitor!F2'] },
    {
      ...{ name: 'casts', threshold: 'danger', effective: 3.7, liveVoting: '1oo2', decidedBy: ['casts c'] },
      out: [{ tag: 'casts a', because: 'bypassed', policy: 'trip', saidBy: 'group' }],
    },
    { name: 'casts', ...both, effective: 2.775 },
    {
      ...{ name: 'reduces', threshold: 'danger', effective: 4.3, liveVoting: '2oo2' },
      findings: ['group-late @ Monitor!F8'],
    },
    { name: 'reduces', ...both, effective: 3.225, findings: ['group-late @ Monitor!F8'] },
    {
      ...{ name: 'tripped', threshold: 'danger', effective: 0, canTrip: true, liveVoting: 'tripped' },
      decidedBy: ['tripped a', 'tripped b'],
      findings: ['group-tripped @ Monitor!F11'],
    },
    { name: 'tripped', ...both, effective: 0, findings: ['group-tripped @ Monitor!F11'] },
  ],
  summary: { groupsThatCannotTrip: 0, inBypass: 5 },
  says: [
    /Group 'tripped' \(2oo3\) has tripped on danger already, or would at once: the votes of tripped a \(bypassed\), tripped b \(bypassed\) count as cast/,
  ],
};
