import type { GoldenCase } from '../../golden.ts';
import { ErrorCell } from '../../../../src/cells/cell.ts';
import { book } from '../../book.ts';

const tags = [
  'error',
  'formula',
  'zero',
  'negative',
  'boolean',
  'kind',
  'limit',
  'bypass',
  'delay',
  'huge',
  'unfilled',
];

export const golden: GoldenCase = {
  because:
    'A sensitivity or setpoint at or below 0, a spreadsheet error, a formula without a stored result, yes/no in place of a number or an unknown kind make the row incomplete, at the cell; a limit or bypass that can not be read leaves it no better than incomplete, since it bears on whether danger acts; a delay that can not be read is left out and said. Missing values are named one by one.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Kind', 'Measured sensitivity (mV/mil)', 'Limit (mil)'],
        ['error', null, new ErrorCell('#N/A'), null],
        ['formula', null, new ErrorCell('no stored result'), null],
        ['zero', null, 0, null],
        ['negative', null, 200, null],
        ['boolean', null, true, null],
        ['kind', 'sonic', 200, null],
        ['limit', null, 200, -3],
        ['bypass', null, 200, 'low'],
        ['delay', null, 200, null],
        ['huge', null, '1e999', null],
        ['unfilled', 'radial', null, null],
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
          'Bypass',
          'Danger delay (s)',
        ],
        ...tags.map((tag) => [
          tag,
          tag === 'unfilled' ? null : 200,
          tag === 'unfilled' ? null : 3,
          tag === 'negative' ? -5 : tag === 'unfilled' ? null : 5,
          tag === 'bypass' ? 'maybe' : null,
          tag === 'delay' ? -1 : null,
        ]),
      ],
    ],
  ),
  channels: [
    { tag: 'error', verdict: 'incomplete', findings: ['value-is-an-error @ Channels!C2'] },
    { tag: 'formula', verdict: 'incomplete', findings: ['value-is-an-error @ Channels!C3'] },
    { tag: 'zero', verdict: 'incomplete', findings: ['value-out-of-range @ Channels!C4'] },
    { tag: 'negative', verdict: 'incomplete', findings: ['value-out-of-range @ Monitor!D5'] },
    { tag: 'boolean', verdict: 'incomplete', findings: ['value-not-a-number @ Channels!C6'] },
    {
      tag: 'kind',
      verdict: 'incomplete',
      is: { kind: null },
      findings: ['value-not-understood @ Channels!B7'],
    },
    {
      tag: 'limit',
      verdict: 'incomplete',
      inputs: { limit: null },
      findings: ['value-out-of-range @ Channels!D8'],
    },
    {
      tag: 'bypass',
      verdict: 'incomplete',
      inputs: { bypass: null },
      findings: ['value-not-a-number @ Channels!D9', 'value-not-understood @ Monitor!E9'],
    },
    { tag: 'huge', verdict: 'incomplete', findings: ['value-not-a-number @ Channels!C11'] },
    {
      tag: 'unfilled',
      verdict: 'incomplete',
      findings: [
        'value-missing @ Channels!C12',
        'value-missing @ Monitor!B12',
        'value-missing @ Monitor!C12',
        'value-missing @ Monitor!D12',
      ],
    },
    {
      tag: 'delay',
      verdict: 'within',
      inputs: { dangerDelay: null },
      findings: ['value-out-of-range @ Monitor!F10'],
    },
  ],
};
