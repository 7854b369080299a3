import { meaningWords } from '../../../audit/advise/questions/meaningWords.ts';
import type { TableRead } from '../../../audit/read/understand/tables/tableRead.ts';
import type { SheetArea } from '../../../hosts/port/port.ts';
import type { AskedRow, Choice } from './askedRow.ts';
import { askingWords } from './askingWords.ts';
import { fieldChoice, suits } from './fieldChoices.ts';
import { fieldAt } from './places.ts';

/** The choice of the column in which a selection begins, or in one sentence why it can't be chosen. */
export function pickColumn(
  { sheet, area }: SheetArea,
  column: NonNullable<AskedRow['column']>,
  tables: readonly TableRead[],
): Choice | string {
  const { meaning: id, tables: asked } = column;
  // Of two probes in one row, the one that was asked about comes first.
  const own = [...asked, ...tables.filter((table) => !asked.includes(table))];
  for (const table of own) {
    const field = fieldAt(table, sheet, area.top, area.left);
    if (!field) continue;
    return suits(field, id)
      ? fieldChoice(id, table, field, asked)
      : askingWords.doesNotFit(field.text, meaningWords(id));
  }
  return askingWords.noList(sheet);
}
