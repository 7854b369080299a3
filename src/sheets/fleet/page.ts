import { verdicts } from '../../audit/model/threshold.ts';
import { verdictWords } from '../../audit/model/wording.ts';
import { cell } from '../cells.ts';
import type { Counts } from '../summary/counts.ts';
import { heading, remark, wide, type Entry } from '../summary/layout.ts';

/** Widths of columns A to N: a workbook or machine, a word, eleven counts, and one for sentences. */
export const widths = [28, 14, 10, 9, 9, 10, 9, 9, 9, 9, 12, 9, 9, 66] as const;
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

const counted: readonly (readonly [header: string, count: (counts: Counts) => number])[] = [
  ['channels', ({ channels }) => channels],
  ...verdicts.map((verdict) => [verdictWords[verdict], (counts: Counts) => counts[verdict]] as const),
  ['in bypass', ({ inBypass }) => inBypass],
  ['groups that cannot trip', ({ groupsThatCannotTrip }) => groupsThatCannotTrip],
  ['not read', ({ notRead }) => notRead],
  ['critical', ({ critical }) => critical],
];

/** Headers of lines that count channels, under what they are of and before what is said of it. */
export function countHeaders(first: string, last: string): readonly Entry[] {
  return [
    cell(first, 'header'),
    cell('Worst', 'header'),
    ...counted.map(([text]) => cell(text, 'headerCentred')),
    cell(last, 'header'),
  ];
}

/** The counts under `countHeaders`. */
export function countEntries(counts: Counts): readonly Entry[] {
  return counted.map(([, count]) => cell(count(counts), 'count'));
}
