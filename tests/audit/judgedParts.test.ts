import { describe, expect, it } from 'vitest';
import { unjoinedMember } from '../../src/audit/judge/channel/groupMembers.ts';
import type { FoundTable } from '../../src/audit/read/tables/found.ts';
import type { SettingsRow } from '../../src/audit/read/rows/settingsRow.ts';
import type { Cell } from '../../src/cells/cell.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import { parseUnit } from '../../src/units/parse.ts';
import { book, oneChannel, sheet, type Rows, velocityBook } from './book.ts';
import { auditCase } from './golden.ts';
import { gaps, rowsOf, straight } from './recordSheets.ts';

const near = (value: number): number => expect.closeTo(value, 9) as number;
type Columns = Readonly<Record<string, Cell>>;
const reportOf = (workbook: Workbook) => auditCase({ because: '', book: workbook });
const only = (workbook: Workbook) => reportOf(workbook).channels[0]!;
const withSheet = (one: Workbook, name: string, rows: Rows): Workbook => book(...one.sheets, [name, rows]);
const rulesOf = (workbook: Workbook) => only(workbook).findings.map(({ rule }) => rule);
const danger = (workbook: Workbook) => only(workbook).thresholds.find(({ name }) => name === 'danger')!;

const left = 'As-left sensitivity (mV/mil)';
const header = ['Tag', 'Series', 'Gap (mil)', 'Output (V)'];
/** Two points: too few for a record. */
const short = (series: string): Rows => rowsOf(['V-1', series], straight(200, [10, 20]));
const long = (sensitivity: number, series: string): Rows =>
  rowsOf(['V-1', series], straight(sensitivity, gaps(10, 90, 10)));
const position = (channel: Columns = {}) =>
  oneChannel({
    kind: 'axial',
    channel: { 'Zero voltage (V)': -10, ...channel },
    settings: { 'Configured zero voltage (V)': -10 },
  });

describe('a record that can’t be used', () => {
  it('leaves a vibration and a position incomplete, another sensor as it is', () => {
    for (const one of [oneChannel({}), position()]) {
      expect(only(one).verdict).toBe('within');
      const unusable = withSheet(one, 'Records', [header, ...short('as found')]);
      expect(only(unusable).verdict).toBe('incomplete');
      expect(danger(unusable).obstacles).toEqual(['the record can’t be used']);
    }
    const velocity = velocityBook(['Records', [header, ...short('as found')]]);
    expect(only(velocity).verdict).toBe('within');
    expect(danger(velocity).obstacles).toEqual([]);
  });

  it('is no obstacle beside one that can, nor as left where that one can', () => {
    const beside = withSheet(oneChannel({ channel: { 'Gap voltage (V)': -10 } }), 'Records', [
      header,
      ...short('as found'),
      ...long(200, 'spare'),
    ]);
    expect(only(beside)).toMatchObject({ verdict: 'within', record: { series: 'spare' } });
    const again = withSheet(oneChannel({ measured: 160, channel: { 'Gap voltage (V)': -10 } }), 'Records', [
      header,
      ...short('as found'),
      ...long(200, 'as left'),
    ]);
    expect(only(again)).toMatchObject({ verdict: 'within', state: 'as left', record: { series: 'as left' } });
    expect(only(again).asFound).toMatchObject({ verdict: 'late', record: null });
    expect(only(again).asFound?.thresholds.map(({ obstacles }) => obstacles)).toEqual([[], []]);
  });

  it('marked as left, it leaves what was found incomplete: how it was left is not known', () => {
    const one = withSheet(oneChannel({}), 'Records', [header, ...short('as left')]);
    expect(only(one)).toMatchObject({ verdict: 'incomplete', state: 'as found' });
  });

  it('is no obstacle that is added to others twice', () => {
    const one = withSheet(oneChannel({ settings: { 'Full scale (mil)': 'wide' } }), 'Records', [
      header,
      ...short('as found'),
    ]);
    expect(danger(one).obstacles).toEqual(['a value that can’t be used', 'the record can’t be used']);
  });
});

