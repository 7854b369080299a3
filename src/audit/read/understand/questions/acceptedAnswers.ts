import type { ColumnMap } from '../../../model/columnMap.ts';
import { mergeMaps } from '../answers/merge.ts';
import type { Question } from './question.ts';

/** The answers to the proposals of questions, all accepted. */
export function acceptedAnswers(questions: readonly Question[]): ColumnMap {
  return questions.reduce<ColumnMap>((map, { options }) => mergeMaps(map, options[0]?.answer ?? {}), {});
}
