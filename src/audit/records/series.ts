import { headerKey } from '../tables/header.ts';

/** Series with a meaning; any other keeps its own name. */
export const asFound = 'as found';
export const asLeft = 'as left';

const meanings: ReadonlyMap<string, string> = new Map([
  ['', asFound],
  ['asfound', asFound],
  ['found', asFound],
  ['before', asFound],
  ['asleft', asLeft],
  ['left', asLeft],
  ['after', asLeft],
]);

/** The name of a series; a blank one is as found. */
export function seriesOf(text: string): string {
  return meanings.get(headerKey(text)) ?? text;
}
