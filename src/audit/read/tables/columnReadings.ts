import { columnLetters } from '../../../cells/address.ts';
import type { FoundTable } from './found.ts';
import { specOf, type TableKind } from './vocabulary.ts';
import type { ColumnReading } from '../../model/report.ts';

const names: Readonly<Record<TableKind, ColumnReading['table']>> = {
  channels: 'channel list',
  settings: 'monitor settings',
};

/** How each column of a table was understood, for the user to see and correct. */
export function columnReadings(table: FoundTable): ColumnReading[] {
  return [...table.columns.values()].map((column) => {
    const spec = specOf(table.kind, column.id);
    const beside = spec?.dimensions && table.unitColumns.length > 0 ? 'by unit column' : null;
    return {
      table: names[table.kind],
      sheet: table.sheet.name,
      headerRow: table.headerRow,
      column: columnLetters(column.column),
      header: column.header,
      meaning: spec?.name ?? column.id,
      unit: column.unit?.text ?? beside ?? spec?.usualUnit ?? null,
      evidence: [],
    };
  });
}
