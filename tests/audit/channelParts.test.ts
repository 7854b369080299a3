import { describe, expect, it } from 'vitest';
import { memberOf, unauditedMember } from '../../src/audit/judge/channel/groupMembers.ts';
import { writtenSetpoints } from '../../src/audit/judge/channel/incompleteChannel.ts';
import type { Channel, FaultLimits } from '../../src/audit/model/channel.ts';
import type { PairedRows } from '../../src/audit/read/pairedRows.ts';
import type { Amount } from '../../src/audit/read/rows/rowReader.ts';
import type { SettingsRow } from '../../src/audit/read/rows/settingsRow.ts';
import { parseUnit } from '../../src/units/parse.ts';
import { book, oneChannel, type Rows } from './book.ts';
import { auditCase } from './golden.ts';
import { gaps, rowsOf, straight } from './recordSheets.ts';

const amount = (value: number, unit?: string): Amount => ({
  value,
  unit: unit === undefined ? null : parseUnit(unit)!,
});
const settingsOf = (some: object): SettingsRow =>
  ({
    alert: null,
    danger: null,
    counterAlert: null,
    counterDanger: null,
    multiplier: null,
    detection: null,
    group: 'G',
    voting: '1oo2',
    bypass: false,
    ...some,
  }) as unknown as SettingsRow;
const pairOf = (settings: object, row: object = {}): PairedRows =>
  ({
    row: { tag: 'V-1', machine: 'M', kind: null, limit: null, ...row },
    settings: settingsOf(settings),
    place: (_: string, column: string) => ({ sheet: 'Monitor', row: 2, column }),
  }) as unknown as PairedRows;

describe('a member of a voting group', () => {
  const faulty = (gapVoltage: number | null, faultLimits: FaultLimits | null) =>
    memberOf(pairOf({}), { gapVoltage, faultLimits } as Channel, [], null).faulty;

  it('is marked faulty by the monitor where its gap voltage lies beyond a fault limit, not at it', () => {
    const both = { near: -2, far: -18 };
    expect([-1.9, -2, -10, -18, -18.1].map((volts) => faulty(volts, both))).toEqual([
      true,
      false,
      false,
      false,
      true,
    ]);
    expect([faulty(-1, { near: null, far: -18 }), faulty(-19, { near: null, far: -18 })]).toEqual([
      false,
      true,
    ]);
    expect([faulty(-1, { near: -2, far: null }), faulty(-19, { near: -2, far: null })]).toEqual([
      true,
      false,
    ]);
    expect([faulty(null, both), faulty(-30, null)]).toEqual([false, false]);
  });

  it('of which the settings alone are known has its setpoints, those of the counter direction negative', () => {
    const member = unauditedMember(
      pairOf({
        alert: amount(3, 'mil'),
        danger: amount(5, 'mil'),
        counterAlert: amount(2, 'mil'),
        counterDanger: amount(4, 'mil'),
        multiplier: amount(3),
      }),
      'its row can’t be used',
    );
    expect(
      member?.thresholds.map(({ name, setpoint, multiplier, verdict }) => [
        name,
        setpoint,
        multiplier,
        verdict,
      ]),
    ).toEqual([
      ['alert', 3, 1, 'incomplete'],
      ['alert', 3, 3, 'incomplete'],
      ['danger', 5, 1, 'incomplete'],
      ['danger', 5, 3, 'incomplete'],
      ['counter alert', -2, 1, 'incomplete'],
      ['counter alert', -2, 3, 'incomplete'],
      ['counter danger', -4, 1, 'incomplete'],
      ['counter danger', -4, 3, 'incomplete'],
    ]);
    expect(member).toMatchObject({
      faulty: false,
      batch: '',
      notAudited: 'its row can’t be used',
      limit: null,
    });
    const plain = unauditedMember(pairOf({ danger: amount(5, 'mil') }), 'not known');
    expect(plain?.thresholds.map(({ name, multiplier }) => [name, multiplier])).toEqual([['danger', 1]]);
  });

  it('is one by its group or its voting, and by neither is none', () => {
    expect(unauditedMember(pairOf({ group: '', voting: '' }), 'not known')).toBeNull();
    expect(unauditedMember(pairOf({ group: 'G', voting: '' }), 'not known')).toMatchObject({ group: 'G' });
    expect(unauditedMember(pairOf({ group: '', voting: '1oo2' }), 'not known')).toMatchObject({
      voting: '1oo2',
    });
  });

  it('has a limit in the unit of its danger where the two are counted alike (25.4 µm are 1 mil)', () => {
    const limit = (kind: string | null, of: Amount, danger: Amount) =>
      unauditedMember(pairOf({ danger }, { kind, limit: of }), 'not known')?.limit;
    expect(limit('radial', amount(152.4, 'µm'), amount(5, 'mil p-p'))).toBeCloseTo(6, 9);
    expect(limit('axial', amount(152.4, 'µm'), amount(5, 'mil'))).toBeCloseTo(6, 9);
    // Of a displacement it is counted as the danger is, whichever of the two says so.
    expect(limit('axial', amount(152.4, 'µm'), amount(5, 'mil p-p'))).toBeCloseTo(6, 9);
    expect(limit('velocity', amount(1, 'in/s'), amount(0.5, 'in/s'))).toBe(1);
    expect(limit('velocity', amount(1), amount(0.5, 'in/s'))).toBe(1);
    // Velocities of which only one says how it is counted can't be compared.
    expect(limit('velocity', amount(1, 'in/s'), amount(0.5, 'in/s rms'))).toBeNull();
    expect(limit('velocity', amount(1, 'in/s rms'), amount(0.5, 'in/s'))).toBeNull();
    expect(limit('velocity', amount(1, 'in/s rms'), amount(0.5, 'in/s rms'))).toBe(1);
  });
});

