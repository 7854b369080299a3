import { describe, expect, it } from 'vitest';
import { rank } from '../../src/audit/judge/records/chooseRecord.ts';
import { asFound, asLeft } from '../../src/audit/read/records/recordCells.ts';
import type { Cell } from '../../src/cells/cell.ts';
import { book, oneChannel, type Rows, velocityBook } from './book.ts';
import { auditCase } from './golden.ts';
import { gaps, rowsOf, straight } from './recordSheets.ts';

const near = (value: number, digits = 9): number => expect.closeTo(value, digits) as number;
type Point = readonly [gap: number, volts: number];

/** `V-1` at 200 mV/mil, 3 and 5 mil, with these columns of the channel list and more sheets. */
const audited = (
  channel: Readonly<Record<string, Cell>>,
  more: readonly [string, Rows][],
  measured = 200,
  kind = 'radial',
  policy: unknown = {},
) =>
  auditCase({
    because: '',
    policy,
    book: book(
      ...oneChannel({
        kind,
        measured,
        channel,
        settings: kind === 'axial' ? { 'Configured zero voltage (V)': -10 } : {},
      }).sheets,
      ...more,
    ),
  }).channels[0]!;
const record = (points: readonly Point[]): [string, Rows] => [
  'Records',
  [['Tag', 'Gap (mil)', 'Output (V)'], ...rowsOf(['V-1'], points)],
];
const shaker = (...sensitivities: number[]): [string, Rows] => [
  'Shaker',
  [
    ['Tag', 'Displacement (mil p-p)', 'Output (mV p-p)', 'Frequency (Hz)'],
    ...sensitivities.map((sensitivity) => ['V-1', 4, 4 * sensitivity, 60]),
  ],
];
const told = (channel: ReturnType<typeof audited>, rule: string) => {
  const found = channel.findings.filter((one) => one.rule === rule);
  expect(found.map((one) => one.rule)).toEqual([rule]);
  return found[0]!;
};
/** A record through 0 V at 0 mil that falls by these mV/mil in steps of 10 mil from 10 mil on. */
const steps = (...falls: number[]): Point[] => {
  let volts = -2;
  return [[10, volts], ...falls.map((fall, at): Point => [20 + 10 * at, (volts -= fall / 100)])];
};

describe('a check with a known vibration (JCGM 100 G.3, k of t at 95.45 % and 2 degrees of freedom: 4.53)', () => {
  it('of 198, 200 and 202 mV/mil is known to 4.527·2/√3 = 5.227, of one level not at all', () => {
    expect(audited({}, [shaker(198, 200, 202)]).dynamic).toMatchObject({
      levels: 3,
      sensitivity: near(200),
      uncertainty: near(5.227, 3),
    });
    expect(audited({}, [shaker(200)]).dynamic).toMatchObject({ levels: 1, uncertainty: null });
  });

  it('spreads its threshold by that, 5·200/205.227 to 5·200/194.773 mil; none where it is not known to 100 %', () => {
    const lineOf = (...levels: number[]) =>
      audited({}, [shaker(...levels)])
        .thresholds.find(({ name }) => name === 'danger')!
        .lines.find(({ by }) => by === 'known vibration');
    expect(lineOf(198, 200, 202)).toMatchObject({
      low: near(1000 / 205.227, 3),
      high: near(1000 / 194.773, 3),
    });
    expect(lineOf(100, 300)).toMatchObject({ effective: near(5), low: null, high: null });
  });

  it('leaves open where it acts where its levels scatter by more than itself: 180 and 210 mV/mil, t 13.97', () => {
    // s = 15·√2, s/√2 = 15, U = 209.5 mV/mil of 195; 190 and 206 are ±112 of 198. Closer levels are no worse than these.
    const verdict = (policy: unknown, kind: string, ...levels: number[]) => {
      const zero = kind === 'axial' ? { 'Zero voltage (V)': -10 } : {};
      const one = audited({ ...zero, 'Uncertainty (%)': 2 }, [shaker(...levels)], 200, kind, policy);
      return one.thresholds.map((at) => at.lines.map((line) => line.verdict).join(', ')).join('; ');
    };
    for (const kind of ['radial', 'axial'])
      for (const levels of [
        [180, 210],
        [190, 206],
      ])
        expect(verdict({}, kind, ...levels)).toBe('within, undetermined; within, undetermined');
    expect(verdict({ rule: 'simple' }, 'radial', 180, 210)).toBe('within, within; within, within');
    const why = (...levels: number[]) => audited({}, [shaker(...levels)]).thresholds[1]?.lines[1]?.why;
    expect([why(180, 210), why(190, 206), why(200)]).toEqual([
      'its uncertainty is 100 % or more',
      null,
      null,
    ]);
  });

  it('disagrees with the list where both uncertainties and the tolerance are passed', () => {
    const one = told(audited({}, [shaker(200)], 160), 'static-and-dynamic-disagree');
    expect(one.severity).toBe('warning');
    expect(one.values).toEqual({
      dynamic: near(200),
      static: 160,
      from: 'channel list',
      off: near(0.25),
      unit: 'mV/mil',
    });
    // 10 of 190 mV/mil: beyond 5 %, 9.5, but not beyond 6 %, 11.4; 9 of 190 are within 5 %.
    const rules = (channel: ReturnType<typeof audited>) => channel.findings.map(({ rule }) => rule);
    expect(rules(audited({}, [shaker(200)], 190))).toContain('static-and-dynamic-disagree');
    expect(rules(audited({ 'Uncertainty (%)': 6 }, [shaker(200)], 190))).not.toContain(
      'static-and-dynamic-disagree',
    );
    expect(rules(audited({}, [shaker(199)], 190))).not.toContain('static-and-dynamic-disagree');
  });

  it('disagrees with the record rather than the list where there is one: 200 for 170 is 3/17 more', () => {
    const both = audited({}, [record(straight(170, gaps(10, 90, 10))), shaker(200)], 170);
    expect(told(both, 'static-and-dynamic-disagree').values).toMatchObject({
      static: near(170),
      from: 'calibration record',
      off: near(3 / 17),
    });
  });
});

