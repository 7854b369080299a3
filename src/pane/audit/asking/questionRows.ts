import { mergeMaps } from '../../../audit/read/understand/answers/merge.ts';
import { optionText } from '../../../audit/advise/questions/optionText.ts';
import { questionText } from '../../../audit/advise/questions/questionText.ts';
import { capital } from '../../../audit/model/wording.ts';
import { evidenceTexts } from '../../../audit/read/understand/evidenceText.ts';
import { meaning } from '../../../audit/read/understand/meaning.ts';
import type { Option, Question } from '../../../audit/read/understand/questions/question.ts';
import type { TableRead } from '../../../audit/read/understand/tables/tableRead.ts';
import type { SheetArea } from '../../../hosts/port/port.ts';
import { type AskedRow, type Choice, leftOpen } from './askedRow.ts';
import { askingMessages } from './askingMessages.ts';
import { otherFields } from './fieldChoices.ts';
import { areaOfCell, areaOfField, areaOfTable, fieldOf, tableNamed } from './places.ts';

/** The questions about a workbook as rows: the unit of a column that is proposed itself stands in that column's row. */
export function questionRows(questions: readonly Question[], tables: readonly TableRead[]): AskedRow[] {
  const units = new Map<Question, Question>();
  for (const unit of questions) {
    const about = unit.subject.is === 'unit' && questions.find((question) => isUnitOf(unit, question));
    if (about) units.set(about, unit);
  }
  const joined = new Set(units.values());
  return questions
    .filter((question) => !joined.has(question))
    .map((question) => rowOf(question, units.get(question), tables));
}

/** Whether a question asks for the unit of the column that another one proposes. */
function isUnitOf({ subject: unit }: Question, { subject, options }: Question): boolean {
  if (unit.is !== 'unit' || subject.is !== 'field' || unit.meaning !== subject.meaning) return false;
  const proposed = options[0]?.field;
  return (
    proposed?.sheet === unit.field.sheet &&
    proposed.place.row === unit.field.place.row &&
    proposed.place.column === unit.field.place.column
  );
}

/** A question as a row: its proposal first, then the other ways to answer, last to leave it open. */
function rowOf(question: Question, unit: Question | undefined, tables: readonly TableRead[]): AskedRow {
  const { subject } = question;
  const text = questionText(question);
  const told = evidenceTexts(question.evidence);
  const asked = (question.options[0]?.answer.tables ?? []).flatMap((said) => tableNamed(said, tables) ?? []);
  const own = question.options.map((option, index) => {
    const choice = choiceOf(question, option, tables);
    return index === 0 && unit ? withUnit(choice, unit) : choice;
  });
  const others = subject.is === 'field' ? otherFields(subject.meaning, asked, question.options) : [];
  // The first values of a column stand in a cell of their own.
  const field = told.length > 0 ? told : [askingMessages.noHeader];
  return {
    id: question.id,
    title: capital(text.title),
    question: subject.is === 'field' ? '' : text.question,
    stakes: text.stakes,
    needed: question.needed || unit?.needed === true,
    asks: true,
    evidence: subject.is === 'field' ? [...field, ...evidenceTexts(unit?.evidence ?? [])] : text.evidence,
    choices: [...own, ...others, leftOpen],
    sheets: question.sheets.length > 1 ? question.sheets : [],
    column: subject.is === 'field' ? { meaning: subject.meaning, tables: asked } : null,
  };
}

/** A column with the unit that is proposed for it. */
function withUnit(choice: Choice, { options }: Question): Choice {
  const [proposed] = options;
  if (!proposed || !choice.answer) return choice;
  return { ...choice, unit: proposed.text, answer: mergeMaps(choice.answer, proposed.answer) };
}

function choiceOf(question: Question, option: Option, tables: readonly TableRead[]): Choice {
  const { subject } = question;
  const { label } = optionText(question, option);
  const field = subject.is === 'unit' ? subject.field : option.field;
  const usualUnit = subject.is === 'field' && field ? meaning(subject.meaning).usualUnit : null;
  return {
    label,
    field,
    unit: subject.is === 'unit' ? option.text : (field?.unit ?? usualUnit),
    place: placeOf(question, option, tables),
    answer: option.answer,
  };
}

function placeOf(question: Question, option: Option, tables: readonly TableRead[]): SheetArea | null {
  const { subject } = question;
  const { field, answer } = option;
  switch (subject.is) {
    case 'field':
    case 'unit': {
      const named = subject.is === 'unit' ? subject.field : field;
      const found = named && fieldOf(named, tables);
      return found ? areaOfField(found) : null;
    }
    case 'list in force':
    case 'found or left':
    case 'machine': {
      const said = answer.tables ?? [];
      const chosen = said.find(({ use, series }) => use === true || series === 'as left') ?? said[0];
      const table = tableNamed(chosen, tables);
      return table ? areaOfTable(table) : null;
    }
    case 'names':
      return null;
    case 'line in force': {
      const place = subject.places[question.options.indexOf(option)];
      return place ? areaOfCell(place) : null;
    }
    case 'value':
      return areaOfCell(subject.place);
  }
}
