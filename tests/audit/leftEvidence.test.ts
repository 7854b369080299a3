import { describe, expect, it } from 'vitest';
import { exposuresOf, periodOfExposure } from '../../src/audit/judge/asLeft/exposure.ts';
import type { Channel } from '../../src/audit/model/channel.ts';
import type { ThresholdResult, ThresholdVerdict } from '../../src/audit/model/threshold.ts';
import type { Cell } from '../../src/cells/cell.ts';
import { book, oneChannel, type Rows } from './book.ts';
import { auditCase } from './golden.ts';
import { gaps, rowsOf, straight } from './recordSheets.ts';
import type { Workbook } from '../../src/cells/sheet.ts';

type Columns = Readonly<Record<string, Cell>>;
const left = 'As-left sensitivity (mV/mil)';
const only = (workbook: Workbook) => auditCase({ because: '', book: workbook }).channels[0]!;
const danger = (workbook: Workbook) => only(workbook).thresholds.find(({ name }) => name === 'danger')!;
const linesOf = (workbook: Workbook) => danger(workbook).lines.map(({ by }) => by);
const rules = (workbook: Workbook) => only(workbook).findings.map(({ rule }) => rule);

const withSheet = (one: Workbook, name: string, rows: Rows): Workbook => book(...one.sheets, [name, rows]);
const record = (sensitivity: number, series = 'as found'): Rows => [
  ['Tag', 'Series', 'Gap (mil)', 'Output (V)'],
  ...rowsOf(['V-1', series], straight(sensitivity, gaps(10, 90, 10))),
];
const shaker = (sensitivity: number): Rows => [
  ['Tag', 'Displacement (mil p-p)', 'Output (mV p-p)', 'Frequency (Hz)'],
  ['V-1', 4, 4 * sensitivity, 60],
];
/** A position about −10 V as configured. */
const position = (channel: Columns, settings: Columns = { 'Configured zero voltage (V)': -10 }) =>
  oneChannel({ kind: 'axial', channel, settings });

describe('what was found of a chain tells nothing of it once it was measured again', () => {
  it('a record as found of 160 mV/mil', () => {
    const found = oneChannel({ measured: 160, channel: { 'Gap voltage (V)': -8, [left]: 200 } });
    expect(linesOf(withSheet(found, 'Records', record(160)))).toEqual(['listed sensitivity']);
    expect(only(withSheet(found, 'Records', record(160))).verdict).toBe('within');
  });

  it('nor that record about another gap voltage', () => {
    const moved = oneChannel({
      measured: 160,
      channel: { 'Gap voltage (V)': -8, 'As-left gap voltage (V)': -9 },
    });
    expect(linesOf(withSheet(moved, 'Records', record(160)))).toEqual(['listed sensitivity']);
    expect(only(withSheet(moved, 'Records', record(160))).inputs.linearReach).toBeCloseTo((2 * 7) / 0.16, 9);
  });

  it('but where only the zero of a position was, its record counts', () => {
    const zero = position({
      'Zero voltage (V)': -10.4,
      'Positive direction': 'toward',
      'As-left zero voltage (V)': -10,
    });
    expect(linesOf(withSheet(zero, 'Records', record(200)))).toEqual([
      'listed sensitivity',
      'calibration record',
    ]);
  });

  it('a known vibration as found; where only the gap voltage was read again it counts', () => {
    const again = oneChannel({ measured: 160, channel: { [left]: 200 } });
    expect(linesOf(withSheet(again, 'Shaker', shaker(160)))).toEqual(['listed sensitivity']);
    const gap = oneChannel({ measured: 200, channel: { 'As-left gap voltage (V)': -9 } });
    expect(linesOf(withSheet(gap, 'Shaker', shaker(160)))).toEqual(['listed sensitivity', 'known vibration']);
    expect(only(withSheet(gap, 'Shaker', shaker(160))).verdict).toBe('late');
  });
});