describe('a record that can’t be used says why', () => {
  const why = (points: readonly Point[]) => {
    const channel = audited({}, [record(points)]);
    expect(channel.verdict).toBe('incomplete');
    return told(channel, 'record-unusable').values;
  };

  it('a gap twice, too few points, too many, or volts that fall in neither direction', () => {
    const right = straight(200, gaps(10, 50, 10));
    expect(why([right[0]!, right[1]!, right[1]!, ...right.slice(2)])).toMatchObject({
      fault: 'gap repeated',
      gap: 20,
      gapUnit: 'mil',
    });
    expect(why(right.slice(0, 2))).toMatchObject({ fault: 'too few points', points: 2, least: 3 });
    expect(why(straight(2, gaps(1, 1001, 1)))).toMatchObject({
      fault: 'too many points',
      points: 1001,
      most: 1000,
    });
    expect(audited({}, [record(straight(2, gaps(1, 1000, 1)))]).record?.points).toHaveLength(1000);
  });
});

it('series count as found first, as left last', () => {
  expect([asFound, 'spare', asLeft].map((series) => rank({ series }))).toEqual([0, 1, 2]);
});

it('other records are told beside the one with the lowest sensitivity', () => {
  const rows: Rows = [
    ['Tag', 'Temperature (°C)', 'Gap (mil)', 'Output (V)'],
    ...rowsOf(['V-1', 20], straight(198, gaps(10, 90, 10))),
    ...rowsOf(['V-1', 60], straight(195, gaps(10, 90, 10))),
  ];
  const { record: used } = audited({}, [['Records', rows]]);
  expect(used?.average).toBeCloseTo(195, 9);
  expect(used?.others).toMatchObject([{ average: near(198), gapUnit: 'mil' }]);
});

describe('what a record says of the gap at which the channel works (by hand, −0.2 V a mil)', () => {
  const right = record(straight(200, gaps(10, 90, 10)));

  it('outside the record', () => {
    const one = told(audited({ 'Gap voltage (V)': -18.5 }, [right]), 'gap-outside-record');
    expect(one.severity).toBe('warning');
    expect(one.values).toEqual({ gapVoltage: -18.5, from: near(-2), to: near(-18) });
    for (const volts of [-2, -18])
      expect(audited({ 'Gap voltage (V)': volts }, [right]).findings.map(({ rule }) => rule)).not.toContain(
        'gap-outside-record',
      );
  });

  it('outside the straight part, on either side of it: 60 mV/mil from 0 to 10 mil and from 90 to 100', () => {
    const bent = record([[0, -1.4], ...straight(200, gaps(10, 90, 10)), [100, -18.6]]);
    const low = told(
      audited({ 'Gap voltage (V)': -1.7 }, [bent], 200, 'radial', { curve: 'linear' }),
      'gap-outside-straight-part',
    );
    expect(low.severity).toBe('warning');
    expect(low.values).toEqual({ operatingGap: near(5), from: 10, to: 90, gapUnit: 'mil', gapVoltage: -1.7 });
    const high = audited({ 'Gap voltage (V)': -18.3 }, [bent], 200, 'radial', { curve: 'linear' });
    expect(told(high, 'gap-outside-straight-part').values).toMatchObject({ operatingGap: near(95) });
    expect(audited({ 'Gap voltage (V)': -2 }, [bent]).findings.map(({ rule }) => rule)).not.toContain(
      'gap-outside-straight-part',
    );
  });

  it('of a position it is that of the measured zero, of a vibration never', () => {
    const position = audited({ 'Zero voltage (V)': -10 }, [right], 200, 'axial');
    expect(position.record?.operatingGap).toBeCloseTo(50, 9);
    expect(audited({}, [right]).record?.operatingGap).toBeNull();
    expect(told(audited({}, [right]), 'record-without-gap-voltage').severity).toBe('note');
  });
});

