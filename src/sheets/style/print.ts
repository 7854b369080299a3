import { shortId } from '../../audit/evidence/fingerprint.ts';
import type { Audited } from '../titles.ts';

/** Foot of every printed page, with the short id of the audit where it is of one alone. */
export function footerOf(audited?: Audited): string {
  const caution =
    'Advisory only. Correct the measuring chain first; change setpoints only under the site’s management of change.';
  return audited ? `${caution} Audit ${shortId(audited)}` : caution;
}

/** Rows of a sheet (common practice of spreadsheet programs, no source). */
const greatestRow = 1_048_576;

/** How many of `total` lines a sheet takes below `above` rows. */
export function roomFor(total: number, above: number): number {
  return Math.min(total, greatestRow - above);
}

/** Says that lines were left out for want of room; empty where none were. */
export function leftOut(total: number, shown: number): string {
  return shown === total ? '' : ` Only the first ${shown} of ${total} lines fit on a sheet.`;
}
