import type { Cell } from '../../cells/cell.ts';
import type { Sheet } from '../../cells/sheet.ts';
import { conceptsIn } from './understand/vocabulary/lexicon.ts';

/** The header row of a sheet's own table, from 1, and its columns that may name what lists name too. */
export interface OwnHeader {
  readonly row: number;
  readonly columns: ReadonlySet<number>;
}

/**
 * Whether a row of a sheet heads a channel list or settings in a plant's words: it names a sensitivity, or alert and danger.
 * Such a sheet is never read for its recorded readings alone, since that would lose its channels without a word.
 */
export function hasListHeader({ rows }: Sheet, own?: OwnHeader): boolean {
  return rows.some((cells, index) => {
    if (!isAllText(cells)) return false;
    const found = new Set(
      cells.flatMap((cell, at) =>
        typeof cell !== 'string' || (index + 1 === own?.row && own.columns.has(at + 1))
          ? []
          : [...conceptsIn(cell).keys()],
      ),
    );
    return found.has('sensitivity') || (found.has('alert') && found.has('danger'));
  });
}

/** Whether at least two cells of a row are filled, and with words alone: no number, date or time. */
function isAllText(cells: readonly Cell[]): boolean {
  let words = 0;
  for (const cell of cells) {
    if (cell === null || cell === '') continue;
    if (typeof cell !== 'string' || /^\s*[-+−]?\d/u.test(cell)) return false;
    words++;
  }
  return words > 1;
}
