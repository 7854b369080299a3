import { cellText, isBlank } from '../../../cells/cell.ts';
import { type Sheet, cellAt } from '../../../cells/sheet.ts';
import type { Dimension, Unit } from '../../../units/parse.ts';
import { headerKey, parseHeader } from './header.ts';
import { tagWords } from './tagKey.ts';
import { unitOfText } from './unitRow.ts';

/** Columns of calibration records and of checks with a known vibration. */
export type RecordColumnId =
  'tag' | 'gap' | 'volts' | 'displacement' | 'series' | 'temperature' | 'takenOn' | 'frequency';

/** Headers by which each is known. */
const words: Readonly<Record<RecordColumnId, readonly string[]>> = {
  tag: ['tag', ...tagWords],
  gap: [
    'gap',
    'probe gap',
    'air gap',
    'target gap',
    'gap distance',
    'distance',
    'micrometer',
    'micrometer reading',
  ],
  volts: [
    'output',
    'volts',
    'voltage',
    'volt',
    'dc volts',
    'dc voltage',
    'dc output',
    'gap voltage',
    'gap volts',
    'probe output',
    'probe voltage',
    'output voltage',
    'output volts',
  ],
  displacement: [
    'displacement',
    'vibration',
    'amplitude',
    'level',
    'real displacement',
    'reference displacement',
    'known vibration',
    'input displacement',
  ],
  series: ['series', 'run', 'condition', 'state', 'as found as left', 'found left'],
  temperature: ['temperature', 'temp', 'probe temperature'],
  takenOn: ['taken on', 'date', 'calibrated on', 'measured on', 'date taken', 'calibration date'],
  frequency: ['frequency', 'speed'],
};

const meanings = new Map<string, RecordColumnId>(
  (Object.keys(words) as RecordColumnId[]).flatMap((id) =>
    words[id].map((word): [string, RecordColumnId] => [headerKey(word), id]),
  ),
);

/** What the numbers of a column measure. */
const measures: Readonly<Partial<Record<RecordColumnId, Dimension>>> = {
  gap: 'displacement',
  displacement: 'displacement',
  volts: 'voltage',
};

export interface RecordColumn {
  readonly id: RecordColumnId;
  /** From 1. */
  readonly column: number;
  readonly header: string;
  /** From the header's brackets, or from the row of units below. */
  readonly unit: Unit | null;
}

/** Longest header that is looked at. */
const longest = 60;
const mayHead = /gap|distance|micrometer|displacement|vibration|amplitude|level/iu;

/** Whether a text may head the column of gaps or of known displacements: one of them stands in every record. */
export function mayHeadRecord(text: string): boolean {
  return text.length <= longest && mayHead.test(text);
}

/** Whether a text, without the unit in its brackets, is a header of some column of records. */
export function isRecordWord(text: string): boolean {
  return text.length <= longest && meanings.has(parseHeader(text, (key) => meanings.has(key)).key);
}

/** The columns in a row of headers that belong to records, between two columns. */
export function recordColumns(sheet: Sheet, row: number, left: number, right: number): RecordColumn[] {
  const cells = sheet.rows[row - 1] ?? [];
  const found: RecordColumn[] = [];
  for (let column = left; column <= Math.min(right, cells.length); column++) {
    const cell = cells[column - 1];
    if (typeof cell !== 'string' || cell.length > longest) continue;
    const header = parseHeader(cell, (key) => meanings.has(key));
    const id = meanings.get(header.key);
    if (!id) continue;
    const unit = header.unit ?? null;
    const wanted = measures[id];
    if (wanted && unit && unit.dimension !== wanted) continue;
    found.push({ id, column, header: header.text, unit });
  }
  return found;
}

/** The columns with the units of a row right below that holds nothing else; the same columns where there is none. */
export function withUnitRow(
  sheet: Sheet,
  row: number,
  columns: readonly RecordColumn[],
): { readonly columns: readonly RecordColumn[]; readonly firstRow: number } {
  const read = columns.map((column) => {
    const cell = cellAt(sheet, row + 1, column.column);
    if (typeof cell !== 'string' || isBlank(cell)) return column;
    const unit = unitOfText(cellText(cell));
    if (unit === undefined || unit.dimension !== measures[column.id]) return column;
    return { ...column, unit: column.unit ?? unit };
  });
  const found = read.some((column, at) => column !== columns[at]);
  return found ? { columns: read, firstRow: row + 2 } : { columns, firstRow: row + 1 };
}
