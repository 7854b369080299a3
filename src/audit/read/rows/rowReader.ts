import { cellText, isBlank } from '../../../cells/cell.ts';
import { cellAt } from '../../../cells/sheet.ts';
import { readNumber } from '../../../cells/number.ts';
import type { Unit } from '../../../units/parse.ts';
import { type FoundColumn, type ReadTable } from '../tables/found.ts';
import type { ColumnSpec } from '../tables/vocabulary.ts';
import type { Complaint } from './complaint.ts';
import { readDate } from './date.ts';
import { unitOfColumn, type UnitOf } from './units.ts';
import { meaningOf, type Words } from './words.ts';

/** A number as it stands in a cell, with the unit in which it was meant; `null` where nothing names the unit. */
export interface Amount {
  readonly value: number;
  readonly unit: Unit | null;
}

/** Reads the cells of one table's rows by their meaning. Complaints about the present row gather in `complaints`. */
export interface RowReader {
  /** Goes to a row and forgets the complaints of the one before. */
  open(row: number): void;
  complaints(): readonly Complaint[];
  text(id: string): string;
  amount(id: string): Amount | null;
  day(id: string): number | null;
  word<T>(id: string, list: Words<T>): T | null;
}

interface Source {
  readonly column: FoundColumn;
  readonly spec: ColumnSpec;
  readonly unitOf: UnitOf;
}

/**
 * A reader for the rows of a table with columns as `specs` says; see `RowReader`. Units are worked out once per column
 * here, not per cell.
 */
export function rowReader(table: ReadTable, specs: Readonly<Record<string, ColumnSpec>>): RowReader {
  const sources = new Map<string, Source>();
  for (const [id, spec] of Object.entries(specs)) {
    const column = table.columns.get(id);
    if (column) sources.set(id, { column, spec, unitOf: unitOfColumn(table, column, spec) });
  }
  let row = 0;
  let complaints: Complaint[] = [];

  const cell = (source: Source | undefined) => {
    if (!source) return null;
    const found = cellAt(table.sheet, row, source.column.column);
    return found === null || isBlank(found) ? null : found;
  };
  const complain = (complaint: Complaint) => {
    complaints.push(complaint);
  };
  return {
    open(next) {
      row = next;
      if (complaints.length > 0) complaints = [];
    },
    complaints: () => complaints,
    text(id) {
      const found = cell(sources.get(id));
      return found === null ? '' : cellText(found);
    },
    amount(id) {
      const source = sources.get(id);
      const found = cell(source);
      if (!source || found === null) return null;
      const read = readNumber(found, table.sheet.plainText);
      if ('why' in read) {
        const rule =
          read.why.includes('stored') || read.why.includes('error')
            ? 'value-is-an-error'
            : 'value-not-a-number';
        const message = `'${source.column.header}': '${cellText(found).slice(0, 60)}' ${read.why}; write the bare number, with its unit in the header.`;
        complain({ rule, severity: 'warning', column: id, message });
        return null;
      }
      if (read.asText) {
        const message = `'${source.column.header}': the number ${cellText(found).slice(0, 40)} is written as text; it was used as ${read.value}.`;
        complain({ rule: 'number-written-as-text', severity: 'note', column: id, message });
      }
      const unit = source.unitOf(row);
      if (unit !== null && 'why' in unit) {
        const message = `'${source.column.header}': ${unit.why}; write one unit in brackets in the header or in a unit column.`;
        complain({ rule: 'unit-not-clear', severity: 'warning', column: id, message });
        return null;
      }
      if (read.percent && unit?.text !== '%') {
        const message = `'${source.column.header}': ${read.value} % is a percentage; write the number in the unit of its column.`;
        complain({ rule: 'value-not-a-number', severity: 'warning', column: id, message });
        return null;
      }
      return { value: read.value, unit };
    },
    day(id) {
      const source = sources.get(id);
      const found = cell(source);
      if (!source || found === null) return null;
      const read = readDate(found);
      if ('day' in read) return read.day;
      const message = `'${source.column.header}': '${cellText(found).slice(0, 60)}' ${read.why}; write it as year-month-day, such as 2025-03-14.`;
      complain({ rule: 'value-not-a-date', severity: 'warning', column: id, message });
      return null;
    },
    word(id, list) {
      const source = sources.get(id);
      const found = cell(source);
      if (!source || found === null) return null;
      const text = cellText(found);
      const meaning = meaningOf(list, text);
      if (meaning !== undefined) return meaning;
      const message = `'${source.column.header}': '${text.slice(0, 60)}' is not understood; write ${list.expected}.`;
      complain({ rule: 'value-not-understood', severity: 'warning', column: id, message });
      return null;
    },
  };
}
