import { columnLetters } from '../../../cells/address.ts';
import type { MappedTable } from '../../model/columnMap.ts';
import { listedUpTo } from '../../model/wording.ts';
import type { Place } from '../../read/understand/blocks/block.ts';
import type { FieldOption, Option } from '../../read/understand/questions/question.ts';
import { meaning, type MeaningId } from '../../read/understand/meaning.ts';

/** Names that do not go into a sentence as they stand above a column. */
const spoken: Readonly<Partial<Record<MeaningId, string>>> = {
  alert: 'alert setpoint',
  danger: 'danger setpoint',
  kind: 'kind of channel',
  calibratedOn: 'date of calibration',
  lastGoodOn: 'date when it was last good',
  bypass: 'note that it is in bypass',
};

/** Sheets that are named in a line. */
const mostNamed = 4;

/** A cell as people name it: `Panel!G4`. */
export function cellName({ sheet, row, column }: Place): string {
  return `${sheet}!${columnLetters(column)}${row}`;
}

/** A field as people name it, by how its table lies: a column, a row, or a label of forms. */
export function fieldWords(field: FieldOption, table: MappedTable | undefined): string {
  const header = field.header === '' ? 'without a header' : `'${field.header}'`;
  switch (table?.lies ?? 'rows') {
    case 'rows':
      return `column ${columnLetters(field.place.column)} of sheet '${field.sheet}', ${header}`;
    case 'columns':
      return `row ${field.place.row} of sheet '${field.sheet}', ${header}`;
    case 'forms':
      return `the value at ${header} on sheet '${field.sheet}'`;
  }
}

/** What an answer says about tables. */
export function tablesIn({ answer }: Option): readonly MappedTable[] {
  return answer.tables ?? [];
}

/** A list as people name it among others: its sheet, and where it begins where another one stands on that sheet. */
export function listWords(table: MappedTable, among: readonly MappedTable[]): string {
  const alone = among.filter(({ sheet }) => sheet === table.sheet).length < 2;
  return alone ? `sheet '${table.sheet}'` : `the ${listAt(table)} of sheet '${table.sheet}'`;
}

/** Sheets by name: `sheet 'A'`, `sheets 'A' and 'B'`. */
export function sheetsWords(names: readonly string[]): string {
  const named = names.map((name) => `'${name}'`);
  return `${names.length === 1 ? 'sheet' : 'sheets'} ${listedUpTo(named, mostNamed)}`;
}

/** A list by where its headers begin: `list in row 10`. */
export function listAt({ header, lies }: Pick<MappedTable, 'header' | 'lies'>): string {
  return `list in ${lies === 'columns' ? 'column' : 'row'} ${header}`;
}

/** The name of a meaning in a sentence: `danger setpoint`, `date of calibration`. */
export function meaningWords(id: MeaningId): string {
  return spoken[id] ?? meaning(id).name;
}
