import { columnLetters, columnNumber } from '../../../cells/address.ts';
import { type Workbook, cellAt } from '../../../cells/sheet.ts';
import type { NotRead } from '../../model/attention.ts';
import type { ColumnMap } from '../../model/columnMap.ts';
import type { HistoryBook } from '../history/reading.ts';
import type { RecordBook } from '../records/rawRecord.ts';
import { isSameTable, type Tables, type FoundTable, type UnreadHeader } from '../tables/found.ts';
import { headerKey } from '../tables/header.ts';
import { unreadAreas, type ReadRows } from './unreadAreas.ts';
import { cellText, isBlank, type Cell } from '../../../cells/cell.ts';
import { indexTags } from '../join/tagIndex.ts';
import type { Dimension, Unit } from '../../../units/parse.ts';
import { measurand, sensitivity } from '../tables/dimensions.ts';
import { nearMeaning } from './nearMeaning.ts';
import { saysNumber, unitInText } from './quantityInText.ts';
import { isProtective } from '../tables/vocabulary.ts';

/** Words beside a unit that make a level one at which a monitor acts. */
const acting = /danger|trip|interlock|alarm|alert|warn|shut|set\s?p|limit|range|scale/iu;

/** Words of values that a sensor has by its data sheet, which judge nothing. */
const ofDataSheet = /\b(?:rated|nominal|typical|catalogue|spec)/iu;

/** Columns whose number makes a row one of a channel. */
const telling = ['measured', 'asLeftSensitivity', 'configured', 'alert', 'danger'] as const;

/** What of a workbook was read, to tell what was not. */
export interface ReadParts {
  readonly tables: Tables;
  readonly records: RecordBook;
  readonly history: HistoryBook;
}

/**
 * Everything that looks like a part of the audit and was not read, but for what a person has said is none. Nothing that may
 * bear on a danger is passed over without a word.
 */
export function* notRead(
  workbook: Workbook,
  { tables, records, history }: ReadParts,
  map: ColumnMap,
  isTag: (key: string) => boolean,
): Generator<void, NotRead[], void> {
  const { channels, settings } = tables;
  const ofOneTable = isSameTable(channels, settings);
  const columns = ofOneTable
    ? unreadColumns({ ...channels, unread: unreadByBoth(tables) })
    : [...unreadColumns(channels), ...unreadColumns(settings)];
  const rows = [...unreadRows(channels), ...(ofOneTable ? [] : unreadRows(settings))];
  const areas = yield* unreadAreas(workbook, tables, isTag, rowsRead(records, history));
  return [...areas, ...columns, ...rows].filter((one) => !isSettled(one, map));
}

/** Headers of a table that is both kinds which neither reading of it uses. */
function unreadByBoth({ channels, settings }: Tables) {
  const used = new Set([...settings.columns.values(), ...settings.unitColumns].map(({ column }) => column));
  return channels.unread.filter(({ column }) => !used.has(column));
}

function rowsRead(records: RecordBook, history: HistoryBook): ReadRows {
  const read = new Map<string, Set<number>>();
  const remarked = new Map<string, Set<number>>();
  const add = (sheet: string, row: number, rows = read): void => {
    const there = rows.get(sheet);
    if (there) there.add(row);
    else rows.set(sheet, new Set([row]));
  };
  for (const one of [...records.byTag.values()].flat()) {
    add(one.sheet, one.row);
    for (const { row } of one.kind === 'record' ? one.points : one.levels) add(one.sheet, row);
    for (const { sheet, row } of one.remarks) add(sheet, row);
  }
  for (const { sheet, row } of [...history.byTag.values()].flat()) add(sheet, row);
  for (const { sheet, row } of [...records.remarks, ...history.remarks]) {
    add(sheet, row);
    add(sheet, row, remarked);
  }
  return { read, remarked };
}

/** Whether a person has said that this is no part of the audit. */
export function isSettled(
  { what, sheet, row, column, text }: NotRead,
  { notOfAudit = [] }: ColumnMap,
): boolean {
  return notOfAudit.some((said) => {
    if (said.sheet.toLowerCase() !== sheet.toLowerCase()) return false;
    if (said.row !== undefined) return what !== 'column' && said.row === row;
    if (said.column === undefined) return true;
    if (what !== 'column') return false;
    const number = columnNumber(said.column);
    const letters = Number.isNaN(number) ? '' : columnLetters(number);
    return letters === column || headerKey(said.column) === headerKey(text);
  });
}

