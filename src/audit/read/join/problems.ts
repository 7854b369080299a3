import type { Problem, Severity } from '../../model/findings.ts';
import type { AssumedUnit } from '../rows/units.ts';
import type { Workbook } from '../../../cells/sheet.ts';
import { placeOf } from '../rows/complaint.ts';
import { isSameTable, type FoundTable, type Tables } from '../tables/found.ts';
import { looksLikeUnit } from '../tables/header.ts';
import { isResultSheet } from '../tables/resultSheet.ts';
import { columnsOf } from '../tables/vocabulary.ts';
import { isOnlyTag, tagAt, type TagIndex } from './tagIndex.ts';

/** A problem at a cell of a table. */
export function problemAt(
  table: FoundTable,
  row: number,
  column: string,
  rule: string,
  severity: Severity,
  message: string,
): Problem {
  return { rule, severity, message, ...placeOf(table, row, column) };
}

/** Rows that have values but no tag, and so belong to no channel. */
export function untaggedRows(table: FoundTable, index: TagIndex): Problem[] {
  return index.untagged.map((row) =>
    problemAt(
      table,
      row,
      'tag',
      'row-without-tag',
      'warning',
      `Row ${row} has no tag, so it belongs to no channel and was not audited. Enter its tag.`,
    ),
  );
}

/** A text in the tag column of an otherwise empty row: a heading or a remark, not a channel. */
export function onlyTag(table: FoundTable, row: number, text: string): Problem {
  const message = `Row ${row} holds nothing but '${text.slice(0, 80)}' in the tag column; it was taken for a heading or remark and not audited.`;
  return problemAt(table, row, 'tag', 'heading-or-remark', 'note', message);
}

/** What there is to say about the tables and sheets as a whole. */
export function tableProblems(workbook: Workbook, tables: Tables): Problem[] {
  const problems: Problem[] = [];
  const { channels, settings } = tables;
  for (const table of isSameTable(channels, settings) ? [channels] : [channels, settings]) {
    for (const [row, what] of table.skipped) {
      if (what !== 'header repeated') continue;
      problems.push(
        problemAt(
          table,
          row,
          'tag',
          'header-repeated',
          'note',
          `Row ${row} repeats the header; it was left out.`,
        ),
      );
    }
    if (table.sheet.hidden) {
      problems.push(
        problemAt(
          table,
          table.headerRow,
          'tag',
          'hidden-sheet',
          'note',
          `Sheet '${table.sheet.name}' is hidden; it was audited all the same.`,
        ),
      );
    }
  }
  problems.push(...belowTable(channels), ...belowTable(settings));
  problems.push(...remarks(channels), ...remarks(settings));
  for (const sheet of workbook.sheets) {
    if (!isResultSheet(sheet)) continue;
    const message = `Sheet '${sheet.name}' is the result of an earlier audit; it was not read as input.`;
    problems.push({
      sheet: sheet.name,
      row: 1,
      column: 'A',
      rule: 'earlier-result',
      severity: 'note',
      message,
    });
  }
  return problems;
}

/** Rows typed right below a spreadsheet table, which it has not taken in. */
function belowTable(table: FoundTable): Problem[] {
  const { areaEnd, lastRow } = table;
  if (areaEnd === null) return [];
  for (let row = areaEnd + 1; row <= lastRow; row++) {
    if (table.skipped.has(row) || tagAt(table, row) === '' || isOnlyTag(table, row)) continue;
    const message = `Row ${row} and what follows it stand below the spreadsheet table, which ends in row ${areaEnd}; they were audited all the same. Extend the table over them.`;
    return [problemAt(table, row, 'tag', 'row-below-table', 'note', message)];
  }
  return [];
}

function remarks(table: FoundTable): Problem[] {
  return [...table.columns.values()].flatMap((column) => {
    const spec = columnsOf(table.kind)[column.id];
    if (!spec?.dimensions || column.unit || column.remarks.length === 0) return [];
    if (column.remarks.some(looksLikeUnit)) return [];
    const message = `'${column.header}': what stands in brackets is no unit known here and was not used as one.`;
    return [problemAt(table, table.headerRow, column.id, 'header-remark', 'note', message)];
  });
}

/** Columns whose numbers had no unit of their own. */
export function assumedUnits(tables: Tables, assumed: Iterable<AssumedUnit>): Problem[] {
  return [...assumed].map(({ table, column, unit, row }) => {
    const found = tables[table];
    const header = found.columns.get(column)?.header ?? column;
    const message = `'${header}' has no unit; its numbers were taken in the unit of the setpoints (${unit} in row ${row}). Write the unit in brackets in the header.`;
    return problemAt(found, found.headerRow, column, 'unit-assumed', 'warning', message);
  });
}
