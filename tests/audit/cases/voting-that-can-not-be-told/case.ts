import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

const tags = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'I', 'J'];

export const golden: GoldenCase = {
  because:
    'A voting nobody wrote, wrote differently or wrote unreadably is not guessed in silence; where two differ, the one that acts last is used. Voting without a group, and a group of another size than its voting says, are told.',
  book: book(
    ['Channels', [['Tag', 'Measured sensitivity (mV/mil)'], ...tags.map((tag) => [tag, 200])]],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Voting group', 'Voting'],
        ['A', 200, 3, 5, 'silent', null],
        ['B', 200, 3, 5, 'silent', ''],
        ['C', 200, 3, 5, 'words', 'any of them'],
        ['D', 200, 3, 5, 'words', '1 out of 2'],
        ['E', 200, 3, 4.5, 'differ', '1oo2'],
        ['F', 200, 3, 5, 'differ', '2oo2'],
        ['G', 200, 3, 5, null, '1oo2'],
        ['H', 200, 3, 5, null, '1oo1'],
        ['I', 200, 3, 5, 'short', '2oo3'],
        ['J', 200, 3, 5, 'short', '2oo3'],
      ],
    ],
  ),
  channels: [
    { tag: 'A', verdict: 'within', findings: ['voting-missing @ Monitor!F2'] },
    { tag: 'B', verdict: 'within', findings: ['voting-missing @ Monitor!F3'] },
    { tag: 'C', verdict: 'within', findings: ['voting-not-understood @ Monitor!F4'] },
    { tag: 'D', verdict: 'within' },
    { tag: 'E', verdict: 'within', findings: ['voting-contradicts @ Monitor!F6'] },
    { tag: 'F', verdict: 'within', findings: ['voting-contradicts @ Monitor!F7'] },
    { tag: 'G', verdict: 'within', findings: ['group-missing @ Monitor!E8'] },
    { tag: 'H', verdict: 'within' },
    { tag: 'I', verdict: 'within', findings: ['group-size-differs @ Monitor!E10'] },
    { tag: 'J', verdict: 'within', findings: ['group-size-differs @ Monitor!E11'] },
  ],
  groups: [
    { name: 'words', threshold: 'danger', voting: '1oo2', effective: 5 },
    { name: 'words', threshold: 'alert' },
    { name: 'differ', threshold: 'danger', voting: '2oo2', effective: 5, intended: 5, decidedBy: ['F'] },
    { name: 'differ', threshold: 'alert' },
    { name: 'short', threshold: 'danger', voting: '2oo3', effective: 5 },
    { name: 'short', threshold: 'alert' },
  ],
};
