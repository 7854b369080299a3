import { describe, expect, it } from 'vitest';
import { pairReader } from '../../src/audit/read/pairedRows.ts';
import type { FoundTable } from '../../src/audit/read/tables/found.ts';
import type { TableKind } from '../../src/audit/read/tables/vocabulary.ts';
import type { Cell } from '../../src/cells/cell.ts';
import { parseUnit } from '../../src/units/parse.ts';
import { sheet } from './book.ts';

/** A table of one row, 2 of a channel list and 3 of settings, with these cells from A on: by id, or by id and the unit and coverage of their header: `uncertainty % k=3`. */
function table(kind: TableKind, cells: Readonly<Record<string, Cell>>): FoundTable {
  const columns = Object.keys(cells).map((key, at) => {
    const [id = '', named = ''] = key.split(/ (.*)/u);
    const [of = '', k] = named.split(' k=');
    const unit = parseUnit(of);
    const coverage = k === undefined ? {} : { coverage: Number(k) };
    return [id, { id, column: at + 1, header: id, remarks: [], ...coverage, ...(unit && { unit }) }] as const;
  });
  return {
    ...{ kind, headerRow: 1, firstRow: 2, lastRow: 3, unitColumns: [], skipped: new Map(), areaEnd: null },
    sheet:
      kind === 'channels'
        ? sheet('Channels', [[], Object.values(cells)])
        : sheet('Monitor', [[], [], Object.values(cells)]),
    columns: new Map(columns),
    unread: [],
  };
}

function pair(channels: Readonly<Record<string, Cell>>, settings: Readonly<Record<string, Cell>>) {
  const tables = {
    channels: table('channels', { tag: 'V-1', ...channels }),
    settings: table('settings', { tag: 'v-1', ...settings }),
  };
  return pairReader(tables).pair(2, 3);
}

const contradicted = (found: ReturnType<typeof pair>) =>
  found.contradictions.map(
    ({ column, inChannels, inSettings }) =>
      `${column}: ${inChannels.text} in ${inChannels.place.column}, ${inSettings.text} in ${inSettings.place.sheet}!${inSettings.place.column}`,
  );

