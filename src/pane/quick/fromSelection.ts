import { notANumber } from '../../audit/advise/messages/reasons.ts';
import { readNumber } from '../../cells/number.ts';
import { type Cell, isBlank } from '../../cells/cell.ts';
import type { CellPlace, Selection } from '../../hosts/port/port.ts';
import { addressOf } from './formula.ts';
import { cellFields, type TakenCell } from './quickState.ts';
import { quickWords } from './quickWords.ts';

export type Taken = { readonly cells: readonly TakenCell[] } | { readonly refusal: string };

/** The three filled cells of a selection, row by row, as setpoint, configured and measured sensitivity; else why not. */
export function takeThree(selection: Selection): Taken {
  const filled = filledCells(selection);
  if (filled.length !== cellFields.length) return { refusal: quickWords.tooFew(filled.length) };
  const cells: TakenCell[] = [];
  for (const [index, field] of cellFields.entries()) {
    const found = filled[index];
    if (!found) continue;
    const read = readNumber(found.cell, undefined);
    if ('why' in read) return { refusal: quickWords.noNumber(addressOf(found.place), notANumber[read.why]) };
    cells.push({ field, place: found.place, value: read.value });
  }
  return { cells };
}

function filledCells({ sheet, area, cells }: Selection): { cell: Exclude<Cell, null>; place: CellPlace }[] {
  return cells.flatMap((row, down) =>
    row.flatMap((cell, right) =>
      cell === null || isBlank(cell)
        ? []
        : [{ cell, place: { sheet, row: area.top + down, column: area.left + right } }],
    ),
  );
}
