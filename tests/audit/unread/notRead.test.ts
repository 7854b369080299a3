import { describe, expect, it } from 'vitest';
import type { NotOfAudit } from '../../../src/audit/model/columnMap.ts';
import { isSettled } from '../../../src/audit/read/unread/notRead.ts';
import { ErrorCell, PercentCell, type Cell } from '../../../src/cells/cell.ts';
import { book, type Rows } from '../book.ts';
import { saidOf } from './saidOf.ts';

const settingsHeader = ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'] as const;

/** A channel list of one row, and its settings, with further columns from C and from E on. */
const ofColumns = (channel: readonly [string, Cell][], settings: readonly [string, Cell][] = []) =>
  book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', ...channel.map(([header]) => header)],
        ['V-1', 200, ...channel.map(([, cell]) => cell)],
      ],
    ],
    [
      'Monitor',
      [
        [...settingsHeader, ...settings.map(([header]) => header)],
        ['V-1', 200, 3, 5, ...settings.map(([, cell]) => cell)],
      ],
    ],
  );
const ofColumn = (header: string, cell: Cell = 4): string[] => saidOf(ofColumns([[header, cell]]));

describe('a column that was not read', () => {
  it.each([
    // By a header that nearly spells a quantity: critical where a danger hangs on it.
    ['Uncertanty (%)', 'critical column uncertainty'],
    ['Runout amplitud (mil)', 'warning column runout amplitude'],
    ['Danger dealy (s)', 'warning column danger delay'],
    ['Danger 2 (mil)', 'critical column danger'],
    // By its unit: a sensitivity, unless the header says that it is that of a data sheet.
    ['Probe (mV/mil)', 'critical column a sensitivity'],
    ['Loop (mA/mil)', 'critical column a sensitivity'],
    ['Pickup (mV/(mm/s))', 'critical column a sensitivity'],
    ['Rated (mV/mil)', 'warning column a sensitivity'],
    ['Nominal value (mV/mil)', 'warning column a sensitivity'],
    ['By spec. (mV/mil)', 'warning column a sensitivity'],
    ['Typical of its kind (mV/mil)', 'warning column a sensitivity'],
    ['Catalogue no. 4 (mV/mil)', 'warning column a sensitivity'],
    ['Operated (mV/mil)', 'critical column a sensitivity'],
    // A level at which something acts, by the words beside its unit.
    ['Second danger (mil)', 'critical column a level at which it acts'],
    ['High-high trip point (mil)', 'critical column a level at which it acts'],
    ['Alarm (mil)', 'critical column a level at which it acts'],
    ['Warning (mm/s)', 'critical column a level at which it acts'],
    ['Shutdown (g)', 'critical column a level at which it acts'],
    ['SetPoint 3 (mil)', 'critical column a level at which it acts'],
    ['Set point 3 (mil)', 'critical column a level at which it acts'],
    ['Upper limit value (mil)', 'critical column a level at which it acts'],
    ['Range top (mil)', 'critical column a level at which it acts'],
    ['Scale end (mil)', 'critical column a level at which it acts'],
    // Another level of what a monitor shows; lengths of cables and shafts are none.
    ['Slow roll (mil)', 'warning column a level'],
    ['Slow roll (um)', 'warning column a level'],
    ['Slow roll (mm p-p)', 'warning column a level'],
    ['Casing (mm/s)', 'warning column a level'],
    ['Casing (g)', 'warning column a level'],
    ['Casing (m/s)', 'warning column a level'],
  ])('%s', (header, said) => {
    expect(ofColumn(header)).toEqual([`${said} @ Channels!C1: ${header}`]);
  });

  it.each([
    ['Cable (mm)'],
    ['Shaft (m)'],
    ['Shaft (in)'],
    ['Load (%)'],
    ['Supply (V)'],
    ['Remark'],
    ['Machine'], // read
  ])('%s is none of the audit', (header) => {
    expect(ofColumn(header)).toEqual([]);
  });

  it('has values: blanks and dashes are none', () => {
    const header = 'Danger 2 (mil)';
    for (const cell of [null, '', ' ', '-', ' — ', '–', '---']) expect(ofColumn(header, cell)).toEqual([]);
    for (const cell of [
      '-5',
      'n/a',
      '5 - 6',
      'K -',
      '- K',
      0,
      false,
      new ErrorCell('#N/A'),
      new PercentCell(3),
    ])
      expect(ofColumn(header, cell)).toHaveLength(1);
  });

  it('is looked for in the last row of its table too, and in no row that was skipped', () => {
    const of = (...rows: Rows) =>
      saidOf(
        book(
          ['Channels', [['Tag', 'Measured sensitivity (mV/mil)', 'Danger 2 (mil)'], ...rows]],
          ['Monitor', [settingsHeader, ['V-1', 200, 3, 5], ['V-2', 200, 3, 5]]],
        ),
      );
    expect(of(['V-1', 200], ['V-2', 200, 7])).toHaveLength(1);
    expect(of(['V-1', 200], ['V-2', 200])).toEqual([]);
    // The header repeated below the first channel.
    expect(
      of(['V-1', 200], ['Tag', 'Measured sensitivity (mV/mil)', 'Danger 2 (mil)'], ['V-2', 200]),
    ).toEqual([]);
  });

  it('may stand in the settings', () => {
    expect(saidOf(ofColumns([], [['Full scael (mil)', 10]]))).toEqual([
      'critical column full scale @ Monitor!E1: Full scael (mil)',
    ]);
  });

  it('is no second name of a channel', () => {
    // `Channel` beside `Tag`, `Position` beside `Location`.
    expect(saidOf(ofColumns([['Channel', 'C7']]))).toEqual([]);
    expect(
      saidOf(
        ofColumns([
          ['Location', 'DE'],
          ['Position', 'left'],
        ]),
      ),
    ).toEqual([]);
  });

  it('is told once of a table that is both, and not where either reading of it uses the column', () => {
    const both = book([
      'All',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', ...settingsHeader.slice(1), 'Uncertanty (%)'],
        ['V-1', 200, 200, 3, 5, 4],
      ],
    ]);
    expect(saidOf(both)).toEqual(['critical column uncertainty @ All!F1: Uncertanty (%)']);
  });
});

