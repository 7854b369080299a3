import type { SheetModel } from '../../../sheets/model.ts';
import { freeTableNames } from '../../formats/tableNames.ts';
import { type Cancel, HostRefused, type OnProgress, type WrittenSheet } from '../../port/port.ts';
import { refusalOf } from '../refusal.ts';
import type { Session } from '../session.ts';
import type { AddedSheets } from './addSheets.ts';
import { activate, addFilled, lastingNames, listed, print, undoAddedSheets } from './writeSheets.ts';

const failed = 'The sheets were not replaced';

/** New sheets that are written in full, and what they are called once the old ones are gone. */
interface Exchange {
  readonly added: AddedSheets;
  readonly names: readonly string[];
  /** Ids of the sheets to go, and their names. */
  readonly old: ReadonlyMap<string, string>;
}

/**
 * Writes result sheets and then deletes those that they replace: the new ones are there in full, under free names, before
 * the first old one goes, and get their names with the request that deletes them. Where they can't be written nothing
 * is deleted.
 */
export async function replaceSheets(
  session: Session,
  going: readonly string[],
  models: readonly SheetModel[],
  onProgress?: OnProgress,
  cancel?: Cancel,
): Promise<readonly WrittenSheet[]> {
  let begun = models.map(({ name }) => name);
  const heard = (names: readonly string[]): void => {
    begun = [...names];
  };
  const half = (): string =>
    `New sheets may be there as ${listed(begun)}, or so without the number once the earlier ones are gone: look at the sheets before you try again.`;
  const replace = async (context: Excel.RequestContext): Promise<readonly WrittenSheet[]> => {
    const run = { models, failed, going: new Set(going), begun: heard, onProgress, cancel };
    const added = await addFilled(session, context, run);
    const exchange = await exchanging(context, models, added, going).catch(async (error: unknown) => {
      await undoAddedSheets(context, added, failed, error);
      throw error;
    });
    try {
      await context.sync();
    } catch (error) {
      await settle(context, exchange, error, half());
    }
    activate(models, added);
    await print(context, models, added).catch(() => undefined);
    return models.map(({ name }, index) => ({ wanted: name, given: exchange.names[index] ?? name }));
  };
  return session.run(failed, replace, half);
}

/** Asks for all that makes new sheets take the place of old ones, to be carried out by the next request. */
async function exchanging(
  context: Excel.RequestContext,
  models: readonly SheetModel[],
  added: AddedSheets,
  going: readonly string[],
): Promise<Exchange> {
  const { worksheets } = context.workbook;
  worksheets.load('items/id,items/name');
  await context.sync();
  const ours = new Set(added.sheets.map(({ id }) => id));
  const others = worksheets.items.filter(({ id }) => !ours.has(id));
  const old = others.filter(({ name }) => going.includes(name));
  for (const { tables } of [...old, ...added.sheets.map(({ sheet }) => sheet)]) tables.load('items/name');
  await context.sync();
  const staying = others.filter((sheet) => !old.includes(sheet)).map(({ name }) => name);
  const names = lastingNames(models, staying);
  const freed = new Set(old.flatMap(({ tables }) => tables.items.map(({ name }) => name)));
  const tableNames = freeTableNames(
    models.map(({ name, table }) => table?.name ?? name),
    added.before.tables.filter((name) => !freed.has(name)),
  );
  const oldNames = new Map(old.map(({ id, name }) => [id, name]));
  for (const sheet of old) sheet.delete();
  for (const [index, { sheet, given }] of added.sheets.entries()) {
    const name = names[index] ?? given;
    if (name !== given) sheet.name = name;
    for (const table of sheet.tables.items) table.name = tableNames[index] ?? table.name;
  }
  return { added, names, old: oldNames };
}

/**
 * After the exchange was refused: nothing of it happened, and the new sheets are taken away again; or all of it, and only
 * the answer was lost; or a part, and the refusal says which.
 */
async function settle(
  context: Excel.RequestContext,
  { added, names, old }: Exchange,
  cause: unknown,
  half: string,
): Promise<void> {
  const { worksheets } = context.workbook;
  try {
    worksheets.load('items/id,items/name');
    await context.sync();
  } catch {
    throw refusalOf(cause, failed, half);
  }
  const now = new Map(worksheets.items.map(({ id, name }) => [id, name]));
  const left = [...old].filter(([id]) => now.has(id)).map(([, name]) => name);
  const given = added.sheets.map(({ id, given: name }) => now.get(id) ?? name);
  if (left.length === old.size && old.size > 0) {
    await undoAddedSheets(context, added, failed, cause);
    throw refusalOf(cause, failed, 'The earlier sheets are as they were.');
  }
  if (left.length === 0 && given.every((name, index) => name === names[index])) return;
  const kept = left.length === 0 ? '' : ` Delete ${listed(left)} by hand.`;
  throw new HostRefused(`The new sheets are there as ${listed(given)}.${kept}`, { cause });
}
