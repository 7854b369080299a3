import { columnLetters } from '../../cells/address.ts';
import { noNumbers } from '../model/attention.ts';
import type { ColumnMap } from '../model/columnMap.ts';
import type { Place } from '../model/findings.ts';
import type { Question } from '../read/understand/questions/question.ts';
import type { AdvisedChannel } from './advised.ts';
import type { EntryFacts } from './sentences.ts';

/** Quantities that keep no danger from being judged. */
const ofAlertAlone: ReadonlySet<string> = new Set(['alert', 'counterAlert']);

/** The entry of a question without whose answer channels can't be judged. */
export function ofQuestion(question: Question, channels: readonly AdvisedChannel[]): EntryFacts {
  const { subject, options } = question;
  const tag = 'tag' in subject ? subject.tag : '';
  const ofAlert = 'meaning' in subject && ofAlertAlone.has(subject.meaning);
  const at =
    'place' in subject
      ? [subject.place]
      : 'places' in subject
        ? subject.places
        : options.flatMap(({ field }) => field?.place ?? []);
  const places = at.map(({ sheet, row, column }) => ({ sheet, row, column: columnLetters(column) }));
  return {
    question,
    entry: {
      ...noNumbers,
      severity: ofAlert ? 'warning' : 'critical',
      code: 'question',
      subject: {
        machine: 'machine' in subject ? subject.machine : machineOf(tag, channels),
        tag,
        threshold: null,
        multiplier: null,
        group: null,
      },
      places: places.length > 0 ? places : options.flatMap(({ answer }) => listsOf(answer)),
    },
  };
}

/** The machine of the only channel with a tag. */
function machineOf(tag: string, channels: readonly AdvisedChannel[]): string {
  const [only, second] = channels.filter(({ result }) => result.tag === tag);
  return only && !second ? only.result.machine : '';
}

/** Where the lists stand that an answer names: the first cell of their headers. */
function listsOf({ tables = [] }: ColumnMap): Place[] {
  return tables.map(({ sheet, header }) =>
    typeof header === 'number' ? { sheet, row: header, column: 'A' } : { sheet, row: 1, column: header },
  );
}
