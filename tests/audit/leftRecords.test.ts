import { describe, expect, it } from 'vitest';
import type { Cell } from '../../src/cells/cell.ts';
import { book, oneChannel, type Rows, velocityBook } from './book.ts';
import { auditCase } from './golden.ts';
import { gaps, rowsOf, straight } from './recordSheets.ts';

const near = (value: number): number => expect.closeTo(value, 9) as number;
type Columns = Readonly<Record<string, Cell>>;
type Point = readonly [gap: number, volts: number];

/** `V-1` found at 160 mV/mil with these records: series, day and points. */
const audited = (
  channel: Columns,
  records: readonly (readonly [series: string, takenOn: Cell, points: readonly Point[]])[],
  { kind = 'radial', gap = 'Gap (mil)' }: { kind?: string; gap?: string } = {},
) =>
  auditCase({
    because: '',
    book: book(
      ...oneChannel({
        kind,
        measured: 160,
        channel,
        settings: kind === 'axial' ? { 'Configured zero voltage (V)': -9.52 } : {},
      }).sheets,
      [
        'Records',
        [
          ['Tag', 'Series', 'Taken on', gap, 'Output (V)'],
          ...records.flatMap(([series, takenOn, points]): Rows => rowsOf(['V-1', series, takenOn], points)),
        ],
      ],
    ),
  }).channels[0]!;
const told = ({ findings }: ReturnType<typeof audited>, rule: string) =>
  findings.filter((one) => one.rule === rule).map(({ severity, values }) => ({ severity, values }));
const at = (sensitivity: number): Point[] => straight(sensitivity, gaps(10, 90, 10));

describe('a record as left, audited on 2026-01-01', () => {
  const calibrated = { 'Calibrated on': '2025-06-01' };
  const state = (takenOn: Cell, channel: Columns = calibrated) =>
    audited(channel, [['as left', takenOn, at(200)]]).state;

  it('counts from the day of what was found to that of the audit, both included, or where it has no day', () => {
    expect(['2025-05-31', '2025-06-01', '2026-01-01', '2026-01-02', null].map((day) => state(day))).toEqual([
      'as found',
      'as left',
      'as left',
      'as found',
      'as left',
    ]);
    expect(['2020-01-01', '2026-01-01', '2026-01-02'].map((day) => state(day, {}))).toEqual([
      'as left',
      'as left',
      'as found',
    ]);
  });

  it('of another day is said, as a warning, with why', () => {
    const another = (takenOn: Cell) =>
      told(audited(calibrated, [['as left', takenOn, at(200)]]), 'record-as-left-of-another-day');
    const values = { sheet: 'Records', row: 2 };
    expect(another('2025-05-31')).toEqual([
      {
        severity: 'warning',
        values: {
          ...values,
          takenOn: '2025-05-31',
          lies: { kind: 'before what was found', found: '2025-06-01' },
        },
      },
    ]);
    expect(another('2026-01-02')).toEqual([
      {
        severity: 'warning',
        values: { ...values, takenOn: '2026-01-02', lies: { kind: 'after the audit', today: '2026-01-01' } },
      },
    ]);
    expect([another('2025-06-01'), another('2026-01-01'), another(null)]).toEqual([[], [], []]);
  });

  it('what was found is of the day of its record where no other is known', () => {
    const both = audited({}, [
      ['as found', '2025-06-01', at(160)],
      ['as left', '2025-05-01', at(200)],
    ]);
    expect(both.state).toBe('as found');
    expect(told(both, 'record-as-left-of-another-day')).toHaveLength(1);
  });

  it('tells nothing of when it was found: of two as left the lower counts, and the older one is not left out', () => {
    const rows: Rows = [
      ['Tag', 'Series', 'Temperature (°C)', 'Taken on', 'Gap (mil)', 'Output (V)'],
      ...rowsOf(['V-1', 'as left', 60, '2025-06-01'], at(190)),
      ...rowsOf(['V-1', 'as left', 20, '2025-05-01'], at(200)),
    ];
    const two = auditCase({
      because: '',
      book: book(...oneChannel({ measured: 160 }).sheets, ['Records', rows]),
    }).channels[0]!;
    expect(two.sensitivity.measured).toBeCloseTo(190, 9);
    expect(told(two, 'record-as-left-of-another-day')).toEqual([]);
  });
});

