import { describe, expect, it } from 'vitest';
import { asLeftEvidence } from '../../src/audit/judge/asLeft/asLeftEvidence.ts';
import {
  asLeftReadings,
  hasAsLeft,
  type AsLeftReadings,
  type LeftRecords,
} from '../../src/audit/judge/asLeft/readings.ts';
import type { Statement } from '../../src/audit/judge/findings/rule.ts';
import type { MeasuredCurve } from '../../src/audit/judge/lines/curveLine.ts';
import type { Evidence } from '../../src/audit/judge/lines/evidence.ts';
import type { Channel, MeasuredLoop } from '../../src/audit/model/channel.ts';
import { parsePolicy } from '../../src/audit/model/policy.ts';
import type { Obstacle } from '../../src/audit/model/threshold.ts';
import type { ChannelRow } from '../../src/audit/read/rows/channelRow.ts';
import type { Amount } from '../../src/audit/read/rows/rowReader.ts';
import type { Cell } from '../../src/cells/cell.ts';
import { parseUnit } from '../../src/units/parse.ts';
import { book, oneChannel, type Rows } from './book.ts';
import { auditCase } from './golden.ts';

const near = (value: number, digits = 9): number => expect.closeTo(value, digits) as number;
const policy = parsePolicy({});
const noRecords: LeftRecords = { record: undefined, check: undefined };
const nothing: AsLeftReadings = {
  sensitivity: null,
  from: null,
  uncertainty: null,
  gapVoltage: null,
  zero: null,
};

/** A channel found at 160 mV/mil, 3 %, −8 V, straight over 12 mil, with what else was found. */
const found = (channel: Partial<Channel> = {}, more: Partial<Omit<Evidence, 'channel'>> = {}): Evidence => ({
  channel: {
    ...{ kind: 'radial', configured: 200, measured: 160, uncertainty: 0.03, gapVoltage: -8 },
    ...{ zeroConfigured: null, zeroMeasured: null, direction: null, loop: null, recordReach: 12 },
    ...{ unitsPerVolt: 1000, sensitivityUnit: parseUnit('mV/mil')! },
    ...channel,
  } as Channel,
  curve: null,
  vibration: null,
  obstacles: [],
  ...more,
});
const left = (evidence: Evidence, readings: Partial<AsLeftReadings>) =>
  asLeftEvidence(evidence, { ...nothing, ...readings }, noRecords, [], policy).evidence;

describe('what was not read again stays as found', () => {
  const curve = {} as MeasuredCurve;
  const vibration = { sensitivity: 170, uncertainty: null };

  it('the gap voltage alone read: the sensitivity and its uncertainty, not the reach about the other gap', () => {
    const one = left(found({}, { curve, vibration }), { gapVoltage: -9 });
    expect(one.channel).toMatchObject({
      measured: 160,
      uncertainty: 0.03,
      gapVoltage: -9,
      recordReach: null,
    });
    expect(one).toMatchObject({ curve: null, vibration });
  });

  it('the sensitivity alone read: gap voltage and reach, not the curve or the known vibration of the faulty chain', () => {
    const one = left(found({}, { curve, vibration }), { sensitivity: 200, from: 'channel list' });
    expect(one.channel).toMatchObject({ measured: 200, uncertainty: 0.03, gapVoltage: -8, recordReach: 12 });
    expect(one).toMatchObject({ curve: null, vibration: null });
    const stated = left(found(), { sensitivity: 200, from: 'channel list', uncertainty: 0.01 });
    expect(stated.channel.uncertainty).toBe(0.01);
  });

  it('the zero of a position alone read: its curve', () => {
    const position = found({ kind: 'axial', zeroConfigured: -10, zeroMeasured: -10 }, { curve, vibration });
    expect(left(position, { zero: -10 })).toMatchObject({ curve, vibration, obstacles: [] });
  });
});

describe('what keeps a channel from being judged as left', () => {
  const position = (channel: Partial<Channel>, obstacles: readonly Obstacle[] = []) =>
    found({ kind: 'axial', zeroConfigured: -10, zeroMeasured: -10, ...channel }, { obstacles });

  it('is a zero that was not read again, whatever it was found at; of a vibration never', () => {
    expect(left(position({}), { sensitivity: 200 })).toMatchObject({
      channel: { zeroMeasured: null },
      obstacles: ['the zero voltage was not measured again'],
    });
    expect(left(found({ zeroMeasured: -9 }), { sensitivity: 200 })).toMatchObject({
      channel: { zeroMeasured: -9 },
      obstacles: [],
    });
    expect(left(position({ zeroConfigured: null }), { zero: -10 }).obstacles).toEqual([
      'the configured zero voltage is missing',
    ]);
    expect(left(position({}), { zero: -10.4 }).obstacles).toEqual(['the direction is missing']);
  });

  it('is what has nothing to do with the readings; zeros, direction and record are judged anew', () => {
    const all: readonly Obstacle[] = [
      'a value that can’t be used',
      'the zero voltage was not measured',
      'the zero voltage was not measured again',
      'the configured zero voltage is missing',
      'the direction is missing',
      'the record can’t be used',
      'two values contradict each other',
    ];
    expect(left(position({}, all), { zero: -10 }).obstacles).toEqual([
      'a value that can’t be used',
      'two values contradict each other',
    ]);
  });
});

