import { factAt, factOf, type PlacedFact } from '../../model/findings.ts';
import type { RecordBook } from './rawRecord.ts';

/** What is to be said about records that belongs to no channel: records of tags that the channel list has not. */
export function recordProblems(
  { byTag, remarks }: RecordBook,
  isTag: (key: string) => boolean,
): PlacedFact[] {
  const lone = [...byTag].flatMap(([key, records]) => (isTag(key) ? [] : records));
  return [
    ...remarks,
    ...lone.map((record) => factAt(record, factOf('record-without-channel', 'warning', { tag: record.tag }))),
  ];
}