describe('setpoints as they are written, in the unit of the danger', () => {
  const written = (some: object) => writtenSetpoints(settingsOf(some));

  it('by hand: 50.8 µm are 2 mil, 2 mil 0-p are 4 mil p-p of a sinusoid', () => {
    const mixed = written({ alert: amount(50.8, 'µm'), danger: amount(5, 'mil') });
    expect(mixed.unit?.text).toBe('mil');
    expect(mixed.level(amount(50.8, 'µm'))).toBeCloseTo(2, 9);
    const detections = written({ alert: amount(2, 'mil 0-p'), danger: amount(5, 'mil p-p') });
    expect(detections.detection).toBe('p-p');
    expect(detections.level(amount(2, 'mil 0-p'))).toBeCloseTo(4, 9);
    expect(detections.level(amount(5, 'mil p-p'))).toBe(5);
  });

  it('the detection column outranks what the units say, for all of them', () => {
    const column = written({ alert: amount(2, 'mil 0-p'), danger: amount(5, 'mil p-p'), detection: '0-p' });
    expect(column.detection).toBe('0-p');
    expect(column.level(amount(2, 'mil 0-p'))).toBe(2);
  });

  it('the alert’s unit where there is no danger, and its detection where the danger has none', () => {
    expect(written({ alert: amount(2, 'mil 0-p') })).toMatchObject({
      unit: { text: 'mil' },
      detection: '0-p',
    });
    expect(written({ alert: amount(2, 'mil 0-p'), danger: amount(5, 'mil') }).detection).toBe('0-p');
    expect(written({ danger: amount(5, 'mil') }).detection).toBeNull();
  });

  it('none of a unit that does not fit, the number alone without a unit', () => {
    const danger = written({ danger: amount(5, 'mil') });
    expect(danger.level(amount(3, 'in/s'))).toBeNull();
    expect(danger.level(amount(3))).toBe(3);
    expect(danger.level(null)).toBeNull();
    expect(written({ danger: amount(5) }).level(amount(3, 'mil'))).toBe(3);
  });
});

describe('a sensitivity from a calibration record', () => {
  const record: Rows = [
    ['Tag', 'Gap (mil)', 'Output (V)'],
    ...rowsOf(['V-1'], straight(190, gaps(10, 90, 10))),
  ];
  const auditOf = (kind: string, measured: string | null) =>
    auditCase({
      because: '',
      book: book(
        ...oneChannel({
          kind,
          measured,
          channel: { 'Zero voltage (V)': kind === 'axial' ? -10 : null },
          settings: { 'Configured zero voltage (V)': kind === 'axial' ? -10 : null },
        }).sheets,
        ['Records', record],
      ),
    }).channels[0]!;

  it('stands for a blank one of a displacement probe, and says where it is from', () => {
    for (const kind of ['radial', 'axial']) {
      const channel = auditOf(kind, null);
      expect(channel.sensitivity.measured).toBeCloseTo(190, 9);
      expect(channel.findings.find(({ rule }) => rule === 'sensitivity-from-record')).toMatchObject({
        severity: 'note',
        values: { sheet: 'Records', row: 2, unit: 'mV/mil' },
      });
    }
  });

  it('never for one that is there and can’t be read, nor for another sensor', () => {
    expect(auditOf('radial', 'about 200?')).toMatchObject({
      verdict: 'incomplete',
      sensitivity: { measured: null },
    });
    expect(auditOf('velocity', null)).toMatchObject({
      verdict: 'incomplete',
      sensitivity: { measured: null },
    });
  });
});
