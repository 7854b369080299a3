import {
  type ICellData,
  type IStyleData,
  type Nullable,
  type Workbook,
  BooleanNumber,
  WrapStrategy,
} from '@univerjs/core';
import type { StyleEdit, StyleChange } from '../../hosts/file/patch/types.ts';
import type { ViewCell, ViewStyle } from '../../hosts/file/view/types.ts';
import { styleOf } from '../../hosts/grid/grid.ts';
import { gridStyle } from '../open/gridStyle.ts';
import { styleId } from '../open/gridWorkbook.ts';
import { acrossOf, downOf, hexOf } from './fileStyle.ts';

/** How a cell's look changed since the file was opened. */
interface ChangedStyle {
  readonly edit?: Omit<StyleEdit, 'row' | 'column'> | undefined;
  /** It has something that is not saved. */
  readonly isBeyond: boolean;
}

/** Compares a cell of the file, where it has one, with what stands in its place in the grid. */
export type StyleComparer = (before: ViewCell | undefined, now: Nullable<ICellData>) => ChangedStyle;

const same: ChangedStyle = { isBeyond: false };

/**
 * Compares looks by what they show: the grid gives one number to all of its looks that are alike, though the file's may
 * differ in what the grid does not know. `count` of the styles are the file's.
 */
export function styleComparer(book: Workbook, styles: readonly ViewStyle[], count: number): StyleComparer {
  const numbers = new Map(styles.slice(0, count).map((_, index) => [styleId(index), index]));
  const shown = styles.map(gridStyle);
  return (before, now) => {
    const id = now ? now.s : undefined;
    if (before && id === styleId(before.style)) return { isBeyond: hasStylesInside(now) };
    if (id === null || id === undefined) {
      return before && before.style !== 0 ? { edit: { style: 0 }, isBeyond: false } : same;
    }
    const look: IStyleData = styleOf(book, now) ?? {};
    const isBeyond = isBeyondSaving(look) || hasStylesInside(now);
    const style = typeof id === 'string' ? numbers.get(id) : undefined;
    if (!before && style !== undefined) return { edit: style === 0 ? undefined : { style }, isBeyond };
    const change = changeOfStyle((before && shown[before.style]) ?? {}, look);
    return { edit: change && { change }, isBeyond };
  };
}

/** Whether some words of a cell look different from the others. */
function hasStylesInside(cell: Nullable<ICellData>): boolean {
  const runs = cell?.p?.body?.textRuns ?? [];
  return runs.some(({ ts }) => ts && Object.keys(ts).length > 0);
}

/** What a look of the grid has become, as far as the file's styles can say it; `undefined` where it is as it was. */
function changeOfStyle(before: IStyleData, now: IStyleData): StyleChange | undefined {
  const [old, look] = [properties(before), properties(now)];
  const changed = Object.entries(look).filter(
    ([name, value]) => value !== undefined && value !== old[name as keyof StyleChange],
  );
  return changed.length === 0 ? undefined : Object.fromEntries(changed);
}

/** Whether a look has something that is not saved: borders of its own, a turned text. */
function isBeyondSaving({ bd: borders, tr: turn }: IStyleData): boolean {
  return Object.values(borders ?? {}).some(Boolean) || (turn?.a ?? 0) !== 0 || turn?.v === BooleanNumber.TRUE;
}

/** All of a look; a font or size that it leaves open is `undefined`. */
function properties(look: IStyleData): {
  readonly [Name in keyof StyleChange]: StyleChange[Name] | undefined;
} {
  const isOn = (flag: BooleanNumber | undefined): boolean => flag === BooleanNumber.TRUE;
  return {
    numberFormat: look.n?.pattern ?? 'General',
    font: look.ff ?? undefined,
    size: look.fs,
    bold: isOn(look.bl),
    italic: isOn(look.it),
    underline: isOn(look.ul?.s),
    strike: isOn(look.st?.s),
    color: hexOf(look.cl?.rgb) ?? null,
    fill: hexOf(look.bg?.rgb) ?? null,
    align: acrossOf(look),
    valign: downOf(look),
    wrap: look.tb === WrapStrategy.WRAP,
  };
}
