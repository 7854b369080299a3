import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { parsePolicy } from '../../src/audit/model/policy.ts';
import { book } from './book.ts';
import { now } from './golden.ts';

/** Tag, group, voting, setpoint, measured (for 200 mV/mil), shared and own standard uncertainty in %, batch. */
type Row = readonly [string, string, string, number, number, number, number, string, bypass?: string];

function reportOf(rows: readonly Row[], policy: unknown = {}) {
  const workbook = book(
    [
      'Channels',
      [
        [
          'Tag',
          'Machine',
          'Measured sensitivity (mV/mil)',
          'Uncertainty (%)',
          'Shared uncertainty (%)',
          'Batch',
        ],
        ...rows.map(([tag, , , , measured, shared, own, batch]) => [
          ...[tag, 'K-1', measured],
          ...(shared + own === 0 ? [null, null] : [2 * Math.hypot(shared, own), 2 * shared]),
          batch,
        ]),
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
          'Group',
          'Voting',
          'Bypass',
        ],
        ...rows.map(([tag, group, voting, danger, , , , , bypass = 'no']) => [
          ...[tag, 200, danger / 2, danger, group, voting, bypass],
        ]),
      ],
    ],
  );
  return audit(workbook, { policy: parsePolicy(policy), now });
}

const three = (batch: string, bypass?: string): Row[] => [
  ['A', 'G', '2oo3', 5, 188, 1.5, 1, batch],
  ['B', 'G', '2oo3', 5, 192, 1.5, 1, batch],
  bypass === undefined
    ? ['C', 'G', '2oo3', 5, 197, 1.5, 1, batch]
    : ['C', 'G', '2oo3', 5, 197, 1.5, 1, batch, bypass],
];

function danger(rows: readonly Row[], policy?: unknown) {
  return reportOf(rows, policy).groups.find(({ threshold }) => threshold === 'danger')!;
}

describe('the chances of a group (worked by hand and by simulation, independent of this code)', () => {
  it('of one lot, where late begins at 5/0.95', () => {
    const { chance } = danger(three('Lot 7'));
    expect(chance!.limit).toBeCloseTo(5 / 0.95, 12);
    expect(chance!.of).toBe('where late begins');
    expect(chance!.later).toBeCloseTo(0.27372408749340055, 11);
    expect(chance!.ends).toBeNull();
    expect(chance!.low!).toBeLessThan(5.032898093422475);
    expect(chance!.high!).toBeGreaterThan(5.3928024292351235);
  });

  it('without labels, with both ends beside it', () => {
    const { chance } = danger(three(''));
    expect(chance!.later).toBeCloseTo(0.21805450455956285, 11);
    expect(chance!.ends!.independent).toBeCloseTo(chance!.later, 13);
    // Φ of the second smallest at the whole uncertainty, by hand: (1000/192/(5/0.95) − 1)/0.0180278 = −0.5778.
    expect(chance!.ends!.allShared).toBeCloseTo(0.2817, 3);
  });

  it('with a member out that casts no vote: both others must be in time', () => {
    const policy = { bypassed: 'no-trip' };
    expect(danger(three('Lot 7', 'yes'), policy).chance!.later).toBeCloseTo(0.7324224369420768, 11);
  });

  it('of an alert, of members without an uncertainty, and of what has tripped is none', () => {
    const report = reportOf(three('Lot 7'));
    expect(report.groups.find(({ threshold }) => threshold === 'alert')!.chance).toBeNull();
    const exact = reportOf(three('Lot 7').map((row) => row.with(5, 0).with(6, 0) as unknown as Row));
    expect([exact.groups[0]!.chance, exact.machines]).toEqual([null, []]);
    const cast = three('Lot 7', 'yes').map((row) => [...row.slice(0, 8), 'yes'] as unknown as Row);
    expect(danger(cast, { bypassed: 'trip' }).chance).toBeNull();
  });

  it('of one current loop is that of the loop, whose ends both hang on the current at 0 %', () => {
    const ends = ['at 0 %', 'at 100 %'].flatMap((end) => [
      `Loop current ${end} (mA)`,
      `Loop current ${end} uncertainty (mA)`,
    ]);
    const { groups, machines } = audit(
      book(
        [
          'Channels',
          [
            ['Tag', 'Machine', 'Kind', 'Measured sensitivity', 'Unit', ...ends, 'Limit (mm/s)'],
            ['L1', 'K-1', 'loop', 0.8, 'mA/(mm/s)', 4.05, 0.04, 19.8, 0.04, 7.17],
          ],
        ],
        [
          'Monitor',
          [
            [
              ...['Tag', 'Configured sensitivity', 'Unit', 'Alert (mm/s)', 'Danger (mm/s)'],
              ...['Full scale (mm/s)', 'Group', 'Voting'],
            ],
            ['L1', 0.8, 'mA/(mm/s)', 5, 7.1, 20, 'G', '1oo1'],
          ],
        ],
      ),
      { now },
    );
    const { chance } = groups.find(({ threshold }) => threshold === 'danger')!;
    // Φ((7.1492 − 7.17)/u), u² = u_A² − 2·7.17·u_AB + 7.17²·u_B², worked apart from this code.
    expect(chance?.later).toBeCloseTo(0.13261134106524597, 9);
    expect(machines[0]?.any).toBeCloseTo(0.13261134106524597, 9);
    expect(chance?.low).toBeCloseTo(7.111821812762561, 3);
    expect(chance?.high).toBeCloseTo(7.186517334368791, 3);
  });

  it('names members that were taken as exact', () => {
    const rows = three('Lot 7');
    expect(
      danger([...rows.slice(0, 2), rows[2]!.with(5, 0).with(6, 0) as unknown as Row]).chance!.exact,
    ).toEqual(['C']);
  });
});

