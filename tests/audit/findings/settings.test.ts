import { describe, expect, it } from 'vitest';
import { DateCell } from '../../../src/cells/cell.ts';
import { oneChannel } from '../book.ts';
import { foundIn, valuesIn } from './foundIn.ts';

describe('a configured sensitivity beside the rated one (200 mV/mil: common practice, no source)', () => {
  it('is off by 250/200 − 1 = 25 %, in the unit of the channel', () => {
    expect(valuesIn(oneChannel({ configured: 250 }), 'configured-far-from-rated')).toEqual({
      configured: 250,
      rated: 200,
      off: 0.25,
      unit: 'mV/mil',
      kind: 'radial',
    });
  });

  it('is not compared with one of another quantity', () => {
    const policy = { ratedSensitivity: { radial: { value: 100, unit: 'mV/g' } } };
    const off = oneChannel({ configured: 250, measured: 250 });
    expect(foundIn(off, 'configured-far-from-rated', policy)).toEqual([]);
    expect(foundIn(off, 'unit-slip-suspected', policy)).toEqual([]);
  });
});

describe('a runout', () => {
  const runout = { 'Runout amplitude (mil)': 2 };

  it('of 2 mil is 40 % of a danger of 5 mil, which then means 3 to 7 mil (by hand)', () => {
    const [one, ...more] = foundIn(oneChannel({ channel: runout }), 'danger-runout-large');
    expect(more).toEqual([]);
    expect(one).toMatchObject({ severity: 'note', threshold: 'danger', multiplier: 1 });
    expect(one?.values).toEqual({
      runout: 2,
      setpoint: 5,
      part: 0.4,
      effective: 5,
      real: null,
      least: 3,
      most: 7,
      unit: 'mil',
    });
  });

  it('is said of the plain danger alone: while it is multiplied 6 mil are part of 15', () => {
    const atStartUp = oneChannel({
      channel: { 'Runout amplitude (mil)': 6 },
      settings: { 'Set-point multiplier': 3 },
    });
    expect(foundIn(atStartUp, 'danger-runout-large').map(({ multiplier }) => multiplier)).toEqual([1]);
  });
});

it('a long delay says how far the level goes meanwhile: 86.4 mil a day are 0.001 mil/s (by hand)', () => {
  const growing = oneChannel({
    measured: 160,
    channel: { 'Growth per day (mil)': 86.4 },
    settings: { 'Alert delay (s)': 5, 'Danger delay (s)': 10 },
  });
  // 3 mil acts at 3.75 and 5 mil at 6.25.
  expect(valuesIn(growing, 'alert-delay-long')).toEqual({
    delay: 5,
    allowed: 3,
    level: expect.closeTo(3.755, 9) as number,
    unit: 'mil',
  });
  expect(valuesIn(growing, 'danger-delay-long')).toEqual({
    delay: 10,
    allowed: 3,
    level: expect.closeTo(6.26, 9) as number,
    unit: 'mil',
  });
});

it('a linear range of 16 V at 220 mV/mil covers 72.7 mil, short of 80 (common practice, no source)', () => {
  expect(valuesIn(oneChannel({ measured: 220 }), 'linear-range-short')).toEqual({
    span: 16,
    covered: expect.closeTo(16_000 / 220, 9) as number,
    least: 80,
    unit: 'mil',
  });
});

it('the linear volts of a probe are not asked of a current loop of positions', () => {
  const loop = oneChannel({ kind: 'loop' });
  const [channels, monitor] = loop.sheets;
  const inCurrent = {
    ...loop,
    sheets: [
      {
        ...channels!,
        rows: [
          ['Tag', 'Kind', 'Measured sensitivity (mA/mil)'],
          ['V-1', 'loop', 4],
        ],
      },
      {
        ...monitor!,
        rows: [
          ['Tag', 'Configured sensitivity (mA/mil)', 'Alert (mil)', 'Danger (mil)'],
          ['V-1', 4, 1, 2],
        ],
      },
    ],
  };
  // 16 V at 4 V/mil would be 4 mil.
  expect(foundIn(inCurrent, 'linear-range-short')).toEqual([]);
});

it('a channel in bypass is a warning', () => {
  expect(foundIn(oneChannel({ settings: { Bypass: 'yes' } }), 'channel-in-bypass')).toMatchObject([
    { severity: 'warning', threshold: null },
  ]);
});

describe('a calibration, on 2026-01-01', () => {
  const calibrated = (iso: string) =>
    oneChannel({ channel: { 'Calibrated on': new DateCell(Date.parse(`${iso}T00:00:00Z`) / 86_400_000) } });

  it('of that very day is fine', () => {
    expect(foundIn(calibrated('2026-01-01'), 'calibration-in-the-future')).toEqual([]);
  });

  it('of the next day has not been yet', () => {
    expect(valuesIn(calibrated('2026-01-02'), 'calibration-in-the-future')).toEqual({
      calibratedOn: '2026-01-02',
      today: '2026-01-01',
    });
  });
});
