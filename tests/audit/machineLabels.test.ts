import { expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { book, type Rows } from './book.ts';
import { now } from './golden.ts';

const header = ['Tag', 'Measured sensitivity (mV/mil)', 'Uncertainty (%)', 'Gap voltage (V)'];
const channels: Rows = [
  ['Machine', 'Ring motor'],
  header,
  ['ZT-1', 160, 2, -9],
  ['ZT-2', 200, 2, -10],
  ['Machine', 'Booster pump'],
  header,
  ['ZT-3', 199, 2, -10],
  ['ZT-4', 201, 2, -10],
];
const settings: Rows = [
  ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
  ...['ZT-1', 'ZT-2', 'ZT-3', 'ZT-4'].map((tag) => [tag, 200, 3, 5]),
];

// By hand: 5 mil × 200 mV/mil at 160 mV/mil is 6.25 mil; a label with the name of a machine is no channel.
it('a row that names the machine of the rows below it is no channel', () => {
  const report = audit(book(['Channels', channels], ['Monitor', settings]), { now });
  expect(report.channels.map(({ tag, machine }) => `${tag} of ${machine}`).toSorted()).toEqual([
    'ZT-1 of Ring motor',
    'ZT-2 of Ring motor',
    'ZT-3 of Booster pump',
    'ZT-4 of Booster pump',
  ]);
  const late = report.channels.find(({ tag }) => tag === 'ZT-1');
  expect(late?.thresholds.map(({ name, effective }) => `${name} ${effective}`)).toContain('danger 6.25');
});
