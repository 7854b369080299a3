import { describe, expect, it } from 'vitest';
import { book, oneChannel } from '../book.ts';
import { foundIn, valuesIn } from './foundIn.ts';

const rule = 'unit-slip-suspected';

describe('a setpoint that looks like one of another unit', () => {
  it('danger 127 mil beside alert 5 mil is 25.4, the µm of a mil (by hand)', () => {
    expect(foundIn(oneChannel({ alert: 5, danger: 127 }), rule)[0]?.values).toEqual({
      kind: 'setpoint',
      danger: 127,
      against: 'alert',
      level: 5,
      ratio: 25.4,
      unit: 'mil',
    });
  });

  it('12 µm to 1000 µm are ordinary (common practice, no source), 0.3 mil is too small and 50 mil too large', () => {
    const metric = (alert: number, danger: number) =>
      book(
        [
          'Channels',
          [
            ['Tag', 'Measured sensitivity (mV/mil)'],
            ['V-1', 200],
          ],
        ],
        [
          'Monitor',
          [
            ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (µm)', 'Danger (µm)'],
            ['V-1', 200, alert, danger],
          ],
        ],
      );
    expect(foundIn(metric(8, 12), rule)).toEqual([]);
    expect(foundIn(metric(600, 1000), rule)).toEqual([]);
    expect(valuesIn(metric(8, 11.9), rule)).toMatchObject({ danger: 11.9, unit: 'µm', is: 'too small' });
    expect(valuesIn(metric(600, 1001), rule)).toMatchObject({ danger: 1001, unit: 'µm', is: 'too large' });
    expect(valuesIn(oneChannel({ alert: 0.2, danger: 0.3 }), rule)).toMatchObject({ is: 'too small' });
    expect(valuesIn(oneChannel({ alert: 30, danger: 50 }), rule)).toMatchObject({ is: 'too large' });
  });

  it('velocities have no mil to slip to', () => {
    const velocity = book(
      [
        'Channels',
        [
          ['Tag', 'Kind', 'Measured sensitivity (mV/(in/s))'],
          ['V-1', 'velocity', 100],
        ],
      ],
      [
        'Monitor',
        [
          ['Tag', 'Configured sensitivity (mV/(in/s))', 'Alert (in/s)', 'Danger (in/s)'],
          ['V-1', 100, 0.02, 0.508],
        ],
      ],
    );
    expect(foundIn(velocity, rule)).toEqual([]);
  });
});

it('two sensitivities of which neither can be compared with a rated one differ by 7.8/200', () => {
  const policy = { ratedSensitivity: { radial: null } };
  expect(valuesIn(oneChannel({ measured: 7.8 }), rule, policy)).toEqual({
    kind: 'sensitivities',
    ratio: 7.8 / 200,
  });
});

it('a speed below 60 r/min is one in Hz, for a shaft that vibrates (common practice, no source)', () => {
  const turning = (speed: number, kind = 'radial') =>
    oneChannel({
      kind,
      channel: { 'Speed (r/min)': speed, 'Zero voltage (V)': kind === 'axial' ? -10 : null },
      settings: { 'Configured zero voltage (V)': kind === 'axial' ? -10 : null },
    });
  const [one, ...more] = foundIn(turning(50), rule);
  expect(more).toEqual([]);
  expect(one).toMatchObject({
    severity: 'warning',
    sheet: 'Channels',
    column: 'D',
    values: { kind: 'speed', speed: 50 },
  });
  expect(foundIn(turning(60), rule)).toEqual([]);
  expect(foundIn(turning(50, 'axial'), rule)).toEqual([]);
});

describe('an uncertainty that may be a fraction where percent is meant (common practice, no source)', () => {
  const stated = (uncertainty: number, shared: number | null, gain: number | null) =>
    foundIn(
      oneChannel({
        channel: { 'Uncertainty (%)': uncertainty, 'Shared uncertainty (%)': shared },
        settings: { 'Monitor gain uncertainty (%)': gain },
      }),
      rule,
    ).map(({ values }) => values);

  it('0.03 % of a sensitivity is said once, shared by all of its batch or not', () => {
    const once = [
      { kind: 'uncertainty', of: 'sensitivity', uncertainty: expect.closeTo(0.0003, 12) as number },
    ];
    expect(stated(0.03, null, null)).toEqual(once);
    expect(stated(0.03, 0.03, null)).toEqual(once);
  });

  it('0.1 % of a sensitivity and 0.05 % of a gain or a batch are reached in the field', () => {
    expect(stated(0.1, 0.05, 0.05)).toEqual([]);
    expect(stated(0.09, 0.04, 0.04)).toMatchObject([
      { of: 'sensitivity' },
      { of: 'monitor gain' },
      { of: 'batch' },
    ]);
  });
});
