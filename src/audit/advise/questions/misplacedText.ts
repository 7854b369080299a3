import { listed } from '../../model/wording.ts';
import type { Misplaced } from '../../read/mapPlaces.ts';
import { meanings } from '../../read/understand/meaning.ts';
import { listAt } from './questionWords.ts';

/** Places that a line names. */
const mostNamed = 10;

/** One line about the entries of a map that the workbook does not bear out: the first in full, and how many more. */
export function misplacedText([first, ...more]: readonly [Misplaced, ...Misplaced[]]): string {
  const others =
    more.length === 0
      ? ''
      : ` ${more.length} more ${more.length === 1 ? 'entry does' : 'entries do'} not fit either.`;
  return `Column map, ${sentence(first)}${others}`;
}

function sentence(misplaced: Misplaced): string {
  switch (misplaced.is) {
    case 'sheet':
      return `tables: there is no sheet '${misplaced.sheet}'. The sheets are: ${some(misplaced.sheets.map(quoted))}.`;
    case 'list': {
      const { list, lists } = misplaced;
      const there = lists.length === 0 ? 'No list was found on it' : `It has the ${some(lists.map(listAt))}`;
      return `sheet '${list.sheet}': there is no ${listAt(list)}. ${there}. Correct 'header', or leave the list out.`;
    }
    case 'meaning':
      return `${of(misplaced)}: '${misplaced.name}' is no standard header. They are: ${[...meanings.values()].map(({ name }) => name).join(', ')}.`;
    case 'field':
      return `${of(misplaced)}, ${misplaced.name ?? 'notOfAudit'}: ${fieldSentence(misplaced)}`;
    case 'unit':
      return `${of(misplaced)}, unit of ${misplaced.name}: '${misplaced.unit}' is no unit known here.`;
    case 'cell':
      return `cells: nothing stands in ${misplaced.address}. Correct the address, or leave it out.`;
  }
}

function of({ list }: Pick<Extract<Misplaced, { is: 'field' }>, 'list'>): string {
  return `sheet '${list.sheet}', ${listAt(list)}`;
}

function fieldSentence({ at, list, header, there }: Extract<Misplaced, { is: 'field' }>): string {
  const line = `${{ rows: 'column', columns: 'row', forms: 'label' }[list.lies ?? 'rows']} ${list.lies === 'forms' ? quoted(at) : at}`;
  if (there === null) return `there is no ${line}. Correct 'at', or leave it out.`;
  return header === null
    ? `${line} is '${there}', which can not be taken. Correct 'at', or leave it out.`
    : `${line} is '${there}' by now, not '${header}'. Correct 'at' and 'header', or make the proposal anew.`;
}

function quoted(name: string): string {
  return `'${name}'`;
}

function some(names: readonly string[]): string {
  const more = names.length - mostNamed;
  return more > 0 ? `${names.slice(0, mostNamed).join(', ')} and ${more} more` : listed(names);
}
