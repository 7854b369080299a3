import { cellAddress } from '../../cells/address.ts';
import { type CellPlace, HostRefused, type Selection, type SheetArea } from '../port/port.ts';
import { follow } from './follow.ts';
import { askForCells, cellReader } from './read/cells.ts';
import { areaOf, placeProperties, askForDate1904 } from './read/outline.ts';
import type { Session } from './session.ts';

/** Cells of a selection that are handed over. */
const mostCells = 1_000;

/** The one selected area and its first cells, whole rows of them; two round trips. */
export function readSelection(session: Session): Promise<Selection> {
  return session.run('The selection could not be read', async (context) => {
    const { workbook } = context;
    const range = workbook.getSelectedRange();
    range.load(placeProperties);
    range.worksheet.load('name');
    const isDate1904 = askForDate1904(context);
    await context.sync();

    const area = areaOf(range);
    const columns = Math.min(range.columnCount, mostCells);
    const rows = Math.min(range.rowCount, Math.floor(mostCells / columns));
    const first = range.worksheet.getRangeByIndexes(range.rowIndex, range.columnIndex, rows, columns);
    const cells = askForCells(first);
    await context.sync();
    const raw = cells() ?? { values: [], types: [], formats: [] };
    return { sheet: range.worksheet.name, area, cells: cellReader(isDate1904())(raw) };
  });
}

/** Brings a sheet to the front and selects cells of one row; refused where the sheet is gone or hidden. */
export function selectRow(
  session: Session,
  sheet: string,
  row: number,
  fromColumn: number,
  toColumn: number,
): Promise<void> {
  return selectArea(session, { sheet, area: { top: row, left: fromColumn, bottom: row, right: toColumn } });
}

/** Brings a sheet to the front and selects an area of it; refused where the sheet is gone or hidden. */
export function selectArea(session: Session, { sheet: name, area }: SheetArea): Promise<void> {
  const { top, left, bottom, right } = area;
  const failed = `${cellAddress(top, left)} on sheet “${name}” could not be shown`;
  return session.run(failed, async (context) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(name);
    sheet.load('visibility');
    await context.sync();
    if (sheet.isNullObject) {
      throw new HostRefused(`${failed}. The sheet was renamed or deleted. Run the audit again.`);
    }
    if (sheet.visibility !== 'Visible') {
      throw new HostRefused(
        `${failed}. The sheet is hidden. Unhide it (right-click a sheet tab), then try again.`,
      );
    }
    sheet.activate();
    sheet.getRangeByIndexes(top - 1, left - 1, bottom - top + 1, right - left + 1).select();
    await context.sync();
  });
}

/** Brings a cell's sheet to the front and selects the cell. */
export function selectCell(session: Session, { sheet, row, column }: CellPlace): Promise<void> {
  return selectRow(session, sheet, row, column, column);
}

/**
 * Calls back with the selected area after another one is selected; selections that follow each other while it is asked for
 * are one call, with the last of them. Several areas at once are not told. The returned function stops it.
 */
export function onSelect(session: Session, listener: (place: SheetArea) => void): Promise<() => void> {
  return follow<Excel.WorksheetSelectionChangedEventArgs>(
    session,
    'Selections can’t be followed',
    ({ worksheets }) => worksheets.onSelectionChanged,
    () => true,
    async () => {
      const place = await selectedArea(session);
      return () => {
        listener(place);
      };
    },
  );
}

/** Where the selection is, without its cells; one round trip. */
function selectedArea(session: Session): Promise<SheetArea> {
  return session.run('The selection could not be read', async (context) => {
    const range = context.workbook.getSelectedRange();
    range.load(placeProperties);
    range.worksheet.load('name');
    await context.sync();
    return { sheet: range.worksheet.name, area: areaOf(range) };
  });
}
