import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { defaultPolicy } from '../../src/audit/model/policy.ts';
import { caution } from '../../src/audit/model/caution.ts';
import { isResultSheet } from '../../src/audit/read/tables/titleWords.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { fleetSheet } from '../../src/sheets/fleet/fleetSheet.ts';
import { digestOf } from '../../src/sheets/fleet/machines.ts';
import type { Fleet, FleetFile } from '../../src/sheets/fleet/types.ts';
import type { ModelValue } from '../../src/sheets/model.ts';
import { objectionsTo } from '../openXmlValidator.ts';
import { hostile, plant } from './plant.ts';
import { workbookOf, type Listed } from './tables.ts';

const folder = mkdtempSync(join(tmpdir(), 'tripdrift-fleet-sheet-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const now = new Date('2025-03-14T08:05:00Z');

function audited(file: string, listed: readonly Listed[]): FleetFile {
  return { file, found: digestOf(audit(workbookOf(listed), { now })), refused: null };
}

function fleetOf(files: readonly FleetFile[], leftOut: readonly string[] = []): Fleet {
  return {
    folder: 'Plant',
    generated: now.toISOString(),
    version: '0',
    policy: defaultPolicy,
    caution,
    files,
    leftOut,
  };
}

const rowsOf = (fleet: Fleet): ModelValue[][] =>
  [...fleetSheet(fleet).rows()].map((row) => row.cells.map((cell) => cell?.value ?? null));

/** Rows from a heading on, the heading and the headers below it left out, until the next heading. */
function part(fleet: Fleet, title: string): ModelValue[][] {
  const rows = rowsOf(fleet);
  const from = rows.findIndex(([first]) => first === title) + 2;
  const to = rows.findIndex(
    ([first], index) => index >= from && /^(Machines|Needs action|Left out|Policy)/u.test(String(first)),
  );
  return rows.slice(from, to);
}

const settings = { configured: 200, alert: 3, danger: 5, fullScale: 10 } as const;

/** Worked by hand: 5 · 200/m mil, late above 5/0.95, early below 5/1.05; all by the simple tolerance of 5 %. */
const files: readonly FleetFile[] = [
  audited('A.xlsx', [
    { ...settings, tag: 'A-1', machine: 'Fan', measured: 200 },
    { ...settings, tag: 'A-2', machine: 'Fan', measured: 160 },
    { ...settings, tag: 'A-3', machine: 'Pump', measured: 250 },
    { ...settings, tag: 'A-4', machine: 'Motor', measured: 199 },
  ]),
  { file: 'B.xlsx', found: null, refused: 'The workbook is protected by a password.' },
  audited('C.xlsx', [
    { ...settings, tag: 'C-1', machine: 'Fan', measured: 100 },
    { ...settings, tag: 'C-2', machine: 'Mill', measured: 200, danger: 12 },
    { ...settings, tag: 'C-3', machine: 'Kiln', measured: 200, group: 'K', voting: '2oo2' },
    { ...settings, tag: 'C-4', machine: 'Kiln', measured: 200, group: 'K', voting: '2oo2', bypass: true },
  ]),
];

describe('the sheet over many workbooks', () => {
  // Columns: worst, channels, then cannot act, late, uncertain, early, not known, OK, in bypass, groups, not read, critical.
  it('counts each workbook, names the worst, says why one was not audited, and adds them up', () => {
    const counts = part(fleetOf(files), 'Workbooks').map((line) => line.slice(0, 13));
    expect(counts).toEqual([
      ['A.xlsx', 'late', 4, 0, 1, 0, 1, 0, 2, 0, 0, 0, 1],
      ['B.xlsx', 'not audited', 'The workbook is protected by a password.', ...Array<null>(10).fill(null)],
      ['C.xlsx', 'cannot trip', 4, 1, 1, 0, 0, 0, 1, 1, 1, 0, 4],
      ['all workbooks', 'cannot trip', 8, 1, 2, 0, 1, 0, 3, 1, 1, 0, 5],
    ]);
    const sentences = part(fleetOf(files), 'Workbooks').map((line) => line[13]);
    expect(sentences[0]).toBe('A-2 danger is late: set 5, really trips at 6.25 mil.');
    expect(sentences[2]).toBe('K (2oo2) cannot trip: C-4 (in bypass).');
    const headline = rowsOf(fleetOf(files))[5]?.[0];
    expect(headline).toMatch(/^1 of 3 workbooks could not be audited: see below\. 8 channels: /u);
    expect(headline).toContain('1 voting group cannot trip.');
  });

  // By hand: 200 as found is within, 160 of 200 as left is late; 160 as found is late, 199 as left within.
  it('goes by what was left', () => {
    const made = audited('D.xlsx', [
      { ...settings, tag: 'D-1', machine: 'Fan', measured: 200, asLeft: 160 },
      { ...settings, tag: 'D-2', machine: 'Fan', measured: 160, asLeft: 199 },
    ]);
    const good = audited('E.xlsx', [{ ...settings, tag: 'E-1', machine: 'Fan', measured: 160, asLeft: 200 }]);
    const lines = part(fleetOf([made, good]), 'Workbooks');
    expect(lines.map((line) => [line[0], line[1], line[4], line[8]])).toEqual([
      ['D.xlsx', 'late', 1, 1],
      ['E.xlsx', 'OK', 0, 1],
      ['all workbooks', 'late', 1, 2],
    ]);
    expect(lines[0]?.[13]).toBe('D-1 danger is late: set 5, really trips at 6.25 mil.');
    expect(lines[1]?.[13]).toBe('Nothing needs action.');
  });

  it('lists machines of all workbooks worst first, two of the same name as two', () => {
    const lines = part(fleetOf(files), 'Machines, worst first');
    expect(lines.map((line) => [line[0], line[1], line[2], line[13]])).toEqual([
      ['Kiln', 'cannot trip', 2, 'C.xlsx'],
      ['Mill', 'cannot act', 1, 'C.xlsx'],
      ['Fan', 'late', 2, 'A.xlsx'],
      ['Fan', 'late', 1, 'C.xlsx'],
      ['Pump', 'early', 1, 'A.xlsx'],
      ['1 other machine of which nothing needs action.', null, null, null],
    ]);
  });

  it('lists what needs action across workbooks in the order of the audit, of equals as the files stand', () => {
    const lines = part(fleetOf(files), 'Needs action, worst first');
    // Workbook, what, tag, threshold, set at, acts at, panel, unit: 5 · 200/100 = 10; 3 · 200/160 = 3.75; 5 · 160/200 = 4.
    expect(
      lines.map((line) => [line[0], line[1], line[2], line[6], line[8], line[9], line[10], line[11]]),
    ).toEqual([
      ['C.xlsx', 'cannot trip', 'K', 'danger', 5, null, null, 'mil'],
      ['C.xlsx', 'cannot act', 'C-2', 'danger', 12, 12, 10, 'mil'],
      ['C.xlsx', 'in bypass', 'C-4', null, null, null, null, null],
      ['A.xlsx', 'late', 'A-2', 'danger', 5, 6.25, 4, 'mil'],
      ['C.xlsx', 'late', 'C-1', 'danger', 5, 10, 2.5, 'mil'],
      ['A.xlsx', 'late', 'A-2', 'alert', 3, 3.75, 2.4, 'mil'],
      ['C.xlsx', 'late', 'C-1', 'alert', 3, 6, 1.5, 'mil'],
      ['C.xlsx', 'cannot alarm', 'K', 'alert', 3, null, null, 'mil'],
      ['A.xlsx', 'early', 'A-3', 'alert', 3, 2.4, 3.7, 'mil'],
      ['A.xlsx', 'early', 'A-3', 'danger', 5, 4, 6.2, 'mil'],
      ['C.xlsx', 'finding', 'C-1', null, null, null, null, null],
    ]);
  });

  it('says so where nothing needs action, no channel is listed, or more does than is shown', () => {
    const good = rowsOf(fleetOf([audited('A.xlsx', [{ ...settings, tag: 'A-1', measured: 200 }])])).flat();
    expect(good).toContain('Nothing needs action.');
    expect(good).toContain('1 workbook audited. The one channel is OK.');
    expect(part(fleetOf([audited('E.xlsx', [])]), 'Workbooks')[0]?.slice(0, 3)).toEqual([
      'E.xlsx',
      'no channels',
      0,
    ]);
    const many = Array.from({ length: 70 }, (_, index) => ({
      ...settings,
      tag: `M-${index}`,
      machine: `Machine ${index}`,
      measured: 160 - index,
    }));
    const fleet = fleetOf([audited('M.xlsx', many)]);
    const actions = part(fleet, 'Needs action, worst first');
    // All 70 dangers are critical; the 70 alerts and 6 findings of a sensitivity near half the configured are not shown.
    expect(actions).toHaveLength(71);
    expect(actions[0]?.[2]).toBe('M-69');
    expect(actions.at(-1)?.[0]).toMatch(/^And 76 more/u);
    const machines = part(fleet, 'Machines, worst first');
    expect(machines).toHaveLength(61);
    expect(machines.at(-1)?.[0]).toBe('And 10 more.');
  });

  const hostileFiles = hostile.map((text) =>
    audited(`${text}.xlsx`, [{ ...settings, tag: text, machine: text, location: text, measured: 160 }]),
  );

  it('says what was left out and the policy, keeps text as text, and is known again as no input', () => {
    const fleet = fleetOf([...files, ...hostileFiles, audited('plant.xlsx', plant)], ['list.csv']);
    const model = fleetSheet(fleet);
    const rows = [...model.rows()];
    expect(rows).toHaveLength(model.rowCount);
    for (const { cells } of rows) {
      expect(cells.length).toBeLessThanOrEqual(model.widths.length);
      for (const cell of cells) {
        expect(cell?.formula).toBeUndefined();
        if (cell?.style !== undefined) expect(model.styles).toHaveProperty(cell.style);
      }
    }
    const flat = rowsOf(fleet).flat();
    for (const text of ['list.csv', '=1+1.xlsx', 'Policy that was applied', caution])
      expect(flat).toContain(text);
    const bytes = newWorkbook([model]);
    expect(readWorkbook('fleet.xlsx', bytes).sheets.map(isResultSheet)).toEqual([true]);
    const path = join(folder, 'fleet.xlsx');
    writeFileSync(path, bytes);
    expect(objectionsTo(path)).toEqual([]);
  });
});
