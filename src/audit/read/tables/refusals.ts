import type { Sheet, Workbook } from '../../../cells/sheet.ts';
import { columnLetters } from '../../../cells/address.ts';
import { AuditRefused } from '../../model/refused.ts';
import { isSameTable, type FoundTable } from './found.ts';
import { quoteHeaders, type HeaderMatch } from './headerRows.ts';
import { columnsOf, type TableKind } from './vocabulary.ts';

const titles: Readonly<Record<TableKind, string>> = {
  channels: 'channel list',
  settings: 'table of monitor settings',
};

/**
 * The sheet that a column map names.
 * @throws AuditRefused where there is none of that name.
 */
export function sheetNamed(workbook: Workbook, name: string, kind: TableKind): Sheet {
  const sheet = workbook.sheets.find((candidate) => candidate.name.toLowerCase() === name.toLowerCase());
  if (sheet) return sheet;
  const names = workbook.sheets.map((candidate) => `'${candidate.name}'`).join(', ');
  throw new AuditRefused(`Column map, ${kind}: there is no sheet '${name}'. The sheets are: ${names}.`);
}

/** Why no table of a kind was found: the row that comes closest and what it lacks. */
export function nothingFits(kind: TableKind, workbook: Workbook, near: readonly HeaderMatch[]): string {
  const closest = near.toSorted(
    (a, b) => a.missing.length - b.missing.length || b.columns.size - a.columns.size,
  )[0];
  if (!closest) {
    const sheets = workbook.sheets.map((sheet) => `'${sheet.name}'`).join(', ') || 'none';
    return `No ${titles[kind]} was found: no row has a header 'tag'. Sheets looked at: ${sheets}.`;
  }
  const missing = closest.missing.map((name) => `'${name}'`).join(', ');
  return (
    `No ${titles[kind]} was found: sheet '${closest.sheet.name}', row ${closest.row} comes closest but has no column ${missing}. ` +
    `Headers seen: ${quoteHeaders(closest.headers)}. Rename a header, or name the column in a column map.`
  );
}

/** Where tables of one kind were found, of which only one can be meant. */
export function twoFit(kind: TableKind, matches: readonly HeaderMatch[]): string {
  const places = matches.map((match) => `sheet '${match.sheet.name}' row ${match.row}`).join(' and ');
  const [first] = matches;
  return (
    `More than one ${titles[kind]} was found: ${places}. Name one in a column map ({"${kind}": {"sheet": "…", "headerRow": …}}). ` +
    `Headers seen: ${first ? quoteHeaders(first.headers) : ''}.`
  );
}

/**
 * A column of a table that is both can have one meaning only.
 * @throws AuditRefused where one has two.
 */
export function refuseSharedColumn(channels: FoundTable, settings: FoundTable): void {
  if (!isSameTable(channels, settings)) return;
  for (const [id, column] of channels.columns) {
    const other = [...settings.columns.values()].find((candidate) => candidate.column === column.column);
    if (!other || id === 'tag') continue;
    const names = `'${nameOf('channels', id)}' and '${nameOf('settings', other.id)}'`;
    throw new AuditRefused(
      `Sheet '${channels.sheet.name}', row ${channels.headerRow}: column ${columnLetters(column.column)} '${column.header}' could be both ${names}. ` +
        `Rename it, or name the right one in a column map.`,
    );
  }
}

function nameOf(kind: TableKind, id: string): string {
  return columnsOf(kind)[id]?.name ?? id;
}
