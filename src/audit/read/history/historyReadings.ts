import { factAt, factOf, type Place, type PlacedFact } from '../../model/findings.ts';
import type { CellFault } from '../../model/rules/cellRules.ts';
import type { HistoryRowFault } from '../../model/rules/historyRules.ts';
import { isBlank, isoDate } from '../../../cells/cell.ts';
import { cellAt } from '../../../cells/sheet.ts';
import { convert } from '../../../units/unit.ts';
import { type CellDiagnostic, placeOf } from '../rows/diagnostic.ts';
import { rowReader, type Amount, type RowReader } from '../rows/rowReader.ts';
import { asLeft, seriesOf } from '../records/recordCells.ts';
import { historyColumns, type HistoryColumnId } from './historyColumns.ts';
import { type HistoryTable, historyTables } from './historyTables.ts';
import type { TaggedReading, HistoryBook } from './reading.ts';
import type { Tables } from '../tables/found.ts';
import type { HeaderRows } from '../tables/searchHeaders.ts';
import { tagKey } from '../tables/tagKey.ts';

/** Rows that are read in one step. */
const stride = 1_000;

/**
 * The readings of a history, row by row; `today` is the day of the audit, after which none can have been taken. A row
 * that can't be used gives a remark with its cell and the cure.
 */
export function* historyReadings(
  table: HistoryTable,
  today: number,
  remarks: PlacedFact[],
): Generator<void, TaggedReading[], void> {
  const read = rowReader(table, historyColumns);
  const found: TaggedReading[] = [];
  for (let row = table.firstRow; row <= table.lastRow; row++) {
    if (row % stride === 0) yield;
    if (isEmpty(table, row)) continue;
    read.open(row);
    found.push(...readingsIn(table, row, read, today, remarks));
  }
  return found;
}

/** As found and, where the row has it, as left. */
function readingsIn(
  table: HistoryTable,
  row: number,
  read: RowReader,
  today: number,
  remarks: PlacedFact[],
): TaggedReading[] {
  const tag = read.text('tag');
  const day = read.day('day');
  const [one, left] = [read.amount('sensitivity'), read.amount('asLeft')];
  const isLeft = seriesOf(read.text('series'), '') === asLeft;
  const uncertainty = read.amount('uncertainty');
  const diagnostics = read.diagnostics();
  remarks.push(...diagnostics.map((diagnostic) => ofDiagnostic(table, row, diagnostic)));
  const leftOut = (id: HistoryColumnId, fault: HistoryRowFault): void => {
    remarks.push(factAt(placeIn(table, row, id), factOf('history-row-left-out', 'warning', fault)));
  };
  if (tag === '') leftOut('tag', { kind: 'no tag', row });
  if (day === null && !spoke(diagnostics, 'day')) leftOut('day', { kind: 'no date', row });
  if (!one && !left && !spoke(diagnostics, 'sensitivity'))
    leftOut('sensitivity', { kind: 'no sensitivity', row });
  if (day !== null && day > today)
    leftOut('day', { kind: 'after the audit', day: isoDate(day), today: isoDate(today) });
  if (tag === '' || day === null || day > today) return [];
  const usable = (amount: Amount | null, id: 'sensitivity' | 'asLeft', after: boolean): TaggedReading[] => {
    if (!amount) return [];
    const header = table.columns.get(id)?.header ?? id;
    if (!amount.unit) {
      leftOut(id, { kind: 'no unit', header });
      return [];
    }
    if (!(amount.value > 0)) {
      leftOut(id, { kind: 'not above 0', header, value: amount.value, unit: amount.unit.text });
      return [];
    }
    const known = {
      tag,
      day,
      value: amount.value,
      unit: amount.unit,
      asLeft: after,
      from: 'history',
    } as const;
    const place = placeIn(table, row, id);
    if (!uncertainty) return [{ ...known, uncertainty: null, ...place }];
    const fraction = fractionOf(uncertainty, amount);
    if (fraction > 0 && fraction < 1) return [{ ...known, uncertainty: fraction, ...place }];
    leftOut('uncertainty', { kind: 'uncertainty', value: uncertainty.value });
    return [{ ...known, uncertainty: null, ...place }];
  };
  return [...usable(one, 'sensitivity', isLeft), ...usable(left, 'asLeft', true)];
}

/** An uncertainty as a fraction of the reading; `NaN` where the units don't fit. */
function fractionOf(uncertainty: Amount, { value, unit }: Amount): number {
  const absolute = uncertainty.unit && uncertainty.unit.dimension !== 'percent' && unit;
  return absolute ? convert(uncertainty.value, uncertainty.unit, unit) / value : uncertainty.value / 100;
}

function spoke(diagnostics: readonly CellDiagnostic[], column: string): boolean {
  return diagnostics.some((one) => one.column === column && one.severity !== 'note');
}

/** What is wrong with a cell of a row: one that can't be used leaves its reading out. */
function ofDiagnostic(table: HistoryTable, row: number, diagnostic: CellDiagnostic): PlacedFact {
  const { column, severity, rule, values } = diagnostic;
  const place = placeIn(table, row, column as HistoryColumnId);
  if (severity === 'note') return factAt(place, diagnostic);
  const leftOut = column === 'uncertainty' ? 'uncertainty' : 'reading';
  const fault = { rule, values } as CellFault;
  return factAt(place, factOf('history-row-left-out', 'warning', { kind: 'cell', leftOut, fault }));
}

function isEmpty({ sheet, columns }: HistoryTable, row: number): boolean {
  return ['tag', 'day', 'sensitivity', 'asLeft'].every((id) => {
    const column = columns.get(id);
    return !column || isBlank(cellAt(sheet, row, column.column));
  });
}

function placeIn(table: HistoryTable, row: number, id: HistoryColumnId): Place {
  return placeOf(table, row, id);
}

/**
 * Finds the dated readings of a workbook, beside its two tables. Nothing here refuses an audit; what can't be used is a
 * remark. Goes step by step. `today`: day of the audit, from 1970-01-01.
 */
export function* findHistory(
  headerRows: HeaderRows,
  tables: Tables,
  today: number,
): Generator<void, HistoryBook, void> {
  const remarks: PlacedFact[] = [];
  const byTag = new Map<string, TaggedReading[]>();
  for (const table of historyTables(headerRows, tables)) {
    const readings = yield* historyReadings(table, today, remarks);
    for (const reading of readings) {
      const key = tagKey(reading.tag);
      const there = byTag.get(key);
      if (there) there.push(reading);
      else byTag.set(key, [reading]);
    }
    if (readings.length === 0 || !table.sheet.hidden) continue;
    const values = { sheet: table.sheet.name, holds: 'history' } as const;
    const place = placeOf(table, table.headerRow, 'tag');
    remarks.push(factAt(place, factOf('hidden-sheet', 'note', values)));
  }
  return { byTag, remarks };
}
