import type { ColumnMap, MappedField, MappedTable } from '../../model/columnMap.ts';
import { capital } from '../../model/wording.ts';
import type { Option, Question } from '../../read/understand/questions/question.ts';
import { questionText } from './questionText.ts';

/** Answers with why they are proposed, for a person to check: lines beside what they are about, which nobody reads back. */
export function explainedProposal(
  map: ColumnMap,
  answers: readonly (readonly [question: Question, option: Option])[],
): ColumnMap {
  const tables = new Map((map.tables ?? []).map((table) => [nameOf(table), table]));
  const lines: string[] = [...(map.evidence ?? [])];
  for (const [question, option] of answers) {
    const { title, evidence } = questionText(question);
    const why = option === question.options[0] ? evidence : ['You said so'];
    const said = `${capital(title)}: ${why.join('; ')}`;
    for (const answer of option.answer.tables ?? []) {
      const there = tables.get(nameOf(answer));
      if (there) tables.set(nameOf(answer), withEvidence(there, answer, why, said));
    }
    if (!option.answer.tables && why.length > 0) lines.push(said);
  }
  return {
    ...map,
    ...(tables.size > 0 ? { tables: [...tables.values()] } : {}),
    ...(lines.length > 0 ? { evidence: lines } : {}),
  };
}

function nameOf({ sheet, header, lies, from, probe }: MappedTable): string {
  return JSON.stringify([sheet, header, lies, from, probe]);
}

/** Evidence at the fields that an answer names; at the table, where it names none. */
function withEvidence(
  there: MappedTable,
  answer: MappedTable,
  why: readonly string[],
  said: string,
): MappedTable {
  const named = Object.entries(answer.columns ?? {});
  if (named.length === 0) return { ...there, evidence: [...(there.evidence ?? []), said] };
  const columns = { ...there.columns };
  for (const [name, field] of named) {
    if (field === null || typeof field === 'string') continue;
    const own: MappedField = { ...field, evidence: [...why] };
    columns[name] = own;
  }
  return { ...there, columns };
}
