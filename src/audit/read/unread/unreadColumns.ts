import { columnLetters } from '../../../cells/address.ts';
import { isBlank, type Cell } from '../../../cells/cell.ts';
import { cellAt } from '../../../cells/sheet.ts';
import type { Dimension } from '../../../units/parse.ts';
import type { NotRead } from '../../model/attention.ts';
import { measurand, sensitivity } from '../tables/dimensions.ts';
import type { FoundTable, UnreadHeader } from '../tables/found.ts';
import { nearMeaning } from './nearMeaning.ts';
import { isProtective } from './protective.ts';

/** Words beside a unit that make a level one at which a monitor acts. */
const acting = /danger|trip|alarm|alert|warn|shut|set\s?p|limit|range|scale/iu;
/** Words of values that a sensor has by its data sheet, which judge nothing. */
const ofDataSheet = /\b(?:rated|nominal|typical|catalogue|spec)/iu;

/**
 * Columns of a table that hold values, have no place in the audit, and look as if they should: by a header that belongs to a
 * quantity or nearly spells one, or by a unit of sensitivity or of a level.
 */
export function unreadColumns(table: FoundTable): NotRead[] {
  return table.unread.flatMap((header): NotRead[] => {
    if (!hasValues(table, header.column)) return [];
    const looks = looksLike(header);
    if (!looks) return [];
    return [
      {
        what: 'column',
        text: header.text,
        ...looks,
        sheet: table.sheet.name,
        row: table.headerRow,
        column: columnLetters(header.column),
      },
    ];
  });
}

function looksLike(header: UnreadHeader): Pick<NotRead, 'looksLike' | 'severity'> | null {
  const near = nearMeaning(header.name);
  if (near && !(near.exact && near.id === 'tag') && fits(near.exact, header)) {
    return { looksLike: near.name, severity: isProtective(near.id) ? 'critical' : 'warning' };
  }
  const { unit } = header;
  if (!unit) return null;
  if (isOf(sensitivity, unit.dimension)) {
    const rated = ofDataSheet.test(header.name);
    return { looksLike: 'a sensitivity', severity: rated ? 'warning' : 'critical' };
  }
  if (!isOf(measurand, unit.dimension) || unit.dimension === 'percent') return null;
  if (acting.test(header.name)) return { looksLike: 'a level at which it acts', severity: 'critical' };
  // Lengths in mm and m are of cables and shafts; mil, µm and a detection are of what a monitor shows.
  const ofMonitor = unit.detection !== undefined || unit.dimension !== 'displacement' || unit.factor <= 25.4;
  return ofMonitor ? { looksLike: 'a level', severity: 'warning' } : null;
}

/** A text header in the place of a second name for a tag, a machine or a location is no quantity that was missed. */
function fits(exact: boolean, { secondName }: UnreadHeader): boolean {
  return !(exact && secondName);
}

function isOf(dimensions: readonly Dimension[], dimension: Dimension): boolean {
  return dimensions.includes(dimension);
}

function hasValues({ sheet, firstRow, lastRow, skipped }: FoundTable, column: number): boolean {
  for (let row = firstRow; row <= lastRow; row++) {
    if (!skipped.has(row) && isFilled(cellAt(sheet, row, column))) return true;
  }
  return false;
}

function isFilled(cell: Cell): boolean {
  return !isBlank(cell) && !(typeof cell === 'string' && /^\s*[-–—]+\s*$/u.test(cell));
}
