import type { Question } from '../read/understand/questions/question.ts';
import type { Attention } from '../model/attention.ts';
import { questionText } from './questions/questionText.ts';

/** What is asked, what is not judged until it is answered, and what to answer. */
export function questionSentences(question: Question): Pick<Attention, 'headline' | 'doNext'> {
  const { question: asked, stakes } = questionText(question);
  return {
    headline: `${asked} ${stakes}`,
    doNext: 'Answer it: yes or no. Until then do not rely on what depends on it.',
  };
}
