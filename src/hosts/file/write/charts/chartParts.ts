import type { ChartCells, ChartModel } from '../../../../sheets/charts/model.ts';
import type { SheetModel } from '../../../../sheets/model.ts';
import type { Dialect } from '../package/namespaces.ts';
import type { PlannedSheet } from '../package/plannedParts.ts';
import { relationshipsOf, relationshipsText } from '../package/relationships.ts';
import { chartPart } from './chartPart.ts';
import { drawingPart } from './drawingPart.ts';
import type { ValuesWatch } from './drawnValues.ts';
import { referencesOf } from './references.ts';

/** The relationship by which a sheet reaches its drawing. */
export const drawingId = 'rId1';

/** A part ready to be put into the package. */
export interface ChartingPart {
  readonly name: string;
  readonly text: string;
}

/**
 * The parts that a sheet's charts need, one after the other: its link to the drawing, the drawing, the charts. All rows
 * of all sheets must have been written, so that `watch` knows what the charts draw; `nameOf` gives the
 * real name of the sheet on which cells stand.
 */
export function* chartParts(
  sheet: SheetModel,
  planned: PlannedSheet,
  dialect: Dialect,
  nameOf: (cells: ChartCells) => string,
  watch: ValuesWatch,
): Generator<ChartingPart> {
  const { drawing, charts } = planned;
  const models: readonly ChartModel[] = sheet.charts ?? [];
  if (drawing === undefined) return;
  const kind = (name: string): string => `${dialect.relationships}/${name}`;
  yield {
    name: relationshipsOf(planned.sheet),
    text: relationshipsText([{ id: drawingId, type: kind('drawing'), part: drawing }]),
  };
  yield { name: drawing, text: drawingPart(models, dialect) };
  yield {
    name: relationshipsOf(drawing),
    text: relationshipsText(
      charts.map((part, index) => ({ id: `rId${index + 1}`, type: kind('chart'), part })),
    ),
  };
  const references = referencesOf(nameOf, (cells) => watch.valuesOf(cells, sheet));
  for (const [index, chart] of models.entries()) {
    yield { name: charts[index] ?? '', text: chartPart(chart, references, dialect) };
  }
}
