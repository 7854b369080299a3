import type { HeaderPart, Place } from '../blocks/block.ts';
import type { UnitScope } from '../fields/field.ts';
import type { Concept, Strength } from '../vocabulary/wordList.ts';

/** Which of two readings of one probe a list holds. */
export type Series = 'as found' | 'as left';

/** Something seen that speaks for or against a reading, as data: `evidenceText.ts` makes its sentence. */
export type Evidence =
  | { readonly is: 'answer'; readonly of: 'map' | 'person' }
  | { readonly is: 'standard header'; readonly header: string; readonly exact: boolean }
  | {
      readonly is: 'word';
      readonly concept: Concept;
      readonly strength: Strength;
      readonly text: string;
      readonly covers: HeaderPart['covers'];
    }
  | {
      readonly is: 'unit';
      readonly unit: string;
      readonly scope: UnitScope;
      readonly place: Place | null;
      readonly fits: boolean;
      /** A text around the table names the header with it. */
      readonly named?: boolean;
    }
  | { readonly is: 'size'; readonly median: number; readonly unit: string | null; readonly fits: boolean }
  | {
      readonly is: 'role';
      readonly role: string;
      readonly from: 'word' | 'weak word' | 'company' | 'series' | 'the other column' | 'assumed group';
      readonly company: readonly string[];
    }
  | {
      readonly is: 'series';
      readonly series: Series;
      readonly from: 'header' | 'title' | 'sheet name';
      readonly text: string;
      readonly strength: Strength;
    }
  | { readonly is: 'aside'; readonly as: 'old' | 'proposed'; readonly text: string }
  | {
      readonly is: 'order';
      readonly below: string;
      readonly above: string;
      readonly records: number;
      readonly holds: boolean;
    }
  | { readonly is: 'pair'; readonly low: string; readonly high: string; readonly sure: boolean }
  | { readonly is: 'shared'; readonly with: string; readonly texts: number; readonly of: number }
  | { readonly is: 'unique'; readonly texts: number }
  | { readonly is: 'counting' }
  | { readonly is: 'hidden'; readonly what: 'column' | 'sheet' | 'row' }
  | { readonly is: 'rival'; readonly header: string; readonly place: Place; readonly hidden: boolean }
  | { readonly is: 'values'; readonly records: number; readonly filled: number }
  | { readonly is: 'label'; readonly label: string; readonly value: string; readonly place: Place }
  | { readonly is: 'sheet name'; readonly sheet: string }
  | { readonly is: 'heading'; readonly text: string; readonly place: Place }
  | { readonly is: 'axis'; readonly axis: string; readonly other: string }
  | { readonly is: 'ratio'; readonly ratio: number; readonly fits: boolean };

/** How far a reading is believed: only what is certain is audited unasked. */
export type Standing = 'certain' | 'proposed' | 'not known';
