import { describe, expect, it } from 'vitest';
import { audit } from '../../../src/audit/audit.ts';
import { parsePolicy } from '../../../src/audit/model/policy.ts';
import { earlierReport } from '../../../src/audit/since/fromEarlierReport.ts';
import { snapshotOf } from '../../../src/audit/since/fromReport.ts';
import type { Cell } from '../../../src/cells/cell.ts';
import { book } from '../book.ts';
import { now } from '../golden.ts';
import { short, since } from './change.ts';

/** A position and a loop, with what else is measured of chains and monitors. */
function station(gain: Cell, zero: Cell, batch: Cell, shared: Cell, length: Cell, at0: Cell) {
  return book(
    [
      'Channels',
      [
        [
          ...['Tag', 'Kind', 'Measured sensitivity', 'Unit', 'Uncertainty (%)', 'Shared uncertainty (%)'],
          ...['Batch', 'Chain length (m)', 'Zero voltage (V)', 'Zero voltage uncertainty (V)', 'Direction'],
          ...['Loop current at 0 % (mA)', 'Loop current at 100 % (mA)'],
        ],
        ['P', 'axial', 7.874, 'mV/µm', 3, shared, batch, length, -10, zero, 'toward', null, null],
        ['L', 'loop', 0.16, 'mA/%', 3, null, null, null, null, null, null, at0, 20],
      ],
    ],
    [
      'Monitor',
      [
        [
          ...['Tag', 'Configured sensitivity', 'Unit', 'Alert', 'Danger', 'Setpoint unit', 'Monitor gain'],
          ...['Configured zero voltage (V)', 'Group', 'Voting'],
        ],
        ['P', 7.874, 'mV/µm', 300, 500, 'µm', gain, -10, 'Thrust', '1oo1'],
        ['L', 0.16, 'mA/%', 60, 80, '%', null, null, null, null],
      ],
    ],
  );
}
const before = station(null, 0.05, 'Lot 1', 1, 5, 4);
const settings = (report: Parameters<typeof snapshotOf>[0]) =>
  (report.since?.changes ?? []).filter(({ quantity }) => quantity !== null);

/** JSON without these keys, wherever they stand. */
function without(json: unknown, keys: readonly string[]): unknown {
  return JSON.parse(JSON.stringify(json, (key, value: unknown) => (keys.includes(key) ? undefined : value)));
}

describe('what else is measured of a chain and its monitor is compared with an earlier audit', () => {
  const after = station(0.98, 0.1, 'Lot 2', 2, 9, 4.1);
  const { changes } = since(before, after);
  const said = changes.filter(({ quantity }) => quantity !== null);

  it('as changes of a setting, a sensitivity or a zero', () => {
    expect(said.map(short).toSorted()).toEqual([
      'changed sensitivity L loop current at 0 %',
      'changed sensitivity P shared uncertainty',
      'changed setting P batch',
      'changed setting P chain length',
      'changed setting P monitor gain',
      'changed zero P zero voltage uncertainty',
    ]);
  });

  it('with both values, a gain that was not measured as 1', () => {
    const messages = said.map(({ message }) => message);
    expect(messages).toContain('Monitor gain: 1 before, 0.98 now.');
    expect(messages).toContain('Loop current at 0 %: 4 mA before, 4.1 mA now.');
    expect(messages).toContain('Shared uncertainty: 1 % before, 2 % now.');
    expect(messages).toContain('Batch: Lot 1 before, Lot 2 now.');
  });

  it('and nothing where a lot is only spelled otherwise', () => {
    expect(since(before, station(1, 0.05, ' LOT  1', 1, 5, 4)).changes.filter((one) => one.quantity)).toEqual(
      [],
    );
  });
});

describe('what becomes of votes', () => {
  it('is a setting of the channels that are in a group', () => {
    const report = audit(before, {
      now,
      policy: parsePolicy({ bypassed: 'trip', groups: [{ group: 'thrust', faulty: 'reduce' }] }),
      before: snapshotOf(audit(before, { now })),
    });
    expect(settings(report).map(({ message, tag }) => `${tag}: ${message}`)).toEqual([
      'P: Vote when bypassed: nothing before, trip now.',
      'P: Vote when faulty: nothing before, reduce now.',
    ]);
  });

  it('and all of it is read from a report that was kept; what an older one does not have is said as not compared', () => {
    const kept = without(audit(before, { now }), []);
    const after = station(0.98, 0.05, 'Lot 1', 1, 5, 4);
    const against = (json: unknown) =>
      audit(after, { now, policy: parsePolicy({ bypassed: 'trip' }), before: earlierReport(json) });
    expect(settings(against(kept)).map(({ quantity }) => quantity)).toEqual([
      'monitor gain',
      'vote when bypassed',
    ]);
    const older = without(kept, ['bypassed', 'gain', 'batch']);
    const report = against(older);
    expect(settings(report)).toEqual([]);
    expect(report.since?.remarks.map(({ message }) => message)).toContainEqual(
      expect.stringMatching(/do not show .*monitor gain.*batch.*vote when bypassed, vote when faulty/u),
    );
  });
});
