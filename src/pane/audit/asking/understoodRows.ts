import { capital } from '../../../audit/model/wording.ts';
import { meaningWords } from '../../../audit/advise/questions/questionWords.ts';
import { evidenceTexts } from '../../../audit/read/understand/evidenceText.ts';
import { meanings, type MeaningId } from '../../../audit/read/understand/meaning.ts';
import type { Question } from '../../../audit/read/understand/questions/question.ts';
import type { Claim } from '../../../audit/read/understand/tables/claim.ts';
import type { TableRead } from '../../../audit/read/understand/tables/tableRead.ts';
import { type AskedRow, leftOpen } from './askedRow.ts';
import { askingMessages } from './askingMessages.ts';
import { fieldChoice, noFieldChoice, otherFields, canHold } from './fieldChoices.ts';
import { optionOf } from '../../../audit/read/understand/questions/fieldQuestions.ts';

/** What was understood for certain, a row for each meaning of each list: as it is, unless another column is chosen. */
export function understoodRows(tables: readonly TableRead[]): AskedRow[] {
  return tables
    .filter(({ part, leftOut }) => part === 'channels' && !leftOut)
    .flatMap((table) => certainClaims(table).map((claim) => understoodRow(table, claim)));
}

function certainClaims({ claims, tag }: TableRead): Claim[] {
  const all = tag && !claims.has('tag') ? [tag, ...claims.values()] : [...claims.values()];
  return all.filter(({ standing }) => standing === 'certain');
}

function understoodRow(table: TableRead, { meaning: id, field, unit, evidence }: Claim): AskedRow {
  const now = fieldChoice(id, table, field, [table]);
  const option = { field: optionOf(field), text: field.text, answer: now.answer ?? {} };
  return {
    id: `understood ${table.lane.id} ${id}`,
    title: titleIn(id, table),
    question: '',
    stakes: '',
    needed: false,
    asks: false,
    evidence: evidenceTexts(evidence),
    choices: [
      { ...now, unit: unit.fixed?.text ?? now.unit },
      ...otherFields(id, [table], [option]),
      noFieldChoice(id, table),
    ],
    sheets: [],
    column: { meaning: id, tables: [table] },
  };
}

function titleIn(id: MeaningId, { lane: { axis } }: TableRead): string {
  return capital(axis === null ? meaningWords(id) : `${meaningWords(id)}, ${axis.name}`);
}

/** Meanings without which no channel can be judged, that no list has and no question is about: a row each, with every column that could be it. */
export function missingRows(tables: readonly TableRead[], questions: readonly Question[]): AskedRow[] {
  const asked = new Set(
    questions.flatMap(({ subject }) => (subject.is === 'field' ? [subject.meaning] : [])),
  );
  const known = new Set(
    tables
      .filter(({ part }) => part === 'channels')
      .flatMap((table) => certainClaims(table).map((claim) => claim.meaning)),
  );
  return [...meanings.values()]
    .filter(({ id, needed }) => needed && !asked.has(id) && !known.has(id))
    .map(({ id }): AskedRow => ({
      id: `missing ${id}`,
      title: capital(meaningWords(id)),
      question: askingMessages.whichColumn(meaningWords(id)),
      stakes: askingMessages.neededByAll,
      needed: true,
      asks: true,
      evidence: [askingMessages.nothingFound],
      choices: [{ ...leftOpen, label: askingMessages.notChosen }, ...freeFields(id, tables)],
      sheets: [],
      column: { meaning: id, tables: [] },
    }));
}

/** Fields that nothing is known about, of all lists. */
function freeFields(id: MeaningId, tables: readonly TableRead[]): AskedRow['choices'] {
  return tables.flatMap((table) => {
    const taken = new Set([...table.claims.values()].map(({ field }) => field));
    return table.lane.fields
      .filter((field) => !taken.has(field) && canHold(field, id))
      .map((field) => fieldChoice(id, table, field, []));
  });
}
