import { describe, expect, it } from 'vitest';
import { audit } from '../../../src/audit/audit.ts';
import { handoverSheets } from '../../../src/sheets/handover/handoverSheets.ts';
import { summaryText } from '../../../src/cli/audit/summary.ts';
import { book } from '../../audit/book.ts';
import { line, rowsOf, textOf } from './read.ts';

// Two pumps with the same tags; the monitor of P-1 has a setpoint for a probe that nobody listed.
const report = audit(
  book(
    [
      'Probes',
      [
        ['Machine', 'Tag', 'Measured sensitivity (mV/mil)'],
        ['P-1', 'IB-X', 200],
        ['P-2', 'IB-X', 160],
        ['P-2', 'IB-Y', 200],
      ],
    ],
    [
      'Monitor',
      [
        [
          'Machine',
          'Tag',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
          'Group',
          'Voting',
        ],
        ['P-1', 'IB-X', 200, 3, 5, 'Inboard', '1oo2'],
        ['P-1', 'IB-Y', 200, 3, 5, 'Inboard', '1oo2'],
        ['P-2', 'IB-X', 200, 3, 5, 'Inboard', '1oo2'],
        ['P-2', 'IB-Y', 200, 3, 5, 'Inboard', '1oo2'],
      ],
    ],
  ),
);

describe('settings without a channel, on one of two machines with the same tags', () => {
  it('are known to be of their machine, and stand on its page', () => {
    expect(report.attention.find(({ code }) => code === 'incomplete')?.subject).toMatchObject({
      machine: 'P-1',
      tag: 'IB-Y',
    });
    const page = handoverSheets(report).find((sheet) => rowsOf(sheet)[1]?.[0]?.value === 'P-1');
    expect(textOf(page!)).toMatch(/IB-Y not known/u);
    expect(line(page!, 'IB-Y')).toEqual([
      'IB-Y',
      'not in the channel list',
      '–',
      'none: not known',
      '–',
      5,
      '–',
      '–',
      '– not known',
    ]);
    expect(textOf(page!)).toMatch(/IB-Y: Do not rely on it/u);
  });

  it('are a member of their machine’s group that can’t be shown to act', () => {
    const inboard = report.groups.filter(({ threshold }) => threshold === 'danger');
    expect(inboard.map(({ machine, members }) => [machine, members.map(({ tag }) => tag)])).toEqual(
      expect.arrayContaining([
        ['P-1', expect.arrayContaining(['IB-X', 'IB-Y'])],
        ['P-2', expect.arrayContaining(['IB-X', 'IB-Y'])],
      ]),
    );
    expect(inboard).toHaveLength(2);
  });

  it('and every line at the terminal says of which machine it is', () => {
    const text = summaryText(report).replaceAll(/\s+/gu, ' ');
    expect(text).toContain('P-2: IB-X danger is late: set 5, really trips at 6.25 mil.');
    expect(text).toContain("P-1: Tag 'IB-Y' has settings but stands in no row of the channel list");
  });
});
