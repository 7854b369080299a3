import { type CellPlace, HostRefused } from '../../port/port.ts';
import { refusalOf } from '../refusal.ts';
import type { Session } from '../session.ts';
import { isOurs, withShownNames } from '../../formats/ourFormula.ts';

const failed = 'The formulas were not repaired';
const someRepaired = 'Some of the formulas may be repaired all the same: look for broken formulas again.';

/** Cells below each other in one column. */
interface Run {
  readonly sheet: string;
  readonly top: number;
  readonly column: number;
  readonly rows: number;
}

/** Runs read and written in one round trip; each takes about 700 bytes of a request. */
const runsPerTrip = 2_000;

/**
 * Enters the formulas of these cells anew, with the functions' names as they are typed. A cell that no longer has a formula
 * of ours is left alone. Refused, before anything is changed, where a sheet is gone or protected. The number of cells entered.
 */
export function repairFormulas(session: Session, places: readonly CellPlace[]): Promise<number> {
  return session.run(failed, async (context) => {
    await refuseProtected(context, new Set(places.map(({ sheet }) => sheet)));
    const runs = runsOf(places);
    let repaired = 0;
    for (let from = 0; from < runs.length; from += runsPerTrip) {
      const ranges = runs
        .slice(from, from + runsPerTrip)
        .map((run) => ({ run, range: rangeOf(context, run) }));
      for (const { range } of ranges) range.load('formulas');
      try {
        await context.sync();
      } catch (error) {
        throw refusalOf(error, failed, repaired > 0 ? someRepaired : '');
      }
      const ours = ranges.flatMap(({ run, range }) => ourCells(run, range.formulas));
      const formulas = new Map(ours.map(({ place, formula }) => [keyOf(place), formula]));
      for (const run of runsOf(ours.map(({ place }) => place))) {
        rangeOf(context, run).formulas = rowsOf(run).map((place) => [formulas.get(keyOf(place))]);
      }
      try {
        if (ours.length > 0) await context.sync();
      } catch (error) {
        throw refusalOf(error, failed, someRepaired);
      }
      repaired += ours.length;
    }
    return repaired;
  });
}

async function refuseProtected(context: Excel.RequestContext, names: ReadonlySet<string>): Promise<void> {
  const sheets = Array.from(names, (name) => ({
    name,
    sheet: context.workbook.worksheets.getItemOrNullObject(name),
  }));
  for (const { sheet } of sheets) sheet.protection.load('protected');
  await context.sync();
  for (const { name, sheet } of sheets) {
    if (sheet.isNullObject) {
      throw new HostRefused(
        `${failed}. Sheet “${name}” was renamed or deleted. Look for broken formulas again.`,
      );
    }
    if (sheet.protection.protected) {
      throw new HostRefused(
        `${failed}. Sheet “${name}” is protected. Remove its protection on the Review tab, then try again.`,
      );
    }
  }
}

/** Gathers cells into runs, sheet by sheet and column by column. */
function runsOf(places: readonly CellPlace[]): Run[] {
  const sorted = places.toSorted(
    (one, other) => one.sheet.localeCompare(other.sheet) || one.column - other.column || one.row - other.row,
  );
  const runs: Run[] = [];
  for (const { sheet, row, column } of sorted) {
    const last = runs.at(-1);
    if (last?.sheet === sheet && last.column === column && row <= last.top + last.rows) {
      runs[runs.length - 1] = { ...last, rows: row - last.top + 1 };
    } else runs.push({ sheet, top: row, column, rows: 1 });
  }
  return runs;
}

function ourCells(
  run: Run,
  formulas: readonly (readonly unknown[])[],
): { place: CellPlace; formula: string }[] {
  return rowsOf(run).flatMap((place, index) => {
    const formula = formulas[index]?.[0];
    return isOurs(formula) ? [{ place, formula: withShownNames(formula) }] : [];
  });
}

function rowsOf({ sheet, top, column, rows }: Run): CellPlace[] {
  return Array.from({ length: rows }, (_, index) => ({ sheet, row: top + index, column }));
}

function rangeOf(context: Excel.RequestContext, { sheet, top, column, rows }: Run): Excel.Range {
  return context.workbook.worksheets.getItem(sheet).getRangeByIndexes(top - 1, column - 1, rows, 1);
}

function keyOf({ sheet, row, column }: CellPlace): string {
  return `${row} ${column} ${sheet}`;
}
