import { headerKey } from '../../tables/header.ts';
import { mergeMaps } from '../answers/merge.ts';
import type { TableRead } from '../tables/tableRead.ts';
import type { Option, Question } from './question.ts';

/** A question about one table. */
export type AboutTable = readonly [table: TableRead, question: Question];

/** One question for all tables of one layout that are asked the same: its answer is given to each of them. */
export function perLayout(asked: readonly AboutTable[]): Question[] {
  const groups = new Map<string, AboutTable[]>();
  for (const one of asked) {
    const key = keyOf(one);
    const there = groups.get(key);
    if (there) there.push(one);
    else groups.set(key, [one]);
  }
  return [...groups.values()].flatMap((group) => together(group.map(([, question]) => question)));
}

/** Layout, subject, and the header of each option: where these differ, so may the answer. */
function keyOf([{ lane }, { subject, options }]: AboutTable): string {
  const layout = lane.fields.map(({ text }) => headerKey(text)).toSorted();
  return JSON.stringify([
    lane.block.lies,
    lane.axis?.name ?? '',
    layout,
    subject.is,
    'meaning' in subject ? subject.meaning : '',
    options.map(({ field, text }) => headerKey(field?.header ?? text)),
  ]);
}

function together(questions: readonly Question[]): Question[] {
  const [first, ...others] = questions;
  if (!first || others.length === 0) return [...questions];
  return [
    {
      ...first,
      records: questions.reduce((sum, { records }) => sum + records, 0),
      sheets: [...new Set(questions.flatMap(({ sheets }) => sheets))],
      options: first.options.map((option, at): Option => ({
        ...option,
        answer: others.reduce((map, { options }) => mergeMaps(map, options[at]?.answer ?? {}), option.answer),
      })),
    },
  ];
}