describe('the sensitivity of a record as left', () => {
  it('is told as a note with its first point and its day', () => {
    const note = (takenOn: Cell) =>
      told(audited({}, [['as left', takenOn, at(200)]]), 'as-left-sensitivity-from-record');
    const values = { sheet: 'Records', row: 2, value: near(200), unit: 'mV/mil' };
    expect(note(null)).toEqual([{ severity: 'note', values: { ...values, takenOn: null } }]);
    expect(note('2025-06-01')).toEqual([{ severity: 'note', values: { ...values, takenOn: '2025-06-01' } }]);
  });

  it('beside one of the list is told where they differ by more than 5 %: 8.4 mV/µm are 213.36 mV/mil', () => {
    const left = { 'As-left sensitivity (mV/mil)': 200 };
    const apart = (sensitivity: number) =>
      told(audited(left, [['as left', null, at(sensitivity)]]), 'record-disagrees-with-list');
    expect([apart(191), apart(209)]).toEqual([[], []]);
    expect(apart(189)).toMatchObject([{ severity: 'warning', values: { fraction: near(-0.055) } }]);
    const micrometres: Point[] = straight(8.4, gaps(250, 2000, 250));
    const one = audited(left, [['as left', null, micrometres]], { gap: 'Gap (µm)' });
    expect(told(one, 'record-disagrees-with-list')).toEqual([
      {
        severity: 'warning',
        values: {
          ...{
            kind: 'as left',
            sheet: 'Records',
            row: 2,
            ofRecord: near(213.36),
            ofList: 200,
            unit: 'mV/mil',
          },
          fraction: near(0.0668),
        },
      },
    ]);
    expect(told(one, 'as-left-sensitivity-from-record')).toEqual([]);
  });

  // 160 mV/mil from 10 to 30 mil (−3.6 V is 20 mil), 166 from 40 to 70 mil, the longer part, 100 between them.
  const bent = [-2, -3.6, -5.2, -6.2, -7.86, -9.52, -11.18].map((volts, index): Point => [
    10 + 10 * index,
    volts,
  ]);

  it('of a position is that about its zero as left, of a vibration never', () => {
    const zero = {
      'Zero voltage (V)': -9.52,
      'Positive direction': 'toward',
      'As-left zero voltage (V)': -3.6,
    };
    const position = audited(zero, [['as left', null, bent]], { kind: 'axial' });
    expect(position.sensitivity).toMatchObject({ from: 'calibration record', measured: near(160) });
    const vibration = audited({ 'As-left zero voltage (V)': -3.6 }, [['as left', null, bent]]);
    expect(vibration.sensitivity).toMatchObject({ from: 'calibration record', measured: near(166) });
  });

  it('is none of a record that rises, and none of another sensor', () => {
    const rising: Point[] = gaps(10, 90, 10).map((gap) => [gap, gap / 5 - 20]);
    const zero = { 'Zero voltage (V)': -9.52, 'As-left zero voltage (V)': -9.52 };
    const position = audited(zero, [['as left', null, rising]], { kind: 'axial' });
    expect(position).toMatchObject({ state: 'as left', sensitivity: { measured: 160 } });
    expect(position.verdict).toBe('late');
    for (const rule of ['as-left-sensitivity-from-record', 'record-disagrees-with-list'])
      expect(told(position, rule)).toEqual([]);
    const [velocity] = auditCase({
      because: '',
      book: velocityBook([
        'Records',
        [['Tag', 'Series', 'Gap (mil)', 'Output (V)'], ...rowsOf(['V-1', 'as left'], at(200))],
      ]),
    }).channels;
    expect(told(velocity!, 'as-left-not-judged')).toMatchObject([{ values: { why: 'no sensitivity' } }]);
    expect(told(velocity!, 'unit-does-not-fit')).toEqual([]);
  });
});
