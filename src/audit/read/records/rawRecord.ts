import { type Place, type PlacedFact, factAt, factOf } from '../../model/findings.ts';
import type { Unit } from '../../../units/parse.ts';

/** A point as it stands in the sheet. */
interface RawPoint {
  readonly row: number;
  readonly gap: number;
  /** V. */
  readonly volts: number;
}

/** The readings of one probe at one time, as they stand in the workbook. */
export interface RawRecord extends Place {
  readonly kind: 'record';
  readonly tag: string;
  readonly series: string;
  readonly temperature: string;
  /** Day counted from 1970-01-01. */
  readonly takenOn: number | null;
  readonly gapUnit: Unit;
  readonly points: RawPoint[];
  readonly remarks: PlacedFact[];
}

/** One level of a check with a known vibration. */
interface RawLevel {
  readonly row: number;
  /** Peak to peak, in `unit`. */
  readonly displacement: number;
  /** Peak to peak, V. */
  readonly output: number;
}

export interface RawCheck extends Place {
  readonly kind: 'check';
  readonly tag: string;
  readonly series: string;
  readonly temperature: string;
  readonly unit: Unit;
  readonly levels: RawLevel[];
  readonly remarks: PlacedFact[];
}

/** All records of a workbook, by what tags are compared by; remarks that belong to no channel. */
export interface RecordBook {
  readonly byTag: ReadonlyMap<string, readonly (RawRecord | RawCheck)[]>;
  readonly remarks: readonly PlacedFact[];
}

/** What is to be said about records that belongs to no channel: records of tags that the channel list has not. */
export function recordProblems(
  { byTag, remarks }: RecordBook,
  isTag: (key: string) => boolean,
): PlacedFact[] {
  const unmatched = [...byTag].flatMap(([key, records]) => (isTag(key) ? [] : records));
  return [
    ...remarks,
    ...unmatched.map((record) =>
      factAt(record, factOf('record-without-channel', 'warning', { tag: record.tag })),
    ),
  ];
}