describe('the chances of a machine (worked by hand and by simulation, independent of this code)', () => {
  const rows: Row[] = [
    ['X1', 'drive end', '1oo2', 5, 187, 1.2, 0.8, 'b1'],
    ['Y1', 'drive end', '1oo2', 5, 189, 1.2, 0.8, 'b1'],
    ['X2', 'other end', '1oo2', 5, 188, 1.2, 0.8, 'b1'],
    ['Y2', 'other end', '1oo2', 5, 192, 1.2, 0.8, 'b1'],
    ['Z1', 'axial', '2oo2', 20, 191, 1.2, 1, 'b2'],
    ['Z2', 'axial', '2oo2', 20, 194, 1.2, 1, 'b2'],
  ];

  it('any, all and the expected number; which correction first, and the best two', () => {
    const [machine, ...more] = reportOf(rows).machines;
    expect(more).toEqual([]);
    expect(machine!.any).toBeCloseTo(0.7747699402872715, 11);
    expect(machine!.all).toBeCloseTo(0.0849194260659893, 11);
    expect(machine!.expected).toBeCloseTo(1.238988703547132, 11);
    const { singly, best } = machine!.corrections;
    expect(singly.map(({ tag }) => tag)).toEqual(['X1', 'Y1', 'Z1', 'X2', 'Y2', 'Z2']);
    expect(singly[0]!.gain).toBeCloseTo(0.24608597096124696, 11);
    expect(best[0]).toMatchObject({ budget: 2, tags: ['X1', 'Z1'], how: 'every set' });
    expect(best[0]!.left).toBeCloseTo(0.3029326996279764, 11);
  });
});

describe('a shared part above the whole', () => {
  it('is said at its cell and not used', () => {
    const workbook = book(
      [
        'Channels',
        [
          ['Tag', 'Measured sensitivity (mV/mil)', 'Uncertainty (%)', 'Shared uncertainty (%)'],
          ['A', 200, 3, 4],
          ['B', 200, null, 1],
        ],
      ],
      [
        'Monitor',
        [
          ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
          ['A', 200, 3, 5],
          ['B', 200, 3, 5],
        ],
      ],
    );
    const report = audit(workbook, { policy: parsePolicy({}), now });
    const said = report.channels
      .flatMap(({ findings }) => findings)
      .filter(({ rule }) => rule === 'value-out-of-range');
    expect(said.map(({ column, row, message }) => [column, row, message])).toEqual([
      [
        'D',
        2,
        'A shared uncertainty of 4 % was not used: the whole uncertainty is 3 %, of which it must be a part. Correct either.',
      ],
      [
        'D',
        3,
        'A shared uncertainty of 1 % was not used: no uncertainty is given, of which it must be a part. Correct either.',
      ],
    ]);
  });
});
