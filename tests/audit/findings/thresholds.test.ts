import { describe, expect, it } from 'vitest';
import cdf from '@stdlib/stats-base-dists-normal-cdf';
import { book, oneChannel, type Rows } from '../book.ts';
import { gaps, rowsOf, straight } from '../recordSheets.ts';
import { foundIn, valuesIn } from './foundIn.ts';

const near = (value: number): number => expect.closeTo(value, 9) as number;

/** A position of 200 mV/mil configured about −10 V, with these further columns. */
const position = (measured: number, channel: object, settings: object, zero = -10) =>
  oneChannel({
    kind: 'axial',
    measured,
    channel: { 'Zero voltage (V)': zero, 'Positive direction': 'toward', ...channel },
    settings: { 'Configured zero voltage (V)': -10, ...settings },
  });

/** `V-1` at 200 mV/mil, 3 and 5 mil, at that gap voltage, and more sheets. */
const withSheets = (gap: number | null, uncertainty: number | null, ...more: readonly [string, Rows][]) =>
  book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Gap voltage (V)', 'Uncertainty (%)'],
        ['V-1', 200, gap, uncertainty],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['V-1', 200, 3, 5],
      ],
    ],
    ...more,
  );

describe('a danger beyond the machine’s limit is critical', () => {
  it('5 mil at 160 ± 3 % acts at 6.25, past 6 with Φ((5·200/6 − 160)/2.4) (by hand, Φ from a general library)', () => {
    const beyond = oneChannel({ measured: 160, channel: { 'Limit (mil)': 6, 'Uncertainty (%)': 3 } });
    const [one] = foundIn(beyond, 'danger-beyond-limit');
    expect(one?.severity).toBe('critical');
    expect(one?.values).toEqual({
      setpoint: 5,
      unit: 'mil',
      effective: 6.25,
      limit: 6,
      probability: near(cdf((1000 / 6 - 160) / 2.4, 0, 1)),
    });
  });

  it('so is one that may be: at 6.3 the upper end 5·200/(160·0.97) = 6.443 lies beyond', () => {
    const perhaps = oneChannel({ measured: 160, channel: { 'Limit (mil)': 6.3, 'Uncertainty (%)': 3 } });
    const [one] = foundIn(perhaps, 'danger-may-be-beyond-limit');
    expect(one?.severity).toBe('critical');
    expect(one?.values).toEqual({ setpoint: 5, unit: 'mil', limit: 6.3, high: near(1000 / (160 * 0.97)) });
  });

  it('a counter danger of 15 mil acts at −18.75, and at −15·200/(160·0.97) = −19.33 at most', () => {
    const counter = (limit: number) =>
      position(160, { 'Limit (mil)': limit, 'Uncertainty (%)': 3 }, { 'Counter danger (mil)': 15 });
    expect(valuesIn(counter(16), 'counter-danger-beyond-limit')).toMatchObject({
      setpoint: -15,
      effective: near(-18.75),
      limit: 16,
    });
    expect(valuesIn(counter(19), 'counter-danger-may-be-beyond-limit')).toEqual({
      setpoint: -15,
      unit: 'mil',
      limit: 19,
      high: near(-3000 / (160 * 0.97)),
    });
  });

  it('of two lines of evidence the latest is told: 200 mV/mil listed, a known vibration of 160', () => {
    const checked = book(
      [
        'Channels',
        [
          ['Tag', 'Measured sensitivity (mV/mil)', 'Limit (mil)'],
          ['V-1', 200, 4.5],
        ],
      ],
      [
        'Monitor',
        [
          ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
          ['V-1', 200, 3, 5],
        ],
      ],
      [
        'Shaker',
        [
          ['Tag', 'Displacement (mil p-p)', 'Output (mV p-p)', 'Frequency (Hz)'],
          ['V-1', 4, 640, 60],
        ],
      ],
    );
    expect(valuesIn(checked, 'danger-beyond-limit')).toMatchObject({ setpoint: 5, effective: near(6.25) });
  });
});

it('a zone is told with the speed that it hangs on, for the plain setpoints (ISO 20816-3, from memory)', () => {
  const worse = oneChannel({
    measured: 160,
    channel: { 'Speed (r/min)': 3600 },
    // 7.5 mil would go from 190.5 µm (C) to 238 µm (D).
    settings: { 'Set-point multiplier': 1.5 },
  });
  const found = ['alert', 'danger'].flatMap((name) => foundIn(worse, `${name}-in-worse-zone`));
  expect(found).toMatchObject([
    { severity: 'note', multiplier: 1 },
    { severity: 'warning', multiplier: 1 },
  ]);
  expect(found.map(({ values }) => values)).toEqual([
    { setpoint: 3, unit: 'mil', zone: 'B', intendedZone: 'A', speed: 3600 },
    { setpoint: 5, unit: 'mil', zone: 'C', intendedZone: 'B', speed: 3600 },
  ]);
});

