import type { ColumnMap } from './columnMap.ts';

/** A cell of a question; row and column count from 1. */
export interface AskedPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** A place that an answer names, with what stands there. */
export interface AskedField {
  readonly sheet: string;
  /** Of the header, or of the label. */
  readonly place: AskedPlace;
  readonly header: string;
  readonly unit: string | null;
  readonly samples: readonly string[];
}

/** What is asked; meanings are ids of the columns of both tables. */
export type AskedSubject =
  | { readonly is: 'field'; readonly meaning: string }
  | { readonly is: 'unit'; readonly meaning: string; readonly field: AskedField }
  | { readonly is: 'list in force'; readonly meanings: readonly string[]; readonly tags: readonly string[] }
  | { readonly is: 'found or left'; readonly tags: readonly string[] }
  | { readonly is: 'machine'; readonly sheet: string }
  | {
      readonly is: 'line in force';
      readonly tag: string;
      readonly machine: string;
      readonly places: readonly AskedPlace[];
    }
  | {
      readonly is: 'names';
      readonly pairs: readonly (readonly [written: string, joined: string])[];
      /** Of the tags as they are written. */
      readonly places: readonly AskedPlace[];
    }
  | {
      readonly is: 'value';
      readonly meaning: string;
      readonly tag: string;
      readonly place: AskedPlace;
      readonly text: string;
    };

/** One way to answer; `answer` is the column map that says so. */
export interface AskedOption {
  readonly field: AskedField | null;
  /** What is chosen, where it is no field: a sheet, a unit, a machine, a number. */
  readonly text: string;
  readonly answer: ColumnMap;
}

/** A question that a person has to answer before all can be judged, as the report shows it. The first option is the proposal. */
export interface AskedQuestion {
  readonly id: string;
  /** Channels can't be judged without it. */
  readonly needed: boolean;
  /** How many channels or records hang on it. */
  readonly records: number;
  readonly subject: AskedSubject;
  /** What was seen, piece by piece. */
  readonly evidence: readonly { readonly is: string }[];
  readonly options: readonly AskedOption[];
}
