import type { ColumnMap, TableMap } from '../../model/columnMap.ts';
import type { Sheet, Workbook } from '../../../cells/sheet.ts';
import { AuditRefused, TablesUnclear } from '../../model/refused.ts';
import { bounded, type ChosenHeader } from './bounded.ts';
import { finish } from '../../model/steps.ts';
import { candidateHeaders, mappedHeaders } from './candidates.ts';
import { applyMap } from './applyMap.ts';
import type { FoundColumn, FoundTable } from './found.ts';
import { quoteHeaders, withColumnsOfOther, type HeaderMatch } from './headerRows.ts';
import { nothingFits, refuseSharedColumn, sheetNamed, twoFit } from './refusals.ts';
import { searchHeaders, type HeaderRows } from './searchHeaders.ts';
import type { TableKind } from './vocabulary.ts';

/**
 * Finds the channel list and the monitor settings of a workbook by their headers: on any sheet, below any titles, in
 * any column order. One table may be both.
 * @throws TablesUnclear where a table is missing, stands twice, or two of its columns mean the same.
 * @throws AuditRefused where the map names what is not there.
 */
export function findTables(
  workbook: Workbook,
  map: ColumnMap = {},
  headerRows: HeaderRows = finish(searchHeaders(workbook)),
): Record<TableKind, FoundTable> {
  const all = candidateHeaders(headerRows);
  const own = {
    channels: choose('channels', workbook, all, map),
    settings: choose('settings', workbook, all, map),
  };
  const [channels, settings] = isOneRow(own.channels, own.settings)
    ? [own.channels, own.settings]
    : [withOther(own.channels), withOther(own.settings)];
  const found = {
    channels: bounded(channels, settings, all, headerRows),
    settings: bounded(settings, channels, all, headerRows),
  };
  refuseSharedColumn(found.channels, found.settings);
  return found;
}

function choose(
  kind: TableKind,
  workbook: Workbook,
  all: readonly HeaderMatch[],
  map: ColumnMap,
): ChosenHeader {
  const said = map[kind];
  const sheet = said?.sheet === undefined ? undefined : sheetNamed(workbook, said.sheet, kind);
  const own = all.filter(
    (match) =>
      match.kind === kind &&
      (!sheet || match.sheet === sheet) &&
      (said?.headerRow === undefined || match.row === said.headerRow),
  );
  const pointedAt = mappedHeaders(kind, workbook, sheet, said);
  refuseEmptyRow(kind, sheet, said?.headerRow, own.length + pointedAt.length);
  const known = (match: HeaderMatch) =>
    own.some((other) => other.sheet === match.sheet && other.row === match.row);
  const pointed = pointedAt.filter((match) => !known(match));
  const mapped = applyWherePossible([...own, ...pointed], said);
  const complete = mapped.filter((match) => match.missing.length === 0);
  const fitting = said ? notTheOtherTable(kind, complete, all) : complete;
  const [first, ...others] = fitting;
  if (!first) throw new TablesUnclear(nothingFits(kind, workbook, mapped));
  const repeats = others.filter((other) => other.sheet === first.sheet && sameColumns(first, other));
  const rivals = others.filter((other) => !repeats.includes(other));
  if (rivals.length > 0) throw new TablesUnclear(twoFit(kind, [first, ...rivals]));
  refuseClash(first);
  return { match: first, repeats: new Set(repeats.map((repeat) => repeat.row)) };
}

/** Whether both tables are one: the same header row and the same tags. */
function isOneRow({ match: one }: ChosenHeader, { match: other }: ChosenHeader): boolean {
  return (
    one.sheet === other.sheet &&
    one.row === other.row &&
    one.columns.get('tag')?.column === other.columns.get('tag')?.column
  );
}

/** A table with the columns of the other kind that stand in it. */
function withOther({ match, repeats }: ChosenHeader): ChosenHeader {
  const both = withColumnsOfOther(match);
  refuseClash(both);
  return { match: both, repeats };
}

function refuseClash({ sheet, row, headers, clashes: [clash] }: HeaderMatch): void {
  if (!clash) return;
  throw new TablesUnclear(
    `Sheet '${sheet.name}', row ${row}: several columns could be '${clash.name}': ${quoteHeaders(clash.headers)}. ` +
      `Rename all but one, or name the right one in a column map. Headers seen: ${quoteHeaders(headers)}.`,
  );
}

function refuseEmptyRow(
  kind: TableKind,
  sheet: Sheet | undefined,
  row: number | undefined,
  found: number,
): void {
  if (row === undefined || found > 0) return;
  const where = sheet ? `sheet '${sheet.name}'` : 'any sheet';
  throw new AuditRefused(`Column map, ${kind}: there is no row ${row} with headers on ${where}.`);
}

/** Where a map by letters fits both tables, the one that is the other table by its own headers is not meant. */
function notTheOtherTable(
  kind: TableKind,
  complete: readonly HeaderMatch[],
  all: readonly HeaderMatch[],
): readonly HeaderMatch[] {
  const isOther = (match: HeaderMatch) =>
    all.some(
      (other) =>
        other.kind !== kind &&
        other.sheet === match.sheet &&
        other.row === match.row &&
        other.missing.length === 0,
    );
  const rest = complete.filter((match) => !isOther(match));
  return rest.length > 0 ? rest : complete;
}

/** The matches with the map put in; those it can't be applied to do not count while it fits another. */
function applyWherePossible(candidates: readonly HeaderMatch[], map: TableMap | undefined): HeaderMatch[] {
  const mapped: HeaderMatch[] = [];
  let refusal: AuditRefused | undefined;
  for (const match of candidates) {
    try {
      mapped.push(applyMap(match, map));
    } catch (error) {
      if (!(error instanceof AuditRefused)) throw error;
      refusal ??= error;
    }
  }
  if (refusal && mapped.length === 0) throw refusal;
  return mapped;
}

/** Whether a header further down means just the same, units included, so that the rows below it go on with the table. */
function sameColumns(a: HeaderMatch, b: HeaderMatch): boolean {
  if (a.columns.size !== b.columns.size || a.unitColumns.length !== b.unitColumns.length) return false;
  const sameUnits = a.unitColumns.every((unit, index) => b.unitColumns[index]?.column === unit.column);
  return sameUnits && [...a.columns].every(([id, column]) => isSameColumn(column, b.columns.get(id)));
}

function isSameColumn(a: FoundColumn, b: FoundColumn | undefined): boolean {
  return (
    b?.column === a.column &&
    b.unit?.text === a.unit?.text &&
    b.unit?.detection === a.unit?.detection &&
    b.coverage === a.coverage &&
    b.remarks.join() === a.remarks.join()
  );
}
