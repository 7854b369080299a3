import type { Snapshot } from '../../../audit/model/snapshot.ts';
import type { Workbook } from '../../../cells/sheet.ts';
import { earlierSheets } from '../../../sheets/earlier/earlierSheets.ts';
import { earlierSnapshot } from '../../../sheets/earlier/earlierSnapshot.ts';

/** The earlier results of a sheet of that name; `undefined` where none is named, or the workbook has it no longer. */
export function earlierIn(workbook: Workbook, name: string | null): Snapshot | undefined {
  const found = name === null ? undefined : earlierSheets(workbook).find(({ sheet }) => sheet.name === name);
  return found && earlierSnapshot(found);
}
