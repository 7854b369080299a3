import { describe, expect, test } from 'vitest';
import { nothingRead } from '../../../src/audit/advise/nothingRead.ts';
import { questionSentences } from '../../../src/audit/advise/questionSentences.ts';
import { questionText } from '../../../src/audit/advise/questions/questionText.ts';
import type { FieldOption, Option, Question } from '../../../src/audit/read/understand/questions/question.ts';

const trip: FieldOption = {
  sheet: 'Panel',
  place: { sheet: 'Panel', row: 4, column: 7 },
  header: 'HH trip / mil pp',
  unit: 'mil pp',
  samples: ['4.4', '5.6', '4.4', '5'],
};
const span: FieldOption = {
  ...trip,
  place: { ...trip.place, column: 8 },
  header: 'Span',
  unit: null,
  samples: [],
};

function option(field: FieldOption | null, answer: Option['answer'] = {}, text = ''): Option {
  return { field, text, answer };
}

function question(own: Pick<Question, 'subject' | 'options'> & Partial<Question>): Question {
  return { id: 'q', needed: true, records: 44, evidence: [], sheets: ['Panel'], ...own };
}

const table = { sheet: 'Panel', header: 4 };
const danger = question({
  subject: { is: 'field', meaning: 'danger' },
  evidence: [
    { is: 'word', concept: 'danger', strength: 'strong', text: 'HH trip', covers: 'own' },
    { is: 'order', below: 'H', above: 'HH trip', records: 44, holds: true },
  ],
  options: [
    option(trip, { tables: [{ ...table, columns: { danger: 'G' } }] }),
    option(span, { tables: [{ ...table, columns: { danger: 'H' } }] }),
    option(null, { tables: [{ ...table, columns: { danger: null } }] }),
  ],
});

