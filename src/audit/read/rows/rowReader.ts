import { cellText, isBlank, type Cell } from '../../../cells/cell.ts';
import { cellAt } from '../../../cells/sheet.ts';
import { readNumber } from '../../../cells/number.ts';
import type { Unit } from '../../../units/parse.ts';
import { type FoundColumn, type ReadTable } from '../tables/found.ts';
import type { ColumnSpec } from '../tables/vocabulary.ts';
import { factOf, type Severity } from '../../model/findings.ts';
import type { CellRules } from '../../model/rules/cellRules.ts';
import type { RuleValues } from '../../model/rules/rules.ts';
import type { CellDiagnostic } from './diagnostic.ts';
import { isMarkedBlank } from '../understand/readings/cellValue.ts';
import { readDate } from './date.ts';
import { unitOfColumn, type UnitOf } from './units.ts';
import { meaningOf, type Words } from './words.ts';

/** A number as it stands in a cell, with the unit in which it was meant; `null` where nothing names the unit. */
export interface Amount {
  readonly value: number;
  readonly unit: Unit | null;
  /** Of an uncertainty: the coverage factor that the header of its column names. */
  readonly coverage?: number;
}

/** Reads the cells of one table's rows by their meaning. What is wrong with the present row gathers in `diagnostics`. */
export interface RowReader {
  /** Goes to a row and forgets what was wrong with the one before. */
  open(row: number): void;
  diagnostics(): readonly CellDiagnostic[];
  text(id: string): string;
  amount(id: string): Amount | null;
  day(id: string): number | null;
  word<T>(id: string, list: Words<T>): T | null;
}

interface Source {
  readonly column: FoundColumn;
  readonly spec: ColumnSpec;
  readonly unitOf: UnitOf;
  /** A mark of yes or no, of which no sign says that there is nothing. */
  readonly isFlag: boolean;
}

/**
 * A reader for the rows of a table with columns as `specs` says; see `RowReader`. Units are worked out once per column
 * here, not per cell.
 */
export function rowReader(table: ReadTable, specs: Readonly<Record<string, ColumnSpec>>): RowReader {
  const sources = new Map<string, Source>();
  for (const [id, spec] of Object.entries(specs)) {
    const column = table.columns.get(id);
    if (column)
      sources.set(id, {
        column,
        spec,
        unitOf: unitOfColumn(table, column, spec),
        isFlag: spec.holds === 'flag',
      });
  }
  let row = 0;
  let diagnostics: CellDiagnostic[] = [];

  const cell = (source: Source | undefined) => {
    if (!source) return null;
    const found = cellAt(table.sheet, row, source.column.column);
    return found === null || isBlank(found) ? null : found;
  };
  const tell = <R extends keyof CellRules>(
    column: string,
    rule: R,
    severity: Severity,
    values: RuleValues[R],
  ) => {
    diagnostics.push({ ...factOf(rule, severity, values), column } as CellDiagnostic);
  };
  /** Whether a cell holds a word or sign that says that there is nothing, which is noted. */
  const saysNothing = (id: string, { column: { header } }: Source, found: Cell): boolean => {
    if (typeof found !== 'string' || !isMarkedBlank(found)) return false;
    tell(id, 'said-blank', 'note', { header, cell: found.trim() });
    return true;
  };
  return {
    open(next) {
      row = next;
      if (diagnostics.length > 0) diagnostics = [];
    },
    diagnostics: () => diagnostics,
    text(id) {
      const source = sources.get(id);
      const found = cell(source);
      if (!source || found === null) return '';
      return id !== 'tag' && !source.isFlag && saysNothing(id, source, found) ? '' : cellText(found);
    },
    amount(id) {
      const source = sources.get(id);
      const found = cell(source);
      if (!source || found === null || saysNothing(id, source, found)) return null;
      const { header } = source.column;
      const read = readNumber(found, table.sheet.plainText);
      if ('why' in read) {
        const { why } = read;
        const quoted = { header, cell: cellText(found), why };
        if (why === 'spreadsheet error' || why === 'no stored result')
          tell(id, 'value-is-an-error', 'warning', quoted);
        else tell(id, 'value-not-a-number', 'warning', { kind: 'text', ...quoted });
        return null;
      }
      if (read.asText) {
        const { value } = read;
        tell(id, 'number-written-as-text', 'note', { header, cell: cellText(found), value });
      }
      const unit = source.unitOf(row);
      if (unit !== null && 'fault' in unit) {
        tell(id, 'unit-not-clear', 'warning', { header, ...unit.fault });
        return null;
      }
      if (read.percent && unit?.text !== '%') {
        tell(id, 'value-not-a-number', 'warning', { kind: 'percentage', header, value: read.value });
        return null;
      }
      const { coverage } = source.column;
      return coverage === undefined ? { value: read.value, unit } : { value: read.value, unit, coverage };
    },
    day(id) {
      const source = sources.get(id);
      const found = cell(source);
      if (!source || found === null || saysNothing(id, source, found)) return null;
      const read = readDate(found);
      if ('day' in read) return read.day;
      const { header } = source.column;
      tell(id, 'value-not-a-date', 'warning', { header, cell: cellText(found), why: read.why });
      return null;
    },
    word(id, list) {
      const source = sources.get(id);
      const found = cell(source);
      if (!source || found === null) return null;
      const text = cellText(found);
      const meaning = meaningOf(list, text);
      if (meaning !== undefined) return meaning;
      if (!source.isFlag && saysNothing(id, source, found)) return null;
      const { header } = source.column;
      tell(id, 'value-not-understood', 'warning', { header, cell: text, expected: list.expected });
      return null;
    },
  };
}
