import type { ColumnReading } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { heading, wide, type Entry } from './layout.ts';

/** How each column was understood, for the reader to check before anything else is believed. */
export function columnLines(columns: readonly ColumnReading[]): readonly (readonly Entry[])[] {
  return [
    heading('How the columns were understood'),
    [
      ...['Table', 'Sheet', 'Header row', 'Column'].map((text) => cell(text, 'header')),
      wide('Header as it stands', 'header', 4),
      cell('Understood as', 'header'),
      wide('Unit', 'header', 2),
    ],
    ...columns.map(({ table, sheet, headerRow, column, header, unit, meaning }): readonly Entry[] => [
      cell(table, 'text'),
      cell(sheet, 'wrapped'),
      cell(headerRow, 'countLeft'),
      cell(column, 'text'),
      wide(header, 'wrapped', 4),
      cell(meaning, 'wrapped'),
      wide(unit, 'wrapped', 2),
    ]),
  ];
}
