import { expect, it } from 'vitest';
import { readMachine } from '../../src/tools/demo/station/readMachine.ts';

const text = `X-1 Blower
# What it tells.

Channel list
tag  | measured | gap   | calibrated | remarks
X1-A | 198.5    | -9.7  | 2026-03-18 |
# Left out by a remark.
X1-B | 7,88     |       |            | Pasted, so a text.

Monitor settings
slot | tag  | danger
1/1  | X1-A | 4.5
`;

it('reads numbers as numbers, all else as text, and leaves blank cells out', () => {
  expect(readMachine(text, 'x.txt')).toEqual({
    name: 'X-1 Blower',
    channels: [
      { tag: 'X1-A', measured: 198.5, gap: -9.7, calibrated: '2026-03-18' },
      { tag: 'X1-B', measured: '7,88', remarks: 'Pasted, so a text.' },
    ],
    settings: [{ slot: '1/1', tag: 'X1-A', danger: 4.5 }],
  });
});

it('names file, line and cell of what fits no table', () => {
  expect(() => readMachine(text.replace('gap ', 'gapp'), 'x.txt')).toThrow(
    /^x\.txt, line 5: no column "gapp"/u,
  );
  expect(() => readMachine(text.replace('4.5', '4.5 | 9'), 'x.txt')).toThrow(
    'x.txt, line 12: "9" stands right of the last column',
  );
  expect(() => readMachine(text.replace('Monitor settings', 'Monitor'), 'x.txt')).toThrow(
    'x.txt has no line "Monitor settings"',
  );
});
