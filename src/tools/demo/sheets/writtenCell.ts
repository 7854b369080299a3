import type { CellStyle, ModelCell } from '../../../sheets/model.ts';
import type { Written } from '../station/records.ts';

/** Looks of a hand-kept sheet. */
export const handKeptStyles = {
  title: { bold: true, size: 14 },
  subtitle: { italic: true, color: '595959' },
  header: { bold: true, fill: 'DDE6EE', wrap: true, valign: 'center', underline: true },
  machine: { bold: true, valign: 'top', wrap: true },
  heading: { italic: true },
  date: { numberFormat: 'yyyy-mm-dd', align: 'center' },
  number: { align: 'right' },
  word: { align: 'center' },
  prose: { wrap: true, valign: 'top' },
} as const satisfies Readonly<Record<string, CellStyle>>;

const isoDate = /^\d{4}-\d{2}-\d{2}$/u;
/** Day number of 1970-01-01 in the usual spreadsheet calendar (ECMA-376 part 1, 18.17.4.1). */
const unixEpoch = 25_569;

/** The day number that a spreadsheet stores for a date written `YYYY-MM-DD`. */
export function dayNumber(date: string): number {
  return Date.parse(`${date}T00:00:00Z`) / 86_400_000 + unixEpoch;
}

/** A cell as a person would have typed it: numbers as numbers, dates as dates, all else as text; empty for nothing. */
export function writtenCell(value: Written | undefined): ModelCell | undefined {
  if (value === undefined || value === '') return undefined;
  if (typeof value === 'number') return { value, style: 'number' };
  return isoDate.test(value) ? { value: dayNumber(value), style: 'date' } : { value };
}
