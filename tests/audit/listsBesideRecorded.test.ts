import { expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import type { Cell } from '../../src/cells/cell.ts';
import { book } from './book.ts';

// A list that also has what a trend, a run-up or a table of sensors has stays a list: read for those alone, its channels
// would be lost without a word. 200 set and 100 measured, so 5 mil is really 10 (by hand).
const headers: readonly Cell[] = [
  'Tag',
  'Measured sensitivity (mV/mil)',
  'Configured sensitivity (mV/mil)',
  'Alert (mil)',
  'Danger (mil)',
];
const late: readonly (readonly Cell[])[] = ['W-1', 'W-2'].map((tag) => [tag, 100, 200, 3, 5]);
const fine = ['First', [[...headers], ['V-1', 200, 200, 3, 5]]] as const;
const clock = (at: number): string => `2026-11-29 10:0${at}:00`;

const lists: readonly (readonly [what: string, rows: readonly (readonly Cell[])[]])[] = [
  [
    'times and readings',
    [['Time', 'Reading (mil)', ...headers], ...late.map((row, at) => [clock(at), 1, ...row])],
  ],
  [
    'corner and damping of its sensors',
    [[...headers, 'Corner frequency', 'Damping'], ...late.map((row) => [...row, 10, 0.7])],
  ],
  ['a trend above it', [['Time', 'V-1'], [clock(0), 1], [clock(1), 1], [], headers, ...late]],
  [
    'a run-up above it',
    [['Tag', 'Speed', 'Real amplitude (mil)'], ['V-1', 900, 1], ['V-1', 1800, 2], [], headers, ...late],
  ],
];

for (const [what, rows] of lists) {
  it(`a list with ${what} stays a list`, () => {
    const { channels, attention } = audit(book(fine, ['Second', rows.map((row) => [...row])]), {});
    const verdicts = new Map(channels.map(({ tag, verdict }) => [tag, verdict]));
    expect([...verdicts].toSorted()).toEqual([
      ['V-1', 'within'],
      ['W-1', 'late'],
      ['W-2', 'late'],
    ]);
    expect(attention.filter(({ code, severity }) => code === 'late' && severity === 'critical')).toHaveLength(
      2,
    );
  });
}

it('a corner and a damping in the only list do not take it away', () => {
  const [, rows] = lists[1] ?? ['', []];
  expect(audit(book(['Only', rows.map((row) => [...row])]), {}).channels).toHaveLength(2);
});
