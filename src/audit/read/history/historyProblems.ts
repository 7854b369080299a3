import type { Problem } from '../../model/findings.ts';
import type { HistoryBook } from './reading.ts';

/** What is to be said about histories that belongs to no channel: cells that can't be used, tags that the list has not. */
export function historyProblems({ byTag, remarks }: HistoryBook, isTag: (key: string) => boolean): Problem[] {
  const lone = [...byTag].flatMap(([key, [first, ...more]]) =>
    first && !isTag(key) ? [{ first, count: more.length + 1 }] : [],
  );
  return [
    ...remarks,
    ...lone.map(({ first: { tag, sheet, row, column }, count }): Problem => ({
      rule: 'history-without-channel',
      severity: 'warning',
      message: `${count === 1 ? 'A reading' : `${count} readings`} of '${tag.slice(0, 60)}' in the history belong to no channel of the channel list, so no drift was worked out. Correct the tag, or add the channel.`,
      sheet,
      row,
      column,
    })),
  ];
}
