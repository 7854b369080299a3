import type { ChartCells, ChartModel } from '../../../../sheets/charts/model.ts';
import type { SheetModel } from '../../../../sheets/model.ts';
import { reference } from '../../../formats/reference.ts';
import { type Cancel, HostRefused } from '../../../port/port.ts';
import type { AddedSheets } from '../addSheets.ts';
import { doJobs, type Job } from '../requests.ts';
import { addChart, type AddedChart, draw } from './draw.ts';
import { setLooks } from './looks.ts';

/** A chart on its way into the workbook; `added` once Excel has made it. */
interface Charting {
  readonly model: ChartModel;
  readonly sheet: Excel.Worksheet;
  readonly rangeOf: (cells: ChartCells) => Excel.Range;
  added?: AddedChart;
}

/**
 * Puts the charts over sheets that are written: a request for charts as Excel makes them, one for what they draw, one for
 * their looks, more where those grow large. Looks may be refused, and the charts stay as Excel draws them. Alternative
 * texts are not set: Excel’s interface has none for charts. Throws an Error for cells of a sheet that is not of this run.
 */
export async function writeCharts(
  context: Excel.RequestContext,
  models: readonly SheetModel[],
  added: AddedSheets,
  cancel: Cancel | undefined,
): Promise<void> {
  const charts = chartings(models, added);
  if (charts.length === 0) return;
  const jobs = (bytes: (model: ChartModel) => number, queue: (one: Charting) => void): Job[] =>
    charts.map((one) => ({
      bytes: bytes(one.model),
      queue: () => {
        queue(one);
      },
      halves: () => [],
    }));

  const adding = jobs(
    () => 2_000,
    (one) => {
      one.added = addChart(one.sheet, one.model, one.rangeOf);
    },
  );
  await doJobs(context, adding, cancel);
  const drawing = jobs(
    ({ series }) => 6_000 + series.length * 3_000,
    ({ added: chart, model, rangeOf }) => {
      if (chart) draw(chart, model, rangeOf);
    },
  );
  await doJobs(context, drawing, cancel);
  const looks = jobs(
    ({ series }) => 6_000 + series.length * 3_000,
    ({ added: chart, model }) => {
      if (chart) setLooks(chart.chart, model);
    },
  );
  await doJobs(context, looks, cancel).catch((error: unknown) => {
    if (error instanceof HostRefused) throw error;
  });
}

function chartings(models: readonly SheetModel[], { sheets }: AddedSheets): Charting[] {
  return models.flatMap(({ charts = [], name }, index) => {
    const sheet = sheets[index]?.sheet;
    if (!sheet) return [];
    const sheetOf = ({ sheet: wanted }: ChartCells): Excel.Worksheet => {
      const found =
        wanted === undefined ? sheet : sheets[models.findIndex((one) => one.name === wanted)]?.sheet;
      if (found) return found;
      throw new Error(`a chart of sheet "${name}" names the sheet "${wanted ?? ''}", which is not written`);
    };
    const rangeOf = (cells: ChartCells): Excel.Range => sheetOf(cells).getRange(reference(cells.area));
    return charts.map((model): Charting => ({ model, sheet, rangeOf }));
  });
}
