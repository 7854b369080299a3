import type { GoldenCase } from '../../golden.ts';
import { oneChannel } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Where no column fits a required meaning the audit stops; a map that leaves it out is no exception.',
  book: oneChannel({}),
  map: { settings: { sheet: 'Monitor', columns: { danger: null } } },
  refused: ["no column 'danger'"],
};
