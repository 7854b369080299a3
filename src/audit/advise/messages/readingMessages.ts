import type { FactOf } from '../../model/findings.ts';
import type { ReadingRules } from '../../model/rules/readingRules.ts';

/** What is said of cells, rows, tables, records and histories. */
export const readingMessages: { readonly [K in keyof ReadingRules]: (fact: FactOf<K>) => string } = {
  'value-missing': ({ values }) => `The ${values.what} is missing; enter it.`,
};
