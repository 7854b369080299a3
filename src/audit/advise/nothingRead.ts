import type { NothingRead } from '../read/bookRead.ts';
import { NotUnderstood } from '../read/understand/understand.ts';
import { questionText } from './questions/questionText.ts';

/** The refusal of a workbook of which nothing can be judged before a person has answered, with what is asked first. */
export function nothingRead({ understanding, refusal }: NothingRead): NotUnderstood {
  const needed = understanding.questions.filter((question) => question.needed);
  const [first] = needed;
  const more = needed.length - 1;
  const asked = first
    ? `Nothing is judged until this is answered: ${questionText(first).question}${more > 0 ? ` And ${more} more.` : ''}`
    : 'Nothing is judged: what the lists mean is not certain. Name their columns in a column map.';
  return new NotUnderstood(refusal === null ? asked : `${refusal} ${asked}`, understanding);
}