describe('what kept a channel from being judged when it was found', () => {
  it('is over with the zero voltage as left', () => {
    expect(only(position({ 'As-left zero voltage (V)': -10, [left]: 200 })).verdict).toBe('within');
    expect(only(position({ 'As-left zero voltage (V)': -10 })).state).toBe('as left');
  });

  it('is over with the direction where the zeros agree as left, and is there where they differ', () => {
    const zeros = (found: number, asLeft: number) =>
      position({ 'Zero voltage (V)': found, 'As-left zero voltage (V)': asLeft, [left]: 200 });
    expect(only(zeros(-10.4, -10)).verdict).toBe('within');
    expect(danger(zeros(-10, -10.4)).obstacles).toEqual(['the direction is missing']);
    expect(only(zeros(-10, -10.4)).verdict).toBe('incomplete');
  });

  it('stays where the zero was never configured', () => {
    const never = position({ 'Zero voltage (V)': -10, 'As-left zero voltage (V)': -10 }, {});
    expect(danger(never).obstacles).toEqual(['the configured zero voltage is missing']);
    expect(only(never).verdict).toBe('incomplete');
  });

  it('is over with a record as found that can’t be used, and stays with a full scale that can’t', () => {
    const short: Rows = record(200).slice(0, 3);
    const channel = oneChannel({ measured: 200, channel: { [left]: 200 } });
    expect(only(withSheet(oneChannel({}), 'Records', short)).verdict).toBe('incomplete');
    expect(only(withSheet(channel, 'Records', short)).verdict).toBe('within');
    const scale = oneChannel({ channel: { [left]: 200 }, settings: { 'Full scale (mil)': 'wide' } });
    expect(only(scale).state).toBe('as left');
    expect(only(scale).verdict).toBe('incomplete');
  });
});

describe('as-left values that can’t be used', () => {
  it('leave even a channel that was found right incomplete: how it was left is not known', () => {
    for (const bad of [
      { [left]: 'new' },
      { 'As-left uncertainty (%)': 3 },
      { 'As-left gap voltage (V)': 9 },
    ]) {
      const one = oneChannel({ channel: bad });
      expect(rules(one)).toContain('as-left-not-judged');
      expect(only(one)).toMatchObject({ verdict: 'incomplete', state: 'as found' });
      expect(danger(one).obstacles).toEqual(['a value that can’t be used']);
    }
  });

  it('say why, as warnings', () => {
    const why = (channel: Columns) =>
      only(oneChannel({ channel })).findings.find(({ rule }) => rule === 'as-left-not-judged');
    expect(why({ [left]: 'new' })).toMatchObject({ severity: 'warning', values: { why: 'value unusable' } });
    expect(why({ 'As-left uncertainty (%)': 3 })).toMatchObject({ values: { why: 'no sensitivity' } });
    const unknown = only(oneChannel({ measured: null, channel: { [left]: 200 } })).findings;
    expect(unknown.find(({ rule }) => rule === 'as-left-not-judged')).toMatchObject({
      severity: 'warning',
      values: { why: 'found unusable' },
    });
  });

  it('a zero voltage as left above 0 V is none on a negative supply', () => {
    const positive = position({ 'Zero voltage (V)': -10, 'As-left zero voltage (V)': 10, [left]: 200 });
    expect(only(positive).findings.find(({ rule }) => rule === 'zero-voltage-positive')).toMatchObject({
      severity: 'warning',
      values: { which: 'as left', volts: 10 },
    });
    expect(only(positive).verdict).toBe('incomplete');
  });
});

