import type { ColumnMap } from '../../../model/columnMap.ts';
import type { Place } from '../blocks/block.ts';
import type { MeaningId } from '../meanings/meaning.ts';
import type { Evidence } from '../standing/evidence.ts';

/** A place that an answer names, with what stands there. */
export interface FieldOption {
  readonly sheet: string;
  /** Of the header, or of the label. */
  readonly place: Place;
  readonly header: string;
  readonly unit: string | null;
  readonly samples: readonly string[];
}

/** What is asked. */
export type Subject =
  /** Which field has a meaning. */
  | { readonly is: 'field'; readonly meaning: MeaningId }
  /** In which unit the numbers of a field are. */
  | { readonly is: 'unit'; readonly meaning: MeaningId; readonly field: FieldOption }
  /** Which of several lists with the same tags and other values holds. */
  | {
      readonly is: 'list in force';
      readonly meanings: readonly MeaningId[];
      readonly tags: readonly string[];
    }
  /** Which of two lists of readings was as found, and which as left. */
  | { readonly is: 'found or left'; readonly tags: readonly string[] }
  /** Of what machine a list is. */
  | { readonly is: 'machine'; readonly sheet: string }
  /** Which of several lines of one table holds, where they say otherwise of one channel. */
  | {
      readonly is: 'line in force';
      readonly tag: string;
      readonly machine: string;
      readonly places: readonly Place[];
    }
  /** Whether tags that are nearly spelled alike are the same. */
  | {
      readonly is: 'names';
      readonly pairs: readonly (readonly [written: string, joined: string])[];
      /** Of the tags as they are written. */
      readonly places: readonly Place[];
    }
  /** Whether a cell holds a number. */
  | {
      readonly is: 'value';
      readonly meaning: MeaningId;
      readonly tag: string;
      readonly place: Place;
      readonly text: string;
    };

/** One way to answer. */
export interface Option {
  readonly field: FieldOption | null;
  /** What is chosen, where it is no field: a sheet, a unit, a machine, a number. */
  readonly text: string;
  readonly answer: ColumnMap;
}

/** A question whose answer makes something certain. The first option is the proposal. */
export interface Question {
  readonly id: string;
  /** Channels can't be judged without it. */
  readonly needed: boolean;
  /** How many channels or records hang on it. */
  readonly records: number;
  readonly subject: Subject;
  readonly evidence: readonly Evidence[];
  /** Sheets that it is about: one question stands for all tables of one layout. */
  readonly sheets: readonly string[];
  readonly options: readonly Option[];
}
