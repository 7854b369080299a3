import { describe, expect, it } from 'vitest';
import type { Cell } from '../../src/cells/cell.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import { book, oneChannel, type Rows } from './book.ts';
import { auditCase } from './golden.ts';
import { gaps, rowsOf, straight } from './recordSheets.ts';

const auditOf = (workbook: Workbook) => auditCase({ because: '', book: workbook });
const only = (workbook: Workbook) => auditOf(workbook).channels[0]!;
const settingsHeader = [
  'Tag',
  'Configured sensitivity (mV/mil)',
  'Alert (mil)',
  'Danger (mil)',
  'Group',
  'Voting',
];

describe('what the report shows of a channel’s inputs', () => {
  const settings = { Group: 'G', Voting: '1oo1', Bypass: 'no' };

  it('group, voting and batch as they are written, none where blank', () => {
    expect(only(oneChannel({ channel: { 'Cable lot': 'L-7' }, settings })).inputs).toMatchObject({
      group: 'G',
      voting: '1oo1',
      batch: 'L-7',
    });
    expect(only(oneChannel({})).inputs).toMatchObject({ group: null, voting: null, batch: null });
  });

  it('the direction and the volts of positions alone', () => {
    const channel = { 'Zero voltage (V)': -10, 'Positive direction': 'away' };
    const axial = only(
      oneChannel({ kind: 'axial', channel, settings: { 'Configured zero voltage (V)': -10 } }),
    );
    expect(axial.inputs).toMatchObject({ direction: 'away', unitsPerVolt: 1000 });
    expect(only(oneChannel({ channel: { 'Positive direction': 'away' } })).inputs).toMatchObject({
      direction: null,
      unitsPerVolt: null,
    });
  });

  it('no coverage factor without an uncertainty', () => {
    expect(only(oneChannel({})).sensitivity).toMatchObject({ uncertainty: null, coverage: null });
    expect(only(oneChannel({ channel: { 'Uncertainty (%)': 3 } })).sensitivity).toMatchObject({
      coverage: 2,
    });
  });

  it('why a channel can’t be judged, once: a sensitivity that can’t be used is not missing too', () => {
    const why = (measured: Cell) =>
      only(oneChannel({ measured })).thresholds.map(({ obstacles }) => obstacles);
    expect(why('abc')).toEqual([['a value that can’t be used'], ['a value that can’t be used']]);
    expect(why(null)).toEqual([['a sensitivity is missing'], ['a sensitivity is missing']]);
  });

  it('a setpoint in both tables: what is wrong with it at its own cell, and a contradiction as such', () => {
    const twice = (danger: Cell) => only(oneChannel({ channel: { 'Danger (mil)': 6 }, danger }));
    const unreadable = twice('abc').findings.filter(({ rule }) => rule === 'value-not-a-number');
    expect(unreadable.map(({ sheet, column, row }) => `${sheet}!${column}${row}`)).toEqual(['Monitor!D2']);
    const { thresholds, findings } = twice(5);
    expect(thresholds.find(({ name }) => name === 'danger')?.obstacles).toEqual([
      'two values contradict each other',
    ]);
    expect(findings.find(({ rule }) => rule === 'tables-contradict')?.values).toMatchObject({
      inChannels: { text: '6 mil' },
      inSettings: { text: '5 mil' },
    });
  });

  it('of a channel that can’t be judged what is known', () => {
    const channel = { 'Calibrated on': '2025-06-01' };
    const unknown = only(oneChannel({ measured: null, channel, settings: { ...settings, Bypass: 'yes' } }));
    expect(unknown).toMatchObject({ verdict: 'incomplete', state: 'as found', inBypass: true, unit: 'mil' });
    expect(unknown.inputs).toMatchObject({
      group: 'G',
      voting: '1oo1',
      bypass: true,
      calibratedOn: '2025-06-01',
    });
    expect(unknown.sensitivity).toMatchObject({ configured: 200, measured: null, unit: 'mV/mil' });
    const blank = only(oneChannel({ measured: null }));
    expect(blank.inputs).toMatchObject({ group: null, voting: null, bypass: false, calibratedOn: null });
  });

  it('both sensitivities of such a channel in one unit alone: mV/µm beside mV/mil are not shown', () => {
    const two = book(
      [
        'Channels',
        [
          ['Tag', 'Measured sensitivity (mV/µm)'],
          ['V-1', 7.9],
        ],
      ],
      ['Monitor', [settingsHeader.slice(0, 4), ['V-1', 200, null, null]]],
    );
    expect(only(two).sensitivity).toMatchObject({
      configured: 200,
      measured: null,
      unit: 'mV/mil',
      error: null,
    });
  });
});

describe('settings that no channel was joined with', () => {
  const group = (tags: readonly string[], ...stray: string[]) =>
    auditOf(
      book(
        [
          'Channels',
          [['Tag', 'Measured sensitivity (mV/mil)'], ...tags.map((tag): Rows[number] => [tag, 200])],
        ],
        ['Monitor', [settingsHeader, ...stray.map((tag): Rows[number] => [tag, 200, 3, 5, 'G', '2oo2'])]],
      ),
    );

  it('are a warning, and their danger is not known: critical', () => {
    const { problems, attention } = group(['A'], 'A', 'B');
    expect(problems).toMatchObject([
      { rule: 'settings-without-channel', severity: 'warning', values: { tag: 'B', sheet: 'Channels' } },
    ]);
    expect(attention.filter(({ subject }) => subject.tag === 'B')).toMatchObject([{ severity: 'critical' }]);
  });

  it('are members of their group that can’t be counted on, for their own reason', () => {
    const why = (report: ReturnType<typeof group>) =>
      report.groups
        .filter(({ threshold }) => threshold === 'danger')
        .flatMap(({ members }) => members.map(({ tag, why: reason }) => `${tag} ${reason}`));
    expect(why(group(['A'], 'A', 'B'))).toContain('B it is not in the channel list');
    const twice = group(['A', 'B'], 'A', 'B', 'B');
    expect(why(twice)).toContain('B its tag is not unique');
    expect(twice.problems.find(({ rule }) => rule === 'duplicate-tag')).toMatchObject({
      severity: 'warning',
      values: { kind: 'in settings', tag: 'B', rows: [3, 4] },
    });
    expect(twice.attention.filter(({ subject }) => subject.tag === 'B')).toHaveLength(1);
  });

  it('a channel without settings says where it looked, and keeps its own remarks', () => {
    const { channels } = group(['A', 'C'], 'A');
    expect(channels.find(({ tag }) => tag === 'C')?.findings).toMatchObject([
      { rule: 'channel-without-settings', severity: 'warning', values: { tag: 'C', sheet: 'Monitor' } },
    ]);
  });
});

it('a record is not listed beside itself', () => {
  const rows: Rows = [
    ['Tag', 'Series', 'Gap (mil)', 'Output (V)'],
    ...rowsOf(['V-1', 'as found'], straight(160, gaps(10, 90, 10))),
    ...rowsOf(['V-1', 'as left'], straight(200, gaps(10, 90, 10))),
  ];
  const channel = only(
    book(...oneChannel({ measured: 160, channel: { 'Gap voltage (V)': -8 } }).sheets, ['Records', rows]),
  );
  expect(channel.state).toBe('as left');
  expect(channel.record).toMatchObject({ series: 'as left', others: [{ series: 'as found' }] });
  expect(channel.asFound?.record).toMatchObject({ series: 'as found', others: [{ series: 'as left' }] });
});
