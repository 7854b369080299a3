import { describe, expect, it } from 'vitest';
import { driftLine } from '../../../src/audit/judge/drift/driftLine.ts';
import type { ChannelReading } from '../../../src/audit/judge/drift/channelReadings.ts';
import type { DriftResult } from '../../../src/audit/model/drift.ts';
import { book, type Rows } from '../book.ts';
import { auditCase } from '../golden.ts';

const near = (value: number): number => expect.closeTo(value, 6) as number;

/** Readings a year of 365 days apart from 1970-01-01 on. */
const yearly = (...values: number[]) =>
  values.map((sensitivity, at) => ({ day: 365 * at, sensitivity, asLeft: false }) as ChannelReading);
const drift = (values: readonly ChannelReading[], configured: number, today = 1000) =>
  driftLine(values, { configured, unit: 'mV/mil', tolerance: 0.05, today }) as DriftResult;

describe('when the line through the readings leaves the tolerance of 5 % (by hand)', () => {
  it('rising by 1 a year from 200 it reaches 210 after 3650 days, falling 190', () => {
    expect(drift(yearly(200, 201, 202), 200).leaves).toMatchObject({
      state: 'inside',
      limit: near(210),
      days: near(3650),
    });
    expect(drift(yearly(200, 199, 198), 200).leaves).toMatchObject({
      state: 'inside',
      limit: near(190),
      days: near(3650),
    });
  });

  it('has left it already: 191, 190 and 189 reach 190 after 365 days', () => {
    expect(drift(yearly(191, 190, 189), 200).leaves).toMatchObject({
      state: 'outside',
      limit: near(190),
      days: near(365),
    });
    expect(drift(yearly(209, 210, 211), 200).leaves).toMatchObject({
      state: 'outside',
      limit: near(210),
      days: near(365),
    });
  });

  it('tells no day while it runs back into the tolerance, or nowhere', () => {
    const none = { limit: null, days: null, on: null, earliest: null, latest: null };
    expect(drift(yearly(200, 201, 202), 220).leaves).toEqual({ state: 'outside', ...none });
    expect(drift(yearly(202, 201, 200), 180).leaves).toEqual({ state: 'outside', ...none });
    expect(drift(yearly(200, 200, 200), 200).leaves).toEqual({ state: 'inside', ...none });
    expect(drift(yearly(150, 150, 150), 200).leaves).toEqual({ state: 'outside', ...none });
    // At the tolerance itself it is within.
    expect(drift(yearly(190, 190, 190), 200).leaves).toEqual({ state: 'inside', ...none });
    expect(drift(yearly(210, 210, 210), 200).leaves).toEqual({ state: 'inside', ...none });
  });

  it('names no day before 1970 or after 9999: 10 mV/mil at 0.001 a year are 3,650,000 days', () => {
    expect(drift(yearly(200, 199.999, 199.998), 200).leaves).toMatchObject({
      days: expect.closeTo(3_650_000, 0) as number,
      on: null,
    });
    expect(drift(yearly(150, 149, 148), 200).leaves).toMatchObject({ days: near(-14_600), on: null });
  });
});

it('readings before a correction do not count', () => {
  const readings = [
    { day: 0, sensitivity: 180, asLeft: false },
    { day: 0, sensitivity: 200, asLeft: true },
    { day: 365, sensitivity: 199, asLeft: false },
    { day: 730, sensitivity: 198, asLeft: false },
  ] as ChannelReading[];
  const found = drift(readings, 200);
  expect(found.readings.map(({ sensitivity, counts }) => [sensitivity, counts])).toEqual([
    [180, false],
    [200, true],
    [199, true],
    [198, true],
  ]);
  expect(found).toMatchObject({ days: 730, startsAnew: { date: '1970-01-01', found: 180, left: 200 } });
});

describe('what is said of a drift', () => {
  const audited = (measured: number, calibratedOn: string, history: Rows, configured = 200) =>
    auditCase({
      because: '',
      book: book(
        [
          'Channels',
          [
            ['Tag', 'Measured sensitivity (mV/mil)', 'Calibrated on'],
            ['V-1', measured, calibratedOn],
          ],
        ],
        [
          'Monitor',
          [
            ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
            ['V-1', configured, 3, 5],
          ],
        ],
        ['History', [['Tag', 'Date', 'As found / as left', 'Sensitivity (mV/mil)'], ...history]],
      ),
    }).channels[0]!.findings;
  const one = (findings: ReturnType<typeof audited>, rule: string) => findings.find((at) => at.rule === rule);

  it('a line that the last reading shows outside too is a note: 200, 194 and 188', () => {
    const findings = audited(188, '2023-01-01', [
      ['V-1', '2021-01-01', null, 200],
      ['V-1', '2022-01-01', null, 194],
    ]);
    expect(one(findings, 'drift-leaves-tolerance')).toBeUndefined();
    expect(one(findings, 'drift-of-sensitivity')).toMatchObject({
      severity: 'note',
      values: { readings: 3, from: '2021-01-01', to: '2023-01-01' },
    });
  });

  it('one that leaves the tolerance before the next calibration is a warning, by the readings that count', () => {
    // 200, 197 and 194 since the correction reach 190 in 2026, some 1218 days after the correction.
    const findings = audited(194, '2025-01-01', [
      ['V-1', '2020-01-01', null, 150],
      ['V-1', '2023-01-01', 'as found', 150],
      ['V-1', '2023-01-01', 'as left', 200],
      ['V-1', '2024-01-01', null, 197],
    ]);
    expect(one(findings, 'drift-leaves-tolerance')).toMatchObject({
      severity: 'warning',
      values: {
        kind: 'before the next calibration',
        readings: 3,
        from: '2023-01-01',
        to: '2025-01-01',
        // 365 + 365 days.
        due: '2027-01-01',
      },
    });
  });

  it('one that is outside by now, unseen by the last reading, is a warning: 200, 198 and 196 reach 190 on 2025-12-31', () => {
    const findings = audited(196, '2023-01-01', [
      ['V-1', '2021-01-01', null, 200],
      ['V-1', '2022-01-01', null, 198],
    ]);
    expect(one(findings, 'drift-leaves-tolerance')).toMatchObject({
      severity: 'warning',
      values: { kind: 'unseen by the last reading' },
    });
  });

  it('a calibration of a day that has not come is no reading', () => {
    const findings = audited(196, '2026-01-02', [
      ['V-1', '2021-01-01', null, 200],
      ['V-1', '2022-01-01', null, 198],
    ]);
    expect(one(findings, 'drift-not-told')?.values).toMatchObject({ readings: 2 });
  });

  it('a later reading of a history is a warning, one of the same day is none', () => {
    const later = (day: string) =>
      one(audited(200, '2024-06-01', [['V-1', day, null, 170]]), 'history-has-newer-reading');
    expect(later('2024-06-02')).toMatchObject({
      severity: 'warning',
      values: { sensitivity: 170, on: '2024-06-02', off: expect.closeTo(-0.15, 12) as number, measured: 200 },
    });
    expect(later('2024-06-01')).toBeUndefined();
  });

  it('two readings are too few, which is a note', () => {
    expect(
      one(audited(199, '2023-01-01', [['V-1', '2022-01-01', null, 200]]), 'drift-not-told')?.severity,
    ).toBe('note');
  });
});
