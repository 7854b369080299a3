import type { Session } from './session.ts';

/**
 * Calls back with the sheet's name after someone changes cells: the user, a colleague or another program, but not this add-in.
 * Many changes at once are one call a sheet. The returned function stops it.
 */
export function onChange(session: Session, listener: (sheet: string) => void): Promise<() => void> {
  const changed = new Set<string>();
  let asking = false;
  let stopped = false;

  const report = async (): Promise<void> => {
    asking = true;
    try {
      while (changed.size > 0) {
        const ids = [...changed];
        changed.clear();
        const names = await namesOf(session, ids);
        if (!stopped) names.forEach(listener);
      }
    } finally {
      asking = false;
    }
  };

  return session.run('Changes of the sheets can’t be followed', async (context) => {
    const registration = context.workbook.worksheets.onChanged.add((event) => {
      if (event.triggerSource !== 'ThisLocalAddin' && !session.addedSheets.has(event.worksheetId)) {
        changed.add(event.worksheetId);
        // What can't be told now is told with the next change.
        if (!asking) report().catch(() => undefined);
      }
      return Promise.resolve();
    });
    await context.sync();
    return () => {
      stopped = true;
      registration.remove();
      registration.context.sync().catch(() => undefined);
    };
  });
}

/** Names of sheets by their ids, without those that are gone. */
function namesOf(session: Session, ids: readonly string[]): Promise<string[]> {
  return session.run('Changes of the sheets can’t be followed', async (context) => {
    const sheets = ids.map((id) => context.workbook.worksheets.getItemOrNullObject(id));
    for (const sheet of sheets) sheet.load('name');
    await context.sync();
    return sheets.filter((sheet) => !sheet.isNullObject).map((sheet) => sheet.name);
  });
}