/** Rows of a table that have values and no tag, and so belong to no channel. */
function unreadRows(table: FoundTable): NotRead[] {
  const { sheet, columns } = table;
  const tag = columns.get('tag');
  return indexTags(table).untagged.map((row): NotRead => {
    const told = telling.some((id) => {
      const column = columns.get(id);
      return column !== undefined && saysNumber(cellAt(sheet, row, column.column), sheet.plainText);
    });
    const first = [...columns.values()].find(({ column }) => !isBlank(cellAt(sheet, row, column)));
    return {
      what: 'row',
      text: first ? cellText(cellAt(sheet, row, first.column)).slice(0, 60) : '',
      looksLike: 'a channel without a tag',
      severity: told ? 'critical' : 'warning',
      sheet: sheet.name,
      row,
      column: tag ? columnLetters(tag.column) : '',
    };
  });
}

/**
 * Columns of a table that hold values, have no place in the audit, and look as if they should: by a header that belongs to a
 * quantity or nearly spells one, by a unit of sensitivity or of a level, or by values with such a unit.
 */
function unreadColumns(table: FoundTable): NotRead[] {
  return table.unread.flatMap((header): NotRead[] => {
    if (!hasValues(table, header.column)) return [];
    const looks = looksLike(header) ?? looksByValues(table, header);
    if (!looks) return [];
    return [
      {
        what: 'column',
        text: header.text,
        ...looks,
        sheet: table.sheet.name,
        row: table.headerRow,
        column: columnLetters(header.column),
      },
    ];
  });
}

type Looks = Pick<NotRead, 'looksLike' | 'severity'>;

function looksLike(header: UnreadHeader): Looks | null {
  const near = nearMeaning(header.name);
  if (near && !(near.exact && near.id === 'tag') && fits(near.exact, header)) {
    return { looksLike: near.name, severity: isProtective(near.id) ? 'critical' : 'warning' };
  }
  return header.unit ? looksByUnit(header.name, header.unit) : null;
}

/** What the first value of a column that is a number with its unit looks like, where the header names no unit. */
function looksByValues(
  { sheet, firstRow, lastRow, skipped }: FoundTable,
  { column, name, unit }: UnreadHeader,
): Looks | null {
  if (unit) return null;
  for (let row = firstRow; row <= lastRow; row++) {
    const said = skipped.has(row) ? undefined : unitInText(cellAt(sheet, row, column));
    const looks = said && looksByUnit(name, said);
    if (looks) return looks;
  }
  return null;
}

function looksByUnit(name: string, unit: Unit): Looks | null {
  if (isOf(sensitivity, unit.dimension)) {
    const rated = ofDataSheet.test(name);
    return { looksLike: 'a sensitivity', severity: rated ? 'warning' : 'critical' };
  }
  if (!isOf(measurand, unit.dimension) || unit.dimension === 'percent') return null;
  if (acting.test(name)) return { looksLike: 'a level at which it acts', severity: 'critical' };
  // Lengths in mm and m are of cables and shafts; mil, µm and a detection are of what a monitor shows.
  const ofMonitor = unit.detection !== undefined || unit.dimension !== 'displacement' || unit.factor <= 25.4;
  return ofMonitor ? { looksLike: 'a level', severity: 'warning' } : null;
}

/** A text header in the place of a second name for a tag, a machine or a location is no quantity that was missed. */
function fits(exact: boolean, { secondName }: UnreadHeader): boolean {
  return !(exact && secondName);
}

function isOf(dimensions: readonly Dimension[], dimension: Dimension): boolean {
  return dimensions.includes(dimension);
}

function hasValues({ sheet, firstRow, lastRow, skipped }: FoundTable, column: number): boolean {
  for (let row = firstRow; row <= lastRow; row++) {
    if (!skipped.has(row) && isFilled(cellAt(sheet, row, column))) return true;
  }
  return false;
}

function isFilled(cell: Cell): boolean {
  return !isBlank(cell) && !(typeof cell === 'string' && /^\s*[-–—]+\s*$/u.test(cell));
}
