import { describe, expect, it } from 'vitest';
import { audit } from '../../../src/audit/audit.ts';
import { isResultSheet } from '../../../src/audit/read/tables/titleWords.ts';
import { freeNames } from '../../../src/hosts/formats/reference.ts';
import { readWorkbook } from '../../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../../src/hosts/file/write/newWorkbook.ts';
import { handoverSheets } from '../../../src/sheets/handover/handoverSheets.ts';
import { objections } from '../../hosts/file/write/validator.ts';
import { hostile, plant } from '../plant.ts';
import { workbookOf, type Listed } from '../tables.ts';
import { annexOf, isPage, pageOf, reportOf, rowsOf, sheetsOf, textOf } from './read.ts';

const healthy: Listed = { tag: 'V-1', machine: 'M', measured: 200, configured: 200, alert: 3, danger: 5 };
const late: Listed = { ...healthy, measured: 160 };

/** Functions that every spreadsheet program has, cells of an annex, links to sheets, and nothing else. */
const native =
  /^(?:\{[^{}"]+\}!\$[A-Z]\$\d+|HYPERLINK\("#\{[^{}"]+\}!A1","(?:page|annex)"\)|(?:\$?[A-Z]{1,2}\$?(?:\{r\}|\d+)|SIGN|ABS|MIN|MAX|N|[()+\-*/,.\d])+)$/u;

// What must stand where is the project's own design.
describe('hand-over sheets', () => {
  const report = reportOf(plant);
  const models = handoverSheets(report);

  it('are a list, and a page and an annex for each machine, worst first, known again as no input', () => {
    const machines = [...new Set(plant.map(({ machine }) => machine ?? 'No machine named'))];
    expect(models.map(({ name }) => name).toSorted()).toEqual(
      ['Hand-over list', ...machines.flatMap((machine) => [machine, `${machine} annex`])].toSorted(),
    );
    const first = report.attention.find(({ subject }) => subject.machine !== '')!.subject.machine;
    expect(models[1]!.name).toBe(first);
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
        expect(right).toBeLessThanOrEqual(model.print.area?.right ?? model.widths.length);
      }
      const text = textOf(model);
      expect(text).toContain(report.caution);
      expect(text).toContain(`rules version ${report.version}`);
      expect(text).toContain('2025-03-14 08:05 UTC');
      if (index === 0) continue;
      expect(text).toContain(report.fingerprint.inputs);
      expect(text).toMatch(/Policy: tolerance 5 %/u);
      if (isPage(model)) expect(text).toMatch(/Prepared by\nReviewed by\nAccepted by/u);
    }
  });

  it('link the list to each page and annex', () => {
    const formulas = models[0]!.formulas;
    expect(formulas).toEqual(
      models
        .slice(1)
        .map((model) => `HYPERLINK("#{${model.name}}!A1","${isPage(model) ? 'page' : 'annex'}")`),
    );
  });

  it('satisfy the validator', () => {
    expect(objections(newWorkbook(models))).toEqual([]);
    expect(objections(newWorkbook(sheetsOf()))).toEqual([]);
    expect(objections(newWorkbook(sheetsOf(healthy)))).toEqual([]);
  });

  it('name every channel of their machine, judged or not', () => {
    for (const { tag, machine } of plant) {
      const model = models.find(({ name }) => name === `${machine ?? 'No machine named'} annex`);
      expect(textOf(model!)).toContain(tag);
    }
  });

  it('have at most five things to do, each once for all that it concerns, with a box', () => {
    const text = textOf(
      pageOf(
        { ...late, group: 'G', voting: '1oo2', bypass: true },
        { ...late, tag: 'V-2', fullScale: 4, group: 'G', voting: '1oo2' },
        { ...late, tag: 'V-3' },
        { ...late, tag: 'V-4' },
        { ...healthy, tag: 'V-5', measured: null },
        { ...healthy, tag: 'V-6', measured: 300 },
      ),
    );
    const tasks = text.split('\n').filter((line) => line.startsWith('☐'));
    expect(tasks).toHaveLength(5);
    expect(tasks[0]).toBe('☐ | 1. G: Before start-up: get this group able to trip again.');
    expect(tasks[1]).toMatch(
      /2\. V-2: Before start-up: bring the setpoint inside the full scale, under the site’s change procedure/u,
    );
    expect(tasks[2]).toMatch(/3\. V-1: Before start-up: remove the bypass/u);
    expect(tasks[3]).toMatch(/4\. V-1, V-3 and V-4: Correct the chain and measure again\./u);
    expect(text).toMatch(/What to do first \([1-9] more: see 'M annex'\)/u);
  });

  it('say in one line where there is nothing to say', () => {
    const text = textOf(pageOf({ ...healthy, calibrated: '2025-01-01' }));
    expect(text).toMatch(/^1 channel OK\.$/mu);
    expect(text).toMatch(/^V-1 \| .*✓ OK$/mu);
    expect(text).not.toMatch(/What to do|What to treat/u);
    expect(textOf(annexOf({ ...healthy, calibrated: '2025-01-01' }))).toContain(
      'Nothing of this machine needs action.',
    );
    // A calibration of 2020 is too old: the channel is OK, but has to be looked at.
    const old = textOf(pageOf({ ...healthy, calibrated: '2020-01-01' }));
    expect(old).toMatch(/^Check V-1\.$/mu);
    expect(old).not.toMatch(/channels? OK\./u);
    expect(textOf(sheetsOf()[0]!)).toContain('No channel was found.');
    expect(sheetsOf()).toHaveLength(1);
  });

  it.each([1, 40, 100])(
    'show %i channels of a machine, the worst on the page and all in the annex',
    (count) => {
      const channels = Array.from({ length: count }, (_, index): Listed => ({
        ...late,
        tag: `V-${index}`,
        measured: 150 + 0.1 * index,
      }));
      const [page, annex] = [pageOf(...channels), annexOf(...channels)];
      const lines = textOf(page).split('\n');
      const shown = channels.filter(({ tag }) => lines.some((text) => text.startsWith(`${tag} | `)));
      const more = count - shown.length;
      if (more > 0)
        expect(textOf(page)).toContain(
          `${more} more lines for channels that are not OK: see sheet 'M annex', page 1.`,
        );
      expect(shown.slice(0, 3)).toEqual(channels.slice(0, 3));
      for (const { tag } of channels) expect(textOf(annex)).toContain(`${tag} danger is late`);
      for (const chart of annex.charts ?? []) {
        expect(chart.series[0]!.name).toBe('set at');
        const { top, bottom } = chart.kind === 'bar' ? chart.series[0]!.values.area : chart.place;
        expect(bottom - top + 1).toBeLessThanOrEqual(24);
      }
    },
  );

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
      '[:]',
    ];
    const names = sheetsOf(
      ...machines.map((machine, index): Listed => ({ ...late, machine, tag: `V-${index}` })),
    ).map(({ name }) => name);
    expect(names).toHaveLength(2 * machines.length + 1);
    expect(freeNames(names, [])).toEqual(names);
    const same = sheetsOf({ ...late, machine: 'Pump  A ' }, { ...late, tag: 'V-2', machine: 'pump a' });
    expect(same).toHaveLength(3);
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
    expect(models).toHaveLength(2 * hostile.length + 1);
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
    expect(sheets).toHaveLength(400);
    const text = textOf(list!);
    expect(text).toContain(
      'Of 230 machines, only those that need action have a page, and of these 215 only the worst 200',
    );
    for (const { machine } of fleet) expect(text).toContain(machine!);
    const few = sheetsOf(...fleet.map((one, index) => ({ ...one, measured: index < 5 ? 160 : 200 })));
    expect(few).toHaveLength(11);
    expect(textOf(few[0]!)).toContain('only those that need action have a page: 5 of them');
  });
});
