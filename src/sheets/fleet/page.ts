import { verdicts } from '../../audit/model/threshold.ts';
import { type VerdictCounts } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { heading, remark, wide, type Entry } from '../summary/layout.ts';

/** Widths of columns A to K: a workbook or machine, a word, eight counts, and one for sentences. */
export const widths = [28, 14, 15, 15, 13, 15, 11, 11, 9, 13, 52] as const;
const lastColumn = widths.length;

/** A line over the whole page. */
export function across(text: string, style: string): readonly Entry[] {
  return [wide(text, style, lastColumn)];
}

export function pageHeading(text: string): readonly Entry[] {
  return heading(text, lastColumn);
}

export function pageRemark(text: string): readonly Entry[] {
  return remark(text, lastColumn);
}

/** Headers of lines that count channels, under what they are of and before what is said of it. */
export function countHeaders(first: string, last: string): readonly Entry[] {
  return [
    cell(first, 'header'),
    cell('Worst', 'header'),
    ...['channels', ...verdicts, 'groups that cannot trip'].map((text) => cell(text, 'headerCentred')),
    cell(last, 'header'),
  ];
}

/** The counts under `countHeaders`. */
export function countEntries(counts: VerdictCounts): readonly Entry[] {
  const shown = [counts.channels, ...verdicts.map((verdict) => counts[verdict]), counts.groupsThatCannotTrip];
  return shown.map((count) => cell(count, 'count'));
}
