import { finite } from '../cells.ts';
import type { ModelValue } from '../model.ts';
import type { FormulaId } from './formulas.ts';
import type { Line } from './line.ts';
import { trips } from '../../audit/model/threshold.ts';

/** A column of the results sheet. */
export interface Column {
  readonly id: string;
  readonly header: string;
  readonly width: number;
  readonly value: (line: Line) => ModelValue;
  readonly style: string | ((line: Line) => string);
  /** Native formula in lines that were worked out; `value` is then the result stored beside it. */
  readonly formula?: FormulaId;
  /** Lines to which the formula applies; all that were worked out where left out. */
  readonly applies?: (line: Line) => boolean;
}

/** Columns under one caption. */
export interface Band {
  readonly caption: string;
  readonly columns: readonly Column[];
}

/** Styles of a level, and of a difference of levels, with the decimals of the line. */
export function level(line: Line): string {
  return `level${line.levels}`;
}

export function signed(line: Line): string {
  return `signed${line.levels}`;
}

export function sensitivity(line: Line): string {
  return `level${line.sensitivities}`;
}

export function isAxial({ channel }: Line): boolean {
  return channel.kind === 'axial';
}

/** Whether the machine's limit is checked: where the threshold trips. */
export function hasLimit({ threshold }: Line): boolean {
  return trips(threshold.name);
}

/** Whether a real level follows from the reading, or would once one is typed in. */
export function readingIsUsable({ channel }: Line): boolean {
  const { reading, realReading } = channel.inputs;
  return reading === null || finite(realReading) !== null;
}
