import type { Injector, IRange } from '@univerjs/core';
import { CURSOR_TYPE, IRenderManagerService } from '@univerjs/engine-render';
import type {} from '@univerjs/sheets-ui/facade';
import { type Grid, openBook, storedBook } from '../../hosts/grid/grid.ts';
import { linkOf } from '../../hosts/grid/links.ts';
import { selectCell } from '../../hosts/grid/selection.ts';
import { type CellPlace, HostRefused } from '../../hosts/port/port.ts';

/** A cell under the pointer, row and column from 0. */
interface Pointed {
  readonly worksheet: { readonly getSheetId: () => string };
  readonly row: number;
  readonly column: number;
}

/**
 * A click on a cell that leads elsewhere goes there, unless the click draws a selection or belongs to a formula that is being
 * typed. `refused` hears why where the cell can't be shown. The returned function stops it.
 */
export function followLinks(
  {
    grid,
    injector,
    editing,
  }: { readonly grid: Grid; readonly injector: Injector; readonly editing: () => boolean },
  refused: (reason: string) => void,
): () => void {
  const linkAt = ({ worksheet, row, column }: Pointed): CellPlace | undefined => {
    const sheet = storedBook(grid).getSheetBySheetId(worksheet.getSheetId());
    const { startRow = row, startColumn = column } = sheet?.getMergedCell(row, column) ?? {};
    return linkOf(sheet?.getCellMatrix().getValue(startRow, startColumn));
  };
  const clicked = grid.api.addEvent(grid.api.Event.CellClicked, (event) => {
    const place = linkAt(event);
    if (!place || editing() || !isSelectedAlone(grid, event)) return;
    try {
      selectCell(grid, place);
    } catch (error) {
      if (!(error instanceof HostRefused)) throw error;
      refused(error.message);
    }
  });
  let isHand = false;
  const moved = grid.api.addEvent(grid.api.Event.CellHover, (event) => {
    const leads = linkAt(event) !== undefined;
    if (leads === isHand) return;
    isHand = leads;
    const drawing = injector.get(IRenderManagerService).getRenderById(openBook(grid).getId());
    drawing?.mainComponent?.setCursor(leads ? CURSOR_TYPE.POINTER : CURSOR_TYPE.AUTO);
  });
  return () => {
    clicked.dispose();
    moved.dispose();
  };
}

/** Whether nothing but one cell is selected, merged ones being one. */
function isSelectedAlone(grid: Grid, { row, column }: Pointed): boolean {
  const front = openBook(grid).getActiveSheet();
  const [range, ...more] = front.getSelection()?.getActiveRangeList() ?? [];
  if (!range || more.length > 0) return false;
  const selected = range.getRange();
  const cell: IRange = front.getSheet().getMergedCell(row, column) ?? {
    startRow: row,
    startColumn: column,
    endRow: row,
    endColumn: column,
  };
  return (
    selected.startRow === cell.startRow &&
    selected.endRow === cell.endRow &&
    selected.startColumn === cell.startColumn &&
    selected.endColumn === cell.endColumn
  );
}
