import type { SheetOutline } from './outline.ts';

/** Columns of the used area that are hidden, counted from 1, by sheet name; asked for column by column only where some are and some are not. */
export async function readHiddenColumns(
  context: Excel.RequestContext,
  sheets: readonly SheetOutline[],
): Promise<ReadonlyMap<string, ReadonlySet<number>>> {
  const mixed = sheets.filter(({ columnsHidden }) => columnsHidden === null);
  const asked = new Map(
    mixed.map(({ name, sheet, used }) => {
      const range = sheet.getRangeByIndexes(used.top - 1, used.left - 1, 1, used.right - used.left + 1);
      return [name, range.getColumnProperties({ columnHidden: true })] as const;
    }),
  );
  if (asked.size > 0) await context.sync();
  return new Map(
    sheets.map(({ name, used, columnsHidden }): [string, ReadonlySet<number>] => {
      const all = Array.from({ length: used.right - used.left + 1 }, (_, index) => used.left + index);
      const hidden = asked.get(name)?.value;
      return [
        name,
        new Set(
          hidden ? all.filter((_, index) => hidden[index]?.columnHidden === true) : columnsHidden ? all : [],
        ),
      ];
    }),
  );
}
