import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

const html = '<img src=x onerror=alert(1)>';
const formula = '=HYPERLINK("http://example.invalid","ok")';
const long = 'x'.repeat(40_000);

export const golden: GoldenCase = {
  because:
    'Text from cells is data: it is quoted as it stands, never read as markup, formula, path or property name, and it does not crowd out the rest. A group belongs to its machine, whatever its name: two of one member each.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Machine',
          'Location',
          'Measured sensitivity (mV/mil)',
          html,
          '__proto__',
          long,
          '((((((((((((',
          '%s %d ${x}',
        ],
        [html, formula, '../../etc', 200],
        ['__proto__', 'constructor', long, 200],
        ['constructor', '\u202egnp', '\u0000', 200],
        ['toString', null, null, html],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Voting group', 'Voting'],
        [html, 200, 3, 5, '__proto__', '1oo2'],
        ['__proto__', 200, 3, 5, 'constructor', '1oo1'],
        ['constructor', 200, 3, 5, '__PROTO__', '1oo2'],
        ['toString', 200, 3, 5, null, null],
      ],
    ],
  ),
  channels: [
    {
      tag: 'toString',
      verdict: 'incomplete',
      findings: ['value-not-a-number @ Channels!D5'],
    },
    {
      tag: html,
      verdict: 'within',
      is: { machine: formula, location: '../../etc' },
      findings: ['group-size-differs @ Monitor!E2'],
    },
    { tag: '__proto__', verdict: 'within', is: { machine: 'constructor', location: long } },
    { tag: 'constructor', verdict: 'within', findings: ['group-size-differs @ Monitor!E4'] },
  ],
  groups: [
    {
      name: '__proto__',
      machine: formula,
      threshold: 'danger',
      voting: '1oo2',
      effective: 5,
      canTrip: true,
    },
    { name: '__proto__', threshold: 'alert' },
    { name: '__PROTO__', threshold: 'danger', decidedBy: ['constructor'] },
    { name: '__PROTO__', threshold: 'alert' },
    { name: 'constructor', threshold: 'danger' },
    { name: 'constructor', threshold: 'alert' },
  ],
};