describe('a loop as left (by hand: 20 mm/s at 0.8 mA/(mm/s) are 16 mA)', () => {
  const ends: MeasuredLoop = {
    ...{ at0: 4.1, at100: 19.1, at0Uncertainty: null, at100Uncertainty: 0.2 },
    ...{ span: 20, isAll: true },
  };
  const loopOf = (loop: Partial<MeasuredLoop>, readings: Partial<AsLeftReadings>) =>
    left(found({ kind: 'loop', measured: 0.75, unitsPerVolt: 1, loop: { ...ends, ...loop } }), readings)
      .channel.loop;

  it('has its upper end where the sensitivity puts it, 4.1 + 16 mA, its uncertainty as found', () => {
    expect(loopOf({}, { sensitivity: 0.8 })).toEqual({ ...ends, at100: near(20.1) });
  });

  it('3 % of 16 mA are 0.48 mA: all of it, 0.384 beside 0.288 of the lower end, none beside 0.6', () => {
    const upper = (at0Uncertainty: number | null) =>
      loopOf({ at0Uncertainty }, { sensitivity: 0.8, uncertainty: 0.03 })?.at100Uncertainty;
    expect(upper(null)).toBeCloseTo(0.48, 12);
    // 0.384² + 0.288² = 0.48².
    expect(upper(0.288)).toBeCloseTo(0.384, 12);
    expect(upper(0.6)).toBe(0);
  });

  it('stays where its sensitivity was not measured again, or is that of a sensor before it', () => {
    expect(loopOf({}, {})).toEqual(ends);
    expect(loopOf({ isAll: false }, { sensitivity: 0.8, uncertainty: 0.03 })).toEqual({
      ...ends,
      isAll: false,
    });
  });
});

describe('as-left readings of a row', () => {
  const amount = (value: number, unit?: string): Amount => ({
    value,
    unit: unit === undefined ? null : parseUnit(unit)!,
  });
  const rowOf = (some: object): ChannelRow =>
    ({
      ...{ asLeftSensitivity: null, asLeftGapVoltage: null, asLeftUncertainty: null, asLeftZero: null },
      ...{ asLeftCoverage: null, diagnostics: [] },
      ...some,
    }) as unknown as ChannelRow;
  const read = (some: object) => {
    const said: Statement[] = [];
    const readings = asLeftReadings(rowOf(some), noRecords, found().channel, policy, (one) => said.push(one));
    return {
      readings,
      said: said.map(({ rule, severity, column, values }) => [rule, severity, column, values]),
    };
  };
  const notJudged = ['as-left-not-judged', 'warning', 'asLeftSensitivity', { why: 'value unusable' }];

  it('are in the units of the channel: 8 mV/µm are 203.2 mV/mil (by hand)', () => {
    expect(read({ asLeftSensitivity: amount(8, 'mV/µm') })).toEqual({
      readings: { ...nothing, sensitivity: near(203.2), from: 'channel list' },
      said: [],
    });
    expect(read({ asLeftGapVoltage: amount(-9500, 'mV') }).readings).toEqual({
      ...nothing,
      gapVoltage: near(-9.5),
    });
  });

  it('can’t be judged without a unit or in one that does not fit, which is said', () => {
    expect(read({ asLeftSensitivity: amount(200) })).toEqual({
      readings: null,
      said: [
        ['unit-missing', 'warning', 'asLeftSensitivity', { what: 'as-left sensitivity', example: 'mV/mil' }],
        notJudged,
      ],
    });
    expect(read({ asLeftSensitivity: amount(200, 'mV/g') })).toEqual({
      readings: null,
      said: [
        [
          'unit-does-not-fit',
          'warning',
          'asLeftSensitivity',
          { kind: 'sensitivities', which: 'as left', unit: 'mV/g', configuredUnit: 'mV/mil' },
        ],
        notJudged,
      ],
    });
  });

  it('nor with a gap or zero voltage above 0 V on a negative supply; at 0 V it counts', () => {
    const gap = { asLeftSensitivity: amount(200, 'mV/mil'), asLeftGapVoltage: amount(9, 'V') };
    expect(read(gap).said).toEqual([
      ['gap-voltage-positive', 'warning', 'asLeftGapVoltage', { which: 'as left', volts: 9 }],
      notJudged,
    ]);
    const zero = { asLeftSensitivity: amount(200, 'mV/mil'), asLeftZero: amount(9, 'V') };
    expect(read(zero).said).toEqual([
      ['zero-voltage-positive', 'warning', 'asLeftZero', { which: 'as left', volts: 9 }],
      notJudged,
    ]);
    expect(read({ asLeftZero: amount(0, 'V') })).toMatchObject({ readings: { zero: 0 }, said: [] });
  });

  it('with an uncertainty at its own coverage factor: 3 % at 3 are 2 % at 2 (by hand)', () => {
    const at = (asLeftCoverage: Amount | null) =>
      read({ asLeftSensitivity: amount(200, 'mV/mil'), asLeftUncertainty: amount(3, '%'), asLeftCoverage })
        .readings?.uncertainty;
    expect(at(null)).toBeCloseTo(0.03, 12);
    expect(at(amount(3))).toBeCloseTo(0.02, 12);
  });

  it('are there by any of them, or by what can’t be used of them; a note on one says nothing against it', () => {
    const has = (some: object) => hasAsLeft(rowOf(some), noRecords);
    expect(has({})).toBe(false);
    for (const one of ['asLeftSensitivity', 'asLeftGapVoltage', 'asLeftUncertainty', 'asLeftZero']) {
      expect(has({ [one]: amount(1, 'V') })).toBe(true);
      expect(has({ diagnostics: [{ column: one, severity: 'warning' }] })).toBe(true);
      expect(has({ diagnostics: [{ column: one, severity: 'note' }] })).toBe(false);
    }
    expect(has({ diagnostics: [{ column: 'measured', severity: 'warning' }] })).toBe(false);
  });
});

