import { type CellPlace, HostRefused } from '../../port/port.ts';
import { refersTo } from '../../formats/sheetReference.ts';
import { askForFormulas } from '../formulas/askForFormulas.ts';
import { readOutline } from '../read/outline.ts';
import { readPieces, tripsOf } from '../read/pieces.ts';
import type { Session } from '../session.ts';

const failed = 'No sheet was removed';

/** Deletes sheets, all or none; refused where the workbook's structure is protected or no other sheet would be seen. */
export async function removeSheets(session: Session, names: readonly string[]): Promise<void> {
  await session.run(failed, async (context) => {
    const { worksheets, protection } = context.workbook;
    worksheets.load('items/name,items/visibility');
    protection.load('protected');
    await context.sync();
    if (protection.protected) {
      throw new HostRefused(
        `${failed}. The workbook’s structure is protected. Switch off “Protect Workbook” on the Review tab, then try again.`,
      );
    }
    const going = worksheets.items.filter(({ name }) => names.includes(name));
    if (worksheets.items.every((sheet) => going.includes(sheet) || sheet.visibility !== 'Visible')) {
      throw new HostRefused(
        `${failed}. The workbook would hold no other sheet to be seen. Add or unhide a sheet of yours, then try again.`,
      );
    }
    for (const sheet of going) sheet.delete();
    await context.sync();
  });
}

/** Cells of other sheets whose formulas refer to these sheets or to tables on them. */
export async function referencesTo(
  session: Session,
  names: readonly string[],
): Promise<readonly CellPlace[]> {
  return session.run('It could not be told what refers to the sheets', async (context) => {
    const { sheets } = await readOutline(context);
    const going = sheets.filter(({ name }) => names.includes(name));
    for (const { sheet } of going) sheet.tables.load('items/name');
    await context.sync();
    const tables = going.flatMap(({ sheet }) => sheet.tables.items.map(({ name }) => name));
    const found: CellPlace[] = [];
    const others = sheets.filter(({ name }) => !names.includes(name));
    for (const trip of tripsOf(others)) {
      await readPieces(context, trip, askForFormulas, ({ sheet, top }, { formulas }) => {
        formulas.forEach((row, rowIndex) => {
          row.forEach((formula, columnIndex) => {
            if (typeof formula !== 'string' || !formula.startsWith('=')) return;
            if (!refersTo(formula, { sheets: names, tables })) return;
            found.push({ sheet: sheet.name, row: top + rowIndex, column: sheet.used.left + columnIndex });
          });
        });
      });
    }
    return found;
  });
}
