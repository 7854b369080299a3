import type { Place, RowPlace } from '../audit/model/findings.ts';
import { columnLetters } from '../cells/address.ts';
import type { LinkTarget, ModelRow, RowLink, SheetModel } from './model.ts';

/** Links of a sheet that spreadsheet programs open (common practice, no source); of more the first ones stay. */
export const mostLinks = 65_530;

/** A link of a cell of the sheet that it stands on. */
export interface PlacedLink {
  readonly address: string;
  readonly to: LinkTarget;
}

/** The same sheet, whose links are gathered while its rows are made, at most `most` of them. */
export function gatheringLinks(
  sheet: SheetModel,
  most: number = mostLinks,
): { readonly sheet: SheetModel; readonly links: readonly PlacedLink[] } {
  const links: PlacedLink[] = [];
  function* rows(): Generator<ModelRow> {
    links.length = 0;
    let number = 0;
    for (const row of sheet.rows()) {
      number++;
      for (const { column, to } of row.links ?? [])
        if (links.length < most) links.push({ address: `${columnLetters(column)}${number}`, to });
      yield row;
    }
  }
  return { sheet: { ...sheet, rows }, links };
}

/** Leads to the cell where something stands in the audited workbook; to the first of its sheet where no row is named. */
export function sourceOf({ sheet, row, column = '' }: RowPlace & Partial<Place>): LinkTarget | undefined {
  if (sheet === '') return undefined;
  return row < 1 ? { sheet, row: 1, column: 'A' } : { sheet, row, column: column === '' ? 'A' : column };
}

/** A link of a column, where there is a target. */
export function linkAt(column: number, to: LinkTarget | undefined): readonly RowLink[] {
  return to ? [{ column, to }] : [];
}

/**
 * Leads from targets to the names that sheets have: `given` are those of the run's sheets in order, `own` those of the
 * workbook's. `undefined` where there is no such sheet.
 */
export function namesOfTargets(
  sheets: readonly SheetModel[],
  given: readonly string[],
  own: Iterable<string>,
): (target: LinkTarget) => string | undefined {
  const [results, tables] = [new Map<string, string>(), new Map<string, string>()];
  for (const [index, { name, shows }] of sheets.entries()) {
    if (shows === undefined) results.set(name, given[index] ?? name);
    else tables.set(shows, given[index] ?? name);
  }
  const there = new Set(own);
  return ({ sheet, ours }) => {
    if (ours) return results.get(sheet);
    return there.has(sheet) ? sheet : tables.get(sheet);
  };
}
