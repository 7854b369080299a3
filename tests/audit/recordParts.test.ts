import { describe, expect, it } from 'vitest';
import { chooseRecord } from '../../src/audit/judge/records/chooseRecord.ts';
import { curveFindings, operatingPoint } from '../../src/audit/judge/records/curveFindings.ts';
import { evaluateCheck } from '../../src/audit/judge/records/evaluateCheck.ts';
import type { Channel } from '../../src/audit/model/channel.ts';
import type { Fact } from '../../src/audit/model/findings.ts';
import { parsePolicy } from '../../src/audit/model/policy.ts';
import type { RecordResult } from '../../src/audit/model/records.ts';
import type { ThresholdResult } from '../../src/audit/model/threshold.ts';
import type { RawCheck, RawRecord } from '../../src/audit/read/records/rawRecord.ts';
import type { Cell } from '../../src/cells/cell.ts';
import { parseUnit } from '../../src/units/parse.ts';
import { book, oneChannel, type Rows } from './book.ts';
import { auditCase } from './golden.ts';
import { gaps, rowsOf, straight } from './recordSheets.ts';

const near = (value: number, digits = 9): number => expect.closeTo(value, digits) as number;
type Point = readonly [gap: number, volts: number];

/** A record of these points from row 2 on. */
const raw = (points: readonly Point[], series = '', gapUnit = 'mil'): RawRecord => ({
  ...{ kind: 'record', tag: 'V-1', series, temperature: '', takenOn: null, gapUnit: parseUnit(gapUnit)! },
  ...{ sheet: 'Records', row: 2, column: 'B', remarks: [] },
  points: points.map(([gap, volts], at) => ({ row: 2 + at, gap, volts })),
});

describe('which record is looked at', () => {
  const slopes = (...records: RawRecord[]) => {
    const { used, others, faults } = chooseRecord(records);
    return { slopes: [used, ...others].map((one) => one?.slope), faults: faults.map(({ fault }) => fault) };
  };
  const at = (sensitivity: number, series = '') => raw(straight(sensitivity, gaps(10, 50, 10)), series);

  it('as found before any other, as left last; of one series the lowest sensitivity, whatever its unit', () => {
    expect(slopes(at(150, 'as left'), at(160, 'spare'), at(200, 'as found'), at(190, 'as found'))).toEqual({
      slopes: [near(0.19), near(0.2), near(0.16), near(0.15)],
      faults: [],
    });
    // 8 mV/µm are 203.2 mV/mil, above 200; 7.5 are 190.5, below.
    const um = (sensitivity: number) => raw(straight(sensitivity, gaps(250, 1250, 250)), '', 'µm');
    expect(slopes(um(8), at(200)).slopes).toEqual([near(0.2), near(0.008)]);
    expect(slopes(at(200), um(7.5)).slopes).toEqual([near(0.0075), near(0.2)]);
  });

  it('one of 1,000 points is, one of more is not, nor one that falls in neither direction', () => {
    const points = (count: number) => straight(2, gaps(1, count, 1));
    expect(slopes(raw(points(1000)))).toEqual({ slopes: [near(0.002)], faults: [] });
    expect(slopes(raw(points(1001)))).toEqual({
      slopes: [undefined],
      faults: [{ fault: 'too many points', at: 1001 }],
    });
  });

  const upAndDown = (up: readonly number[], down: readonly number[]): Point[] => [
    ...up.map((volts, index): Point => [10 + 10 * index, volts]),
    ...down.map((volts, index): Point => [10 * down.length - 10 * index, volts]),
  ];

  it('read up and down its mean counts: −2.1, −4.1 and −6 V at 10, 20 and 30 mil', () => {
    const { used, faults } = chooseRecord([raw(upAndDown([-2, -4, -6], [-6, -4.2, -2.2]))]);
    expect(faults).toEqual([]);
    expect(used?.record.volts).toEqual([near(-2.1), near(-4.1), near(-6)]);
    // Least squares through equal steps: (−6 + 2.1)/20.
    expect(used?.slope).toBeCloseTo(0.195, 12);
    expect(used?.upDown?.mean).toBe(used?.record);
  });

  it('none whose mean of both ways does not fall: up and down rise, or the means agree at both ends', () => {
    const fault = { fault: 'does not fall both ways', at: 0 };
    expect(slopes(raw(upAndDown([-6, -4, -2], [-2, -4, -6]))).faults).toEqual([fault]);
    expect(slopes(raw(upAndDown([-4, -4, -4], [-4, -4, -4]))).faults).toEqual([fault]);
  });

  it('none with a gap twice on one way, which is named by its place; nor with fewer than three gaps both ways', () => {
    const twice: Point[] = [
      [10, -2],
      [20, -4],
      [20, -4.1],
      [30, -6],
      [40, -8],
    ];
    expect(slopes(raw(twice)).faults).toEqual([{ fault: 'gap repeated', at: 2 }]);
    // 10 mil stands once each way, 20 mil twice on the way down: the fifth reading is the one too many.
    const back: Point[] = [...straight(200, [10, 20, 30]), [20, -4.1], [20, -4.2], [10, -2.1]];
    expect(slopes(raw(back)).faults).toEqual([{ fault: 'gap repeated', at: 4 }]);
    const few = slopes(raw(upAndDown([-2, -4], [-4, -2]))).faults;
    expect(few).toMatchObject([{ fault: 'gap repeated' }]);
    expect(slopes(raw(straight(200, gaps(10, 20, 10)))).faults).toEqual([{ fault: 'too few points', at: 2 }]);
  });
});

