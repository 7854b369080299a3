import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { parseColumnMap, type ColumnMap } from '../../src/audit/model/columnMap.ts';
import { finish } from '../../src/audit/model/steps.ts';
import { understand } from '../../src/audit/read/understand/understand.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import type { AskedRow } from '../../src/pane/audit/asking/askedRow.ts';
import {
  type ChosenById,
  answersOf,
  chosenIn,
  countAnswered,
  hasAnswers,
  keptAnswers,
  withoutAnswers,
} from '../../src/pane/audit/asking/answers.ts';
import { pickColumn } from '../../src/pane/audit/asking/useAsking.ts';
import { questionRows } from '../../src/pane/audit/asking/questionRows.ts';
import { missingRows, understoodRows } from '../../src/pane/audit/asking/understoodRows.ts';
import { book, oneChannel } from '../audit/book.ts';
import { foreignWorkbook, partlyWorkbook, unclearWorkbook } from './pages/workbooks.ts';

const none: ChosenById = new Map();

function understood(workbook: Workbook, map: ColumnMap = {}) {
  const { tables, questions } = finish(understand(workbook, map));
  return { tables, questions, rows: questionRows(questions, tables) };
}

function titled(rows: readonly AskedRow[], title: string): AskedRow {
  const row = rows.find((one) => one.title === title);
  if (!row) throw new Error(`no row ${title}`);
  return row;
}

const cell = (sheet: string, row: number, column: number) => ({
  sheet,
  area: { top: row, left: column, bottom: row, right: column },
});

describe('rows of what is asked', () => {
  const foreign = foreignWorkbook().workbook;

  it('show a column with its first values, unit, evidence, and where it lies to its last row', () => {
    const danger = titled(understood(foreign).rows, 'Danger setpoint');
    const [proposed] = danger.choices;
    expect(danger.needed).toBe(true);
    expect(danger.evidence.join()).toContain('Abschaltung');
    expect(proposed?.field).toMatchObject({ sheet: 'Tafel', header: 'Abschaltung' });
    expect(proposed?.field?.samples.slice(0, 3)).toEqual(['5', '5', '5']);
    expect(proposed?.unit).toBe('mil');
    expect(proposed?.place).toEqual({ sheet: 'Tafel', area: { top: 1, left: 4, bottom: 7, right: 4 } });
  });

  it('hold a column and its unit in one row', () => {
    const { rows, questions } = understood(foreign);
    expect(questions.filter(({ subject }) => subject.is === 'unit')).toHaveLength(4);
    expect(rows.map(({ title }) => title)).toEqual([
      'Measured sensitivity',
      'Configured sensitivity',
      'Alert setpoint',
      'Danger setpoint',
    ]);
  });

  it('all answered with yes, are audited, and are not asked again', () => {
    const { rows } = understood(foreign);
    const needed = rows.filter((row) => row.needed);
    expect(() => audit(foreign)).toThrow();
    const map = parseColumnMap(JSON.parse(JSON.stringify(answersOf(needed, none))));
    const report = audit(foreign, { map });
    // 5·200/160 by hand.
    const [first] = report.channels.filter(({ tag }) => tag === 'K-101A');
    expect(first?.thresholds.find(({ name }) => name === 'danger')?.effective).toBe(6.25);
    expect(understood(foreign, map).rows.filter((row) => row.needed)).toEqual([]);
  });

  it('are asked again where the header of an answered column changed, and only there', () => {
    const { rows } = understood(foreign);
    const map = answersOf(rows, none);
    const changed: Workbook = {
      ...foreign,
      sheets: foreign.sheets.map((sheet) =>
        sheet.name === 'Tafel'
          ? {
              ...sheet,
              rows: sheet.rows.map((cells, row) =>
                row === 0 ? cells.map((text) => (text === 'Abschaltung' ? 'Abschaltung 2026' : text)) : cells,
              ),
            }
          : sheet,
      ),
    };
    const again = understood(changed, map);
    expect(again.rows.map(({ title }) => title)).toEqual(['Danger setpoint']);
  });

  it('of several lists point at the one that is chosen', () => {
    const { rows } = understood(partlyWorkbook().workbook);
    expect(rows.map(({ title, needed }) => [title, needed])).toEqual([['List in force', true]]);
    expect(rows[0]?.choices.map(({ place }) => place?.sheet)).toEqual([
      'Rack N2',
      'Rack N2 after upgrade',
      undefined,
    ]);
    expect(rows[0]?.choices[0]?.place?.area).toEqual({ top: 1, left: 1, bottom: 4, right: 4 });
  });

  it('say nothing where they are left open', () => {
    const danger = titled(understood(foreign).rows, 'Danger setpoint');
    const open = danger.choices.at(-1)!;
    const chosen = new Map([[danger.id, { choice: open, unit: null }]]);
    expect(answersOf([danger], chosen)).toEqual({});
    expect(countAnswered([danger], chosen)).toBe(0);
    expect(countAnswered([danger], none)).toBe(1);
  });

  it('take another unit than the proposed one', () => {
    const { rows } = understood(foreign);
    const danger = titled(rows, 'Danger setpoint');
    const chosen = new Map([[danger.id, { choice: danger.choices[0]!, unit: 'mm' }]]);
    const tafel = answersOf(rows, chosen).tables?.find(({ sheet }) => sheet === 'Tafel');
    expect(tafel?.units).toEqual({ 'configured sensitivity': 'mV/mil', alert: 'mil', danger: 'mm' });
  });
});

