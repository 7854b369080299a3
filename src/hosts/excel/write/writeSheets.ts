import { checkChart } from '../../../sheets/charts/check.ts';
import type { SheetModel } from '../../../sheets/model.ts';
import { rowFormula } from '../../formats/rowFormula.ts';
import { type Cancel, HostRefused, type OnProgress, type WrittenSheet } from '../../port/port.ts';
import type { Session } from '../session.ts';
import { type AddedSheets, addSheets } from './addSheets.ts';
import { blockJobs } from './block.ts';
import { writeCharts } from './charts/writeCharts.ts';
import { frameBytes, setFrame } from './frame.ts';
import { setPrint } from './print.ts';
import { doJobs, type Job } from './requests.ts';
import { entryRows } from './rows.ts';
import { preparedStyles } from './styles.ts';

const failed = 'The sheets were not written';

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
  for (const { name, charts = [] } of models) for (const chart of charts) checkChart(chart, name);
  return session.run(failed, async (context) => {
    const added = await addSheets(
      context,
      models.map(({ name }) => name),
      failed,
    );
    for (const { id } of added.sheets) session.addedSheets.add(id);
    try {
      await doJobs(context, jobsOf(models, added, onProgress), cancel);
      if (added.manual) await calculate(context, added);
      await writeCharts(context, models, added, cancel);
    } catch (error) {
      await remove(context, added, error);
      throw error;
    }
    await print(context, models, added).catch(() => undefined);
    return models.map(({ name }, index) => ({ wanted: name, given: added.sheets[index]?.given ?? name }));
  });
}

function* jobsOf(
  models: readonly SheetModel[],
  { sheets, date1904 }: AddedSheets,
  onProgress: OnProgress | undefined,
): Generator<Job> {
  const given = new Map(
    models.map(({ name }, index): [string, string] => [name, sheets[index]?.given ?? name]),
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
      date1904,
    });
    yield* blockJobs(sheet, rows, written);
    yield {
      bytes: frameBytes(model),
      queue: () => {
        setFrame(sheet, model);
      },
      halves: () => [],
    };
  }
}

async function calculate(context: Excel.RequestContext, { sheets }: AddedSheets): Promise<void> {
  for (const { sheet } of sheets) sheet.calculate(false);
  await context.sync();
}

async function print(
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
async function remove(context: Excel.RequestContext, { sheets }: AddedSheets, cause: unknown): Promise<void> {
  const { worksheets } = context.workbook;
  try {
    const left = sheets.map(({ id }) => worksheets.getItemOrNullObject(id));
    await context.sync();
    for (const sheet of left) if (!sheet.isNullObject) sheet.delete();
    await context.sync();
  } catch {
    const names = sheets.map(({ given }) => `“${given}”`).join(', ');
    throw new HostRefused(
      `${failed}, and Excel did not let those begun be removed again. Delete the sheets ${names}, then try again.`,
      { cause },
    );
  }
}
