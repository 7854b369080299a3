import { follow } from './follow.ts';
import type { Session } from './session.ts';

const failed = 'Changes of the sheets can’t be followed';

/**
 * Calls back with the sheet's name after someone changes cells: the user, a colleague or another program, but not this add-in.
 * Many changes at once are one call a sheet. The returned function stops it.
 */
export function onChange(session: Session, listener: (sheet: string) => void): Promise<() => void> {
  const changed = new Set<string>();
  return follow<Excel.WorksheetChangedEventArgs>(
    session,
    failed,
    ({ worksheets }) => worksheets.onChanged,
    ({ triggerSource, worksheetId }) => {
      if (triggerSource === 'ThisLocalAddin' || session.addedSheets.has(worksheetId)) return false;
      changed.add(worksheetId);
      return true;
    },
    async () => {
      const ids = [...changed];
      changed.clear();
      const names = await namesOf(session, ids);
      return () => {
        names.forEach(listener);
      };
    },
  );
}

/** Names of sheets by their ids, without those that are gone. */
function namesOf(session: Session, ids: readonly string[]): Promise<string[]> {
  return session.run(failed, async (context) => {
    const sheets = ids.map((id) => context.workbook.worksheets.getItemOrNullObject(id));
    for (const sheet of sheets) sheet.load('name');
    await context.sync();
    return sheets.filter((sheet) => !sheet.isNullObject).map((sheet) => sheet.name);
  });
}
