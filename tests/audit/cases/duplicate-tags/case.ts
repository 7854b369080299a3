import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'A tag that stands twice in one table (trimmed, whatever its case) can not be joined: each such row is incomplete, and settings left over stand in the problems.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['twice', 200],
        [' TWICE ', 160],
        ['set twice', 200],
        ['once', 200],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['Twice', 200, 3, 5],
        ['set twice', 200, 3, 5],
        ['Set Twice', 100, 3, 5],
        [' ONCE', 200, 3, 5],
      ],
    ],
  ),
  channels: [
    { tag: 'twice', verdict: 'incomplete', findings: ['duplicate-tag @ Channels!A2'] },
    { tag: 'TWICE', verdict: 'incomplete', findings: ['duplicate-tag @ Channels!A3'] },
    { tag: 'set twice', verdict: 'incomplete', findings: ['duplicate-tag @ Channels!A4'] },
    {
      tag: 'once',
      verdict: 'within',
      is: { source: { channels: { sheet: 'Channels', row: 5 }, settings: { sheet: 'Monitor', row: 5 } } },
    },
  ],
  problems: ['settings-not-joined @ Monitor!A2', 'duplicate-tag @ Monitor!A3', 'duplicate-tag @ Monitor!A4'],
  summary: { channels: 4, incomplete: 3, within: 1 },
};
