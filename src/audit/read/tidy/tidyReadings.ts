import { columnLetters } from '../../../cells/address.ts';
import type { ColumnReading } from '../../model/report.ts';
import { evidenceTexts } from '../understand/evidenceText.ts';
import { meaning } from '../understand/meanings/meaning.ts';
import type { TidyList } from './tidyList.ts';

/** How each field that was used was understood, with its evidence, for the user to see and correct. */
export function tidyReadings({ columns }: TidyList): ColumnReading[] {
  return columns.flatMap(({ id, name, table, fields }) =>
    fields.map(({ place, header, unit, evidence }): ColumnReading => ({
      table: table === 'channels' ? 'channel list' : 'monitor settings',
      sheet: place.sheet,
      headerRow: place.row,
      column: columnLetters(place.column),
      header,
      meaning: name,
      unit: unit ?? meaning(id).usualUnit,
      evidence: evidenceTexts(evidence),
    })),
  );
}
