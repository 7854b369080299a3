import { describe, expect, it } from 'vitest';
import { book, oneChannel } from '../book.ts';
import { foundIn, valuesIn } from './foundIn.ts';

describe('a swing V0 ± S·Kc/2 that leaves a fault limit (by hand, a caution only)', () => {
  const swinging = (gap: number, high: number | null, low: number | null) =>
    oneChannel({
      channel: { 'Gap voltage (V)': gap },
      settings: { 'Fault limit high (V)': high, 'Fault limit low (V)': low },
    });

  it('with the near limit alone: −3 V and 5 mil reach −2.5 V, past −2.6; 3 mil reach −2.7', () => {
    const near = swinging(-3, -2.6, null);
    expect(valuesIn(near, 'danger-swing-leaves-fault-limits')).toEqual({
      setpoint: 5,
      unit: 'mil',
      swing: { near: -2.5, far: -3.5 },
      faultLimits: { near: -2.6, far: null },
    });
    expect(foundIn(near, 'alert-swing-leaves-fault-limits')).toEqual([]);
  });

  it('with the far limit alone: −17 V and 5 mil reach −17.5 V, past −17.4', () => {
    const far = swinging(-17, null, -17.4);
    expect(foundIn(far, 'danger-swing-leaves-fault-limits')).toHaveLength(1);
    expect(foundIn(far, 'alert-swing-leaves-fault-limits')).toEqual([]);
  });

  it('is asked of radial channels alone: the bias of a velocity sensor is no gap', () => {
    const velocity = book(
      [
        'Channels',
        [
          ['Tag', 'Kind', 'Measured sensitivity (mV/(mm/s))', 'Gap voltage (V)'],
          ['V-1', 'velocity', 4, -10],
        ],
      ],
      [
        'Monitor',
        [
          [
            'Tag',
            'Configured sensitivity (mV/(mm/s))',
            'Alert (mm/s 0-p)',
            'Danger (mm/s 0-p)',
            'Fault limit low (V)',
          ],
          ['V-1', 4, 200, 400, -10.1],
        ],
      ],
    );
    expect(foundIn(velocity, 'danger-swing-leaves-fault-limits')).toEqual([]);
  });
});

describe('a present reading beside the setpoint to enter in the meantime', () => {
  const reading = { 'Present reading (mil)': 6 };

  it('matters where the threshold is late alone: an early one or one that acts as set trips already', () => {
    for (const measured of [200, 250])
      for (const name of ['alert', 'danger'])
        expect(foundIn(oneChannel({ measured, channel: reading }), `${name}-interim-below-reading`)).toEqual(
          [],
        );
  });

  it('4 mil for a danger of 5 at 160 of 200 mV/mil (by hand)', () => {
    expect(valuesIn(oneChannel({ measured: 160, channel: reading }), 'danger-interim-below-reading')).toEqual(
      {
        setpoint: 5,
        unit: 'mil',
        reading: 6,
        interimSetpoint: expect.closeTo(4, 9) as number,
      },
    );
  });

  it('none can be entered in steps of 3 mil for an alert of 3, which 2.4 mil shown stand for', () => {
    const coarse = oneChannel({ measured: 160, settings: { 'Resolution (mil)': 3 } });
    expect(valuesIn(coarse, 'alert-has-no-interim-setpoint')).toEqual({
      setpoint: 3,
      unit: 'mil',
      indicated: expect.closeTo(2.4, 9) as number,
    });
  });
});

describe('what a sensitivity and a gap voltage point to', () => {
  const rule = 'readings-point-to-a-cause';
  const read = (reference: number | null, configured = 200, kind = 'radial') =>
    oneChannel({
      kind,
      measured: 160,
      configured,
      channel: {
        'Gap voltage (V)': -8,
        'Reference gap voltage (V)': -10,
        'Reference sensitivity (mV/mil)': reference,
        'Zero voltage (V)': kind === 'axial' ? -10 : null,
      },
      settings: { 'Configured zero voltage (V)': kind === 'axial' ? -10 : null },
    });

  it('is told by the reference sensitivity where there is one, else the rated, else the configured one (by hand)', () => {
    const noneRated = { ratedSensitivity: { radial: null } };
    expect(valuesIn(read(170, 190), rule)).toEqual({
      cause: 'too much cable',
      measured: 160,
      reference: 170,
      off: expect.closeTo(-1 / 17, 12) as number,
      unit: 'mV/mil',
      gapVoltage: -8,
      referenceGapVoltage: -10,
      length: null,
    });
    expect(valuesIn(read(null, 190), rule)).toMatchObject({
      reference: 200,
      off: expect.closeTo(-0.2, 12) as number,
    });
    expect(valuesIn(read(null, 190), rule, noneRated)).toMatchObject({
      reference: 190,
      off: expect.closeTo(-3 / 19, 12) as number,
    });
  });

  it('counts for positions too', () => {
    expect(valuesIn(read(null, 200, 'axial'), rule)).toMatchObject({
      cause: 'too much cable',
      reference: 200,
    });
  });

  it('is nothing for a sensor without a gap, or a channel without one of the two voltages', () => {
    const velocity = (gap: number | null, reference: number | null, kind: string, per: string) =>
      book([
        'All',
        [
          [
            'Tag',
            'Kind',
            `Measured sensitivity (mV/${per})`,
            `Configured sensitivity (mV/${per})`,
            `Alert (${kind === 'velocity' ? 'mm/s' : 'mil'})`,
            `Danger (${kind === 'velocity' ? 'mm/s' : 'mil'})`,
            'Gap voltage (V)',
            'Reference gap voltage (V)',
          ],
          ['V-1', kind, 3.2, 4, 5, 7, gap, reference],
        ],
      ]);
    expect(foundIn(velocity(-8, -10, 'velocity', '(mm/s)'), rule)).toEqual([]);
    expect(foundIn(velocity(-8, null, 'radial', 'mil'), rule)).toEqual([]);
    expect(foundIn(velocity(null, -10, 'radial', 'mil'), rule)).toEqual([]);
  });
});
