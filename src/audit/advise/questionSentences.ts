import { columnLetters } from '../../cells/address.ts';
import type { Attention } from '../model/attention.ts';
import type { AskedField, AskedOption, AskedPlace, AskedQuestion } from '../model/question.ts';
import { listed } from '../model/wording.ts';
import { nameOfColumn } from '../read/tables/vocabulary.ts';

/** What is not judged until a question is answered, and what to answer. */
export function questionSentences(question: AskedQuestion): Pick<Attention, 'headline' | 'doNext'> {
  const { records } = question;
  const judged =
    records === 0 ? 'Some channels are' : `${records} ${records === 1 ? 'channel is' : 'channels are'}`;
  return {
    headline: `${judged} not judged until it is said ${questionText(question)}.`,
    doNext: answerText(question),
  };
}

/** What has to be said, as the end of a sentence, with the places that it is about. */
export function questionText({ subject, options }: AskedQuestion): string {
  switch (subject.is) {
    case 'field': {
      const fields = options.flatMap(({ field }) => field ?? []);
      const name = nameOfColumn(subject.meaning);
      if (fields.length === 0) return `where the ${name} stands`;
      return fields.length === 1
        ? `whether ${fieldText(fields[0])} is the ${name}`
        : `which is the ${name}, ${listed(fields.map(fieldText))}`;
    }
    case 'unit':
      return `in which unit the ${nameOfColumn(subject.meaning)} is, ${fieldText(subject.field)}`;
    case 'list in force':
      return `which list of the ${listed(subject.meanings.map(nameOfColumn))} is in force, ${texts(options)}`;
    case 'found or left':
      return `which list is as left, ${texts(options)}`;
    case 'machine':
      return `of which machine the list on sheet '${subject.sheet}' is`;
    case 'line in force':
      return `which of these lines of ${subject.tag} is in force, ${listed(subject.places.map(placeText))}`;
    case 'names':
      return `whether these are the same: ${listed(subject.pairs.slice(0, 5).map(([one, other]) => `'${one}' and '${other}'`))}${subject.pairs.length > 5 ? `, and ${subject.pairs.length - 5} more pairs` : ''}`;
    case 'value':
      return `which number the ${nameOfColumn(subject.meaning)} of ${subject.tag} is, '${subject.text}' in ${placeText(subject.place)}`;
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