describe('what is said of the records of a channel', () => {
  const audited = (
    sheets: readonly [string, Rows][],
    { measured = 200, channel = {} }: { measured?: number; channel?: Readonly<Record<string, Cell>> } = {},
    policy: unknown = {},
  ) =>
    auditCase({
      because: '',
      policy,
      book: book(...oneChannel({ measured, channel }).sheets, ...sheets),
    }).channels[0]!;
  const told = (channel: ReturnType<typeof audited>, rule: string) =>
    channel.findings
      .filter((one) => one.rule === rule)
      .map(({ severity, values, sheet, row, column }) => ({
        severity,
        values,
        at: `${sheet}!${column}${row}`,
      }));
  const long = (
    ...series: readonly (readonly [name: string, points: readonly Point[]])[]
  ): [string, Rows] => [
    'Records',
    [
      ['Tag', 'Series', 'Gap (mil)', 'Output (V)'],
      ...series.flatMap(([name, points]) => rowsOf(['V-1', name], points)),
    ],
  ];
  const shaker = (...levels: readonly (readonly [series: string, sensitivity: number])[]): [string, Rows] => [
    'Shaker',
    [
      ['Tag', 'Series', 'Temperature (°C)', 'Displacement (mil p-p)', 'Output (mV p-p)', 'Frequency (Hz)'],
      ...levels.map(([series, sensitivity], at) => ['V-1', series, 20 + at, 4, 4 * sensitivity, 60]),
    ],
  ];
  const right = straight(200, gaps(10, 90, 10));

  it('of a record that falls in neither direction what it is, as a warning at its first point', () => {
    const points: Point[] = [...gaps(10, 50, 10), ...gaps(10, 50, 10).toReversed()].map((gap) => [
      gap,
      gap / 5 - 20,
    ]);
    const one = audited([long(['spare', points])]);
    expect(told(one, 'record-unusable')).toEqual([
      {
        severity: 'warning',
        values: { tag: 'V-1', series: 'spare', fault: 'does not fall both ways' },
        at: 'Records!C2',
      },
    ]);
    expect(one.verdict).toBe('incomplete');
  });

  it('of a gap that stands twice the point and the gap', () => {
    const twice = audited([long(['as found', [...right.slice(0, 3), [30, -6.1], ...right.slice(3)]])]);
    const [one] = told(twice, 'record-unusable');
    expect(one?.values).toEqual({
      tag: 'V-1',
      series: 'as found',
      fault: 'gap repeated',
      gap: 30,
      gapUnit: 'mil',
    });
    expect(one?.at).toBe('Records!C5');
  });

  it('of several checks which was used, as found first, and which others there are; of one nothing', () => {
    const several = audited([shaker(['spare', 200], ['as found', 199])]);
    expect(told(several, 'several-records')).toEqual([
      {
        severity: 'note',
        values: {
          of: 'checks',
          used: { series: 'as found', temperature: '21' },
          others: [{ series: 'spare', temperature: '20' }],
        },
        at: 'Shaker!D3',
      },
    ]);
    expect(several.dynamic?.sensitivity).toBeCloseTo(199, 9);
    expect(told(audited([shaker(['as found', 199])]), 'several-records')).toEqual([]);
  });

  it('of several records the same', () => {
    const several = audited([long(['spare', right], ['as found', right])]);
    expect(told(several, 'several-records')).toEqual([
      {
        severity: 'note',
        values: {
          of: 'records',
          used: { series: 'as found', temperature: '' },
          others: [{ series: 'spare', temperature: '' }],
        },
        at: 'Records!C11',
      },
    ]);
    expect(told(audited([long(['as found', right])]), 'several-records')).toEqual([]);
  });

  it('of two directions how far they lie apart, as a note: 0.2 V of 3.9 V, 0.2/0.195 mil', () => {
    const points: Point[] = [...straight(200, gaps(10, 30, 10)), [30, -6], [20, -4.2], [10, -2.2]];
    const one = audited([long(['as found', points])]);
    expect(told(one, 'record-read-up-and-down')).toEqual([
      {
        severity: 'note',
        values: {
          cycles: 1,
          hysteresis: { volts: near(0.2), ofSpan: near(0.2 / 3.9), displacement: near(0.2 / 0.195) },
          repeatability: null,
          oneWay: [],
          gapUnit: 'mil',
        },
        at: 'Records!C2',
      },
    ]);
  });

  describe('a check beside the record (200 mV/mil), both expanded', () => {
    // Residuals of ±d about a straight line: see each.
    const apart = (points: readonly Point[], sensitivity: number) =>
      told(
        audited([long(['as found', points]), shaker(['as found', sensitivity])], {}, { tolerance: 0.001 }),
        'static-and-dynamic-disagree',
      );

    it('disagrees beyond the uncertainty of the record’s line, twice its standard one', () => {
      // 10 to 50 mil, −0.2 V a mil with 0.02, −0.04, 0.02, 0, 0 V beside it, which a line takes up in part: Σ(g − 30)·r =
      // −20·0.02 + 10·0.04 = 0 and Σr = 0, so the line is the same; s² = 0.0024/3, u² = s²/1000, u = 0.894 mV/mil, U 1.789.
      const scattered: Point[] = [
        [10, -1.98],
        [20, -4.04],
        [30, -5.98],
        [40, -8],
        [50, -10],
      ];
      expect(apart(scattered, 201.7)).toEqual([]);
      expect(apart(scattered, 201.9)).toMatchObject([
        {
          severity: 'warning',
          values: { from: 'calibration record', static: near(200), dynamic: near(201.9), off: near(0.0095) },
        },
      ]);
      expect(apart(straight(200, gaps(10, 50, 10)), 201.7)).toHaveLength(1);
    });

    it('disagrees beyond its own uncertainty and that of the list in quadrature (by hand: 3–4–5)', () => {
      // 199, 200 and 201: U = 4.527·1/√3 = 2.614; 1.7426 % of 200 is 3.485, and √(2.614² + 3.485²) = 4.356.
      const beside = (measured: number, uncertainty: number | null) =>
        told(
          audited(
            [
              [
                'Shaker',
                [
                  ['Tag', 'Displacement (mil p-p)', 'Output (mV p-p)', 'Frequency (Hz)'],
                  ...[199, 200, 201].map((one) => ['V-1', 4, 4 * one, 60]),
                ],
              ],
            ],
            { measured, channel: { 'Uncertainty (%)': uncertainty } },
            { tolerance: 0.001 },
          ),
          'static-and-dynamic-disagree',
        ).length;
      expect([beside(202.5, null), beside(202.7, null)]).toEqual([0, 1]);
      expect([beside(204.2, 1.7426), beside(204.6, 1.7426)]).toEqual([0, 1]);
      expect([beside(195.8, 1.7426), beside(195.4, 1.7426)]).toEqual([0, 1]);
    });
  });
});

