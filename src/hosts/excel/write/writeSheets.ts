import { checkChart } from '../../../sheets/charts/check.ts';
import { namesOfTargets } from '../../../sheets/links.ts';
import type { SheetModel } from '../../../sheets/model.ts';
import { freeTableNames } from '../../formats/tableNames.ts';
import { rowFormula } from '../../formats/rowFormula.ts';
import { type Cancel, HostRefused, type OnProgress, type WrittenSheet } from '../../port/port.ts';
import type { Session } from '../session.ts';
import { type AddedSheets, addSheets } from './addSheets.ts';
import { blockJobs } from './block.ts';
import { writeCharts } from './charts/writeCharts.ts';
import { frameBytes, setFrame, setPrint } from './frame.ts';
import { doJobs, type Job } from './requests.ts';
import { entryRows } from './rows.ts';
import { preparedStyles } from './styles.ts';
import { freeNames } from '../../formats/reference.ts';

const failed = 'The sheets were not written';

/** What a run of sheets is written with. */
export interface SheetRun {
  readonly models: readonly SheetModel[];
  /** The sentence, without its full stop, that says what did not happen. */
  readonly failed: string;
  /** Sheets that make room once all is written: links name the sheets of the run as they are named then. */
  readonly going: ReadonlySet<string>;
  /** Hears the names of sheets that are being added, for what may be left half done. */
  readonly begun: (names: readonly string[]) => void;
  readonly onProgress?: OnProgress | undefined;
  readonly cancel?: Cancel | undefined;
}

/**
 * Adds result sheets behind the workbook's own, about one request for 3.5 MB of cells and four besides, three more where
 * there are charts. All or none: where one can't be finished, or the work is cancelled, those already added are deleted.
 * Print layout is set last and on its own: a computer without a printer may refuse it, and the sheets stay all the same.
 */
export async function writeSheets(
  session: Session,
  models: readonly SheetModel[],
  onProgress?: OnProgress,
  cancel?: Cancel,
): Promise<readonly WrittenSheet[]> {
  let names = models.map(({ name }) => name);
  const run: SheetRun = {
    models,
    failed,
    going: new Set(),
    begun: (given) => {
      names = [...given];
    },
    onProgress,
    cancel,
  };
  const write = async (context: Excel.RequestContext): Promise<readonly WrittenSheet[]> => {
    const added = await addFilled(session, context, run);
    activate(models, added);
    await print(context, models, added).catch(() => undefined);
    return models.map(({ name }, index) => ({ wanted: name, given: added.sheets[index]?.given ?? name }));
  };
  return session.run(
    failed,
    write,
    () => `Sheets that were begun may be there: delete ${listed(names)} first.`,
  );
}

/** Adds sheets under free names and fills them; those added are deleted again where that can't be finished. */
export async function addFilled(
  session: Session,
  context: Excel.RequestContext,
  run: SheetRun,
): Promise<AddedSheets> {
  const { models, cancel } = run;
  for (const { name, charts = [] } of models) for (const chart of charts) checkChart(chart, name);
  const wanted = models.map(({ name }) => name);
  const added = await addSheets(context, wanted, run.failed);
  for (const { id } of added.sheets) session.addedSheets.add(id);
  run.begun(added.sheets.map(({ given }) => given));
  try {
    await doJobs(context, jobsOf(run, added), cancel);
    if (added.manual) await calculate(context, added);
    await writeCharts(context, models, added, cancel);
  } catch (error) {
    await undoAddedSheets(context, added, run.failed, error);
    throw error;
  }
  return added;
}

/** Names as people read them one after the other. */
export function listed(names: readonly string[]): string {
  return names.map((name) => `“${name}”`).join(', ');
}

function* jobsOf(
  { models, going, onProgress }: SheetRun,
  { sheets, date1904, before }: AddedSheets,
): Generator<Job> {
  const given = new Map(
    models.map(({ name }, index): [string, string] => [name, sheets[index]?.given ?? name]),
  );
  const staying = before.sheets.filter((name) => !going.has(name));
  const names = sheets.map(({ given: name }) => name);
  const nameOf = namesOfTargets(models, going.size === 0 ? names : lastingNames(models, staying), staying);
  const tables = freeTableNames(
    models.map(({ name, table }) => table?.name ?? name),
    before.tables,
  );
  const total = models.reduce((sum, { rowCount }) => sum + rowCount, 0);
  let done = 0;
  const written = (rows: number): void => {
    done += rows;
    onProgress?.(done / total);
  };
  for (const [index, { sheet }] of sheets.entries()) {
    const model = models[index];
    if (model === undefined) continue;
    const rows = entryRows({
      sheet: model,
      styles: preparedStyles(model.styles),
      formulas: model.formulas.map((template) => rowFormula(template, given)),
      nameOf,
      date1904,
    });
    yield* blockJobs(sheet, rows, written);
    yield {
      bytes: frameBytes(model),
      queue: () => {
        setFrame(sheet, model, tables[index] ?? '');
      },
      halves: () => [],
    };
  }
}

/** Names of a run's sheets once nothing but these sheets stands beside them. */
export function lastingNames(models: readonly SheetModel[], staying: readonly string[]): readonly string[] {
  return freeNames(
    models.map(({ name }) => name),
    staying,
  );
}

/** Brings the sheet in front to the front, where a run has one. */
export function activate(models: readonly SheetModel[], { sheets }: AddedSheets): void {
  sheets[models.findIndex(({ inFront }) => inFront === true)]?.sheet.activate();
}

async function calculate(context: Excel.RequestContext, { sheets }: AddedSheets): Promise<void> {
  for (const { sheet } of sheets) sheet.calculate(false);
  await context.sync();
}

/** Sets how sheets are printed; a computer without a printer may refuse it. */
export async function print(
  context: Excel.RequestContext,
  models: readonly SheetModel[],
  { sheets }: AddedSheets,
): Promise<void> {
  sheets.forEach(({ sheet }, index) => {
    const model = models[index];
    if (model !== undefined) setPrint(sheet, model);
  });
  await context.sync();
}

/** Deletes added sheets after `cause` stopped the work. Where that fails too, the refusal names what is left over. */
export async function undoAddedSheets(
  context: Excel.RequestContext,
  { sheets }: AddedSheets,
  failed: string,
  cause: unknown,
): Promise<void> {
  const { worksheets } = context.workbook;
  try {
    const left = sheets.map(({ id }) => worksheets.getItemOrNullObject(id));
    await context.sync();
    for (const sheet of left) if (!sheet.isNullObject) sheet.delete();
    await context.sync();
  } catch {
    throw new HostRefused(
      `${failed}, and Excel did not let those begun be removed again. Delete the sheets ${listed(sheets.map(({ given }) => given))}, then try again.`,
      { cause },
    );
  }
}
