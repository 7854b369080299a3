import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Nothing is dropped: a channel without settings is incomplete; settings without a channel and rows without a tag are problems; a ' +
    'text alone in the tag column is a heading or remark, and noted. Numbers without a tag belong to no channel and were not read.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['Turbine train'],
        ['A', 200],
        ['alone', 200],
        [null, 160],
        [],
        ['* as found on the last outage'],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['A', 200, 3, 5],
        ['Rack 2'],
        ['stray', 200, 3, 5],
        ['  ', 200, 3, 5],
      ],
    ],
  ),
  channels: [
    {
      tag: 'alone',
      verdict: 'incomplete',
      is: { source: { channels: { sheet: 'Channels', row: 4 }, settings: null } },
      sensitivity: { measured: 200, configured: null, error: null },
      findings: ['channel-without-settings @ Channels!A4'],
    },
    { tag: 'A', verdict: 'within' },
  ],
  problems: [
    'heading-or-remark @ Channels!A2',
    'heading-or-remark @ Channels!A7',
    'row-without-tag @ Channels!A5',
    'heading-or-remark @ Monitor!A3',
    'settings-without-channel @ Monitor!A4',
    'row-without-tag @ Monitor!A5',
  ],
  notRead: ['row a channel without a tag @ Channels!A5', 'row a channel without a tag @ Monitor!A5'],
  summary: { channels: 2, incomplete: 1, within: 1 },
};
