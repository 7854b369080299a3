import type { NotOfAudit } from '../../../audit/model/columnMap.ts';
import type { NotRead } from '../../../audit/model/report.ts';

/** Texts of what was not read. */
export const unreadWords = {
  title: 'Not read',
  hint: 'These look like part of the audit. Correct the header, or say that they are none; that is kept in the workbook.',
  looksLike: 'looks like',
  mark: { column: 'No quantity of this audit', other: 'No part of this audit' },
  marked: 'Counts as settled from the next audit on.',
  takeBack: 'Take it back',
  settled: 'Said to be no part of this audit',
  more: (count: number) => `Show ${count} more`,
} as const;

/** What a button says that marks a thing that was not read. */
export function markText({ what }: NotRead): string {
  return what === 'column' || what === 'value' ? unreadWords.mark.column : unreadWords.mark.other;
}

/** What was marked, for people. */
export function settledText({ sheet, column, row }: NotOfAudit): string {
  if (row !== undefined) return `Sheet '${sheet}', row ${row}`;
  return column === undefined ? `Sheet '${sheet}'` : `Sheet '${sheet}', column '${column}'`;
}
