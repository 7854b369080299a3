import type { ICommandInfo, IRange } from '@univerjs/core';
import type { SheetArea } from '../port/port.ts';
import { type Grid, storedBook } from './grid.ts';
import { areaOf } from './read/readWorkbook.ts';

interface SelectedBy {
  readonly subUnitId?: string;
  readonly selections?: readonly { readonly range: IRange }[];
}

/** What the grid does when another area is selected, by mouse, keys or program. */
const selecting = 'sheet.operation.set-selections';

/** Calls back after another area is selected, with the last one where there are several. The returned function stops it. */
export function onSelect(grid: Grid, listener: (place: SheetArea) => void): () => void {
  const heard = grid.api.addEvent(grid.api.Event.CommandExecuted, (event) => {
    const { id, params } = event as ICommandInfo<SelectedBy>;
    const range = id === selecting ? params?.selections?.at(-1)?.range : undefined;
    const sheet = storedBook(grid).getSheetBySheetId(params?.subUnitId ?? '');
    if (range && sheet) listener({ sheet: sheet.getName(), area: areaOf(range) });
  });
  return () => {
    heard.dispose();
  };
}
