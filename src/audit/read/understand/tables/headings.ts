import { isBlank } from '../../../../cells/cell.ts';
import { isNumberText } from '../blocks/cellKind.ts';
import { isHiddenRecord, recordsOf } from '../blocks/block.ts';
import { isMarkedBlank, isSpare, isTotal } from '../readings/cellValue.ts';
import type { Lane } from './lane.ts';
import { canBeMachine } from './machines.ts';
import type { Heading } from './tableRead.ts';

/** Texts alone in their rows among the lines of a list, each above lines of its own: `Booster pump` over its channels. */
export function headingsOf({ block }: Lane): readonly Heading[] {
  if (block.lies !== 'rows') return [];
  const { sheet } = block;
  const columns = block.fields.map(({ at }) => at);
  const found: Heading[] = [];
  let before: Heading | null = null;
  for (const row of recordsOf(block)) {
    const cells = sheet.rows[row - 1] ?? [];
    const filled = columns.filter((column) => !isBlank(cells[column - 1] ?? null));
    if (filled.length === 0 || isHiddenRecord(block, row)) continue;
    const [column] = filled;
    const text = cells[(column ?? 1) - 1];
    if (filled.length > 1 || column === undefined || typeof text !== 'string') {
      if (before) found.push(before);
      before = null;
      continue;
    }
    const isName =
      !isNumberText(text) && !isTotal(text) && !isSpare(text) && !isMarkedBlank(text) && canBeMachine(text);
    before = isName ? { is: 'heading', text: text.trim(), place: { sheet: sheet.name, row, column } } : null;
  }
  return found;
}
