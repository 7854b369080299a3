import { expect, it } from 'vitest';
import { audit } from '../../../src/audit/audit.ts';
import { snapshotOf } from '../../../src/audit/since/fromReport.ts';
import type { Workbook } from '../../../src/cells/sheet.ts';
import { book, type Rows } from '../book.ts';
import { now } from '../golden.ts';
import { gaps, rowsOf, straight } from '../recordSheets.ts';

const settings = ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'];
const plant = (measured: number, day: string, ...more: (readonly [string, Rows])[]): Workbook =>
  book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Calibrated on', 'Gap voltage (V)'],
        ['V-1', measured, day, -10],
      ],
    ],
    ['Monitor', [settings, ['V-1', 200, 3, 5]]],
    ...more,
  );

// By hand: 200, 199 and 198 at 0, 365 and 730 days are a line of −1 in 365 days.
it('readings come from a history, an earlier audit, a dated record and the list, each day and value once', () => {
  const before = snapshotOf(audit(plant(199, '2022-01-01'), { now }));
  const history: Rows = [
    ['Tag', 'Date', 'Sensitivity (mV/mil)'],
    ['V-1', '2022-01-01', 199],
    ['V-1', '2021-01-01', 200],
  ];
  const record: Rows = [
    ['Tag', 'Taken on', 'Gap (mil)', 'Output (V)'],
    ...rowsOf(['V-1', '2023-01-01'], straight(150, gaps(10, 90, 10))),
  ];
  const { channels } = audit(plant(198, '2023-01-01', ['History', history], ['Records', record]), {
    now,
    before,
  });
  const { drift } = channels[0]!;
  expect(drift?.readings.map(({ date, sensitivity, from }) => [date, sensitivity, from])).toEqual([
    ['2021-01-01', 200, 'history'],
    ['2022-01-01', 199, 'history'],
    ['2023-01-01', 198, 'channel list'],
  ]);
  expect(drift?.perYear).toBeCloseTo(-365.25 / 365, 9);
});

it('an earlier audit and a record of another day make up for a history', () => {
  const before = snapshotOf(audit(plant(200, '2021-01-01'), { now }));
  const record: Rows = [
    ['Tag', 'Taken on', 'Gap (mil)', 'Output (V)'],
    ...rowsOf(['V-1', '2022-01-01'], straight(199, gaps(10, 90, 10))),
  ];
  const { channels } = audit(plant(198, '2023-01-01', ['Records', record]), { now, before });
  const { drift } = channels[0]!;
  expect(drift?.readings.map(({ from }) => from)).toEqual([
    'earlier audit',
    'calibration record',
    'channel list',
  ]);
  expect(drift?.perYear).toBeCloseTo(-365.25 / 365, 9);
});

it('a calibration of a day that has not come does not count', () => {
  const before = snapshotOf(audit(plant(200, '2021-01-01'), { now }));
  const { channels } = audit(plant(198, '2030-01-01'), { now, before });
  expect(channels[0]?.drift).toBeNull();
});

it('of a tag that stood on several machines the earlier reading is that of the same machine, or of none', () => {
  const header = ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Calibrated on', ...settings.slice(1)];
  const all = (day: string, ...rows: readonly (readonly [machine: string, measured: number])[]) =>
    rows.map(([machine, measured]) => ['V-1', machine, measured, day, 200, 3, 5]);
  const history: Rows = [
    ['Tag', 'Date', 'Sensitivity (mV/mil)'],
    ['V-1', '2021-01-01', 200],
    ['V-1', '2022-01-01', 199],
  ];
  const earlierOf = (machine: string, ...then: readonly (readonly [machine: string, measured: number])[]) => {
    const before = snapshotOf(audit(book(['All', [header, ...all('2023-01-01', ...then)]]), { now }));
    const after = book(['All', [header, ...all('2024-01-01', [machine, 197])]], ['History', history]);
    return audit(after, { now, before })
      .channels[0]!.drift!.readings.filter(({ from }) => from === 'earlier audit')
      .map(({ sensitivity }) => sensitivity);
  };
  expect(earlierOf('P-1', ['P-1', 198], ['P-2', 188])).toEqual([198]);
  expect(earlierOf('P-2', ['P-1', 198], ['P-2', 188])).toEqual([188]);
  expect(earlierOf('P-3', ['P-1', 198], ['P-2', 188])).toEqual([]);
  expect(earlierOf('', ['P-1', 198], ['P-2', 188])).toEqual([]);
  expect(earlierOf('P-3', ['P-1', 198])).toEqual([198]);
});
