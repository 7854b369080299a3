import { cell } from '../cells.ts';
import { capital } from '../../audit/model/wording.ts';
import { decimalsFor } from '../look/significant.ts';
import type { ModelRow } from '../model.ts';
import type { Block } from './blockCells.ts';
import type { ShownThreshold } from './shown.ts';

/** Headers of the thresholds and a line for each: the simple formula beside the curve. */
export function thresholdLines(block: Block): ModelRow[] {
  const { thresholds, unit, levelUnit } = block.record;
  const headers = [
    'Threshold',
    'Multiplier m',
    `Setpoint S, ${levelUnit}`,
    `Configured Kc, mV/${unit}`,
    `Measured Km, mV/${unit}`,
    'Acts at: simple',
    'Acts at: on the curve',
    'Curve against simple',
    'Most the record can show',
  ];
  if (thresholds.length === 0) return [{ cells: [cell('No threshold to put on the curve', 'quiet')] }];
  const shifted = thresholds.some(({ zeroShift }) => zeroShift !== 0);
  return [
    {
      height: 30,
      cells: [
        ...headers.map((header, index) => cell(header, index === 0 ? 'header' : 'headerCentred')),
        undefined,
        shifted ? cell('Shift by the zero', 'headerCentred') : undefined,
      ],
    },
    ...thresholds.map((threshold) => thresholdLine(block, threshold)),
  ];
}

function thresholdLine({ looks, calculated }: Block, threshold: ShownThreshold): ModelRow {
  const { name, multiplier, setpoint, configured, measured, zeroShift, simple, onCurve } = threshold;
  const level = `level${decimalsFor(setpoint)}`;
  const difference = simple === null || onCurve === null ? null : onCurve / simple - 1;
  return {
    cells: [
      cell(capital(name), 'strong'),
      cell(multiplier, 'factor'),
      cell(setpoint, level),
      cell(configured, looks.sensitivity),
      cell(measured, looks.sensitivity),
      calculated(simple, level, 'simple'),
      onCurve === null ? cell('not shown', 'right') : cell(onCurve, level),
      calculated(difference, 'signedPercent', 'difference'),
      cell(threshold.largestIndicated, level),
      undefined,
      zeroShift === 0 ? undefined : cell(zeroShift, level),
    ],
  };
}
