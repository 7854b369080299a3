import { columnLetters } from '../../cells/address.ts';
import { noNumbers } from '../model/attention.ts';
import type { AskedQuestion } from '../model/question.ts';
import type { Unsaid } from './sentences.ts';

/** Quantities that keep no danger from being judged. */
const ofAlertAlone: ReadonlySet<string> = new Set(['alert', 'counterAlert']);

/** The entry of a question without whose answer channels can't be judged. */
export function ofQuestion(question: AskedQuestion): Unsaid {
  const { subject, options } = question;
  const ofAlert = 'meaning' in subject && ofAlertAlone.has(subject.meaning);
  const at =
    'place' in subject
      ? [subject.place]
      : 'places' in subject
        ? subject.places
        : options.flatMap(({ field }) => field?.place ?? []);
  return {
    question,
    entry: {
      ...noNumbers,
      severity: ofAlert ? 'warning' : 'critical',
      code: 'question',
      subject: {
        machine: 'machine' in subject ? subject.machine : '',
        tag: 'tag' in subject ? subject.tag : '',
        threshold: null,
        multiplier: null,
        group: null,
      },
      places: at.map(({ sheet, row, column }) => ({ sheet, row, column: columnLetters(column) })),
    },
  };
}