describe('a row that was not read', () => {
  const header = ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'As-left sensitivity (mV/mil)'] as const;
  const rows = (...more: Rows) =>
    saidOf(
      book(
        ['Channels', [header, ['V-1', 'K-1', 200], ...more]],
        ['Monitor', [settingsHeader, ['V-1', 200, 3, 5]]],
      ),
    );

  it('has values and no tag; critical where a sensitivity or a setpoint is among them', () => {
    expect(rows([null, 'K-1', 160])).toEqual(['critical row a channel without a tag @ Channels!A3: K-1']);
    expect(rows([null, null, null, 160])).toEqual([
      'critical row a channel without a tag @ Channels!A3: 160',
    ]);
    expect(rows([null, 'K-1', 'see list'])).toEqual([
      'warning row a channel without a tag @ Channels!A3: K-1',
    ]);
    expect(rows([])).toEqual([]);
  });

  it('is quoted by its first 60 characters', () => {
    expect(rows([null, 'x'.repeat(70), 160])[0]).toMatch(/: x{60}$/);
  });

  it.each([
    ['configured', [null, 200, 'x', null]],
    ['alert', [null, 'x', 3, null]],
    ['danger', [null, 'x', null, 5]],
  ])('is one of settings too: %s', (_, row) => {
    const said = saidOf(
      book(
        ['Channels', [header, ['V-1', 'K-1', 200]]],
        ['Monitor', [settingsHeader, ['V-1', 200, 3, 5], row]],
      ),
    );
    expect(said).toEqual([expect.stringMatching(/^critical row a channel without a tag @ Monitor!A3: /)]);
  });

  it('is told once of a table that is both', () => {
    const both = book([
      'All',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', ...settingsHeader.slice(1)],
        ['V-1', 200, 200, 3, 5],
        [null, 160, 200, 3, 5],
      ],
    ]);
    expect(saidOf(both)).toEqual(['critical row a channel without a tag @ All!A3: 160']);
  });
});

describe('what a person has said is no part of the audit', () => {
  const column = { what: 'column', sheet: 'Probes', row: 1, column: 'AB', text: 'Danger 2 (mil)' } as const;
  const row = { what: 'row', sheet: 'Probes', row: 7, column: 'A', text: '160' } as const;
  const settled = (one: typeof column | typeof row, ...notOfAudit: NotOfAudit[]) =>
    isSettled({ ...one, looksLike: '', severity: 'critical' }, { notOfAudit });

  it('is settled: a column by letters or header, a row, a sheet', () => {
    expect(settled(column, { sheet: 'Probes', column: 'AB' })).toBe(true);
    expect(settled(column, { sheet: 'probes', column: 'ab' })).toBe(true);
    expect(settled(column, { sheet: 'Probes', column: 'danger 2 (MIL)' })).toBe(true);
    expect(settled(column, { sheet: 'Probes' })).toBe(true);
    expect(settled(row, { sheet: 'Probes', row: 7 })).toBe(true);
    expect(settled(row, { sheet: 'PROBES' })).toBe(true);
    expect(settled(row, { sheet: 'Other' }, { sheet: 'Probes', row: 7 })).toBe(true);
  });

  it('is nothing else', () => {
    expect(settled(column)).toBe(false);
    expect(isSettled({ ...column, looksLike: '', severity: 'critical' }, {})).toBe(false);
    expect(settled(column, { sheet: 'Other' })).toBe(false);
    expect(settled(column, { sheet: 'Other', column: 'AB' })).toBe(false);
    expect(settled(column, { sheet: 'Probes', column: 'AC' })).toBe(false);
    expect(settled(column, { sheet: 'Probes', column: 'Danger' })).toBe(false);
    // The row of a column's header is that of all columns beside it.
    expect(settled(column, { sheet: 'Probes', row: 1 })).toBe(false);
    expect(settled(row, { sheet: 'Probes', row: 8 })).toBe(false);
    expect(settled(row, { sheet: 'Other', row: 7 })).toBe(false);
    expect(settled(row, { sheet: 'Probes', column: 'A' })).toBe(false);
    expect(settled(row, { sheet: 'Probes', column: '160' })).toBe(false);
  });

  it('is not told', () => {
    const of = ofColumns([['Danger 2 (mil)', 7]], [['Slow roll (mil)', 1]]);
    expect(saidOf(of)).toHaveLength(2);
    expect(saidOf(of, { notOfAudit: [{ sheet: 'Channels', column: 'C' }] })).toEqual([
      'warning column a level @ Monitor!E1: Slow roll (mil)',
    ]);
  });
});
