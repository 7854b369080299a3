import type { EarlierSheet } from '../../../sheets/earlier/earlierSheets.ts';
import { shownText } from '../../parts/shownText.ts';
import { clockTime } from '../auditWords.ts';

/** Texts of the comparison with earlier results. */
export const sinceWords = {
  title: 'Compare with earlier results',
  hint: 'Results of earlier audits stand in this workbook. Choose one to see what changed since; what changed is then written with the other sheets.',
  choose: 'Earlier results',
  none: 'None',
  nothing: 'Nothing changed.',
  ofEarlier: 'Of the earlier results',
  more: (count: number) => `Show ${count} more`,
} as const;

/** A sheet of earlier results as the list names it: its name and when it was audited. */
export function earlierText({ sheet, audited }: EarlierSheet): string {
  return `${shownText(sheet.name, 40)} · ${audited === null ? 'time not known' : clockTime(audited)}`;
}
