import type { ColumnMap } from './columnMap.ts';

/** A cell of a question; row and column count from 1. */
interface AskedPlace {
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

/** What is asked; a meaning is the id of a column of either table. */
export type AskedSubject<Meaning extends string = string> =
  /** Which field has a meaning. */
  | { readonly is: 'field'; readonly meaning: Meaning }
  /** In which unit the numbers of a field are. */
  | { readonly is: 'unit'; readonly meaning: Meaning; readonly field: AskedField }
  /** Which of several lists with the same tags and other values holds. */
  | { readonly is: 'list in force'; readonly meanings: readonly Meaning[]; readonly tags: readonly string[] }
  /** Which of two lists of readings was as found, and which as left. */
  | { readonly is: 'found or left'; readonly tags: readonly string[] }
  /** Of what machine a list is. */
  | { readonly is: 'machine'; readonly sheet: string }
  /** Which of several lines of one table holds, where they say otherwise of one channel. */
  | {
      readonly is: 'line in force';
      readonly tag: string;
      readonly machine: string;
      readonly places: readonly AskedPlace[];
    }
  /** Whether tags that are nearly spelled alike are the same. */
  | {
      readonly is: 'names';
      readonly pairs: readonly (readonly [written: string, joined: string])[];
      /** Of the tags as they are written. */
      readonly places: readonly AskedPlace[];
    }
  /** Whether a cell holds a number. */
  | {
      readonly is: 'value';
      readonly meaning: Meaning;
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
export interface AskedQuestion<
  Meaning extends string = string,
  Evidence extends { readonly is: string } = { readonly is: string },
> {
  readonly id: string;
  /** Channels can't be judged without it. */
  readonly needed: boolean;
  /** How many channels or records hang on it. */
  readonly records: number;
  readonly subject: AskedSubject<Meaning>;
  /** What was seen, piece by piece. */
  readonly evidence: readonly Evidence[];
  readonly options: readonly AskedOption[];
}