describe('a quantity', () => {
  it('is read from whichever table holds it, and has its place there', () => {
    const found = pair({ 'danger mil': 5 }, { 'measured mV/mil': 160, 'alert mil': 3, location: 'DE' });
    expect([found.row.measured?.value, found.settings.danger?.value, found.settings.alert?.value]).toEqual([
      160, 5, 3,
    ]);
    expect(found.row.location).toBe('DE');
    const place = (kind: TableKind, column: string) => {
      const at = found.place(kind, column);
      return `${at.sheet}!${at.column}${at.row}`;
    };
    expect(place('channels', 'measured')).toBe('Monitor!B3');
    expect(place('settings', 'danger')).toBe('Channels!B2');
    expect(place('settings', 'alert')).toBe('Monitor!C3');
    // One that stands nowhere belongs to its own table.
    expect([place('channels', 'limit'), place('settings', 'fullScale')]).toEqual([
      'Channels!A2',
      'Monitor!A3',
    ]);
    expect(contradicted(found)).toEqual([]);
  });

  it('that is blank in its own table is taken from the other one, and has its place there', () => {
    const found = pair({ 'limit mil': null, 'danger mil': 5 }, { 'limit mil': 6, 'danger mil': null });
    expect([found.row.limit?.value, found.settings.danger?.value]).toEqual([6, 5]);
    expect([found.place('channels', 'limit').sheet, found.place('settings', 'danger').sheet]).toEqual([
      'Monitor',
      'Channels',
    ]);
  });

  it('that is blank in both is looked for where a column of it stands', () => {
    const { place } = pair({}, { 'limit mil': null, 'danger mil': 5 });
    expect(place('channels', 'limit')).toMatchObject({ sheet: 'Monitor', column: 'B' });
    expect(place('settings', 'danger')).toMatchObject({ sheet: 'Monitor', column: 'C' });
  });

  it('of a date that both say differently is neither', () => {
    const of = (one: Cell, other: Cell) => {
      const found = pair({ calibratedOn: one }, { calibratedOn: other });
      return [found.row.calibratedOn, contradicted(found).length];
    };
    expect(of('2026-01-01', '2026-01-01')).toEqual([Date.UTC(2026, 0, 1) / 86_400_000, 0]);
    expect(of('2026-01-01', '2025-01-01')).toEqual([null, 1]);
    expect(of(null, '2026-01-01')).toEqual([Date.UTC(2026, 0, 1) / 86_400_000, 0]);
  });

  it('of an uncertainty has the coverage factor that is stated beside it', () => {
    const of = (one: Readonly<Record<string, Cell>>, other: Readonly<Record<string, Cell>>) => {
      const { row, contradictions } = pair(one, other);
      expect(contradictions).toEqual([]);
      const { uncertainty, coverage, asLeftUncertainty, asLeftCoverage } = row;
      return [uncertainty, coverage, asLeftUncertainty, asLeftCoverage].map((one) => one?.value ?? null);
    };
    // In a cell of the row, or in the header of the column that holds the uncertainty.
    expect(of({ 'uncertainty % k=3': 6 }, { 'uncertainty % k=2': null })).toEqual([6, 3, null, null]);
    expect(of({ 'uncertainty % k=3': null }, { 'uncertainty % k=2': 6 })).toEqual([6, 2, null, null]);
    expect(of({ 'uncertainty % k=3': null }, { 'uncertainty %': 6 })).toEqual([6, null, null, null]);
    expect(of({ 'uncertainty % k=3': 6 }, { 'uncertainty %': 6 })).toEqual([6, 3, null, null]);
    expect(of({}, { 'uncertainty % k=3': 6 })).toEqual([6, 3, null, null]);
    expect(of({ coverage: 3 }, { 'uncertainty %': 6 })).toEqual([6, 3, null, 3]);
    expect(of({ coverage: 3 }, { 'uncertainty %': 6, coverage: 2 })).toEqual([6, 2, null, 3]);
    expect(of({ 'uncertainty %': 6 }, { coverage: 3 })).toEqual([6, 3, null, 3]);
    expect(of({ 'asLeftUncertainty % k=3': null }, { 'asLeftUncertainty % k=2': 6 })).toEqual([
      ...[null, null],
      ...[6, 2],
    ]);
  });

  it('that both say alike is one, in their own units; what they say differently is neither', () => {
    const same = (one: Readonly<Record<string, Cell>>, other: Readonly<Record<string, Cell>>) => {
      const found = pair(one, other);
      return [found.row.limit?.value ?? null, ...contradicted(found)];
    };
    expect(same({ 'limit mil': 5 }, { 'limit mil': 5 })).toEqual([5]);
    expect(same({ 'limit mil': 5 }, { 'limit µm': 127 })).toEqual([5]);
    expect(same({ 'limit mil': 5 }, { limit: 5 })).toEqual([5]);
    expect(same({ limit: 5 }, { 'limit mil': 5 })).toEqual([5]);
    expect(same({ limit: 5 }, { 'limit mil p-p': 5 })).toEqual([5]);
    expect(same({ 'limit mil p-p': 5 }, { limit: 5 })).toEqual([5]);
    expect(same({ 'limit mm': 0.001 }, { 'limit mm': 0.0010001 })).toHaveLength(2);
    expect(same({ 'limit mil': 5 }, { 'limit µm': 128 })).toEqual([
      null,
      'limit: 5 mil in B, 128 µm in Monitor!B',
    ]);
    expect(same({ 'limit mil': 5 }, { limit: 6 })).toEqual([null, 'limit: 5 mil in B, 6 in Monitor!B']);
    expect(same({ 'limit mil': 5 }, { 'limit mm/s': 5 })).toHaveLength(2);
    // The same number in another detection is another level; one that states none is not.
    expect(same({ 'limit mil p-p': 5 }, { 'limit mil 0-p': 5 })).toHaveLength(2);
    expect(same({ 'limit mil p-p': 5 }, { 'limit mil': 5 })).toEqual([5]);
    expect(same({ 'limit mil p-p': 5 }, { 'limit mil p-p': 5 })).toEqual([5]);
    const danger = pair({ 'danger mil': 5 }, { 'danger mil': 6 });
    expect([danger.settings.danger, ...contradicted(danger)]).toEqual([
      null,
      'danger: 5 mil in B, 6 mil in Monitor!B',
    ]);
    const kind = pair({ kind: 'radial' }, { kind: 'axial' });
    expect([kind.row.kind, ...contradicted(kind)]).toEqual([null, 'kind: radial in B, axial in Monitor!B']);
    expect(contradicted(pair({ kind: 'radial' }, { kind: 'Shaft vibration' }))).toEqual([]);
  });

  it('that can not be read in the other table is told, once, and keeps its place there', () => {
    const found = pair({}, { 'measured mV/mil': 'low' });
    expect(found.row.diagnostics.map(({ rule, column }) => `${rule} ${column}`)).toEqual([
      'value-not-a-number measured',
    ]);
    expect(found.place('channels', 'measured')).toMatchObject({ sheet: 'Monitor', column: 'B' });
    const both = pair({ 'measured mV/mil': '160' }, { 'measured mV/mil': 'low' });
    expect(both.row.measured?.value).toBe(160);
    expect(both.row.diagnostics).toHaveLength(2);
    expect(both.place('channels', 'measured').sheet).toBe('Monitor');
    // A note takes nothing from its own place.
    const noted = pair({ 'measured mV/mil': 160 }, { 'measured mV/mil': '160' });
    expect(noted.place('channels', 'measured').sheet).toBe('Channels');
    expect([noted.row.tag, noted.row.row, noted.settings.tag, noted.settings.row]).toEqual([
      'V-1',
      2,
      'v-1',
      3,
    ]);
  });
});

