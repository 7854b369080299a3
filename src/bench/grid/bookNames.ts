import { isReferenceStrings } from '@univerjs/engine-formula';
import type { ViewName, WorkbookView } from '../../hosts/file/view/types.ts';
import { type Grid, storedBook } from '../../hosts/grid/grid.ts';

/** The mark of the grid's engine for a name that holds on every sheet. */
const everywhere = 'AllDefaultWorkbook';

/**
 * Gives the grid the workbook's defined names, so that formulas that use them can be calculated anew. The engine
 * can't tell names apart that mean something else on each sheet: of those it learns none, and formulas that use them show
 * `#NAME?` once they are calculated anew, never the value of another sheet.
 */
export function defineNames(grid: Grid, view: WorkbookView): void {
  const book = storedBook(grid);
  for (const { name, sheet, refersTo } of singleNames(view.names)) {
    const own = sheet === undefined ? undefined : book.getSheetBySheetName(sheet)?.getSheetId();
    // Set without a command, which would be a step for Undo.
    grid.api.syncExecuteCommand('formula.mutation.set-defined-name', {
      unitId: book.getUnitId(),
      id: `name-${name}`,
      name,
      // The engine puts the text of a name in its place: what is calculated has to stay together.
      formulaOrRefString: isReferenceStrings(refersTo) ? refersTo : `(${refersTo})`,
      localSheetId: own ?? everywhere,
    });
  }
}

function singleNames(names: readonly ViewName[]): ViewName[] {
  const key = ({ name }: ViewName): string => name.toLowerCase();
  const counts = new Map<string, number>();
  for (const name of names) counts.set(key(name), (counts.get(key(name)) ?? 0) + 1);
  return names.filter((name) => counts.get(key(name)) === 1);
}