describe('a check with a known vibration marked as left', () => {
  const shaker = (series: string, ...sensitivities: number[]): [string, Rows] => [
    'Shaker',
    [
      ['Tag', 'Series', 'Displacement (mil p-p)', 'Output (mV p-p)', 'Frequency (Hz)'],
      ...sensitivities.map((one) => ['V-1', series, 4, 4 * one, 60]),
    ],
  ];
  const audited = (
    channel: Readonly<Record<string, Cell>>,
    check: [string, Rows],
    more: { kind?: string; policy?: unknown } = {},
  ) =>
    auditCase({
      because: '',
      policy: more.policy ?? {},
      book: book(...oneChannel({ measured: 160, channel, kind: more.kind ?? 'radial' }).sheets, check),
    }).channels[0]!;
  const danger = (one: ReturnType<typeof audited>) => one.thresholds.find(({ name }) => name === 'danger')!;

  it('stands for the sensitivity as left: 198 mV/mil, 5·200/198 mil', () => {
    const one = audited({}, shaker('as left', 198));
    expect(one).toMatchObject({
      state: 'as left',
      verdict: 'within',
      sensitivity: { measured: near(198), from: 'known vibration' },
      dynamic: { sensitivity: near(198), levels: 1 },
      asFound: { verdict: 'late', sensitivity: { measured: 160 } },
    });
    expect(danger(one).effective).toBeCloseTo(1000 / 198, 9);
  });

  // 190 and 206 mV/mil: s = 8·√2, s/√2 = 8, and t at 95.45 % with one degree of freedom is 13.97 (JCGM 100 table G.2).
  it('is no better known than its levels agree: 198 ± 8·13.97 mV/mil may be late', () => {
    for (const channel of [{}, { 'Uncertainty (%)': 3 }]) {
      const one = audited(channel, shaker('as left', 190, 206));
      expect(one).toMatchObject({ state: 'as left', verdict: 'undetermined' });
      expect(danger(one)).toMatchObject({
        governedBy: 'known vibration',
        low: near(1000 / (198 + 8 * 13.968), 2),
        high: near(1000 / (198 - 8 * 13.968), 2),
      });
    }
    const simple = audited({}, shaker('as left', 190, 206), { policy: { rule: 'simple' } });
    expect(simple.verdict).toBe('within');
  });

  it('counts beside a sensitivity as left of the channel list: the worse of both governs', () => {
    const one = audited({ 'As-left sensitivity (mV/mil)': 200 }, shaker('as left', 160));
    expect(one.sensitivity).toMatchObject({ measured: 200, from: 'channel list' });
    expect(danger(one)).toMatchObject({
      verdict: 'late',
      governedBy: 'known vibration',
      effective: near(6.25),
    });
  });

  it('has the as-left uncertainty of its row, in percent or in its unit: 9.9 of 198 mV/mil are 5 % (by hand)', () => {
    const percent = audited({ 'As-left uncertainty (%)': 5 }, shaker('as left', 198));
    const inUnit = audited({ 'As-left uncertainty (mV/mil)': 9.9 }, shaker('as left', 198));
    for (const one of [percent, inUnit]) {
      expect(one.sensitivity).toMatchObject({ measured: near(198), uncertainty: near(0.05) });
      expect(one.findings.map(({ rule }) => rule)).not.toContain('as-left-uncertainty-missing');
      // 198·0.95 = 188.1 is beyond 5 % of 200.
      expect(one.verdict).toBe('undetermined');
    }
  });

  it('tells nothing of what was found, nor one as found of what was left', () => {
    expect(audited({}, shaker('as left', 200)).asFound?.thresholds.map(({ lines }) => lines.length)).toEqual([
      1, 1,
    ]);
    const again = audited({ 'As-left sensitivity (mV/mil)': 200 }, shaker('as found', 160));
    expect(again).toMatchObject({ verdict: 'within', dynamic: null });
    expect(again.asFound?.thresholds.map(({ lines }) => lines.length)).toEqual([2, 2]);
  });
});
