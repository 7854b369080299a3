import type { Place } from '../../model/findings.ts';
import type { LeftAside, UntidyRules } from '../../model/rules/untidyRules.ts';
import { listed, listedUpTo } from '../../model/wording.ts';
import type { Sayings } from './sayings.ts';

/** What is said of lists that are not kept in the standard shape. */
export const untidyMessages: Sayings<UntidyRules> = {
  'meaning-not-certain': ({ values: { quantity, header } }) =>
    `'${header}' may be the ${quantity}, but that is not certain, so it was not used. Answer the question about it.`,
  'lists-differ': ({ values: { quantity, places } }) =>
    `Lists differ about the ${quantity}: ${placeList(places)}. None was used; say which list is in force.`,
  'machine-not-said': ({ values: { tag, places } }) =>
    `Tag '${tag}' stands on several machines, and ${placeList(places)} does not say on which. Enter the machine there.`,
  'machine-of-list': ({ values: { machine, sheet, told } }) =>
    `The channels listed on sheet '${sheet}' are those of ${machine}, by ${told}.`,
  'left-aside': ({ values: { text, looksLike, why } }) =>
    `${text === '' ? 'It' : `'${text.slice(0, 80)}'`} looks like ${looksLike} and was left aside: ${leftAsideTexts[why]}.`,
  'record-of-several-machines': ({ values: { tag, machines } }) =>
    `Tag '${tag}' stands on ${listed(machines)}; it can't be told whose calibration record or readings these are, so they were not used. Name the machine in the tag.`,
};

/** Why something was left aside, for people. */
const leftAsideTexts: Readonly<Record<LeftAside, string>> = {
  'not certain': 'it is not certain what it means',
  'no unit': 'nothing says its unit',
  'no meaning': 'nothing says what it means',
  rival: 'another column has the same meaning',
  hidden: 'it is hidden, and what people see was read',
  'no names': 'nothing in it names the channels',
  'no headers': 'it has no headers',
  'sums up': 'it sums the list up',
  spare: 'it is a spare place',
  heading: 'it is a heading or a remark',
  'no tag': 'it has no tag',
  'header again': 'it repeats the header',
  'calibration record': 'it is a calibration record',
  'left out': 'you said that it is none',
  'tables differ': 'lists differ about it',
  twice: 'its tag stands more than once',
  'machine not said': 'its machine is not said',
  'no settings': 'it has no settings',
  'no probe': 'it has no measured sensitivity',
  unusable: 'its value can’t be used',
};

function placeList(places: readonly Place[]): string {
  return listedUpTo(
    places.map(({ sheet, row, column }) => `${sheet}!${column}${row}`),
    4,
  );
}
