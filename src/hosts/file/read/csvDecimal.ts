import { cellAddress } from '../../../cells/address.ts';
import type { Cell } from '../../../cells/cell.ts';
import { FileRefused, oneLine } from '../zip/refused.ts';
import type { Separator } from './csvSeparator.ts';

/** A number with one mark, or with marks of both kinds, the last of which is the decimal mark. */
const marked = /^\s*[+-]?(?:\d{1,3}(?:([.,])\d{3})+)?\d*([.,])(\d+)(?:[eE][+-]?\d+)?\s*(?:%\s*)?$/;

/**
 * The decimal mark of a table of texts. Where commas separate the fields it is the point. Else the mark that
 * most numbers have in a place where it cannot group thousands (`7.87`, `0,125`, `1.234,5`) decides; where none
 * has, a comma as in `7,874` counts as decimal between semicolons, which are written because of it, and throws
 * FileRefused between tabs, where it could as well be seven thousand, and so do both marks equally often.
 */
export function decimalMark(rows: readonly (readonly Cell[])[], separator: Separator): '.' | ',' {
  if (separator === ',') return '.';
  let points = 0;
  let commas = 0;
  let pointsInDoubt = 0;
  let doubtful: string | undefined;
  rows.forEach((row, index) => {
    row.forEach((cell, column) => {
      if (typeof cell !== 'string') return;
      const found = markOf(cell);
      if (found === undefined) return;
      if (found.certain && found.mark === ',') commas++;
      else if (found.certain) points++;
      else if (found.mark === '.') pointsInDoubt++;
      else doubtful ??= `${cellAddress(index + 1, column + 1)} (“${oneLine(cell, 20)}”)`;
    });
  });
  if (commas !== points) return commas > points ? ',' : '.';
  if (commas > 0) {
    throw new FileRefused(
      'As many numbers of the file have a decimal comma as have a decimal point. Write them all in one way.',
    );
  }
  if (doubtful === undefined) return '.';
  if (separator === ';' && pointsInDoubt === 0) return ',';
  throw new FileRefused(
    `Cell ${doubtful} has a comma that could be a decimal comma or group thousands. Write one number in the file so that it is clear, such as 7,8740 or 7.8740.`,
  );
}

function markOf(text: string): { mark: '.' | ','; certain: boolean } | undefined {
  const [, grouping, mark, decimals = ''] = marked.exec(text) ?? [];
  if (mark !== '.' && mark !== ',') return undefined;
  if (grouping !== undefined) return grouping === mark ? undefined : { mark, certain: true };
  const whole = text.trim().replace(/^[+-]/, '').split(mark)[0] ?? '';
  return {
    mark,
    certain: decimals.length !== 3 || whole === '' || whole.startsWith('0') || whole.length > 3,
  };
}
