import { describe, expect, it } from 'vitest';
import { ErrorCell } from '../../../src/cells/cell.ts';
import { book, sheet, type Rows } from '../book.ts';
import { saidOf } from './saidOf.ts';

const settingsHeader = ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'] as const;
const channels: Rows = [
  ['Tag', 'Measured sensitivity (mV/mil)'],
  ['V-1', 200],
  ['V-2', 200],
  ['7', 200],
  ['42', 200],
  ['123', 200],
  ['1234', 200],
];
const settings: Rows = [
  settingsHeader,
  ...['V-1', 'V-2', '7', '42', '123', '1234'].map((tag) => [tag, 200, 3, 5] as const),
];

/** What is said of a further sheet beside those of the lists. */
const beside = (...rows: Rows): string[] =>
  saidOf(book(['Channels', channels], ['Monitor', settings], ['Other', rows]));
/** What is said of rows above the channel list on its sheet. */
const above = (...rows: Rows): string[] =>
  saidOf(book(['Channels', [...rows, [], ...channels]], ['Monitor', settings]));

const list = 'critical sheet a list of channels';
const ofSettings = 'critical sheet monitor settings';

describe('a list that was not read, by its headers', () => {
  it('has two of them that belong to quantities, one of which bears on a danger', () => {
    expect(beside(['Tag', 'Gap voltage (V)'], ['V-9', -9.8])).toEqual([`${list} @ Other!A1: Other`]);
    expect(beside(['Tag', 'Location'], ['V-9', 4])).toEqual([]);
    expect(beside(['Gap voltage (V)', 'Remark'], [-9.8, 4])).toEqual([]);
    // One quantity in two columns is one.
    expect(beside(['Gap voltage (V)', 'Measured gap voltage (V)'], [-9.8, -9.7])).toEqual([]);
    expect(beside(['Gap voltage (V)', 'Machine'], [-9.8, 'K-1'])).toEqual([`${list} @ Other!A1: Other`]);
  });

  it('or two that are in units of a sensitivity or a level', () => {
    expect(beside(['Probe (mV/mil)', 'Low-low (mil)'], [200, 3])).toEqual([`${list} @ Other!A1: Other`]);
    expect(beside(['Probe (mV/mil)', 'Remark'], [200, 3])).toEqual([]);
    expect(beside(['Supply (V)', 'Oil (bar)'], [24, 3])).toEqual([]);
    // A unit alone in its cell, brackets in it, is a cell of units.
    expect(beside(['mV/(mm/s)', 'mV/(mm/s)'], [4, 4])).toEqual([]);
    expect(beside(['(mil)', '[mm/s]'], [4, 4])).toEqual([]);
    expect(beside(['Tag', 'Location', 'Probe (mV/mil)'], ['V-9', 'DE', 200])).toEqual([
      `${list} @ Other!A1: Other`,
    ]);
  });

  it('is one of monitor settings where a sensitivity configured or a setpoint is among them', () => {
    for (const header of ['Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Dagner (mil)'])
      expect(beside(['Tag', header], ['V-9', 5])).toEqual([`${ofSettings} @ Other!A1: Other`]);
    expect(beside(['Tag', 'Full scale (mil)'], ['V-9', 10])).toEqual([`${list} @ Other!A1: Other`]);
  });

  it('may have its units behind commas', () => {
    expect(beside(['Tag', 'Danger, mil'], ['V-9', 5])).toEqual([`${ofSettings} @ Other!A1: Other`]);
    expect(beside(['Tag', 'Remark, mil'], ['V-9', 5])).toEqual([]);
    expect(beside(['(mil) (spare)', '(mm/s) (spare)'], [4, 4])).toEqual([]);
  });

  it('stands at its first header, wherever that is', () => {
    expect(beside(['Plant 4'], [], [null, 'Remark', 'Tag', 'Danger (mil)'], [null, 4, 'V-9', 5])).toEqual([
      `${ofSettings} @ Other!C3: Other`,
    ]);
  });

  it('has in one of the three rows below it a number beside something else', () => {
    const head = ['Tag', 'Danger (mil)'];
    expect(beside(head, [], [], ['V-9', 5])).toHaveLength(1);
    expect(beside(head, [], [], [], ['V-9', 5])).toEqual([]);
    expect(beside(head, ['V-9', 'five'])).toEqual([]);
    expect(beside(head, [null, 5])).toEqual([]);
    expect(beside(head, ['V-9'])).toEqual([]);
    expect(beside(head)).toEqual([]);
    expect(beside(head, [' ', 5])).toEqual([]);
    // A number above it, or under no header of it.
    expect(beside(['Plant', 4], head)).toEqual([]);
    expect(beside([...head, null], ['V-9', ' ', 5])).toEqual([]);
  });

  it('is a text of 120 characters at most, and no number or date', () => {
    const long = (length: number): string => `Danger${' '.repeat(length - 12)} (mil)`;
    expect(long(120)).toHaveLength(120);
    expect(beside(['Tag', long(120)], ['V-9', 5])).toHaveLength(1);
    expect(beside(['Tag', long(121)], ['V-9', 5])).toEqual([]);
    expect(beside(['Tag', 5], ['V-9', 5])).toEqual([]);
  });

  it('may stand above or beside the lists that were read, and is then told by its first header', () => {
    const header = ['Tag', 'Gap voltage (V)'];
    expect(above([], header, ['V-9', -9.8])).toEqual([
      'critical table a list of channels @ Channels!A2: Tag',
    ]);
    const wide: Rows = channels.map((row, at) => [
      ...row,
      null,
      ...(at === 0 ? ['Tag', 'Danger (mil)'] : ['V-9', 5]),
    ]);
    const said = saidOf(book(['Channels', wide], ['Monitor', settings]));
    expect(said).toHaveLength(1);
    expect(said[0]).toMatch(/@ Channels!D1: Tag$/);
  });

  it('is told for each list of its own', () => {
    expect(
      beside(['Tag', 'Danger (mil)'], ['V-9', 5], [], ['Tag', 'Gap voltage (V)'], ['V-9', -9.8]),
    ).toEqual([`${ofSettings} @ Other!A1: Other`, `${list} @ Other!A4: Other`]);
  });

  it('is none on a sheet that an audit wrote', () => {
    expect(
      beside(['Tripdrift audit', 'Danger (mil)'], ['V-9', 5], ['Tag', 'Danger (mil)'], ['V-9', 5]),
    ).toEqual([]);
  });
});

