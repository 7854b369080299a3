import type { Steps } from '../audit/model/steps.ts';
import { columnLetters } from '../cells/address.ts';
import type { Cell } from '../cells/cell.ts';
import type { Sheet } from '../cells/sheet.ts';
import { isAboutResults } from '../sheets/evidence/evidenceLabels.ts';
import type { ModelCell, SheetModel } from '../sheets/model.ts';
import { isTitleOf } from '../sheets/titles.ts';
import type { Differences } from './differences.ts';
import { quotedApart, sameValue, valueText } from './sameValue.ts';

/** How a row of a sheet and one of its model belong together; only one of them where a row was taken away or added. */
type AlignedRow<Wanted, Found> =
  | { readonly kind: 'pair'; readonly wanted: Wanted; readonly found: Found; readonly row: number }
  | { readonly kind: 'removed'; readonly wanted: Wanted; readonly row: number }
  | { readonly kind: 'added'; readonly found: Found; readonly row: number };

/** Rows that are looked ahead for where both go on alike. */
const reach = 40;

type Wanted = readonly (ModelCell | undefined)[];
type Found = readonly Cell[];

/** Rows between two steps. */
const stride = 250;

/** Rows that a sheet lacks or has beside those of the audit, in words. */
export interface RowDifferences {
  readonly said: readonly string[];
}

/**
 * Compares a result sheet, cell by cell, with what it should hold; cells that differ are added to `differences`. Rows
 * taken away or added are told apart from edited ones. Tells how many rows are done.
 */
export function* compareSheet(
  model: SheetModel,
  sheet: Sheet,
  differences: Differences,
): Steps<number, RowDifferences> {
  const removed: string[] = [];
  const added: string[] = [];
  const isSummary = isTitleOf('summary', sheet.rows[0]?.[0] ?? null);
  const wanted = cellsOf(model)[Symbol.iterator]();
  const alike = (one: Wanted, other: Found): boolean =>
    sameRow(one, other) || (isSummary && bothAboutResults(one, other));
  for (const aligned of alignedRows(wanted, sheet.rows, alike)) {
    const { kind, row } = aligned;
    if (row % stride === 0) yield row;
    if (kind === 'removed') {
      if (aligned.wanted.some((cell) => !sameValue(null, cell?.value ?? null)))
        removed.push(`row ${row}: ${firstOf(aligned.wanted)}`);
    } else if (kind === 'added') {
      if (aligned.found.some((cell) => !sameValue(cell, null))) added.push(`row ${row}`);
    } else if (!alike(aligned.wanted, aligned.found)) {
      addCells(sheet.name, row, aligned.wanted, aligned.found, differences);
    }
  }
  return {
    said: [
      ...listed(sheet.name, removed, 'lacks'),
      ...listed(sheet.name, added, 'has more than the audit wrote:'),
    ],
  };
}

function* cellsOf(model: SheetModel): Generator<Wanted> {
  for (const { cells } of model.rows()) yield cells;
}

function sameRow(wanted: Wanted, found: Found): boolean {
  const length = Math.max(wanted.length, found.length);
  for (let index = 0; index < length; index++)
    if (!sameValue(found[index] ?? null, wanted[index]?.value ?? null)) return false;
  return true;
}

/** Lines of the summary on the fingerprint of results are looked at by themselves. */
function bothAboutResults(wanted: Wanted, found: Found): boolean {
  return wanted[0]?.value === found[0] && isAboutResults(found.length, (index) => found[index]);
}

function addCells(sheet: string, row: number, wanted: Wanted, found: Found, differences: Differences): void {
  const length = Math.max(wanted.length, found.length);
  for (let index = 0; index < length; index++) {
    const cell = found[index] ?? null;
    const value = wanted[index]?.value ?? null;
    if (sameValue(cell, value)) continue;
    differences.add({
      sheet,
      row,
      column: columnLetters(index + 1),
      ...quotedApart(cell, value),
    });
  }
}

function firstOf(wanted: Wanted): string {
  const texts = wanted.map((cell) => valueText(cell?.value ?? null)).filter((text) => text !== '');
  return `“${texts.slice(0, 5).join(', ')}”`;
}

function listed(sheet: string, rows: readonly string[], verb: string): string[] {
  if (rows.length === 0) return [];
  const more = rows.length > 5 ? ` and ${rows.length - 5} more` : '';
  return [`Sheet '${sheet}' ${verb} ${rows.slice(0, 5).join('; ')}${more}.`];
}

/**
 * Goes along the wanted rows and those found, and tells rows that were taken away or added from rows that were edited: a
 * row that is not alike is passed over where the next ones are alike without it. `row`: number in the sheet, from 1.
 */
function* alignedRows<Wanted, Found>(
  wanted: Iterator<Wanted>,
  found: readonly Found[],
  alike: (wanted: Wanted, found: Found) => boolean,
): Generator<AlignedRow<Wanted, Found>> {
  const ahead: Wanted[] = [];
  const look = (index: number): Wanted | undefined => {
    while (ahead.length <= index) {
      const next = wanted.next();
      if (next.done) return undefined;
      ahead.push(next.value);
    }
    return ahead[index];
  };
  const goOn = (index: number, at: number): boolean => {
    const [one, other] = [look(index), found[at]];
    return one !== undefined && other !== undefined && alike(one, other);
  };
  let at = 0;
  /** Whether the next row belongs elsewhere: without it both go on alike, and with it they don't. */
  const isApart = (goesOn: (by: number) => boolean): boolean => {
    const ends = look(1) === undefined && found[at + 1] === undefined;
    if (ends || goOn(0, at) || goOn(1, at + 1)) return false;
    for (let by = 1; by <= reach; by++) if (goesOn(by)) return true;
    return false;
  };
  for (;;) {
    const one = look(0);
    const other = found[at];
    const row = at + 1;
    if (one !== undefined && (other === undefined || isApart((by) => goOn(by, at)))) {
      yield { kind: 'removed', wanted: one, row };
      ahead.shift();
    } else if (other !== undefined && (one === undefined || isApart((by) => goOn(0, at + by)))) {
      yield { kind: 'added', found: other, row };
      at++;
    } else if (one !== undefined && other !== undefined) {
      yield { kind: 'pair', wanted: one, found: other, row };
      ahead.shift();
      at++;
    } else return;
  }
}
