import { describe, expect, it } from 'vitest';
import { auditDrift } from '../../../src/audit/judge/drift/auditDrift.ts';
import {
  channelReadings,
  countingReadings,
  type ReadChannel,
} from '../../../src/audit/judge/drift/channelReadings.ts';
import type { PlacedFact } from '../../../src/audit/model/findings.ts';
import { parsePolicy } from '../../../src/audit/model/policy.ts';
import type { RecordResult } from '../../../src/audit/model/records.ts';
import type { SnapshotChannel } from '../../../src/audit/model/snapshot.ts';
import type { TaggedReading } from '../../../src/audit/read/history/reading.ts';
import { parseUnit } from '../../../src/units/parse.ts';

const near = (value: number): number => expect.closeTo(value, 9) as number;
const unit = (text: string) => parseUnit(text)!;
/** A day of 1970, counted from its first. */
const day = (date: string): number => Date.parse(date) / 86_400_000;

/** `V-1` at 198 mV/mil, measured 2024-01-01 and no other reading of it; of row 2 of the channel list. */
function channelOf(more: Partial<Record<keyof ReadChannel, unknown>>, channel: object = {}): ReadChannel {
  const columns = new Map([
    ['tag', { column: 1 }],
    ['measured', { column: 3 }],
    ['asLeftSensitivity', { column: 6 }],
  ]);
  return {
    channel: {
      ...{ measured: 198, configured: 200, uncertainty: 0.03, sensitivityUnit: unit('mV/mil') },
      calibratedOn: day('2024-01-01'),
      ...channel,
    },
    row: { row: 2 },
    table: { sheet: { name: 'Channels' }, columns },
    ...{ history: [], before: undefined, record: null, asLeft: null },
    ...more,
  } as unknown as ReadChannel;
}
const inHistory = (date: string, value: number, more: object = {}): TaggedReading => ({
  ...{ tag: 'V-1', day: day(date), value, unit: unit('mV/mil'), asLeft: false, uncertainty: null },
  ...{ from: 'history', sheet: 'History', row: 7, column: 'C' },
  ...more,
});
const before = (more: object = {}): SnapshotChannel =>
  ({
    values: { 'measured sensitivity': { amount: 199, unit: 'mV/mil', detection: null } },
    calibratedOn: '2023-01-01',
    source: { sheet: 'Audit results', row: 4 },
    ...more,
  }) as unknown as SnapshotChannel;
const record = (more: object = {}): RecordResult =>
  ({
    ...{ takenOn: '2022-01-01', average: 197, gapUnit: 'mil', series: 'as found', sheet: 'Records', row: 9 },
    ...more,
  }) as unknown as RecordResult;
const read = (of: ReadChannel) => {
  const leftOut: PlacedFact[] = [];
  const readings = channelReadings(of, (one) => leftOut.push(one));
  return { readings, leftOut };
};
/** Where readings are from, and what they say. */
const told = (of: ReadChannel) => read(of).readings.map(({ from, sensitivity }) => `${from} ${sensitivity}`);
const listed = 'channel list 198';

describe('a reading of the channel list', () => {
  it('is that of its day, with its uncertainty, at its cell; of no day it is none', () => {
    expect(read(channelOf({})).readings).toEqual([
      {
        ...{ day: day('2024-01-01'), value: 198, sensitivity: 198, unit: unit('mV/mil'), asLeft: false },
        ...{ uncertainty: 0.03, from: 'channel list', sheet: 'Channels', row: 2, column: 'C' },
      },
    ]);
    expect(told(channelOf({}, { calibratedOn: null }))).toEqual([]);
  });

  it('as left is another one of that day, in the unit of the channel: 8 mV/µm are 203.2 mV/mil', () => {
    const { readings } = read(channelOf({ asLeft: { value: 8, unit: unit('mV/µm') } }));
    expect(readings).toMatchObject([
      { asLeft: false, sensitivity: 198 },
      {
        asLeft: true,
        sensitivity: near(203.2),
        uncertainty: null,
        from: 'channel list',
        row: 2,
        column: 'F',
      },
    ]);
  });

  it('as left is none without a unit, not above 0, or in a unit that does not fit', () => {
    for (const asLeft of [
      null,
      { value: 200, unit: null },
      { value: 0, unit: unit('mV/mil') },
      { value: -200, unit: unit('mV/mil') },
      { value: 200, unit: unit('mV/g') },
    ])
      expect(read(channelOf({ asLeft }))).toMatchObject({ readings: [{ sensitivity: 198 }], leftOut: [] });
  });
});

