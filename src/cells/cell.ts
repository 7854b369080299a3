/**
 * A cell as a table reader sees it, whatever program or file it came from.
 * `null` is an empty cell. Numbers are in full precision, as stored.
 */
export type Cell = null | number | string | boolean | DateCell | PercentCell | ErrorCell;

/** A number shown as a date: days since 1970-01-01 00:00, no time zone; the fraction is the time of day. */
export class DateCell {
  constructor(readonly day: number) {}
}

/** A number shown with a percent sign: `percent` is what the reader of the sheet sees (3 for "3 %"). */
export class PercentCell {
  constructor(readonly percent: number) {}
}

/** A spreadsheet error such as `#N/A`, or a formula whose result was never stored (`code` is then `no stored result`). */
export class ErrorCell {
  constructor(readonly code: string) {}
}

/** Whether a cell holds nothing that a reader would see. */
export function isBlank(cell: Cell): boolean {
  return cell === null || (typeof cell === 'string' && cell.trim() === '');
}

/** A cell as a person would quote it. */
export function cellText(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell !== 'object') return String(cell).trim();
  if ('percent' in cell) return `${cell.percent} %`;
  if ('day' in cell) return isoDate(cell.day);
  return (cell satisfies ErrorCell).code;
}

/** The calendar date of a day counted from 1970-01-01, as `YYYY-MM-DD`. */
export function isoDate(day: number): string {
  const date = new Date(Math.floor(day) * 86_400_000);
  return Number.isNaN(date.getTime()) ? '(no date)' : date.toISOString().slice(0, 10);
}