describe('a list that was not read, by the tags in its rows', () => {
  const list = 'warning sheet a list of channels';

  it('has two rows or more with a known tag and a number', () => {
    expect(beside(['V-1', 4], ['v-2 ', 5])).toEqual([`${list} @ Other!A1: Other`]);
    expect(beside(['V-1', 4])).toEqual([]);
    expect(beside(['V-1', 4], ['V-9', 5])).toEqual([]);
    expect(beside(['V-1', 'four'], ['V-2', 'five'])).toEqual([]);
    expect(beside(['V-1', 4], ['V-2', 'five'])).toEqual([]);
    expect(beside([4, null, 'V-1'], [5, null, 'V-2'])).toEqual([`${list} @ Other!C1: Other`]);
  });

  it('is told by its first and last row where it stands with the lists', () => {
    expect(above(['Spares'], ['V-1', 4], ['V-9', 4], ['V-2', 5])).toEqual([
      'warning table a list of channels @ Channels!A2: rows 2 to 4',
    ]);
  });

  it('has tags that are no mere numbers of up to three figures, which are found everywhere', () => {
    expect(beside(['7', 4], ['7', 5])).toEqual([]);
    expect(beside([7, 4], [7, 5])).toEqual([]);
    expect(beside(['42', 4], ['123', 5])).toEqual([]);
    expect(beside(['1234', 4], [1234, 5])).toEqual([`${list} @ Other!A1: Other`]);
    expect(beside([new ErrorCell('V-1'), 4], [new ErrorCell('V-2'), 4])).toEqual([]);
  });

  it('ends at a list with headers, of which alone is told what follows', () => {
    expect(beside(['V-1', 4], ['V-2', 5], ['Tag', 'Danger (mil)'], ['V-1', 5], ['V-2', 5])).toEqual([
      `${list} @ Other!A1: Other`,
      `${ofSettings} @ Other!A3: Other`,
    ]);
    expect(beside(['V-1', 4], ['Tag', 'Danger (mil)'], ['V-1', 5], ['V-2', 5])).toEqual([
      `${ofSettings} @ Other!A2: Other`,
    ]);
  });
});

describe('what was read is not told', () => {
  it('calibration records, with the title and headers above them', () => {
    const record: Rows = [
      ['Calibration record'],
      ['Tag', 'V-1'],
      ['Target gap (mil)', 'Output (V)'],
      ...[10, 20, 30, 40, 50].map((gap) => [gap, -gap / 5]),
    ];
    expect(beside(...record)).toEqual([]);
    expect(above(...record)).toEqual([]);
  });

  const history = ['Tag', 'Date', 'Sensitivity (mV/mil)'] as const;
  const gaps: Rows = [
    ['Gap voltage (V)', 'Machine'],
    [-9.8, 'K-1'],
  ];

  it('histories, were they of one row', () => {
    expect(beside(history, ['V-1', '2020-01-01', 200], ['V-2', '2021-01-01', 201])).toEqual([]);
    expect(beside(history, ['V-1', '2020-01-01', 200])).toEqual([]);
  });

  it('nor what stands in the six rows above one, but all that is farther off', () => {
    const first = ['V-1', '2020-01-01', 200] as const;
    // Its first row is row 7, then row 8.
    expect(beside(...gaps, [], [], [], history, first)).toEqual([]);
    expect(beside(...gaps, [], [], [], [], history, first)).toEqual([`${list} @ Other!A1: Other`]);
    const right = gaps.map((row) => [null, null, null, null, ...row]);
    expect(beside(history, first, [], [], ...right)).toEqual([`${list} @ Other!E5: Other`]);
  });

  it('nor of what a remark tells that it could not be used, with the rows that follow', () => {
    const bad = ['V-1', 'soon', 200] as const;
    expect(beside(history, bad, bad, bad)).toEqual([]);
    expect(beside(history, bad, ['V-2', 'x', 4])).toEqual([]);
    const right: Rows = [
      [null, null, null, null, 'V-1', 4],
      [null, null, null, null, 'V-2', 4],
    ];
    expect(beside(history, bad, ...right)).toEqual([]);
    expect(beside(history, bad, [], ...right)).toEqual([
      'warning sheet a list of channels @ Other!E4: Other',
    ]);
  });

  it('both lists side by side', () => {
    const rows = channels.map((row, at) => [...row, null, ...settings[at]!]);
    expect(saidOf(book(['All', rows]))).toEqual([]);
    const right = channels.map((row, at) => [...(at > 0 ? ['V-1', 4] : ['', null]), null, ...row]);
    expect(saidOf(book(['Channels', right], ['Monitor', settings]))).toEqual([
      'warning table a list of channels @ Channels!A2: rows 2 to 7',
    ]);
  });

  it('the lists themselves, with columns between theirs', () => {
    const of = saidOf(
      book(
        sheet(
          'Channels',
          channels.map(([tag, measured], at) => [tag!, at === 0 ? 'Remark' : 'V-1', measured!]),
        ),
        ['Monitor', settings],
      ),
    );
    expect(of).toEqual([]);
  });
});