describe('a column clicked in the sheet', () => {
  const foreign = foreignWorkbook().workbook;
  const { rows, tables } = understood(foreign);
  const measured = titled(rows, 'Measured sensitivity');

  it('becomes the answer wherever in it was clicked', () => {
    for (const row of [3, 5, 9]) {
      const picked = pickColumn(cell('Sonden', row, 3), measured.column!, tables);
      if (typeof picked === 'string') throw new Error(picked);
      expect(picked.field?.header).toBe('Kennwert alt');
      expect(picked.place).toEqual({ sheet: 'Sonden', area: { top: 3, left: 3, bottom: 9, right: 3 } });
      const map = answersOf([measured], new Map([[measured.id, { choice: picked, unit: null }]]));
      expect(map.tables?.[0]?.columns?.['measured sensitivity']).toEqual({ at: 'C', header: 'Kennwert alt' });
    }
  });

  it('is refused outside every list, and where it holds no numbers or another unit', () => {
    expect(pickColumn(cell('Sonden', 1, 1), measured.column!, tables)).toContain("sheet 'Sonden'");
    expect(pickColumn(cell('Sonden', 5, 20), measured.column!, tables)).toContain("sheet 'Sonden'");
    expect(pickColumn(cell('Sonden', 5, 1), measured.column!, tables)).toContain("'Messstelle'");
    const standard = understood(oneChannel({}));
    expect(pickColumn(cell('Monitor', 2, 4), { meaning: 'measured', tables: [] }, standard.tables)).toContain(
      'a unit that fits',
    );
  });

  it('of another list takes the meaning from the list that was asked about', () => {
    const picked = pickColumn(cell('Tafel', 4, 2), measured.column!, tables);
    if (typeof picked === 'string') throw new Error(picked);
    const said = picked.answer?.tables?.map(({ sheet, columns }) => [sheet, columns]);
    expect(said).toEqual([
      ['Tafel', { 'measured sensitivity': { at: 'B', header: 'Eingestellter Kennwert' } }],
      ['Sonden', { 'measured sensitivity': null }],
    ]);
  });
});

it('a column clicked in one of several lists of one layout is meant in all of them', () => {
  const rows = [['Tag', 'Bench 1', 'Bench 2'], ...['V-1', 'V-2', 'V-3'].map((tag) => [tag, 160, 200])];
  const { tables: all } = understood(book(['East', rows], ['West', rows]));
  const picked = pickColumn(cell('West', 3, 3), { meaning: 'measured', tables: all }, all);
  if (typeof picked === 'string') throw new Error(picked);
  const said = picked.answer?.tables?.map(({ sheet, columns }) => [sheet, columns?.['measured sensitivity']]);
  const field = { at: 'C', header: 'Bench 2' };
  expect(said?.toSorted()).toEqual([
    ['East', field],
    ['West', field],
  ]);
});

describe('meanings that no list has', () => {
  it('are rows without a proposal, with every column that could be it', () => {
    const { workbook } = unclearWorkbook();
    const { tables, questions } = understood(workbook);
    const rows = missingRows(tables, questions);
    expect(rows.map(({ title }) => title)).toEqual(['Measured sensitivity']);
    const [row] = rows;
    expect(chosenIn(row!, none)?.answer).toBeNull();
    const [, found, ...more] = row!.choices;
    expect(found?.field?.header).toBe('Column7');
    expect(more).toEqual([]);
    const map = answersOf(rows, new Map([[row!.id, { choice: found!, unit: 'mV/mil' }]]));
    const [channel] = audit(workbook, { map }).channels;
    // 5·200/160 by hand.
    expect(channel?.thresholds.find(({ name }) => name === 'danger')?.effective).toBe(6.25);
  });
});

describe('what was understood', () => {
  const standard = book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Column7'],
        ['V-1', 160, 125],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...['V-1', 'V-2', 'V-3'].map((tag) => [tag, 200, 3, 5]),
      ],
    ],
  );

  it('says nothing until something is changed', () => {
    const rows = understoodRows(understood(standard).tables);
    expect(rows.map(({ title }) => title)).toContain('Danger setpoint');
    expect(answersOf(rows, none)).toEqual({});
  });

  it('can be changed, to another column or another unit', () => {
    const rows = understoodRows(understood(standard).tables);
    const measured = titled(rows, 'Measured sensitivity');
    const other = measured.choices.find(({ field }) => field?.header === 'Column7');
    const map = answersOf(rows, new Map([[measured.id, { choice: other!, unit: 'mV/mil' }]]));
    // 5·200/125 by hand.
    const [channel] = audit(standard, { map }).channels;
    expect(channel?.thresholds.find(({ name }) => name === 'danger')?.effective).toBe(8);
    const danger = titled(rows, 'Danger setpoint');
    const inMicrometres = answersOf(
      [danger],
      new Map([[danger.id, { choice: danger.choices[0]!, unit: 'µm' }]]),
    );
    expect(inMicrometres.tables?.[0]).toMatchObject({ sheet: 'Monitor', units: { danger: 'µm' } });
  });
});

describe('answers in the workbook', () => {
  const map: ColumnMap = {
    tables: [{ sheet: 'Tafel', header: 1, columns: { danger: 'D' }, units: { danger: 'mil', alert: 'mil' } }],
    names: { 'K-1O1': 'K-101' },
    notOfAudit: [{ sheet: 'Sonden', column: 'Notiz' }],
  };

  it('are told by list', () => {
    expect(hasAnswers(map)).toBe(true);
    expect(keptAnswers(map)).toEqual([
      { about: "Sheet 'Tafel'", names: ['danger', 'alert'] },
      { about: 'Tags spelled in two ways', names: ['K-1O1'] },
    ]);
  });

  it('are forgotten without what was said to be no part of the audit', () => {
    expect(withoutAnswers(map)).toEqual({ notOfAudit: [{ sheet: 'Sonden', column: 'Notiz' }] });
    expect(hasAnswers(withoutAnswers(map))).toBe(false);
  });
});
