import type { Cell } from '../../../src/cells/cell.ts';
import type { Area, Sheet, Workbook } from '../../../src/cells/sheet.ts';
import { applyMerges } from '../../../src/hosts/formats/merges.ts';
import type { Grade } from '../judge/outcome.ts';
import {
  type BookTruth,
  type ChannelPlace,
  type ChannelTruth,
  type FieldTruth,
  verdictOf,
} from '../truth.ts';

/** A small workbook made by hand that holds one trap, with its truth. */
export interface Guard {
  readonly name: string;
  /** What is true, and why a careful person sees it. */
  readonly because: string;
  readonly workbook: Workbook;
  readonly truth: BookTruth;
  /** Grades that hold the guard. */
  readonly holds: readonly Grade[];
}

/** Reading right is best, a question that can be accepted is good, and so is leaving out what is said to be left out. */
export const readOrAsked: readonly Grade[] = ['read right', 'asked', 'partly read'];
export const mustBeRead: readonly Grade[] = ['read right'];
export const mustBeAsked: readonly Grade[] = ['asked', 'partly read', 'refused'];

export interface SheetExtras {
  readonly hidden?: boolean;
  readonly hiddenRows?: readonly number[];
  readonly hiddenColumns?: readonly number[];
  /** As [top, left, bottom, right]. */
  readonly merged?: readonly (readonly [number, number, number, number])[];
}

/** A sheet by its rows, merged cells as a reader of files delivers them. */
export function sheet(name: string, rows: readonly (readonly Cell[])[], extras: SheetExtras = {}): Sheet {
  const merged = (extras.merged ?? []).map(([top, left, bottom, right]): Area => ({
    top,
    left,
    bottom,
    right,
  }));
  const read = rows.map((row) => [...row]);
  applyMerges(read, merged, () => undefined);
  return {
    name,
    hidden: extras.hidden ?? false,
    rows: read,
    hiddenRows: new Set(extras.hiddenRows ?? []),
    hiddenColumns: new Set(extras.hiddenColumns ?? []),
    merged,
    tables: [],
  };
}

export function workbook(...sheets: readonly Sheet[]): Workbook {
  return { name: 'guard.xlsx', sheets };
}

/** A channel in mV/mil and mil; its verdict follows unless it is given. */
export function channel(
  tag: string,
  [configured, measured, alert, danger]: readonly [
    number | null,
    number | null,
    number | null,
    number | null,
  ],
  places: readonly ChannelPlace[],
  more: Partial<ChannelTruth> = {},
): ChannelTruth {
  const known = configured !== null && measured !== null && danger !== null;
  return {
    machine: null,
    tag: [tag],
    configured,
    measured,
    alert,
    danger,
    verdict: known ? verdictOf(configured, measured) : 'incomplete',
    also: [],
    asLeft: null,
    asLeftVerdict: null,
    mustAsk: false,
    otherwise: [],
    places,
    optional: {},
    ...more,
  };
}

/** Where meanings stand, as `sheet!column meaning`. */
export function fields(...texts: readonly string[]): FieldTruth[] {
  return texts.map((text) => {
    const [, sheetName, column, meaning] = /^(.+)!([A-Z]+) (.+)$/u.exec(text)!;
    return { sheet: sheetName!, column: column!, meaning: meaning!, standard: false };
  });
}

export function truth(
  channels: readonly ChannelTruth[],
  stands: readonly FieldTruth[],
  more: Partial<BookTruth> = {},
): BookTruth {
  return {
    channels,
    fields: stands,
    accept: ['read', 'ask'],
    choice: [],
    mayBeIncomplete: [],
    traps: [],
    ...more,
  };
}

/** Places of a channel in rows of two sheets (or of one). */
export function at(
  ...places: readonly (readonly [sheetName: string, row: number, headerRow?: number])[]
): ChannelPlace[] {
  return places.map(([sheetName, row, headerRow = 1]) => ({
    sheet: sheetName,
    row,
    headerRows: [headerRow, headerRow],
  }));
}
