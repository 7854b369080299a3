import type { Problem } from '../../model/findings.ts';
import type { RecordBook } from './rawRecord.ts';

/** What is to be said about records that belongs to no channel: records of tags that the channel list has not. */
export function recordProblems({ byTag, remarks }: RecordBook, isTag: (key: string) => boolean): Problem[] {
  const lone = [...byTag].flatMap(([key, records]) => (isTag(key) ? [] : records));
  return [
    ...remarks,
    ...lone.map(({ tag, sheet, row, column }) => ({
      rule: 'record-without-channel',
      severity: 'warning' as const,
      message: `The record of '${tag.slice(0, 60)}' belongs to no channel of the channel list, so it was not looked at. Correct the tag, or add the channel.`,
      sheet,
      row,
      column,
    })),
  ];
}
