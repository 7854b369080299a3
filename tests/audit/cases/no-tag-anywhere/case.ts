import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because: 'A workbook without any header of the tables is refused with the sheets that were looked at.',
  book: book(['Cover', [['Outage report']]], ['Data', [[1, 2, 3]]]),
  refused: ["'tag'", "'Cover', 'Data'"],
};
