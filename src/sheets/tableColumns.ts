import type { SheetModel, TableModel } from './model.ts';

/**
 * The titles of a table's columns, from the cells of its header row. Throws an Error where one is no text, blank or there
 * twice (case does not count), or where no row stands below: no program takes such a table.
 */
export function tableColumns(sheet: SheetModel, { name, area }: TableModel): readonly string[] {
  if (area.bottom <= area.top) throw new Error(`table "${name}" has no row below its header`);
  let number = 0;
  for (const { cells } of sheet.rows()) {
    if (++number < area.top) continue;
    const titles = Array.from({ length: area.right - area.left + 1 }, (_, index) => {
      const value = cells[area.left - 1 + index]?.value ?? null;
      if (typeof value !== 'string' || value.trim() === '')
        throw new Error(`table "${name}" has a column without a title, the ${index + 1}th`);
      return value;
    });
    const known = new Set<string>();
    for (const title of titles) {
      if (known.has(title.toLowerCase())) throw new Error(`table "${name}" has the column "${title}" twice`);
      known.add(title.toLowerCase());
    }
    return titles;
  }
  throw new Error(`table "${name}" begins below the last row of its sheet`);
}
