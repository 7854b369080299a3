import { type Place, type PlacedFact, factAt, factOf } from '../../model/findings.ts';
import type { Unit } from '../../../units/parse.ts';

/** Where a reading was found. */
type ReadingSource = 'history' | 'channel list' | 'earlier audit' | 'calibration record';

/** A dated reading of a channel's sensitivity, in the unit in which it was written. */
export interface Reading extends Place {
  /** Day counted from 1970-01-01. */
  readonly day: number;
  readonly value: number;
  readonly unit: Unit;
  /** Left behind after an adjustment or the check of one; otherwise as it was found. */
  readonly asLeft: boolean;
  /** Expanded, as a fraction of the value; `null` where none is given. */
  readonly uncertainty: number | null;
  readonly from: ReadingSource;
}

/** The histories of a workbook: readings by what tags are compared by, and what could not be used. */
export interface HistoryBook {
  readonly byTag: ReadonlyMap<string, readonly TaggedReading[]>;
  readonly remarks: readonly PlacedFact[];
}

export interface TaggedReading extends Reading {
  readonly tag: string;
}

/** What is to be said about histories that belongs to no channel: cells that can't be used, tags that the list has not. */
export function historyProblems(
  { byTag, remarks }: HistoryBook,
  isTag: (key: string) => boolean,
): PlacedFact[] {
  const unmatched = [...byTag].flatMap(([key, [first, ...more]]) =>
    first && !isTag(key) ? [{ first, count: more.length + 1 }] : [],
  );
  return [
    ...remarks,
    ...unmatched.map(({ first, count }) =>
      factAt(first, factOf('history-without-channel', 'warning', { tag: first.tag, count })),
    ),
  ];
}
