import type { Place } from '../model/findings.ts';
import type { ColumnMap } from '../model/columnMap.ts';
import { columnNumber } from '../../cells/address.ts';
import { type Cell, isBlank } from '../../cells/cell.ts';
import type { Sheet } from '../../cells/sheet.ts';
import type { HistoryBook } from '../read/history/reading.ts';
import type { RecordBook } from '../read/records/rawRecord.ts';
import { type FoundTable, type Tables } from '../read/tables/found.ts';
import { canonicalJson, inputDigits } from './canonical.ts';
import { CellHash } from './cellHash.ts';

/** Rows between two steps. */
const stride = 500;

/** What an audit reads of a workbook. */
export interface FoundInputs {
  readonly tables: Tables;
  readonly records: RecordBook;
  readonly history: HistoryBook;
  readonly trends: readonly Sheet[];
  readonly againstSpeed: readonly Sheet[];
}

/**
 * SHA-256 of everything an audit reads: the recognised columns of both tables (meaning, header, unit) with all their
 * cells in the order of the rows, the calibration records and checks, the histories of readings, the recorded readings and run-ups, and the column map. Numbers count to 12
 * significant digits. Where a table stands on its sheet, how its cells look and what else the workbook holds do not
 * count. Goes step by step.
 */
export function* inputsFingerprint(
  { tables, records, history, trends, againstSpeed }: FoundInputs,
  map: ColumnMap,
): Generator<void, string, void> {
  const hash = new CellHash(inputDigits);
  hash.text(canonicalJson(map));
  for (const kind of ['channels', 'settings'] as const) yield* addTable(hash, tables[kind]);
  yield* addRecords(hash, records);
  yield* addHistory(hash, history);
  for (const sheet of [...trends, ...againstSpeed]) yield* addSheet(hash, sheet);
  return hash.hex();
}

function* addTable(hash: CellHash, table: FoundTable): Generator<void, void, void> {
  const { kind, sheet, columns, unitColumns, firstRow, lastRow, skipped, origin } = table;
  const named = [...columns.values()].toSorted((a, b) => (a.id < b.id ? -1 : 1));
  addAll(hash, [kind, sheet.name, sheet.plainText?.decimal ?? '']);
  for (const { id, header, unit, coverage, remarks } of named)
    addAll(hash, [id, header, unit?.text ?? '', unit?.detection ?? '', coverage ?? null, remarks.join()]);
  for (const { header, names } of unitColumns) addAll(hash, [header, [...names].join()]);
  const places = [...named, ...unitColumns].map(({ column }) => column - 1);
  for (let row = firstRow; row <= lastRow; row++) {
    if (row % stride === 0) yield;
    const cells = sheet.rows[row - 1];
    if (!cells || skipped.has(row) || places.every((place) => isEmpty(cells[place]))) continue;
    for (const place of places) hash.cell(cells[place]);
    for (const { rule, column, values } of origin?.remarks(row) ?? [])
      addAll(hash, [rule, column, canonicalJson(values)]);
    hash.end();
  }
  hash.end();
}

function isEmpty(cell: Cell | undefined): boolean {
  return cell === undefined || isBlank(cell);
}

function* addRecords(hash: CellHash, { byTag }: RecordBook): Generator<void, void, void> {
  const all = [...byTag.values()].flat().toSorted(bySheetAndPlace);
  for (const [index, one] of all.entries()) {
    if (index % stride === stride - 1) yield;
    const { kind, sheet, tag, series, temperature, remarks } = one;
    addAll(hash, [kind, sheet, tag, series, temperature, remarks.map(({ rule }) => rule).join()]);
    if (one.kind === 'record') {
      addAll(hash, [one.takenOn, one.gapUnit.text]);
      for (const { gap, volts } of one.points) addAll(hash, [gap, volts]);
    } else {
      addAll(hash, [one.unit.text, one.unit.detection ?? '']);
      for (const { displacement, output } of one.levels) addAll(hash, [displacement, output]);
    }
  }
}

function* addHistory(hash: CellHash, { byTag, remarks }: HistoryBook): Generator<void, void, void> {
  const all = [...byTag.values()].flat().toSorted(bySheetAndPlace);
  for (const [index, { sheet, tag, day, value, unit, asLeft, uncertainty }] of all.entries()) {
    if (index % stride === stride - 1) yield;
    addAll(hash, [sheet, tag, day, value, unit.text, asLeft, uncertainty]);
  }
  for (const { sheet, rule } of remarks) addAll(hash, [sheet, rule]);
}

/** All of a sheet of recorded readings or run-ups: its headers, and every row. */
function* addSheet(hash: CellHash, { name, rows, plainText }: Sheet): Generator<void, void, void> {
  addAll(hash, ['recorded', name, plainText?.decimal ?? '']);
  for (const [index, cells] of rows.entries()) {
    if (index % stride === stride - 1) yield;
    if (cells.every(isBlank)) continue;
    addAll(hash, cells);
  }
}

function bySheetAndPlace(one: Place, other: Place): number {
  if (one.sheet !== other.sheet) return one.sheet < other.sheet ? -1 : 1;
  return one.row - other.row || columnNumber(one.column) - columnNumber(other.column);
}

function addAll(hash: CellHash, cells: readonly Cell[]): void {
  for (const cell of cells) hash.cell(cell);
  hash.end();
}
