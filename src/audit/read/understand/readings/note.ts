import type { NotADate } from '../../../model/rules/cellRules.ts';
import type { Place } from '../blocks/block.ts';
import type { MeaningId } from '../meaning.ts';
import type { Doubt } from './cellValue.ts';

/** What there is to say about one cell that was read, or that could not be: facts, of which sentences are made elsewhere. */
export type CellNote =
  | { readonly is: 'number as text'; readonly value: number }
  | {
      readonly is: 'unit in the cell';
      readonly value: number;
      readonly unit: string;
      readonly of: string | null;
    }
  | {
      readonly is: 'worked out from full scale';
      readonly percent: number;
      readonly scale: number;
      readonly unit: string;
    }
  | { readonly is: 'said blank'; readonly word: string }
  | {
      readonly is: 'needs a person';
      readonly doubt: Doubt;
      readonly value: number | null;
      readonly word: string;
    }
  | { readonly is: 'no number'; readonly word: string }
  | { readonly is: 'error'; readonly code: string }
  | { readonly is: 'no date'; readonly word: string; readonly why: NotADate }
  | { readonly is: 'not understood'; readonly word: string }
  | { readonly is: 'unit not clear'; readonly first: string; readonly second: string | null }
  | { readonly is: 'no full scale'; readonly percent: number }
  /** The word for its kind says one thing, the unit of its sensitivity another. */
  | { readonly is: 'kind and unit differ'; readonly word: string; readonly unit: string };

/** A note with its cell and the meaning that it is about. */
export interface PlacedNote {
  readonly note: CellNote;
  readonly meaning: MeaningId;
  readonly place: Place;
  /** The value could not be used. */
  readonly unusable: boolean;
}
