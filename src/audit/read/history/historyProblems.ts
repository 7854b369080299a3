import { factAt, factOf, type PlacedFact } from '../../model/findings.ts';
import type { HistoryBook } from './reading.ts';

/** What is to be said about histories that belongs to no channel: cells that can't be used, tags that the list has not. */
export function historyProblems(
  { byTag, remarks }: HistoryBook,
  isTag: (key: string) => boolean,
): PlacedFact[] {
  const lone = [...byTag].flatMap(([key, [first, ...more]]) =>
    first && !isTag(key) ? [{ first, count: more.length + 1 }] : [],
  );
  return [
    ...remarks,
    ...lone.map(({ first, count }) =>
      factAt(first, factOf('history-without-channel', 'warning', { tag: first.tag, count })),
    ),
  ];
}
