import { factAt, factOf, type PlacedFact, type Severity } from '../../model/findings.ts';
import type { RuleId, RuleValues } from '../../model/rules/rules.ts';
import type { AssumedUnit } from '../rows/units.ts';
import type { Workbook } from '../../../cells/sheet.ts';
import { placeOf } from '../rows/diagnostic.ts';
import { isSameTable, type FoundTable, type Tables } from '../tables/found.ts';
import { looksLikeUnit } from '../tables/header.ts';
import { isResultSheet } from '../tables/titleWords.ts';
import { columnsOf } from '../tables/vocabulary.ts';
import { isOnlyTag, tagAt, type TagIndex } from './tagIndex.ts';

/** A problem at a cell of a table. */
export function problemAt<R extends RuleId>(
  table: FoundTable,
  row: number,
  column: string,
  rule: R,
  severity: Severity,
  values: RuleValues[R],
): PlacedFact {
  return factAt(placeOf(table, row, column), factOf(rule, severity, values));
}

/** Rows that have values but no tag, and so belong to no channel. */
export function untaggedRows(table: FoundTable, index: TagIndex): PlacedFact[] {
  return index.untagged.map((row) => problemAt(table, row, 'tag', 'row-without-tag', 'warning', { row }));
}

/** A text in the tag column of an otherwise empty row: a heading or a remark, not a channel. */
export function onlyTag(table: FoundTable, row: number, text: string): PlacedFact {
  return problemAt(table, row, 'tag', 'heading-or-remark', 'note', { row, text });
}

/** What there is to say about the tables and sheets as a whole. */
export function tableProblems(workbook: Workbook, tables: Tables): PlacedFact[] {
  const problems: PlacedFact[] = [];
  const { channels, settings } = tables;
  for (const table of isSameTable(channels, settings) ? [channels] : [channels, settings]) {
    for (const [row, what] of table.skipped) {
      if (what !== 'header repeated') continue;
      problems.push(problemAt(table, row, 'tag', 'header-repeated', 'note', { row }));
    }
    if (table.sheet.hidden) {
      const values = { sheet: table.sheet.name, holds: 'table' } as const;
      problems.push(problemAt(table, table.headerRow, 'tag', 'hidden-sheet', 'note', values));
    }
  }
  problems.push(...belowTable(channels), ...belowTable(settings));
  problems.push(...remarks(channels), ...remarks(settings));
  problems.push(...earlierResults(workbook));
  return problems;
}

/** Sheets that an earlier audit wrote. */
export function earlierResults({ sheets }: Workbook): PlacedFact[] {
  return sheets.filter(isResultSheet).map(({ name }) => {
    const place = { sheet: name, row: 1, column: 'A' };
    return factAt(place, factOf('earlier-result', 'note', { sheet: name }));
  });
}

/** Rows typed right below a spreadsheet table, which it has not taken in. */
function belowTable(table: FoundTable): PlacedFact[] {
  const { areaEnd, lastRow } = table;
  if (areaEnd === null) return [];
  for (let row = areaEnd + 1; row <= lastRow; row++) {
    if (table.skipped.has(row) || tagAt(table, row) === '' || isOnlyTag(table, row)) continue;
    return [problemAt(table, row, 'tag', 'row-below-table', 'note', { row, tableEnd: areaEnd })];
  }
  return [];
}

function remarks(table: FoundTable): PlacedFact[] {
  return [...table.columns.values()].flatMap((column) => {
    const spec = columnsOf(table.kind)[column.id];
    if (!spec?.dimensions || column.unit || column.remarks.length === 0) return [];
    if (column.remarks.some(looksLikeUnit)) return [];
    const { header } = column;
    return [problemAt(table, table.headerRow, column.id, 'header-remark', 'note', { header })];
  });
}

/** Columns whose numbers had no unit of their own. */
export function assumedUnits(tables: Tables, assumed: Iterable<AssumedUnit>): PlacedFact[] {
  return [...assumed].map(({ table, column, unit, row }) => {
    const found = tables[table];
    const header = found.columns.get(column)?.header ?? column;
    return problemAt(found, found.headerRow, column, 'unit-assumed', 'warning', { header, unit, row });
  });
}
