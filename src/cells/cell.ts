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