describe('a reading of an earlier audit', () => {
  it('is that of its day, at its row', () => {
    const [, one] = read(channelOf({ before: before() })).readings;
    expect(one).toMatchObject({
      ...{ day: day('2023-01-01'), value: 199, sensitivity: 199, asLeft: false, uncertainty: null },
      ...{ from: 'earlier audit', sheet: 'Audit results', row: 4, column: 'A' },
    });
    const inMicrometres = { 'measured sensitivity': { amount: 8, unit: 'mV/µm', detection: null } };
    expect(
      read(channelOf({ before: before({ values: inMicrometres }) })).readings[1]?.sensitivity,
    ).toBeCloseTo(203.2, 9);
  });

  it('is none without a day or an amount that can be used, and nothing is said', () => {
    const amount = (of: unknown) => before({ values: { 'measured sensitivity': of } });
    for (const one of [
      undefined,
      before({ calibratedOn: null }),
      before({ calibratedOn: 'last spring' }),
      before({ values: {} }),
      amount(null),
      amount({ word: 'not known' }),
      amount({ amount: 0, unit: 'mV/mil', detection: null }),
      amount({ amount: -199, unit: 'mV/mil', detection: null }),
      amount({ amount: 199, unit: 'furlong', detection: null }),
      amount({ amount: 199, unit: 'mV/g', detection: null }),
    ])
      expect(read(channelOf({ before: one }))).toMatchObject({
        readings: [{ from: 'channel list' }],
        leftOut: [],
      });
  });
});

describe('a reading of a calibration record', () => {
  it('is its average per its gap unit on the day it was taken, as left where the record is', () => {
    const [, one] = read(channelOf({ record: record({ average: 8, gapUnit: 'µm' }) })).readings;
    expect(one).toMatchObject({
      ...{ day: day('2022-01-01'), value: 8, sensitivity: near(203.2), asLeft: false, uncertainty: null },
      ...{ from: 'calibration record', sheet: 'Records', row: 9, column: 'A' },
    });
    const of = (series: string) => read(channelOf({ record: record({ series }) })).readings[1]?.asLeft;
    expect(['as found', 'as left', 'spare'].map(of)).toEqual([false, true, false]);
  });

  it('is none without a day, with an average not above 0, or where another reading is of that day', () => {
    for (const one of [
      record({ takenOn: null }),
      record({ average: 0 }),
      record({ average: -200 }),
      record({ takenOn: '2024-01-01' }),
    ])
      expect(told(channelOf({ record: one }))).toEqual([listed]);
    const sameDay = { before: before(), record: record({ takenOn: '2023-01-01' }) };
    expect(told(channelOf(sameDay))).toEqual([listed, 'earlier audit 199']);
    const history = [inHistory('2022-01-01', 196), inHistory('2021-01-01', 195)];
    expect(told(channelOf({ history, record: record() }))).toEqual(['history 196', 'history 195', listed]);
  });
});

it('a reading of a history in a unit that does not fit is left out, which is a warning at its cell', () => {
  const history = [inHistory('2022-01-01', 10, { unit: unit('mV/g') }), inHistory('2023-01-01', 199)];
  const { readings, leftOut } = read(channelOf({ history }));
  expect(readings.map(({ from }) => from)).toEqual(['history', 'channel list']);
  expect(leftOut).toMatchObject([
    {
      ...{ rule: 'history-row-left-out', severity: 'warning', sheet: 'History', row: 7, column: 'C' },
      values: { kind: 'unit does not fit', value: 10, unit: 'mV/g', wanted: 'mV/mil' },
    },
  ]);
});

