import { columnLetters } from '../../../cells/address.ts';
import { cellText, isBlank } from '../../../cells/cell.ts';
import { cellAt } from '../../../cells/sheet.ts';
import type { NotRead } from '../../model/attention.ts';
import { indexTags } from '../join/tagIndex.ts';
import type { FoundTable } from '../tables/found.ts';

/** Columns whose number makes a row one of a channel. */
const telling = ['measured', 'asLeftSensitivity', 'configured', 'alert', 'danger'] as const;

/** Rows of a table that have values and no tag, and so belong to no channel. */
export function unreadRows(table: FoundTable): NotRead[] {
  const { sheet, columns } = table;
  const tag = columns.get('tag');
  return indexTags(table).untagged.map((row): NotRead => {
    const told = telling.some((id) => {
      const column = columns.get(id);
      return column !== undefined && typeof cellAt(sheet, row, column.column) === 'number';
    });
    const first = [...columns.values()].find(({ column }) => !isBlank(cellAt(sheet, row, column)));
    return {
      what: 'row',
      text: first ? cellText(cellAt(sheet, row, first.column)).slice(0, 60) : '',
      looksLike: 'a channel without a tag',
      severity: told ? 'critical' : 'warning',
      sheet: sheet.name,
      row,
      column: tag ? columnLetters(tag.column) : '',
    };
  });
}