describe('a record and a check of what was found, once the channel was read again', () => {
  const shaker: Rows = [
    ['Tag', 'Displacement (mil p-p)', 'Output (mV p-p)', 'Frequency (Hz)'],
    ['V-1', 4, 640, 60],
  ];

  it('a check that still counts is shown, and what it disagrees with: 160 mV/mil beside 200 listed', () => {
    const gap = withSheet(oneChannel({ channel: { 'As-left gap voltage (V)': -9 } }), 'Shaker', shaker);
    expect(only(gap)).toMatchObject({
      state: 'as left',
      verdict: 'late',
      dynamic: { sheet: 'Shaker', row: 2, sensitivity: near(160) },
    });
    expect(rulesOf(gap)).toContain('static-and-dynamic-disagree');
  });

  it('one that does not count any more is not', () => {
    const again = withSheet(oneChannel({ measured: 160, channel: { [left]: 200 } }), 'Shaker', shaker);
    expect(only(again)).toMatchObject({ state: 'as left', verdict: 'within', dynamic: null });
    expect(rulesOf(again)).not.toContain('static-and-dynamic-disagree');
  });

  it('what the curve says is told at the record that counts', () => {
    const gap = { 'Gap voltage (V)': -8 };
    const places = (one: Workbook) =>
      only(one)
        .findings.filter(({ rule }) => rule === 'danger-curve-differs')
        .map(({ row }) => row);
    const found = withSheet(oneChannel({ channel: gap }), 'Records', [header, ...long(160, 'as found')]);
    expect(places(found)).toEqual([2]);
    const both = withSheet(oneChannel({ measured: 160, channel: { ...gap, [left]: 200 } }), 'Records', [
      header,
      ...long(160, 'as found'),
      ...long(150, 'as left'),
    ]);
    expect(places(both)).toEqual([11]);
  });
});

it('a dated record as left is a reading of the drift, which starts anew with it: 200, 199 and 198 are −1 in 365 days (by hand)', () => {
  const history: Rows = [
    ['Tag', 'Date', 'Sensitivity (mV/mil)'],
    ['V-1', '2020-01-01', 160],
    ['V-1', '2022-01-01', 199],
    ['V-1', '2023-01-01', 198],
  ];
  const record: Rows = [
    ['Tag', 'Series', 'Taken on', 'Gap (mil)', 'Output (V)'],
    ...rowsOf(['V-1', 'as left', '2021-01-01'], straight(200, gaps(10, 90, 10))),
  ];
  const one = only(
    withSheet(withSheet(oneChannel({ measured: 199 }), 'History', history), 'Records', record),
  );
  expect(one.drift?.readings.map(({ date, from, sensitivity }) => [date, from, sensitivity])).toEqual([
    ['2020-01-01', 'history', 160],
    ['2021-01-01', 'calibration record', near(200)],
    ['2022-01-01', 'history', 199],
    ['2023-01-01', 'history', 198],
  ]);
  expect(one.drift).toMatchObject({
    perYear: near(-365.25 / 365),
    startsAnew: { found: 160, left: near(200) },
  });
  expect(one.asFound?.sensitivity).toMatchObject({ measured: 199, from: 'channel list' });
});

