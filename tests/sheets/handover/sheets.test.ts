import { describe, expect, it } from 'vitest';
import { audit } from '../../../src/audit/audit.ts';
import { isResultSheet } from '../../../src/audit/read/tables/resultSheet.ts';
import { freeNames } from '../../../src/hosts/formats/sheetNames.ts';
import { readWorkbook } from '../../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../../src/hosts/file/write/newWorkbook.ts';
import { handoverSheets } from '../../../src/sheets/handover/handoverSheets.ts';
import { objections } from '../../hosts/file/write/validator.ts';
import { hostile, plant } from '../plant.ts';
import { workbookOf, type Listed } from '../tables.ts';
import { reportOf, rowsOf, sheetOf, sheetsOf, textOf } from './read.ts';

const healthy: Listed = { tag: 'V-1', machine: 'M', measured: 200, configured: 200, alert: 3, danger: 5 };
const late: Listed = { ...healthy, measured: 160 };

/** Functions that every spreadsheet program has, and nothing else. */
const native = /^(?:\$?[A-Z]{1,2}\$?(?:\{r\}|\d+)|SIGN|ABS|MIN|MAX|N|[()+\-*/,.\d])+$/u;

// What must stand where is the project's own design.
describe('hand-over sheets', () => {
  const report = reportOf(plant);
  const models = handoverSheets(report);

  it('are a list and a sheet for each machine, worst first, known again as no input', () => {
    const machines = [...new Set(plant.map(({ machine }) => machine ?? 'No machine named'))];
    expect(models.map(({ name }) => name).toSorted()).toEqual(['Hand-over list', ...machines].toSorted());
    const book = readWorkbook('again.xlsx', newWorkbook(models));
    expect(book.sheets.every(isResultSheet)).toBe(true);
    const again = audit({ name: 'again', sheets: [...workbookOf(plant).sheets, ...book.sheets] });
    expect(again.summary).toEqual(report.summary);
  });

  it('keep their word on rows, styles, formulas and areas, and carry caution, fingerprint and version', () => {
    for (const [index, model] of models.entries()) {
      const rows = rowsOf(model);
      expect(rows).toHaveLength(model.rowCount);
      for (const cell of rows.flat()) {
        if (!cell) continue;
        expect(Object.keys(model.styles)).toContain(cell.style);
        if (cell.formula !== undefined) expect(model.formulas[cell.formula]).toMatch(native);
      }
      for (const cells of rows) expect(cells.length).toBeLessThanOrEqual(model.widths.length);
      for (const { bottom, right } of model.merges ?? []) {
        expect(bottom).toBeLessThanOrEqual(model.rowCount);
        expect(right).toBeLessThanOrEqual(12);
      }
      const text = textOf(model);
      expect(text).toContain(report.caution);
      expect(text).toContain(`rules version ${report.version}, on 2025-03-14 08:05 UTC`);
      if (index === 0) continue;
      expect(text).toContain(report.fingerprint.inputs);
      expect(text).toMatch(/Policy: tolerance 5 %/u);
      expect(text).toMatch(/Prepared by\nReviewed by\nAccepted by/u);
    }
  });

  it('satisfy the validator', () => {
    expect(objections(newWorkbook(models))).toEqual([]);
    expect(objections(newWorkbook(sheetsOf()))).toEqual([]);
    expect(objections(newWorkbook(sheetsOf(healthy)))).toEqual([]);
  });

  it('name every channel of their machine, judged or not', () => {
    for (const { tag, machine } of plant) {
      const model = models.find(({ name }) => name === (machine ?? 'No machine named'));
      expect(textOf(model!)).toContain(tag);
    }
    for (const channel of report.channels.filter(({ verdict }) => verdict === 'incomplete')) {
      const text = textOf(models.find(({ name }) => name === (channel.machine || 'No machine named'))!);
      const [first] = channel.findings.filter(({ severity }) => severity !== 'note');
      expect(text.slice(text.indexOf('Not judged'))).toContain(first!.message);
    }
  });

  it('say which trips can’t act and what must be done before start-up', () => {
    const text = textOf(
      sheetOf(
        { ...late, group: 'G', voting: '2oo2', bypass: true },
        { ...late, tag: 'V-2', fullScale: 4, group: 'G', voting: '2oo2' },
        { ...healthy, tag: 'V-3' },
        { ...healthy, tag: 'V-4', measured: null },
      ),
    );
    expect(text).toMatch(/group G \| danger \| Group 'G' \(2oo2\) cannot trip on danger/u);
    expect(text).toMatch(/V-2 \| danger \| Can’t act: 5 mil is above the full scale of 4 mil/u);
    expect(text).toMatch(/V-1 \| all \| In bypass/u);
    const steps = text.slice(text.indexOf('Before start-up'));
    expect(steps).toMatch(/1\. {2}Restore the vote of group G/u);
    expect(steps).toMatch(/2\. {2}Take the bypass out of V-1/u);
    expect(steps).toMatch(/3\. {2}Bring the danger setpoint of V-2 below the full scale/u);
    expect(steps).toMatch(/Correct the measuring chains of V-2 and V-1/u);
    expect(steps).toMatch(/Complete the rows of V-4/u);
    expect(text).toMatch(/Channels within the tolerance, as far as audited\n+V-3\./u);
  });

  it('say in one line where there is nothing to say', () => {
    const text = textOf(sheetOf(healthy));
    expect(text).toContain(
      'All thresholds of 1 channel act within the tolerance. As far as audited, there is nothing to report.',
    );
    expect(text).not.toMatch(/Interim|Before start-up|Not judged/u);
    expect(textOf(sheetsOf()[0]!)).toContain('No channel was found.');
    expect(sheetsOf()).toHaveLength(1);
  });

  it.each([1, 40, 100])('show %i channels of a machine, each with its numbers or a line', (count) => {
    const channels = Array.from({ length: count }, (_, index): Listed => ({
      ...late,
      tag: `V-${index}`,
      measured: 150 + 0.1 * index,
    }));
    const model = sheetOf(...channels);
    const lines = textOf(model).split('\n');
    for (const { tag } of channels) expect(lines.some((text) => text.startsWith(`${tag} | `))).toBe(true);
    for (const chart of model.charts ?? []) {
      expect(chart.series[0]!.name).toBe('set at');
      const { top, bottom } = chart.kind === 'bar' ? chart.series[0]!.values.area : chart.place;
      expect(bottom - top + 1).toBeLessThanOrEqual(24);
    }
  });

  it('have names that differ and that a spreadsheet takes as they are', () => {
    const alike = 'A machine whose name is longer than a sheet’s';
    const machines = [
      `${alike} 1`,
      `${alike} 2`,
      'a/b',
      'a\\b',
      'a:b',
      '[x]?*',
      "'quoted'",
      'History',
      'hand-over LIST',
      '',
      '***',
    ];
    const names = sheetsOf(
      ...machines.map((machine, index): Listed => ({ ...late, machine, tag: `V-${index}` })),
    ).map(({ name }) => name);
    expect(names).toHaveLength(machines.length + 1);
    expect(freeNames(names, [])).toEqual(names);
    const same = sheetsOf({ ...late, machine: 'Pump  A ' }, { ...late, tag: 'V-2', machine: 'pump a' });
    expect(same).toHaveLength(2);
  });

  it('take text from cells as text', () => {
    const models = sheetsOf(
      ...hostile.map((text): Listed => ({
        ...late,
        tag: text,
        machine: text,
        location: text,
        group: text,
        voting: '1oo1',
      })),
    );
    expect(models).toHaveLength(hostile.length + 1);
    for (const model of models) for (const formula of model.formulas) expect(formula).toMatch(native);
    const book = readWorkbook('text.xlsx', newWorkbook(models));
    const texts = book.sheets.flatMap(({ rows }) => rows.flat());
    for (const text of hostile.slice(0, 7)) expect(texts).toContain(text);
  });
});

describe('hand-over sheets of many machines', () => {
  it('are made for those that need action, the worst 200 of them, and the list says so', () => {
    const fleet = Array.from({ length: 230 }, (_, index): Listed => ({
      ...(index < 215 ? late : healthy),
      tag: `V-${index}`,
      machine: `Machine ${index}`,
    }));
    const [list, ...sheets] = sheetsOf(...fleet);
    expect(sheets).toHaveLength(200);
    const text = textOf(list!);
    expect(text).toContain(
      'Of 230 machines, only those that need action have a sheet of their own, and of these 215 only the worst 200',
    );
    for (const { machine } of fleet) expect(text).toContain(machine!);
    const few = sheetsOf(...fleet.map((one, index) => ({ ...one, measured: index < 5 ? 160 : 200 })));
    expect(few).toHaveLength(6);
    expect(textOf(few[0]!)).toContain('only those that need action have a sheet of their own: 5 of them');
  });
});
