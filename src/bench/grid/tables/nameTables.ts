import type { Injector, Worksheet } from '@univerjs/core';
import { IFunctionService, LexerTreeBuilder } from '@univerjs/engine-formula';
import { onBookChanged } from '../../../hosts/grid/changes.ts';
import { mergedRanges } from '../../../hosts/grid/frame.ts';
import { type Grid, shownContent, storedBook } from '../../../hosts/grid/grid.ts';
import { cellReader } from '../../../hosts/grid/read/cell.ts';
import { tablesOf } from '../../../hosts/grid/tables.ts';
import { type NamedTable, plainReference } from './plainReference.ts';
import { formulaOf, formulaTokens } from '../../../hosts/formats/formulaTokens.ts';

type Names = NonNullable<Parameters<LexerTreeBuilder['treeBuilder']>[2]>;

interface TableOnSheet extends NamedTable {
  readonly sheetId: string;
}

/** A part of the text of every formula. */
const inEveryFormula = '';

/**
 * Lets formulas name the tables that are kept beside sheets, wherever rows, columns, titles and sheets go. The engine reads
 * such formulas with plain references in place of the names: what it makes of the names itself takes a totals row for data,
 * an unknown title for the column to the left, and knows no title with parentheses. The returned function ends it.
 */
export function nameTables(injector: Injector, grid: Grid): () => void {
  let tables: ReadonlyMap<string, TableOnSheet> = new Map();
  readPlainly(injector, (formula) => plainFormula(formula, tables));
  const declare = (): void => {
    const before = tables;
    tables = tablesByName(grid, before);
    if (JSON.stringify([...before]) === JSON.stringify([...tables])) return;
    // The engine keeps each formula as it understood it at first, with the place that its tables had then.
    injector.get(IFunctionService).deleteFormulaAstCacheKey(inEveryFormula);
    tellEngine(grid, before, tables);
    // A formula with the name of a table that is gone depends on no cell, so no change of a cell has it calculated anew.
    if ([...before.keys()].some((name) => !tables.has(name))) grid.api.getFormula().executeCalculation();
  };
  declare();
  let waiting = false;
  return onBookChanged(grid, () => {
    if (waiting) return;
    waiting = true;
    // One step of the grid changes cells first and what is kept beside them last.
    queueMicrotask(() => {
      waiting = false;
      declare();
    });
  });
}

/** The tables of all sheets by their names in small letters. A copy of a sheet does not take the names from the sheet. */
function tablesByName(grid: Grid, before: ReadonlyMap<string, TableOnSheet>): Map<string, TableOnSheet> {
  const found = new Map<string, TableOnSheet>();
  for (const table of storedBook(grid)
    .getSheets()
    .flatMap((sheet) => tablesOn(grid, sheet))) {
    const name = table.name.toLowerCase();
    if (!found.has(name) || before.get(name)?.sheetId === table.sheetId) found.set(name, table);
  }
  return found;
}

function tablesOn(grid: Grid, sheet: Worksheet): TableOnSheet[] {
  const contentAt = shownContent(grid, sheet);
  const read = cellReader(() => undefined);
  return tablesOf(sheet).map((table) => {
    const { top, left, right } = table.area;
    const titles = Array.from({ length: table.headerRow ? right - left + 1 : 0 }, (_, column) => {
      const title = read(contentAt(top - 1, left - 1 + column));
      return typeof title === 'object' ? '' : String(title);
    });
    return { ...table, titles, sheet: sheet.getName(), sheetId: sheet.getSheetId() };
  });
}

/** The engine offers the tables it knows while a formula is typed, and calculates anew what depends on their areas. */
function tellEngine(
  grid: Grid,
  before: ReadonlyMap<string, TableOnSheet>,
  after: ReadonlyMap<string, TableOnSheet>,
): void {
  const unitId = storedBook(grid).getUnitId();
  for (const [key, { name: tableName }] of before) {
    if (after.has(key)) continue;
    grid.api.syncExecuteCommand('formula.mutation.remove-super-table', { unitId, tableName });
  }
  for (const [key, table] of after) {
    if (JSON.stringify(table) === JSON.stringify(before.get(key))) continue;
    const { name: tableName, area, titles, sheetId } = table;
    const [range] = mergedRanges([area]);
    grid.api.syncExecuteCommand('formula.mutation.set-super-table', {
      unitId,
      tableName,
      reference: { sheetId, range, titleMap: new Map(titles.map((title, column) => [title, column])) },
    });
  }
}

/** A formula with references by place instead of names of tables; `tables` by their names in small letters. */
export function plainFormula(formula: string, tables: ReadonlyMap<string, NamedTable>): string {
  if (tables.size === 0) return formula;
  const tokens = formulaTokens(formula);
  const plain = [];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (!token) continue;
    const table = token.kind === 'word' ? tables.get(token.text.toLowerCase()) : undefined;
    const next = tokens[at + 1];
    // A name of a sheet, a function, or one end of a range of whole columns.
    const other =
      [tokens[at - 1]?.text, next?.text].some((sign) => sign === '!' || sign === ':') || next?.text === '(';
    if (!table || (other && next?.kind !== 'bracket')) {
      plain.push(token);
      continue;
    }
    const brackets = next?.kind === 'bracket' ? next.text : '';
    if (brackets !== '') at++;
    plain.push({ kind: 'other', text: plainReference(table, brackets) } as const);
  }
  return formulaOf(plain);
}

/** Has the grid's engine read every formula, and the text of every defined name in it, as `plain` gives it. */
function readPlainly(injector: Injector, plain: (formula: string) => string): void {
  const reader = injector.get(LexerTreeBuilder);
  const read = reader.treeBuilder.bind(reader);
  /** Defined names that stand in a formula together with one whose text is read as another. */
  const changing = new Set<string>();
  const plainNames = (names: Names): Names => {
    const asked: string[] = [];
    return {
      ...names,
      getValueByName: (unitId, name) => {
        const value = names.getValueByName(unitId, name);
        if (!value) return value;
        const formulaOrRefString = plain(value.formulaOrRefString);
        asked.push(name);
        if (formulaOrRefString !== value.formulaOrRefString) for (const known of asked) changing.add(known);
        return { ...value, formulaOrRefString };
      },
      // A formula with a name is kept as it was read, by its own text alone, until the name counts as changed.
      getDirtyDefinedNameMap: () => {
        const dirty = names.getDirtyDefinedNameMap();
        const { unitId } = names;
        if (unitId === null || unitId === undefined) return dirty;
        return {
          ...dirty,
          [unitId]: { ...dirty[unitId], ...Object.fromEntries([...changing].map((name) => [name, '1'])) },
        };
      },
    };
  };
  reader.treeBuilder = (formula, transformSuffix, names) =>
    read(plain(formula), transformSuffix, names && plainNames(names));
}
