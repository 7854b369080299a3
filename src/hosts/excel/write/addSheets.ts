import { freeNames } from '../../formats/reference.ts';
import { HostRefused } from '../../port/port.ts';
import { askForDate1904 } from '../read/outline.ts';
import { codeOf, refusalOf } from '../refusal.ts';

/** Empty sheets of ours, and what must be known of the workbook to fill them. */
export interface AddedSheets {
  readonly sheets: readonly {
    readonly sheet: Excel.Worksheet;
    readonly id: string;
    readonly given: string;
  }[];
  readonly date1904: boolean;
  /** Names of the workbook's sheets before, and those that tables and defined names have. */
  readonly before: { readonly sheets: readonly string[]; readonly tables: readonly string[] };
  /** Excel calculates only when the user asks it to. */
  readonly manual: boolean;
}

/** How often other names are tried: a chart sheet's name is taken too, but Excel does not list it. */
const attempts = 3;

/** Adds empty sheets behind the others, under free names. Adds all or none; refused where the workbook's structure is protected. */
export async function addSheets(
  context: Excel.RequestContext,
  wanted: readonly string[],
  failed: string,
): Promise<AddedSheets> {
  const { workbook, application } = context;
  const { worksheets } = workbook;
  worksheets.load('items/id,items/name');
  workbook.tables.load('items/name');
  workbook.names.load('items/name');
  workbook.protection.load('protected');
  application.load('calculationMode');
  const isDate1904 = askForDate1904(context);
  await context.sync();
  if (workbook.protection.protected) {
    throw new HostRefused(
      `${failed}. The workbook’s structure is protected, so no sheet can be added. Switch off “Protect Workbook” on the Review tab, or work in a copy, then try again.`,
    );
  }
  const before = {
    ids: new Set(worksheets.items.map(({ id }) => id)),
    names: worksheets.items.map(({ name }) => name),
  };
  return {
    sheets: await addFreely(context, wanted, before, attempts, failed),
    date1904: isDate1904(),
    before: {
      sheets: before.names,
      tables: [...workbook.tables.items, ...workbook.names.items].map(({ name }) => name),
    },
    manual: application.calculationMode === 'Manual',
  };
}

interface SheetsBefore {
  readonly ids: ReadonlySet<string>;
  readonly names: readonly string[];
}

async function addFreely(
  context: Excel.RequestContext,
  wanted: readonly string[],
  before: SheetsBefore,
  left: number,
  failed: string,
): Promise<AddedSheets['sheets']> {
  const names = freeNames(wanted, before.names);
  const sheets = names.map((name) => {
    const sheet = context.workbook.worksheets.add(name);
    sheet.load('id');
    return { sheet, given: name };
  });
  try {
    await context.sync();
  } catch (error) {
    try {
      await removeEmpty(context, new Set(names), before.ids);
    } catch {
      const left = names.map((name) => `“${name}”`).join(', ');
      throw refusalOf(
        error,
        failed,
        `Some of the sheets ${left} may have been added: delete those that are empty.`,
      );
    }
    if (codeOf(error) !== 'ItemAlreadyExists' || left <= 1) throw error;
    return addFreely(context, wanted, { ...before, names: [...before.names, ...names] }, left - 1, failed);
  }
  return sheets.map(({ sheet, given }) => ({ sheet, id: sheet.id, given }));
}

/** Takes away sheets that were added under these names before Excel refused the next one, if nobody has written on them. */
async function removeEmpty(
  context: Excel.RequestContext,
  names: ReadonlySet<string>,
  before: ReadonlySet<string>,
): Promise<void> {
  const { worksheets } = context.workbook;
  worksheets.load('items/id,items/name');
  await context.sync();
  const added = worksheets.items
    .filter(({ id, name }) => names.has(name) && !before.has(id))
    .map((sheet) => ({ sheet, used: sheet.getUsedRangeOrNullObject(true) }));
  for (const { used } of added) used.load('cellCount');
  await context.sync();
  for (const { sheet, used } of added) if (used.isNullObject) sheet.delete();
  await context.sync();
}
