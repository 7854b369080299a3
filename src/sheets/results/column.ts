import { trips } from '../../audit/model/threshold.ts';
import type { Column as SheetColumn } from '../column.ts';
import type { FormulaId } from './formulas.ts';
import { givenStyle } from '../style/significant.ts';
import type { Line } from './line.ts';

/** A column of the results sheet. Its formula stands in lines that were worked out. */
export interface Column extends Omit<SheetColumn<Line>, 'formula'> {
  readonly formula?: FormulaId;
}

/** Columns under one caption. */
export interface Band {
  readonly caption: string;
  readonly columns: readonly Column[];
}

/** Styles of a level, and of a difference of levels, with the decimals of the line. */
export function level({ styles }: Line): string {
  return styles.level;
}

export function signed({ styles }: Line): string {
  return styles.signed;
}

/** The style of a number that was given. */
export function given(value: (line: Line) => number | null): (line: Line) => string {
  return (line) => givenStyle(value(line));
}

/** A yes or no as it stands on the sheet; `null` is nothing. */
export function yesOrNo(value: boolean | null): 'yes' | 'no' | null {
  if (value === null) return null;
  return value ? 'yes' : 'no';
}

export function isAxial({ channel }: Line): boolean {
  return channel.kind === 'axial';
}

/** Whether the ends of its current loop were measured. */
export function hasLoop({ channel }: Line): boolean {
  return channel.inputs.loop !== null;
}

/** Whether the listed sensitivity decides, so that the threshold's own numbers follow from the cells of its line. */
export function listedGoverns({ threshold }: Line): boolean {
  return threshold.governedBy === 'listed sensitivity';
}

/** Whether the listed sensitivity is the only evidence: what is drawn from all of it follows from the cells of the line. */
export function listedAlone({ threshold }: Line): boolean {
  return threshold.lines.length === 1;
}

/** Whether it is known where the threshold acts. */
export function acts({ threshold }: Line): boolean {
  return threshold.effective !== null;
}

/** Whether the machine's limit is checked: where the threshold trips. */
export function hasLimit({ threshold }: Line): boolean {
  return trips(threshold.name);
}

/**
 * Whether both zeros of a position are known, and its direction where they differ; without them nothing but lateness can be
 * told of it.
 */
export function hasZeros(line: Line): boolean {
  const { zeroConfigured, zeroMeasured, direction } = line.channel.inputs;
  if (!isAxial(line)) return true;
  if (zeroConfigured === null || zeroMeasured === null) return false;
  return direction !== null || zeroConfigured === zeroMeasured;
}

/** Whether a real level follows from the reading, or would once one is typed in. */
export function readingIsUsable(line: Line): boolean {
  return listedAlone(line) && hasZeros(line);
}
