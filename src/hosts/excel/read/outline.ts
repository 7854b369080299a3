import type { Area, SheetTable } from '../../../cells/sheet.ts';
import type { UsedSheet } from './pieces.ts';

/** A sheet that holds something, before its cells are read. */
export interface SheetOutline extends UsedSheet {
  readonly id: string;
  readonly hidden: boolean;
  /** Whether all rows of the used area are hidden, none, or (`null`) some. */
  readonly rowsHidden: boolean | null;
  /** The same of its columns. */
  readonly columnsHidden: boolean | null;
  readonly tables: readonly SheetTable[];
}

export interface WorkbookOutline {
  readonly name: string;
  readonly date1904: boolean;
  readonly sheets: readonly SheetOutline[];
}

/** What stands where in the workbook: three round trips, however many sheets and tables there are. */
export async function readOutline(context: Excel.RequestContext): Promise<WorkbookOutline> {
  const { workbook } = context;
  workbook.load('name');
  const isDate1904 = askForDate1904(context);
  workbook.worksheets.load('items/id,items/name,items/visibility');
  await context.sync();

  const asked = workbook.worksheets.items.map((sheet) => {
    const used = sheet.getUsedRangeOrNullObject(true);
    used.load(`${placeProperties},rowHidden,columnHidden`);
    const { tables } = sheet;
    tables.load('items/name,items/showHeaders,items/showTotals');
    return { sheet, used, tables };
  });
  await context.sync();

  const filled = asked
    .filter(({ used }) => !used.isNullObject)
    .map(({ sheet, used, tables }) => ({ sheet, used, tables: tables.items.map(withRange) }));
  if (filled.some(({ tables }) => tables.length > 0)) await context.sync();
  return {
    name: workbook.name,
    date1904: isDate1904(),
    sheets: filled.map(({ sheet, used, tables }) => ({
      sheet,
      id: sheet.id,
      name: sheet.name,
      hidden: sheet.visibility !== 'Visible',
      used: areaOf(used),
      rowsHidden: used.rowHidden,
      columnsHidden: used.columnHidden,
      tables: tables.map(({ table, range }) => ({
        name: table.name,
        area: areaOf(range),
        headerRow: table.showHeaders,
        totalsRow: table.showTotals,
      })),
    })),
  };
}

export const placeProperties = 'rowIndex,columnIndex,rowCount,columnCount';

/** The area of a range whose `placeProperties` have been read. */
export function areaOf({ rowIndex, columnIndex, rowCount, columnCount }: Excel.Range): Area {
  return {
    top: rowIndex + 1,
    left: columnIndex + 1,
    bottom: rowIndex + rowCount,
    right: columnIndex + columnCount,
  };
}

function withRange(table: Excel.Table): { readonly table: Excel.Table; readonly range: Excel.Range } {
  const range = table.getRange();
  range.load(placeProperties);
  return { table, range };
}

/**
 * Asks whether the workbook counts its days from 1904: there 2 January 1904 is day 1, else day 1463. The interface has no
 * property for it, but its worksheet function DATE goes by the workbook's date system (public reference).
 */
export function askForDate1904(context: Excel.RequestContext): () => boolean {
  const day = context.workbook.functions.date(1904, 1, 2);
  day.load('value');
  return () => day.value === 1;
}
