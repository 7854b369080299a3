import { describe, expect, it } from 'vitest';
import { oneChannel } from '../book.ts';
import { foundIn, valuesIn } from './foundIn.ts';
import type { Cell } from '../../../src/cells/cell.ts';

const near = (value: number): number => expect.closeTo(value, 9) as number;
type Columns = Readonly<Record<string, Cell>>;
const left = 'As-left sensitivity (mV/mil)';

/** `V-1` found at that sensitivity (200 mV/mil configured) with further columns. */
const found = (measured: number, channel: Columns, settings: Columns = {}) =>
  oneChannel({ measured, channel, settings });
/** The same of a position about −10 V that was found there. */
const position = (measured: number, channel: Columns, zero: number | null = -10) =>
  oneChannel({
    kind: 'axial',
    measured,
    channel: { 'Zero voltage (V)': zero, 'Positive direction': 'toward', ...channel },
    settings: { 'Configured zero voltage (V)': -10 },
  });

describe('what was not read again is said with what stands for it', () => {
  it('the sensitivity', () => {
    const gapAlone = found(160, { 'As-left gap voltage (V)': -9.8, 'Uncertainty (%)': 3 });
    expect(valuesIn(gapAlone, 'as-left-sensitivity-missing')).toEqual({ measured: 160, unit: 'mV/mil' });
    expect(foundIn(gapAlone, 'as-left-uncertainty-missing')).toEqual([]);
  });

  it('the uncertainty, unless it was', () => {
    expect(
      valuesIn(found(160, { [left]: 200, 'Uncertainty (%)': 3 }), 'as-left-uncertainty-missing'),
    ).toEqual({
      uncertainty: 0.03,
    });
    const both = found(160, { [left]: 200, 'Uncertainty (%)': 3, 'As-left uncertainty (%)': 2 });
    expect(foundIn(both, 'as-left-uncertainty-missing')).toEqual([]);
  });

  it('the gap voltage of a radial channel', () => {
    const channel = { [left]: 200, 'Gap voltage (V)': -9.8 };
    expect(valuesIn(found(160, channel), 'as-left-gap-voltage-missing')).toEqual({ gapVoltage: -9.8 });
    expect(
      foundIn(position(160, { ...channel, 'As-left zero voltage (V)': -10 }), 'as-left-gap-voltage-missing'),
    ).toEqual([]);
  });

  it('the zero voltage of a position, which is needed', () => {
    expect(foundIn(position(160, { [left]: 200 }), 'as-left-zero-not-measured')).toMatchObject([
      { severity: 'warning', threshold: null },
    ]);
  });
});

describe('a threshold that was left worse than it was found', () => {
  it('tells both sensitivities and gap voltages: 180 to 160 mV/mil, 5.556 to 6.25 mil (by hand)', () => {
    const moved = found(180, { [left]: 160, 'Gap voltage (V)': -9.8, 'As-left gap voltage (V)': -8.1 });
    expect(valuesIn(moved, 'danger-as-left-worse')).toEqual({
      setpoint: 5,
      unit: 'mil',
      asFound: { verdict: 'late', effective: near(1000 / 180) },
      verdict: 'late',
      effective: near(6.25),
      sensitivity: { found: 180, left: 160, unit: 'mV/mil' },
      gapVoltage: { found: -9.8, left: -8.1 },
    });
    const onceRead = found(180, { [left]: 160, 'As-left gap voltage (V)': -8.1 });
    expect(valuesIn(onceRead, 'danger-as-left-worse')).toMatchObject({ gapVoltage: null });
  });

  it('early is worse when it is earlier: 4.545 to 3.846 mil are 9.1 to 23.1 % (by hand)', () => {
    expect(valuesIn(found(220, { [left]: 260 }), 'danger-as-left-worse')).toMatchObject({
      asFound: { verdict: 'early', effective: near(1000 / 220) },
      verdict: 'early',
      effective: near(1000 / 260),
    });
  });

  it('one that can’t act is no worse wherever it would act', () => {
    const beyond = found(190, { [left]: 120 }, { 'Full scale (mil)': 2 });
    expect(foundIn(beyond, 'danger-above-full-scale')).toHaveLength(1);
    expect(foundIn(beyond, 'danger-as-left-worse')).toEqual([]);
  });

  it('nothing is compared where it was not known when found, or is not as left', () => {
    const unknownBefore = position(200, { [left]: 160, 'As-left zero voltage (V)': -10 }, null);
    expect(foundIn(unknownBefore, 'danger-late')).toHaveLength(1);
    expect(foundIn(unknownBefore, 'danger-as-left-worse')).toEqual([]);
    expect(foundIn(position(200, { [left]: 200 }), 'danger-as-left-worse')).toEqual([]);
  });
});

describe('how long a channel may have been wrong', () => {
  const dates = { 'Last good on': '2025-01-01', 'Calibrated on': '2025-11-27' };

  it('is told in days of the calendar, 304 + 26 = 330, as a warning', () => {
    const [one] = foundIn(found(160, dates), 'period-of-exposure');
    expect(one?.severity).toBe('warning');
    expect(one?.values).toEqual({
      thresholds: ['alert', 'danger'],
      from: '2025-01-01',
      to: '2025-11-27',
      days: 330,
      goesOn: null,
    });
  });

  it('goes on for a threshold that was wrong when found and is, and for no other', () => {
    // About −2.4 V the chain is linear over 2·0.4 V/0.2 = 4 mil: danger 5 mil could not act, alert 3 mil did.
    const channel = { ...dates, 'Gap voltage (V)': -2.4, 'As-left gap voltage (V)': -9.8 };
    expect(valuesIn(found(200, { ...channel, [left]: 160 }), 'period-of-exposure')).toMatchObject({
      thresholds: ['danger'],
      goesOn: { sure: ['danger'], unsure: [] },
    });
    expect(
      valuesIn(found(200, { ...channel, [left]: 190, 'As-left uncertainty (%)': 3 }), 'period-of-exposure'),
    ).toMatchObject({ goesOn: { sure: [], unsure: ['danger'] } });
  });

  it('has no known start without a last good day, or one on the day of the fault: a note', () => {
    const [none] = foundIn(found(160, { 'Calibrated on': '2025-11-27' }), 'exposure-start-unknown');
    expect(none?.severity).toBe('note');
    expect(none?.values).toMatchObject({ lastGoodOn: null, to: '2025-11-27' });
    const sameDay = { 'Last good on': '2025-11-27', 'Calibrated on': '2025-11-27' };
    expect(valuesIn(found(160, sameDay), 'exposure-start-unknown')).toMatchObject({
      lastGoodOn: '2025-11-27',
    });
  });

  it('days out of order are a warning, and a last good day alone is none', () => {
    const disordered = { 'Last good on': '2025-11-28', 'Calibrated on': '2025-11-27' };
    expect(foundIn(found(160, disordered), 'dates-out-of-order')).toMatchObject([{ severity: 'warning' }]);
    const alone = found(160, { 'Last good on': '2025-11-28' });
    for (const rule of ['dates-out-of-order', 'exposure-start-unknown', 'period-of-exposure'])
      expect(foundIn(alone, rule)).toEqual([]);
  });
});
