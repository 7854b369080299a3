import type { Cell } from '../cells/cell.ts';
import type { Sheet } from '../cells/sheet.ts';
import { columnLetters } from '../cells/address.ts';
import type { SheetModel } from '../sheets/model.ts';
import type { Differences } from './differences.ts';
import { quoted, valueText } from './sameValue.ts';

/** The formulas of a workbook's file, beside the results that it stores of them. */
export interface FileFormulas {
  /** The file asks programs to calculate everything anew when they open it, so that a stored result counts for nothing. */
  readonly calculatedOnOpening: boolean;
  /** The formula of a cell, without `=`; row and column from 1. */
  readonly at: (sheet: string, row: number, column: number) => string | undefined;
  /** The formula that a template is in a row, with the names that the sheets of its run have, by the names they asked for. */
  readonly written: (template: string, row: number, names: ReadonlyMap<string, string>) => string;
  /** Whether two formulas calculate the same because they are the same but for how they are spelled. */
  readonly same: (one: string, other: string) => boolean;
}

/** A result sheet, the model that it was made from, and the formulas of its file. */
export interface FormulaSheet {
  readonly sheet: Sheet;
  readonly model: SheetModel;
  readonly formulas: FileFormulas;
  /** Names of the sheets of its run by the names they asked for. */
  readonly names: ReadonlyMap<string, string>;
}

/** Adds the cells whose formula is another than the audit wrote, or which had none, whatever result is stored; how many they are. */
export function compareFormulas(compared: FormulaSheet, differences: Differences): number {
  const { sheet, formulas } = compared;
  let count = 0;
  for (const { row, column, wanted, stored, value } of formulaCells(compared)) {
    if (stored === undefined || (wanted !== undefined && formulas.same(stored, wanted))) continue;
    count++;
    differences.add({
      sheet: sheet.name,
      row,
      column: columnLetters(column),
      stands: quoted(`=${stored}`),
      should: wanted === undefined ? valueText(value) : quoted(`=${wanted}`),
    });
  }
  return count;
}

/**
 * The sheet as a program shows it that calculates anew: where a cell has the formula that the audit wrote, its result is
 * the audit's, whatever the file stores; the cells that it leads to are compared by themselves.
 */
export function calculatedAnew(compared: FormulaSheet): Sheet {
  const { sheet, formulas } = compared;
  const rows: Cell[][] = sheet.rows.map((cells) => [...cells]);
  for (const { row, column, wanted, stored, value } of formulaCells(compared)) {
    if (stored === undefined || wanted === undefined || !formulas.same(stored, wanted)) continue;
    const cells = rows[row - 1];
    if (cells) cells[column - 1] = value;
  }
  return { ...sheet, rows };
}

function* formulaCells({ sheet, model, formulas, names }: FormulaSheet) {
  let row = 0;
  for (const { cells } of model.rows()) {
    row++;
    const length = Math.max(cells.length, sheet.rows[row - 1]?.length ?? 0);
    for (let column = 1; column <= length; column++) {
      const cell = cells[column - 1];
      const template = cell?.formula === undefined ? undefined : model.formulas[cell.formula];
      const stored = formulas.at(sheet.name, row, column);
      if (stored === undefined && template === undefined) continue;
      const wanted = template === undefined ? undefined : formulas.written(template, row, names);
      yield { row, column, stored, wanted, value: cell?.value ?? null };
    }
  }
  for (row++; row <= sheet.rows.length; row++) {
    for (let column = 1; column <= (sheet.rows[row - 1]?.length ?? 0); column++) {
      const stored = formulas.at(sheet.name, row, column);
      if (stored !== undefined) yield { row, column, stored, wanted: undefined, value: null };
    }
  }
}
