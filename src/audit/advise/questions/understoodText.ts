import { listed, listedUpTo } from '../../model/wording.ts';
import { meaning, meanings, type MeaningId } from '../../read/understand/meaning.ts';
import type { Question } from '../../read/understand/questions/question.ts';
import type { TableRead } from '../../read/understand/tables/tableRead.ts';
import type { Understanding } from '../../read/understand/understand.ts';
import type { NotUsed } from '../../read/understand/unread/notUsed.ts';
import { cellName, meaningWords } from './questionWords.ts';
import { channels, questionText } from './questionText.ts';

/** Three lines about a workbook that could not be audited, or not all of it. */
export interface UnderstoodText {
  readonly understood: string;
  readonly notUnderstood: string;
  readonly toDo: string;
}

type Gist = Pick<Understanding, 'tables' | 'channels' | 'questions' | 'notUsed'>;

/** Lists, and things that were not understood, that a line names. */
const mostNamed = 3;
const needed = [...meanings.values()].filter((one) => one.needed).map(({ id }) => id);

/** What of a workbook was understood, what was not, and what to do about it. */
export function understoodText(gist: Gist): UnderstoodText {
  const certain = new Set(listsOf(gist).flatMap((table) => needed.filter((id) => isCertain(table, id))));
  const missing = needed.filter((id) => !certain.has(id));
  return {
    understood: `Understood: ${understood(gist)}.`,
    notUnderstood: `Not understood: ${notUnderstood(gist, missing)}.`,
    toDo: `To do: ${toDo(gist.questions, missing)}.`,
  };
}

function listsOf({ tables }: Pick<Gist, 'tables'>): readonly TableRead[] {
  return tables.filter(({ part, leftOut }) => part === 'channels' && !leftOut);
}

function isCertain({ claims }: TableRead, id: MeaningId): boolean {
  return claims.get(id)?.standing === 'certain';
}

function understood(gist: Gist): string {
  const bySheet = new Map<string, readonly MeaningId[]>();
  const lists = listsOf(gist).filter((table) => needed.some((id) => isCertain(table, id)));
  for (const table of lists) {
    const { name } = table.lane.block.sheet;
    const there = bySheet.get(name) ?? [];
    bySheet.set(
      name,
      needed.filter((id) => there.includes(id) || isCertain(table, id)),
    );
  }
  if (lists.length === 0) return 'no list of channels';
  const sheets = [...bySheet].map(
    ([sheet, ids]) => `'${sheet}' (${ids.map((id) => meaning(id).name).join(', ')})`,
  );
  return `${channels(gist.channels.length)} in ${lists.length === 1 ? '1 list' : `${lists.length} lists`} on ${listedUpTo(sheets, mostNamed)}`;
}

/** Needed meanings that nothing is certain for, then what else has to be asked, then what looks like a part and is none. */
function notUnderstood({ questions, notUsed }: Gist, missing: readonly MeaningId[]): string {
  const titles = (ofNeeded: boolean): string[] =>
    questions
      .filter((question) => question.needed === ofNeeded)
      .map((question) => questionText(question).title);
  const places = new Set(questions.flatMap(placesOf));
  const tags = new Set(questions.flatMap(({ subject }) => ('tags' in subject ? subject.tags : [])));
  const unused = notUsed
    .filter(({ weight }) => weight === 'may bear on a danger')
    .filter(({ place, text }) => !places.has(cellName(place)) && !tags.has(text))
    .map(unusedWords);
  const all = [...new Set([...missing.map(meaningWords), ...titles(true), ...unused])];
  if (all.length > 0) return listedUpTo(all, mostNamed);
  const optional = new Set(titles(false));
  return optional.size > 0
    ? `${listedUpTo([...optional], mostNamed)} (optional)`
    : 'nothing that a danger depends on';
}

function placesOf({ subject, options }: Question): readonly string[] {
  const own = subject.is === 'value' ? [cellName(subject.place)] : [];
  return [...own, ...options.flatMap(({ field }) => (field ? [cellName(field.place)] : []))];
}

function unusedWords({ what, looksLike, text, place }: NotUsed): string {
  const about = meaningOf(looksLike);
  const name = text === '' ? 'what stands' : `'${text}'`;
  return what === 'value' && about !== undefined
    ? `${meaningWords(about)} of ${name} (${cellName(place)})`
    : `${name} (${cellName(place)})`;
}

function meaningOf(looksLike: NotUsed['looksLike']): MeaningId | undefined {
  return [...meanings.keys()].find((id) => id === looksLike);
}

function toDo(questions: readonly Question[], missing: readonly MeaningId[]): string {
  const asked = new Set(questions.map(({ subject }) => (subject.is === 'field' ? subject.meaning : null)));
  const unasked = missing.filter((id) => !asked.has(id)).map((id) => meaning(id).name);
  const header = unasked.length > 0 ? [`put a header above the column of ${listed(unasked)}`] : [];
  const answer = questions.length > 0 ? [`answer ${count(questions)}`] : [];
  const all = [...answer, ...header];
  return all.length === 0 ? 'see what was not understood' : all.join('; ');
}

function count(questions: readonly Question[]): string {
  const all = questions.length === 1 ? '1 question' : `${questions.length} questions`;
  const needy = questions.filter((question) => question.needed).length;
  if (needy === 0) return `${all}, optional`;
  return needy < questions.length ? `${all}, ${needy} of them needed` : all;
}
