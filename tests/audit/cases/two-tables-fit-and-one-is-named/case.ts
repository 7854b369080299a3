import type { GoldenCase } from '../../golden.ts';
import { golden as ambiguous } from '../two-tables-fit/case.ts';

export const golden: GoldenCase = {
  because: 'A column map names the list that is meant; that the other one was not read is said.',
  book: ambiguous.book,
  map: { channels: { sheet: '2025' } },
  notRead: ['sheet a list of channels @ 2024!A1'],
  channels: [
    {
      tag: 'A',
      verdict: 'within',
      is: { source: { channels: { sheet: '2025', row: 3 }, settings: { sheet: 'Monitor', row: 2 } } },
    },
  ],
};
