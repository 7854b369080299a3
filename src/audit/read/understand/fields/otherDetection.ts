import { isBlank } from '../../../../cells/cell.ts';
import type { Sheet } from '../../../../cells/sheet.ts';
import type { Place } from '../blocks/block.ts';
import { inEnglishUnits } from '../vocabulary/statedUnit.ts';
import { unitsIn } from './notes.ts';

/** A text beside lists that says that vibration is counted from zero to peak. */
export interface StatedZeroToPeak {
  readonly place: Place;
  readonly text: string;
}

/** Cells that a row of notes has at most. */
const mostCells = 3;
const longest = 300;
const zeroToPeak = /(?<![\p{L}\p{N}])(?:0|zero|o)(?: ?[-–/] ?| to | )(?:peak|pk|p)(?![\p{L}\p{N}])/iu;

/**
 * The texts around the lists of a sheet, above them or below, that say zero to peak: headers whose unit says nothing of it
 * can not be taken as peak to peak then. What a text says of velocities alone does not count.
 */
export function statedZeroToPeak(sheet: Sheet): StatedZeroToPeak[] {
  const found: StatedZeroToPeak[] = [];
  sheet.rows.forEach((cells, index) => {
    if (cells.length === 0 || isFull(cells)) return;
    cells.forEach((cell, at) => {
      if (typeof cell !== 'string' || cell.length > longest || !zeroToPeak.test(inEnglishUnits(cell))) return;
      const place = { sheet: sheet.name, row: index + 1, column: at + 1 };
      if (!isOfOthers(cell, place)) found.push({ place, text: cell });
    });
  });
  return found;
}

function isFull(cells: Sheet['rows'][number]): boolean {
  let filled = 0;
  for (const cell of cells) if (!isBlank(cell) && ++filled > mostCells) return true;
  return false;
}

/** Whether the units in a text that are counted from zero to peak are all of other quantities than displacement. */
function isOfOthers(text: string, place: Place): boolean {
  const stated = unitsIn(text, place, []).flatMap(({ stated: { unit } }) =>
    unit?.detection === '0-p' ? [unit.dimension] : [],
  );
  return stated.length > 0 && !stated.includes('displacement');
}
