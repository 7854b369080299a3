import { cell } from '../cells.ts';
import type { ModelCell, ModelRow } from '../model.ts';
import type { Block } from './blockCells.ts';
import { stepFormulas } from './blockFormulas.ts';
import { columnOf, type PointColumn } from './columns.ts';
import type { ShownRecord } from './shown.ts';

type PointVerdict = 'within' | 'step out' | 'deviation out' | 'both out';

/** Slack for floating-point noise, as in the method's linear range. */
const slack = 1 + 1e-9;

/** Headers of the points, and a line for each; a step stands beside the point that it leads to. */
export function pointLines(block: Block): ModelRow[] {
  const { unit, gaps } = block.record;
  const headers: Readonly<Record<PointColumn, string>> = {
    gap: `Gap, ${unit}`,
    volts: 'Volts, V',
    ratedLine: 'Line of rated slope, V',
    fittedLine: 'Fitted line, V',
    step: `Step to here, mV/${unit}`,
    stepError: 'Step against rated',
    ratedDeviation: `Off the rated line, ${unit}`,
    fittedDeviation: `Off the fitted line, ${unit}`,
    verdict: 'Tolerance',
    middle: `Middle of the step, ${unit}`,
    leastStep: 'Least step',
    mostStep: 'Greatest step',
    leastDeviation: 'Least deviation',
    mostDeviation: 'Greatest deviation',
    offset: 'Volts off the rated slope',
  };
  return [
    { height: 30, cells: arranged(headers, (header) => cell(header, 'headerCentred')) },
    ...gaps.map((_, index) => pointLine(block, index)),
  ];
}

function pointLine(block: Block, index: number): ModelRow {
  const { record, places, worked, styles: looks, calculated, spelled } = block;
  const { gaps, volts, rated, tolerance, deviation } = record;
  const gap = gaps[index] ?? NaN;
  const step = index === 0 ? NaN : (worked.steps[index - 1] ?? NaN);
  const off = worked.ratedDeviations?.[index] ?? NaN;
  const own = stepFormulas(places.firstPoint + index);
  const on = (line: { readonly intercept: number; readonly sensitivity: number } | null) =>
    line && line.intercept - line.sensitivity * gap;
  const kc = rated ?? NaN;
  const cells: Readonly<Record<PointColumn, ModelCell | undefined>> = {
    gap: cell(gap, looks.gap),
    volts: cell(volts[index] ?? null, 'millivolts'),
    ratedLine: calculated(on(worked.rated), 'millivolts', 'ratedLine'),
    fittedLine: calculated(on(worked.fitted), 'millivolts', 'fittedLine'),
    step: spelled(step, looks.sensitivity, own.step),
    stepError: calculated(step / kc - 1, 'signedPercent', 'stepError'),
    ratedDeviation: calculated(off, looks.deviation, 'ratedDeviation'),
    fittedDeviation: calculated(worked.fittedDeviations?.[index] ?? NaN, looks.deviation, 'fittedDeviation'),
    verdict: rated === null ? undefined : calculated(pointVerdict(record, step, off), 'centred', 'verdict'),
    middle: index === 0 ? undefined : spelled(((gaps[index - 1] ?? NaN) + gap) / 2, looks.gap, own.middle),
    leastStep: calculated(kc * (1 - tolerance), looks.sensitivity, 'leastStep'),
    mostStep: calculated(kc * (1 + tolerance), looks.sensitivity, 'mostStep'),
    leastDeviation: calculated(-deviation, looks.deviation, 'leastDeviation'),
    mostDeviation: calculated(deviation, looks.deviation, 'mostDeviation'),
    offset: calculated((volts[index] ?? NaN) + (kc * gap) / 1000, 'millivolts', 'offset'),
  };
  return { cells: arranged(cells, (own) => own) };
}

function arranged<Entry>(
  entries: Readonly<Record<PointColumn, Entry>>,
  cellOf: (entry: Entry) => ModelCell | undefined,
): (ModelCell | undefined)[] {
  const cells: (ModelCell | undefined)[] = [];
  for (const column of Object.keys(entries) as PointColumn[]) {
    cells[columnOf(column) - 1] = cellOf(entries[column]);
  }
  return Array.from(cells);
}

/**
 * Whether the step that leads to a point, in mV per gap unit, and the point's deviation from the line of rated slope,
 * in gap units, are within tolerance. `NaN`, a first point without a step, counts as within.
 */
function pointVerdict(
  { rated, tolerance, deviation }: Pick<ShownRecord, 'rated' | 'tolerance' | 'deviation'>,
  step: number,
  off: number,
): PointVerdict {
  const stepOut = Math.abs(step - (rated ?? NaN)) > tolerance * (rated ?? NaN) * slack;
  const pointOut = Math.abs(off) > deviation * slack;
  if (stepOut) return pointOut ? 'both out' : 'step out';
  return pointOut ? 'deviation out' : 'within';
}