describe('a question in plain sentences', () => {
  test('which field: its column, header and sheet, what hangs on it, why, and the other ways to answer', () => {
    const said = questionText(danger);
    expect(said.title).toBe('danger setpoint');
    expect(said.question).toBe("Is column G of sheet 'Panel', 'HH trip / mil pp', the danger setpoint?");
    expect(said.stakes).toBe('44 channels cannot be judged without it.');
    expect(said.evidence).toEqual([
      "The word 'HH trip'",
      "'H' is below 'HH trip' in all 44 records",
      'Begins with 4.4; 5.6; 4.4',
    ]);
    expect(said.options).toEqual([
      { label: "Column G of sheet 'Panel', 'HH trip / mil pp'", detail: 'Panel!G4: 4.4; 5.6; 4.4 mil pp' },
      { label: "Column H of sheet 'Panel', 'Span'", detail: 'Panel!H4' },
      { label: 'None: this list has no danger setpoint', detail: '' },
    ]);
  });

  test('what needs action and the refusal of a workbook ask in the same words', () => {
    const { question: asked, stakes } = questionText(danger);
    expect(questionSentences(danger).headline).toBe(`${asked} ${stakes}`);
    const understanding = {
      tables: [],
      channels: [],
      questions: [danger, danger, { ...danger, needed: false }],
      notUsed: [],
      proposal: {},
    };
    expect(nothingRead({ understanding, refusal: null }).message).toBe(
      `Nothing is judged until this is answered: ${asked} And 1 more.`,
    );
  });

  test('a field by how its list lies, and of which probe', () => {
    const lying = (said: object) =>
      questionText({
        ...danger,
        options: [option(trip, { tables: [{ ...table, ...said }] })],
      });
    expect(lying({ lies: 'columns' }).question).toContain("Is row 4 of sheet 'Panel'");
    expect(lying({ lies: 'forms' }).question).toContain(
      "Is the value at 'HH trip / mil pp' on sheet 'Panel'",
    );
    const ofProbe = lying({ probe: 'Y' });
    expect(ofProbe.question).toMatch(/, the danger setpoint of probe Y\?$/u);
    expect(ofProbe.title).toBe('danger setpoint of Y');
  });

  test('one answer for lists of one layout says for which', () => {
    const both = { tables: [table, { sheet: 'Panel 2', header: 4 }] };
    const said = questionText({ ...danger, sheets: ['Panel', 'Panel 2'], options: [option(trip, both)] });
    expect(said.question).toMatch(/\? So in 2 lists alike, on sheets 'Panel' and 'Panel 2'\.$/u);
  });

  test('what is optional, and one channel, are said so', () => {
    expect(questionText({ ...danger, needed: false, records: 1 }).stakes).toBe('1 channel, optional.');
    expect(questionText({ ...danger, needed: false, records: 0 }).stakes).toBe('Optional.');
  });

  test('in which unit: what states none, and the numbers in each unit', () => {
    const said = questionText(
      question({
        subject: { is: 'unit', meaning: 'alert', field: span },
        evidence: [{ is: 'size', median: 2.8, unit: 'mil', fits: true }],
        options: [
          option(null, { tables: [{ ...table, units: { alert: 'mil' } }] }, 'mil'),
          option(null, { tables: [{ ...table, units: { alert: 'µm' } }] }, 'µm'),
        ],
      }),
    );
    expect(said.question).toBe(
      "Is the alert setpoint in mil? Column H of sheet 'Panel', 'Span', states no unit.",
    );
    expect(said.options.map(({ label }) => label)).toEqual(['mil', 'µm']);
  });

  test('which list is in force, also of two on one sheet', () => {
    const lists = (second: string): Question =>
      question({
        records: 3,
        subject: { is: 'list in force', meanings: ['alert', 'danger'], tags: ['1X', '1Y', '2X'] },
        options: [
          option(null, {
            tables: [
              { sheet: 'Rack', header: 1, use: true },
              { sheet: second, header: 20, use: false },
            ],
          }),
        ],
      });
    expect(questionText(lists('Rack old'))).toMatchObject({
      question: "3 channels have different values in 2 lists. Is sheet 'Rack' in force?",
      evidence: ['Alert setpoint and danger setpoint of 1X, 1Y and 2X differ'],
      options: [{ label: "Sheet 'Rack'" }],
    });
    expect(questionText(lists('Rack')).question).toContain("Is the list in row 1 of sheet 'Rack' in force?");
  });

  test('which was as left', () => {
    const said = questionText(
      question({
        records: 4,
        subject: { is: 'found or left', tags: ['1X'] },
        options: [
          option(null, {
            tables: [
              { sheet: 'May', header: 1, series: 'as found' },
              { sheet: 'June', header: 1, series: 'as left' },
            ],
          }),
        ],
      }),
    );
    expect(said.question).toBe(
      "4 channels were measured twice. Is sheet 'June' as left, and sheet 'May' as found?",
    );
    expect(said.options[0]).toEqual({ label: "Sheet 'June' as left", detail: "sheet 'May' as found" });
  });

  test('of what machine, which tags are the same, which line holds, what a cell says', () => {
    const machine = question({
      subject: { is: 'machine', sheet: 'Panel' },
      options: [option(null, { tables: [{ ...table, machine: 'K-101' }] }, 'K-101'), option(null)],
    });
    expect(questionText(machine).question).toBe(
      "Is 'K-101' the machine of the list in row 4 of sheet 'Panel'?",
    );
    const names = question({
      subject: { is: 'names', pairs: [['K101-1X', 'K-101 1X']], places: [] },
      options: [option(null, { names: { 'K101-1X': 'K-101 1X' } })],
    });
    expect(questionText(names).question).toBe("Are 'K101-1X' and 'K-101 1X' the same channel?");
    const line = question({
      records: 1,
      subject: {
        is: 'line in force',
        tag: '1X',
        machine: 'K-101',
        places: [
          { sheet: 'Panel', row: 9, column: 1 },
          { sheet: 'Panel', row: 5, column: 1 },
        ],
      },
      options: [option(null, {}, '9'), option(null, {}, '5')],
    });
    expect(questionText(line)).toMatchObject({
      question: "2 lines name 1X of K-101. Is row 9 of sheet 'Panel' in force?",
      options: [{ label: "Row 9 of sheet 'Panel'" }, { label: "Row 5 of sheet 'Panel'" }],
    });
    const value = question({
      records: 1,
      subject: {
        is: 'value',
        meaning: 'measured',
        tag: '1X',
        place: { sheet: 'Panel', row: 5, column: 2 },
        text: '~170',
      },
      options: [option(null, { cells: { 'Panel!B5': 170 } }, '170')],
    });
    expect(questionText(value).question).toBe(
      "Is the measured sensitivity of 1X 170? Cell Panel!B5 says '~170'.",
    );
  });
});