describe('a name', () => {
  const machine = (one: string, other: string) => {
    const found = pair({ machine: one, 'danger mil': 5 }, { machine: other });
    return [found.row.machine, contradicted(found).length];
  };

  it('of a machine says the same where it is a part of the other; where not, the own one still tells the channel', () => {
    expect(machine('K-101', 'Compressor k-101')).toEqual(['K-101', 0]);
    expect(machine('Compressor K-101', 'K-101 ')).toEqual(['Compressor K-101', 0]);
    expect(machine('K-101', 'K-102')).toEqual(['K-101', 1]);
    expect(machine('', 'K-102')).toEqual(['K-102', 0]);
  });

  it('of a group or a voting is the same in any case, no part of it; the own one counts', () => {
    const group = (one: string, other: string) => {
      const found = pair({ group: one }, { group: other });
      return [found.settings.group, contradicted(found).length];
    };
    expect(group('Drive end', ' drive END')).toEqual(['drive END', 0]);
    expect(group('Drive end 2', 'Drive end')).toEqual(['Drive end', 1]);
    const voting = pair({ voting: '2oo3' }, { voting: '1oo2' });
    expect([voting.settings.voting, ...contradicted(voting)]).toEqual([
      '1oo2',
      'voting: 2oo3 in B, 1oo2 in Monitor!B',
    ]);
  });

  it('of a location contradicts nothing', () => {
    const found = pair({ location: 'DE' }, { location: 'drive end', 'danger mil': 5 });
    expect([found.row.location, contradicted(found).length]).toEqual(['DE', 0]);
  });
});

describe('a mark of bypass', () => {
  /** Of a channel whose list and settings have these marks; `null`: left open. */
  const bypass = (inList: Cell, inSettings: Cell) => {
    const found = pair({ bypass: inList }, { bypass: inSettings });
    return [found.settings.bypass, ...contradicted(found)];
  };

  it('of either table holds; two that contradict each other, or one that is not understood, leave it open', () => {
    expect(bypass('yes', null)).toEqual([true]);
    expect(bypass(null, 'yes')).toEqual([true]);
    expect(bypass(null, null)).toEqual([false]);
    expect(bypass('yes', 'yes')).toEqual([true]);
    expect(bypass('no', 'no')).toEqual([false]);
    expect(bypass('yes', 'no')).toEqual([null, 'bypass: yes in B, no in Monitor!B']);
    expect(bypass('no', 'yes')).toEqual([null, 'bypass: no in B, yes in Monitor!B']);
    expect(bypass('maybe', 'no')).toEqual([null]);
    expect(bypass('maybe', null)).toEqual([null]);
    expect(bypass('no', 'maybe')).toEqual([null]);
    expect(bypass('yes', 'maybe')).toEqual([null]);
  });
});

describe('a number out of its range', () => {
  it('is none, and said with what it should be', () => {
    const found = pair(
      {
        'measured mV/mil': 0,
        'sharedUncertainty %': -1,
        coverage: 11,
        'chainLength m': -5,
        'runoutAmplitude mil': -1,
        'zeroUncertainty V': 0,
        'gapVoltage V': -10,
      },
      { 'danger mil': 'x' },
    );
    expect([
      found.row.measured,
      found.row.sharedUncertainty,
      found.row.coverage,
      found.row.chainLength,
    ]).toEqual([null, null, null, null]);
    expect([found.row.zeroUncertainty?.value, found.row.gapVoltage?.value]).toEqual([0, -10]);
    expect(
      found.row.diagnostics.map(({ column, severity, values }) => ({ column, severity, values })),
    ).toEqual([
      out('measured', 0, 'mV/mil', 'above', 0),
      out('sharedUncertainty', -1, '%', 'at least', 0),
      out('coverage', 11, null, 'at most', 10),
      out('chainLength', -5, 'm', 'above', 0),
      out('runoutAmplitude', -1, 'mil', 'at least', 0),
    ]);
    expect(found.settings.diagnostics.map(({ rule }) => rule)).toEqual(['value-not-a-number']);
  });

  it('stands beside what else was wrong with its row', () => {
    const found = pair({ 'measured mV/mil': 'x', 'chainLength m': 0 }, {});
    expect(found.row.diagnostics.map(({ rule }) => rule)).toEqual([
      'value-not-a-number',
      'value-out-of-range',
    ]);
  });

  function out(column: string, value: number, unit: string | null, kind: string, than: number) {
    return {
      column,
      severity: 'warning',
      values: { kind: 'bound', header: column, value, unit, bound: { kind, than } },
    };
  }
});
