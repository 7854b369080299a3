import { headerKey } from '../tables/header.ts';

/** Series with a meaning; any other keeps its own name. */
export const asFound = 'as found';
export const asLeft = 'as left';

const meanings: ReadonlyMap<string, string> = new Map([
  ['asfound', asFound],
  ['found', asFound],
  ['before', asFound],
  ['asleft', asLeft],
  ['left', asLeft],
  ['after', asLeft],
]);

/** The name of a series; a blank one is what the table's title says. */
export function seriesOf(text: string, ofTable: string): string {
  return text === '' ? ofTable : (meanings.get(headerKey(text)) ?? text);
}