describe('readings in the order of their dates', () => {
  const reading = (at: number, sensitivity: number, asLeft = false) => ({ day: at, sensitivity, asLeft });
  const counting = (...all: ReturnType<typeof reading>[]) => {
    const { readings, from, found } = countingReadings(all);
    const shown = readings.map(
      ({ day: at, sensitivity, asLeft }) => `${at} ${sensitivity}${asLeft ? ' left' : ''}`,
    );
    return { readings: shown, from, found: found?.sensitivity };
  };

  it('of one day as found before as left, of equals the first alone, to nine digits', () => {
    expect(counting(reading(2, 199), reading(1, 200, true), reading(1, 180))).toEqual({
      readings: ['1 180', '1 200 left', '2 199'],
      from: 1,
      found: 180,
    });
    expect(counting(reading(1, 200), reading(1, 200 * (1 + 1e-10)), reading(1, 201)).readings).toEqual([
      '1 200',
      '1 201',
    ]);
    expect(counting(reading(1, 200), reading(2, 200)).readings).toEqual(['1 200', '2 200']);
    expect(counting(reading(1, 200), reading(1, 201), reading(1, 200)).readings).toEqual(['1 200', '1 201']);
  });

  it('begin anew with the last correction: what was left differs from what was found', () => {
    const two = counting(
      reading(1, 150),
      reading(1, 200, true),
      reading(2, 160),
      reading(2, 199, true),
      reading(3, 198),
    );
    expect(two).toMatchObject({ from: 3, found: 160 });
    expect(counting(reading(1, 200), reading(1, 200, true), reading(2, 199))).toMatchObject({
      from: 0,
      found: undefined,
    });
  });

  it('an outage may take days: what was left follows what was found last, but not over what was left since', () => {
    expect(counting(reading(1, 150), reading(5, 200, true), reading(9, 199))).toMatchObject({
      from: 1,
      found: 150,
    });
    expect(counting(reading(1, 150), reading(5, 200, true), reading(9, 201, true))).toMatchObject({
      from: 1,
      found: 150,
    });
    expect(counting(reading(1, 200, true), reading(5, 201, true))).toMatchObject({
      from: 0,
      found: undefined,
    });
  });

  it('left twice on the day it was found, the last one counts', () => {
    expect(counting(reading(1, 150), reading(1, 180, true), reading(1, 200, true))).toMatchObject({
      from: 2,
      found: 150,
    });
  });

  it('of several found on the day of a correction the last one was corrected', () => {
    expect(counting(reading(1, 150), reading(1, 160), reading(1, 200, true))).toMatchObject({
      from: 2,
      found: 160,
    });
  });
});