it('a position’s record as left is read about its zero as left, as the sensitivity that it gives (by hand)', () => {
  // 160 mV/mil from 10 to 30 mil (−3.6 V is 20 mil), 166 from 40 to 70 mil (−9.52 V is 60 mil), 100 between them.
  const points = [-2, -3.6, -5.2, -6.2, -7.86, -9.52, -11.18].map((volts, at): [number, number] => [
    10 + 10 * at,
    volts,
  ]);
  const moved = oneChannel({
    kind: 'axial',
    measured: 160,
    channel: {
      'Zero voltage (V)': -3.6,
      'Positive direction': 'toward',
      'As-left zero voltage (V)': -9.52,
    },
    settings: { 'Configured zero voltage (V)': -9.52 },
  });
  const rows: Rows = [['Tag', 'Series', 'Gap (mil)', 'Output (V)'], ...rowsOf(['V-1', 'as left'], points)];
  const channel = only(withSheet(moved, 'Records', rows));
  expect(channel.record?.average).toBeCloseTo(166, 9);
  expect(channel.sensitivity).toMatchObject({ from: 'calibration record' });
  expect(channel.sensitivity.measured).toBeCloseTo(166, 9);
});

it('the upper end of a loop goes where the sensitivity as left puts it, in the unit of the setpoints (by hand)', () => {
  // 20 mm/s at 0.8 mA/(mm/s) are 16 mA: from 4 to 20 mA, so that 0.5 in/s act at 0.5 in/s.
  const loop = book(
    [
      'Channels',
      [
        [
          'Tag',
          'Kind',
          'Measured sensitivity (mA/(mm/s))',
          'Loop current at 0 % (mA)',
          'Loop current at 100 % (mA)',
          'As-left sensitivity (mA/(mm/s))',
        ],
        ['V-1', 'loop', 0.75, 4, 19, 0.8],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mA/(mm/s))', 'Alert (in/s)', 'Danger (in/s)'],
        ['V-1', 0.8, 0.3, 0.5],
      ],
    ],
  );
  expect(danger(loop).effective).toBeCloseTo(0.5, 9);
  expect(only(loop).inputs.loop?.at100).toBeCloseTo(20, 9);
});

describe('a period of exposure (days counted from 1970-01-01)', () => {
  const period = (lastGoodOn: number | null, calibratedOn: number | null, today = 100) =>
    periodOfExposure({ lastGoodOn, calibratedOn }, today);

  it('runs from the last good day to the calibration, of today at the latest', () => {
    expect(period(10, 100)).toEqual({ from: 10, to: 100 });
    expect(period(10, 101)).toEqual({ from: 10, to: null });
    expect(period(10, null)).toEqual({ from: 10, to: null });
    expect(period(100, 90)).toEqual({ from: null, to: 90 });
    expect(period(90, 90)).toEqual({ from: null, to: 90 });
    expect(period(null, 90)).toEqual({ from: null, to: 90 });
    expect(period(100, null)).toEqual({ from: 100, to: null });
    expect(period(101, null)).toEqual({ from: null, to: null });
    expect(period(101, 102)).toEqual({ from: null, to: null });
  });

  it('is told of what is late or can’t act alone, and goes on while it is either', () => {
    const of = (...verdicts: ThresholdVerdict[]) =>
      verdicts.map(
        (verdict, at) => ({ name: at ? 'danger' : 'alert', multiplier: 1, verdict }) as ThresholdResult,
      );
    const channel = { lastGoodOn: 10, calibratedOn: 90 } as Channel;
    const goesOn = (now: ThresholdVerdict) =>
      exposuresOf(channel, of('within', 'unreachable'), of('within', now), 100).map((one) => [
        one.name,
        one.days,
        one.goesOn,
      ]);
    expect(goesOn('unreachable')).toEqual([['danger', 80, true]]);
    expect(goesOn('late')).toEqual([['danger', 80, true]]);
    expect(goesOn('early')).toEqual([['danger', 80, false]]);
    expect(goesOn('undetermined')).toEqual([['danger', 80, null]]);
    expect(exposuresOf(channel, of('within', 'early'), null, 100)).toEqual([]);
    expect(exposuresOf(channel, of('late', 'early'), null, 100)).toMatchObject([
      { name: 'alert', goesOn: null },
    ]);
  });
});