describe('a channel that can’t be used', () => {
  it('is a member of its group that is not counted on, for that reason', () => {
    const two = book(
      [
        'Channels',
        [
          ['Tag', 'Kind', 'Measured sensitivity (mV/mil)'],
          ['A', 'radial', 200],
          ['B', 'radial', 'about 200?'],
          ['C', 'radial', 'about 200?'],
        ],
      ],
      [
        'Monitor',
        [
          ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Group', 'Voting'],
          ['A', 200, 3, 5, 'G', '2oo2'],
          ['B', 200, 3, 5, 'G', '2oo2'],
          ['C', 200, 3, 5, null, null],
        ],
      ],
    );
    const { groups } = reportOf(two);
    expect(
      groups
        .filter(({ threshold }) => threshold === 'danger')
        .map(({ canTrip, effective, members }) => [
          canTrip,
          effective,
          members.map(({ tag, why }) => [tag, why]),
        ]),
    ).toEqual([
      [
        false,
        null,
        [
          ['A', null],
          ['B', 'its row can’t be used'],
        ],
      ],
    ]);
  });

  it('says that what was left of it is not judged, where something was; else nothing of it', () => {
    expect(rulesOf(oneChannel({ measured: null, channel: { [left]: 200 } }))).toContain('as-left-not-judged');
    expect(rulesOf(oneChannel({ measured: null }))).not.toContain('as-left-not-judged');
  });
});

describe('a hidden row', () => {
  const hidden = (...names: readonly string[]) =>
    book(
      ...oneChannel({}).sheets.map(({ name, rows }) =>
        sheet(name, rows, { hiddenRows: new Set(names.includes(name) ? [2] : []) }),
      ),
    );
  const places = (one: Workbook) =>
    only(one).findings.flatMap(({ rule, severity, sheet: at, row }) =>
      rule === 'hidden-row' ? [`${severity} ${at} ${row}`] : [],
    );

  it('of either table is audited, and said of each', () => {
    expect(places(hidden('Channels'))).toEqual(['note Channels 2']);
    expect(places(hidden('Monitor'))).toEqual(['note Monitor 2']);
    expect(places(hidden('Channels', 'Monitor'))).toEqual(['note Channels 2', 'note Monitor 2']);
    expect(places(hidden())).toEqual([]);
  });

  it('of one table that is both is said once', () => {
    const one = sheet(
      'All',
      [
        [
          'Tag',
          'Measured sensitivity (mV/mil)',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
        ],
        ['V-1', 200, 200, 3, 5],
      ],
      { hiddenRows: new Set([2]) },
    );
    expect(places(book(one))).toEqual(['note All 2']);
  });
});

describe('settings that no channel was joined with, as a member', () => {
  const table = {
    sheet: { name: 'Monitor' },
    columns: new Map([
      ['tag', { column: 1 }],
      ['group', { column: 5 }],
      ['voting', { column: 6 }],
    ]),
  } as unknown as FoundTable;
  const memberOf = (some: object) =>
    unjoinedMember(
      {
        ...{ row: 7, alert: null, danger: { value: 5, unit: parseUnit('mil') }, counterAlert: null },
        ...{ counterDanger: null, multiplier: null, detection: null, group: '', voting: '', bypass: null },
        ...some,
      } as unknown as SettingsRow,
      { tag: 'X', machine: 'M' },
      table,
      'it is not in the channel list',
    );

  it('have their group or their voting; with neither they are none', () => {
    expect(memberOf({})).toBeNull();
    expect(memberOf({ group: 'G' })).toMatchObject({ group: 'G', voting: '' });
    expect(memberOf({ voting: '1oo2' })).toMatchObject({ group: '', voting: '1oo2' });
  });

  it('say who they are, where they stand and why they can’t be counted on; no limit is known', () => {
    expect(memberOf({ group: 'G', voting: '1oo2' })).toMatchObject({
      ...{ tag: 'X', machine: 'M', notAudited: 'it is not in the channel list', bypass: null, faulty: false },
      ...{ limit: null, batch: '', unit: { text: 'mil' }, detection: null },
      places: {
        group: { sheet: 'Monitor', row: 7, column: 'E' },
        voting: { sheet: 'Monitor', row: 7, column: 'F' },
      },
      thresholds: [{ name: 'danger', setpoint: 5, multiplier: 1, verdict: 'incomplete' }],
    });
  });
});