describe('a threshold on the curve of a record', () => {
  it('that the record does not reach: 49 to 51 mil support 2 mil', () => {
    const channel = audited({ 'Gap voltage (V)': -10 }, [record(straight(200, gaps(49, 51, 1)))]);
    expect(told(channel, 'alert-curve-falls-short').severity).toBe('warning');
    const one = told(channel, 'danger-curve-falls-short');
    expect(one.severity).toBe('critical');
    expect(one.values).toEqual({
      setpoint: 5,
      unit: 'mil',
      from: 49,
      to: 51,
      gapUnit: 'mil',
      largestIndicated: near(2),
      zeroMeasured: null,
    });
  });

  it('that acts elsewhere than by the list: 6.25 mil at 160 mV/mil for 5 at 200, 25 % later', () => {
    const channel = audited({ 'Gap voltage (V)': -8 }, [record(straight(160, gaps(10, 90, 10)))]);
    const one = told(channel, 'danger-curve-differs');
    expect(one.severity).toBe('warning');
    expect(one.values).toEqual({
      setpoint: 5,
      unit: 'mil',
      onCurve: near(6.25),
      effective: near(5),
      off: near(0.25),
    });
    expect(told(channel, 'record-disagrees-with-list')).toMatchObject({
      severity: 'warning',
      values: { kind: 'as found', ofRecord: near(160), ofList: near(200), fraction: near(-0.2) },
    });
  });
});

describe('the numbers of a record (by hand)', () => {
  it('each step beside the rated 200 mV/mil: 160 is −20 %, none after the last point', () => {
    const { points } = audited({}, [record(straight(160, gaps(10, 40, 10)))]).record!;
    expect(points.map(({ incremental }) => incremental)).toEqual([near(160), near(160), near(160), null]);
    expect(points.map(({ incrementalError }) => incrementalError)).toEqual([
      near(-0.2),
      near(-0.2),
      near(-0.2),
      null,
    ]);
    const policy = { ratedSensitivity: { radial: null } };
    const unrated = audited({}, [record(straight(160, gaps(10, 40, 10)))], 200, 'radial', policy).record!;
    expect(unrated.rated).toBeNull();
    expect(unrated.points.map(({ incrementalError }) => incrementalError)).toEqual([null, null, null, null]);
  });

  it('the straight part lies about the gap at which the channel works, or is the longest', () => {
    // 10 to 30 mil and 40 to 90 mil are straight, 100 mV/mil between them; −4 V is 20 mil.
    const two = record(steps(200, 200, 100, 200, 200, 200, 200, 200));
    const here = audited({ 'Gap voltage (V)': -4 }, [two]).record!;
    expect(here).toMatchObject({ straightPart: { from: 10, to: 30 }, linearRange: { from: 10, to: 30 } });
    expect(here.operatingGap).toBeCloseTo(20, 9);
    expect(here.average).toBeCloseTo(200, 9);
    const longest = audited({}, [two]).record!;
    expect(longest).toMatchObject({ straightPart: { from: 40, to: 90 }, linearRange: { from: 40, to: 90 } });
  });

  it('the record’s own sensitivity is the median of its steps, of which one in the middle is bent', () => {
    const bent = audited({}, [record(steps(200, 200, 150, 200, 200))]).record!;
    expect(bent.average).toBeCloseTo(200, 9);
  });

  it('two straight points are no part: 200, 150 and 60 mV/mil give −69/500 V a mil by least squares through all', () => {
    expect(audited({}, [record(steps(200, 150, 60))]).record!.average).toBeCloseTo(138, 9);
  });

  it('a step that does not fall is named by its gaps', () => {
    const rising = audited({}, [record([...straight(200, gaps(10, 50, 10)), [60, -9.5]])]);
    expect(told(rising, 'record-not-falling')).toMatchObject({
      severity: 'warning',
      values: { from: 50, to: 60, gapUnit: 'mil' },
    });
  });

  it('what is worth knowing is a note: points out of order, a record of another sensor', () => {
    expect(
      told(audited({}, [record(straight(200, gaps(10, 50, 10)).toReversed())]), 'record-sorted').severity,
    ).toBe('note');
  });

  it('a record that can’t be used is a warning, with its tag; one of a velocity sensor is a note', () => {
    expect(told(audited({}, [record(straight(200, gaps(10, 20, 10)))]), 'record-unusable')).toMatchObject({
      severity: 'warning',
      values: { tag: 'V-1' },
    });
    const velocity = velocityBook(record(straight(200, gaps(10, 90, 10))));
    const [channel] = auditCase({ because: '', book: velocity }).channels;
    expect(told(channel!, 'record-of-another-kind')).toMatchObject({
      severity: 'note',
      values: { kind: 'velocity' },
    });
  });
});