describe('what is said of a drift', () => {
  const said = (of: ReadChannel, today = '2025-01-01', policy: object = {}) =>
    auditDrift(of, parsePolicy(policy), day(today)).findings.map(({ rule, severity, values }) => ({
      rule,
      severity,
      values,
    }));

  it('is nothing where the list alone knows the channel; where there is no history, not why it can’t be told', () => {
    expect(auditDrift(channelOf({}), parsePolicy({}), day('2025-01-01'))).toEqual({
      drift: null,
      findings: [],
    });
    expect(said(channelOf({ before: before() }))).toEqual([]);
    expect(said(channelOf({ record: record() }))).toEqual([]);
    expect(said(channelOf({ history: [inHistory('2023-01-01', 199)] }))).toEqual([
      { rule: 'drift-not-told', severity: 'note', values: { readings: 2, days: 2, since: null } },
    ]);
  });

  it('three readings of two days are too few, and from which correction on is told', () => {
    const history = [
      inHistory('2023-01-01', 150),
      inHistory('2023-01-01', 200, { asLeft: true }),
      inHistory('2024-01-01', 199),
    ];
    expect(said(channelOf({ history }))).toMatchObject([
      { rule: 'drift-not-told', values: { readings: 3, days: 2, since: '2023-01-01' } },
    ]);
  });

  it('a later reading of a history than that of the list: as left before as found, and none that says the same', () => {
    const newer = (...history: readonly TaggedReading[]) =>
      said(channelOf({ history })).filter(({ rule }) => rule === 'history-has-newer-reading');
    const both = [inHistory('2024-06-01', 150), inHistory('2024-06-01', 204, { asLeft: true })];
    expect(newer(...both)).toEqual([
      {
        rule: 'history-has-newer-reading',
        severity: 'warning',
        values: {
          ...{ sensitivity: 204, on: '2024-06-01', off: near(0.02), measured: 198 },
          ...{ calibratedOn: '2024-01-01', unit: 'mV/mil' },
        },
      },
    ]);
    expect(newer(...both.toReversed())).toHaveLength(1);
    expect(newer(inHistory('2024-03-01', 150), inHistory('2024-06-01', 160))).toMatchObject([
      { values: { sensitivity: 160 } },
    ]);
    expect(newer(inHistory('2024-06-01', 150), inHistory('2024-09-01', 198))).toEqual([]);
    expect(newer(inHistory('2024-01-01', 150))).toEqual([]);
    // A later day of an earlier audit is not one of a history.
    expect(said(channelOf({ before: before({ calibratedOn: '2024-06-01' }) }))).toEqual([]);
    // What was read after the day of the audit does not count.
    expect(newer(inHistory('2025-06-01', 150))).toEqual([]);
    const undated = channelOf({ history: [inHistory('2024-06-01', 150)] }, { calibratedOn: null });
    expect(said(undated).map(({ rule }) => rule)).toEqual(['drift-not-told']);
  });

  // 200, 199 and 198 a year of 365 days apart: 190 is left ten years after the first.
  const history = (...values: readonly [string, number][]) =>
    values.map(([date, value]) => inHistory(date, value));
  const yearly = (first: number, second: number) =>
    channelOf({ history: history(['2022-01-01', first], ['2023-01-01', second]) });

  it('a line that leaves the tolerance just when the next calibration is due is early, one day later it is not', () => {
    // At 2024-01-01, 730 days; 3650 days after the first is 2920 after the last.
    const rule = (calibrationIntervalDays: number) =>
      said(yearly(200, 199), '2024-01-02', { calibrationIntervalDays }).map((one) => one.rule);
    expect(rule(2919)).toEqual(['drift-of-sensitivity']);
    expect(rule(2921)).toEqual(['drift-leaves-tolerance']);
    const [one] = said(yearly(200, 199), '2024-01-02', { calibrationIntervalDays: 3000 });
    // 3000 days after 2024-01-01: 8 years with 2 leap days in 2024–2031 and 2032 up to March 19, 2922 + 78 days.
    expect(one).toMatchObject({
      severity: 'warning',
      values: {
        kind: 'before the next calibration',
        due: '2032-03-19',
        interval: 3000,
        unit: 'mV/mil',
        tolerance: 0.05,
      },
    });
  });

  it('a reading of the day of the audit counts', () => {
    expect(said(yearly(200, 199), '2024-01-01').map(({ rule }) => rule)).toEqual(['drift-of-sensitivity']);
    expect(said(yearly(200, 199), '2023-12-31').map(({ rule }) => rule)).toEqual(['drift-not-told']);
  });

  it('a line outside that runs back into the tolerance is no warning: 150, 150 and 191, 184.2 on the last day', () => {
    const back = channelOf({ history: history(['2022-01-01', 150], ['2023-01-01', 150]) }, { measured: 191 });
    expect(said(back, '2024-01-01')).toMatchObject([{ rule: 'drift-of-sensitivity', severity: 'note' }]);
  });

  it('a line that left it before the last reading is no warning of its own, nor one that left it on a day before all', () => {
    expect(
      said(
        channelOf({ history: history(['2022-01-01', 188], ['2023-01-01', 187]) }, { measured: 186 }),
        '2024-01-02',
      ),
    ).toMatchObject([{ rule: 'drift-of-sensitivity', severity: 'note' }]);
  });

  it('outside by now, at the last reading just at the tolerance, it is unseen', () => {
    // 194, 192, 190: 190 is the tolerance of 5 % itself, reached on the last day.
    const at = (measured: number) =>
      said(
        channelOf({ history: history(['2022-01-01', 194], ['2023-01-01', 192]) }, { measured }),
        '2024-03-01',
      ).map(({ rule, values }) => [rule, (values as { kind?: string }).kind]);
    expect(at(190)).toEqual([['drift-leaves-tolerance', 'unseen by the last reading']]);
    expect(at(189.9)).toEqual([['drift-of-sensitivity', undefined]]);
  });
});
