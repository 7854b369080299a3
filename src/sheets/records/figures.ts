import { cell } from '../cells.ts';
import type { ModelCell, ModelRow, ModelValue } from '../model.ts';
import type { Block } from './blockCells.ts';
import { leftFigures, rightFigures } from './blockFormulas.ts';
import { figureRows } from './places.ts';

type Figure = readonly [label: string, value: ModelCell | undefined, unit: string];

/** Key figures in two lists: what was measured, and what it is judged by. */
export function figureLines(block: Block): ModelRow[] {
  const left = measured(block);
  const right = judgedBy(block);
  return Array.from({ length: figureRows }, (_, index): ModelRow => {
    const [label, value, unit] = left[index] ?? ['', undefined, ''];
    const [otherLabel, otherValue, otherUnit] = right[index] ?? ['', undefined, ''];
    return {
      cells: [
        cell(label, 'text'),
        undefined,
        undefined,
        value,
        cell(unit, 'unit'),
        cell(otherLabel, 'text'),
        undefined,
        otherValue,
        cell(otherUnit, 'unit'),
      ],
    };
  });
}

function measured({ record, worked, styles: looks, calculated }: Block): readonly Figure[] {
  const { unit, gaps, fitted } = record;
  const { line } = worked;
  const found: Record<keyof typeof leftFigures, Figure> = {
    average: [
      'Average sensitivity (least squares)',
      calculated(line && -1000 * line.slope, 'key', 'average'),
      `mV/${unit}`,
    ],
    averageUncertainty: [
      'its standard uncertainty',
      calculated(line && 1000 * line.slopeUncertainty, 'small', 'averageUncertainty'),
      `mV/${unit}`,
    ],
    intercept: ['Intercept: volts at gap 0', calculated(line && line.intercept, 'fine', 'intercept'), 'V'],
    interceptUncertainty: [
      'its standard uncertainty',
      calculated(line && line.interceptUncertainty, 'small', 'interceptUncertainty'),
      'V',
    ],
    residual: [
      'Residual standard deviation',
      calculated(line && 1000 * line.residualDeviation, 'fine', 'residual'),
      'mV',
    ],
    correlation: [
      'Correlation of gap and volts',
      calculated(worked.correlation, 'correlation', 'correlation'),
      '',
    ],
    fitFrom: ['Fitted from gap', calculated(gaps[fitted.first] ?? null, looks.gap, 'fitFrom'), unit],
    fitTo: ['to gap', calculated(gaps[fitted.last] ?? null, looks.gap, 'fitTo'), unit],
  };
  return inOrder(leftFigures, found);
}

function judgedBy({ record, worked, styles: looks, calculated }: Block): readonly Figure[] {
  const { unit, linear } = record;
  const given = (value: ModelValue, style: string) => cell(value, style);
  const found: Record<keyof typeof rightFigures, Figure> = {
    rated: ['Rated sensitivity', given(record.rated, 'input'), `mV/${unit}`],
    tolerance: ['Tolerance of a step', given(record.tolerance, 'inputPercent'), 'of rated'],
    deviation: ['Tolerance of the deviation', given(record.deviation, 'input'), unit],
    ratedIntercept: [
      'Line of rated slope at gap 0',
      calculated(worked.rated && worked.rated.intercept, 'fine', 'ratedIntercept'),
      'V',
    ],
    linearFrom: [
      'Linear range from gap',
      linear ? given(linear.from, looks.gap) : given('none', 'right'),
      unit,
    ],
    linearTo: ['to gap', linear ? given(linear.to, looks.gap) : undefined, unit],
    gapVoltage: ['Gap voltage in service', given(record.gapVoltage, 'volts'), 'V'],
    operatingGap: ['Operating gap on the curve', given(record.operatingGap, looks.gap), unit],
  };
  return inOrder(rightFigures, found);
}

function inOrder<Id extends string>(
  rows: Readonly<Record<Id, number>>,
  found: Readonly<Record<Id, Figure>>,
): readonly Figure[] {
  const ids = Object.keys(rows) as Id[];
  return ids.sort((one, other) => rows[one] - rows[other]).map((id) => found[id]);
}