describe('a threshold that can’t be reached says why, in the numbers of its channel (by hand)', () => {
  it('above a full scale of 4 mil', () => {
    const [one] = foundIn(oneChannel({ settings: { 'Full scale (mil)': 4 } }), 'danger-above-full-scale');
    expect(one?.severity).toBe('critical');
    expect(one?.values).toEqual({ setpoint: 5, unit: 'mil', fullScale: 4 });
  });

  it('an alert is a warning', () => {
    expect(
      foundIn(oneChannel({ settings: { 'Full scale (mil)': 2 } }), 'alert-above-full-scale')[0]?.severity,
    ).toBe('warning');
  });

  it('on the other side of zero: (5·200 − 1200 mV)/200 = −1 mil for 5, a zero of −8.8 V for −10', () => {
    expect(valuesIn(position(200, {}, {}, -8.8), 'danger-on-the-other-side-of-zero')).toEqual({
      setpoint: 5,
      unit: 'mil',
      effective: near(-1),
      zeroConfigured: -10,
      zeroMeasured: -8.8,
    });
  });

  it('a position out of the linear volts: −2.5 V + 5·0.2 V = −1.5 V', () => {
    const low = oneChannel({
      kind: 'axial',
      channel: { 'Zero voltage (V)': -2.5, 'Positive direction': 'toward' },
      settings: { 'Configured zero voltage (V)': -2.5 },
    });
    expect(valuesIn(low, 'danger-out-of-linear-reach')).toEqual({
      kind: 'voltage',
      setpoint: 5,
      unit: 'mil',
      volts: [near(-1.5)],
      span: { near: -2, far: -18 },
    });
  });

  it('a position out of the fault limits: −10 V + 5·0.2 V = −9 V', () => {
    expect(
      valuesIn(position(200, {}, { 'Fault limit high (V)': -9.2 }), 'danger-outside-fault-limits'),
    ).toEqual({ setpoint: 5, unit: 'mil', volts: [near(-9)], faultLimits: { near: -9.2, far: null } });
  });

  it('a swing about −2.4 V: 2·0.4 V/0.2 = 4 mil', () => {
    expect(valuesIn(withSheets(-2.4, null), 'danger-out-of-linear-reach')).toEqual({
      kind: 'swing',
      setpoint: 5,
      unit: 'mil',
      effective: 5,
      gapVoltage: -2.4,
      reach: near(4),
      span: { near: -2, far: -18 },
    });
  });

  it('near the end of a record straight from 10 to 90 mil: −2.4 V is 12 mil, 2·2 = 4 mil', () => {
    const record: Rows = [
      ['Tag', 'Gap (mil)', 'Output (V)'],
      ...rowsOf(['V-1'], straight(200, gaps(10, 90, 10))),
    ];
    expect(valuesIn(withSheets(-2.4, null, ['Records', record]), 'danger-out-of-linear-reach')).toEqual({
      kind: 'near the end of the straight part',
      setpoint: 5,
      unit: 'mil',
      effective: 5,
      gapVoltage: -2.4,
      reach: near(4),
    });
  });

  it('off the straight part: from 0 to 10 mil this record rises by 60 and 100 mV/mil, −1.5 V is 5 mil', () => {
    const bent: [number, number][] = [[0, -1.2], [5, -1.5], ...straight(200, gaps(10, 90, 10))];
    const record: Rows = [['Tag', 'Gap (mil)', 'Output (V)'], ...rowsOf(['V-1'], bent)];
    expect(valuesIn(withSheets(-1.5, null, ['Records', record]), 'danger-out-of-linear-reach')).toMatchObject(
      {
        kind: 'outside the straight part',
        setpoint: 5,
        unit: 'mil',
        gapVoltage: -1.5,
      },
    );
  });
});

describe('an undetermined threshold', () => {
  it('names its evidence: 5 mil at 190 ± 3 % acts between 5.110 and 5.426 (by hand)', () => {
    const [one] = foundIn(
      oneChannel({ measured: 190, channel: { 'Uncertainty (%)': 3 } }),
      'danger-undetermined',
    );
    expect(one?.severity).toBe('critical');
    expect(one?.values).toEqual({
      setpoint: 5,
      unit: 'mil',
      low: near(1000 / (190 * 1.03)),
      high: near(1000 / (190 * 0.97)),
      governedBy: 'listed sensitivity',
      uncertainty: 0.03,
      tolerance: 0.05,
    });
  });

  it('names the known vibration where that governs: 190 mV/mil of 188, 190 and 192, with k = 4.527 (JCGM 100, 95.45 %)', () => {
    const levels = [188, 190, 192].map((sensitivity): Rows[number] => ['V-1', 4, 4 * sensitivity, 60]);
    const shaker: Rows = [['Tag', 'Displacement (mil p-p)', 'Output (mV p-p)', 'Frequency (Hz)'], ...levels];
    const { governedBy, low, uncertainty } = valuesIn(
      withSheets(null, 1, ['Shaker', shaker]),
      'danger-undetermined',
    ) as {
      governedBy: string;
      low: number;
      uncertainty: number;
    };
    expect(governedBy).toBe('known vibration');
    // U = 4.527·2/√3 = 5.227 mV/mil, to the three digits of the table.
    expect(low).toBeCloseTo(1000 / (190 + 5.227), 3);
    // Of the known vibration, not the 1 % of the list.
    expect(uncertainty).toBeCloseTo(5.227 / 190, 5);
  });
});