describe('a check', () => {
  const check = (
    unit: string,
    ...levels: readonly (readonly [displacement: number, volts: number])[]
  ): RawCheck => ({
    ...{ kind: 'check', tag: 'V-1', series: '', temperature: '', unit: parseUnit(unit)!, remarks: [] },
    ...{ sheet: 'Shaker', row: 2, column: 'B' },
    levels: levels.map(([displacement, output], at) => ({ row: 2 + at, displacement, output })),
  });
  const channel = { sensitivityUnit: parseUnit('mV/mil')! } as Channel;

  it('is in the unit of the channel: 0.8 V of 101.6 µm are 200 mV/mil (by hand)', () => {
    expect(evaluateCheck(check('µm', [101.6, 0.8]), channel)?.sensitivity).toBeCloseTo(200, 9);
  });

  it('says nothing without a level, or in a unit of another quantity', () => {
    expect(evaluateCheck(check('mil'), channel)).toBeUndefined();
    expect(evaluateCheck(check('g', [1, 0.1]), channel)).toBeUndefined();
  });
});

describe('what the record says of a gap voltage and of thresholds', () => {
  const result = (some: Partial<RecordResult>): RecordResult =>
    ({
      operatingGap: null,
      straightPart: { from: 10, to: 90 },
      gapUnit: 'mil',
      points: [
        { gap: 10, volts: -2 },
        { gap: 90, volts: -18 },
      ],
      thresholds: [],
      ...some,
    }) as unknown as RecordResult;

  it('a gap at an end of the straight part is on it', () => {
    const said = (operatingGap: number | null, gapVoltage: number | null = -10, kind = 'radial') => {
      const facts: Fact[] = [];
      operatingPoint(result({ operatingGap }), { gapVoltage, kind } as Channel, (one) => facts.push(one));
      return facts.map(({ rule }) => rule);
    };
    expect([10, 50, 90].map((gap) => said(gap))).toEqual([[], [], []]);
    expect([9.9, 90.1].map((gap) => said(gap))).toEqual([
      ['gap-outside-straight-part'],
      ['gap-outside-straight-part'],
    ]);
    expect([-1.9, -2, -18, -18.1].map((volts) => said(null, volts))).toEqual([
      ['gap-outside-record'],
      [],
      [],
      ['gap-outside-record'],
    ]);
    expect([said(null, null), said(null, null, 'axial')]).toEqual([['record-without-gap-voltage'], []]);
  });

  const policy = parsePolicy({});
  const threshold = (name: string, multiplier: number, listed: number | null, onCurve: number | null) =>
    ({
      ...{ name, multiplier, setpoint: 5 },
      lines: [
        { by: 'listed sensitivity', effective: listed },
        { by: 'calibration record', effective: onCurve },
      ],
    }) as unknown as ThresholdResult;
  const channel = { unit: parseUnit('mil')!, zeroMeasured: -9.8 } as Channel;
  const of = (...thresholds: ThresholdResult[]) =>
    curveFindings(
      result({
        thresholds: [
          { name: 'danger', multiplier: 1, largestIndicated: 4 },
          { name: 'danger', multiplier: 3, largestIndicated: 12 },
          { name: 'alert', multiplier: 3, largestIndicated: 9 },
        ] as unknown as RecordResult['thresholds'],
      }),
      channel,
      thresholds,
      policy,
    );

  it('that falls short tells its largest indication by name and multiplier, none where there is none', () => {
    const largest = (name: string, multiplier: number) =>
      of(threshold(name, multiplier, 5, null)).map((one) => [
        one.rule,
        one.severity,
        (one.values as { largestIndicated: number | null }).largestIndicated,
      ]);
    expect(largest('danger', 1)).toEqual([['curve-falls-short', 'critical', 4]]);
    expect(largest('danger', 3)).toEqual([['curve-falls-short', 'critical', 12]]);
    expect(largest('alert', 3)).toEqual([['curve-falls-short', 'warning', 9]]);
    expect(largest('alert', 1)).toEqual([['curve-falls-short', 'warning', null]]);
    expect(of(threshold('danger', 1, 5, null))[0]?.values).toMatchObject({
      from: 10,
      to: 90,
      zeroMeasured: -9.8,
    });
  });

  it('that acts elsewhere is told beyond the difference of the policy, either way, and not beside nothing', () => {
    const { curveDifference } = policy;
    const off = (part: number) => of(threshold('danger', 1, 5, 5 * (1 + part))).length;
    expect([0.9, -0.9, 1.1, -1.1].map((part) => off(part * curveDifference))).toEqual([0, 0, 1, 1]);
    expect(of(threshold('danger', 1, null, 5))).toEqual([]);
    expect(of(threshold('danger', 1, 0, 5))).toEqual([]);
    const alone = { ...threshold('danger', 1, 5, null), lines: [] };
    expect(of(alone)).toEqual([]);
  });
});
