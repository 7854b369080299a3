import { columnLetters } from '../../cells/address.ts';
import type { Attention } from '../model/attention.ts';
import type { AskedField, AskedOption, AskedPlace, AskedQuestion } from '../model/question.ts';
import { capital, listed } from '../model/wording.ts';
import { nameOfColumn } from '../read/tables/vocabulary.ts';

/** What is not judged until a question is answered, and what to answer. */
export function questionSentences(question: AskedQuestion): Pick<Attention, 'headline' | 'doNext'> {
  const { records } = question;
  const judged =
    records === 0 ? '' : `${records} ${records === 1 ? 'channel is' : 'channels are'} not judged: `;
  const [first, second] = [questionText(question), answerText(question)];
  return { headline: capital(`${judged}${first}`), doNext: second };
}

/** A question as a sentence, with the places that it is about. */
export function questionText({ subject, options }: AskedQuestion): string {
  switch (subject.is) {
    case 'field': {
      const fields = options.flatMap(({ field }) => field ?? []);
      const name = nameOfColumn(subject.meaning);
      if (fields.length === 0) return `no column was found that is the ${name}.`;
      return fields.length === 1
        ? `is ${fieldText(fields[0])} the ${name}?`
        : `which is the ${name}: ${listed(fields.map(fieldText))}?`;
    }
    case 'unit':
      return `in which unit is the ${nameOfColumn(subject.meaning)}, ${fieldText(subject.field)}?`;
    case 'list in force':
      return `which list of ${listed(subject.meanings.map(nameOfColumn))} is in force, ${texts(options)}?`;
    case 'found or left':
      return `which list is as left, ${texts(options)}?`;
    case 'machine':
      return `of which machine is the list on sheet '${subject.sheet}'?`;
    case 'line in force':
      return `which of these lines of ${subject.tag} is in force: ${listed(subject.places.map(placeText))}?`;
    case 'names':
      return `are these the same: ${listed(subject.pairs.slice(0, 5).map(([one, other]) => `'${one}' and '${other}'`))}${subject.pairs.length > 5 ? `, and ${subject.pairs.length - 5} more pairs` : ''}?`;
    case 'value':
      return `which number is the ${nameOfColumn(subject.meaning)} of ${subject.tag}, '${subject.text}' in ${placeText(subject.place)}?`;
  }
}

function answerText({ subject, options }: AskedQuestion): string {
  const [first] = options;
  const proposed = first?.field
    ? fieldText(first.field)
    : subject.is === 'names'
      ? 'they are'
      : first && first.text !== ''
        ? `'${first.text}'`
        : '';
  return `Answer it${proposed === '' ? '' : `; proposed: ${proposed}`}. Until then do not rely on what hangs on it.`;
}

function fieldText(field: AskedField | undefined): string {
  return field ? `'${field.header}' (${placeText(field.place)})` : '';
}

function placeText({ sheet, row, column }: AskedPlace): string {
  return `${sheet}!${columnLetters(column)}${row}`;
}

function texts(options: readonly AskedOption[]): string {
  return options.map(({ text }) => `'${text}'`).join(' or ');
}
