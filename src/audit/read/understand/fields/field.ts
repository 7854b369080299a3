import type { Dimension } from '../../../../units/unit.ts';
import type { Block, FieldPlace, HeaderPart, Place } from '../blocks/block.ts';
import type { HeaderRead, StandardName } from '../vocabulary/headerText.ts';
import type { StatedUnit } from '../vocabulary/statedUnit.ts';
import type { Concept, Strength } from '../vocabulary/wordList.ts';

/** A concept of a header: how strong its word is, and by which part of the header path it holds. */
export interface ConceptFact {
  readonly concept: Concept;
  readonly strength: Strength;
  readonly covers: HeaderPart['covers'];
  readonly text: string;
}

/** Where a unit is stated, nearest first. */
export type UnitScope =
  'header' | 'group' | 'beside' | 'cell' | 'format' | 'title' | 'note' | 'legend' | 'answer';

/** A unit stated for a whole field. */
export interface UnitFact {
  readonly stated: StatedUnit;
  readonly scope: UnitScope;
  readonly place: Place | null;
  /** A text around the table names the header of the field with it. */
  readonly named?: boolean;
}

/** What the cells of a field hold, counted. */
export interface ValueFacts {
  readonly records: number;
  readonly filled: number;
  readonly numbers: number;
  /** Numbers with their unit in the cell. */
  readonly withUnit: number;
  readonly dates: number;
  readonly texts: number;
  /** Texts that name a kind of channel. */
  readonly kinds: number;
  /** Texts that state a unit and nothing else. */
  readonly units: number;
  readonly saidBlank: number;
  /** Numbers in doubt, errors, and texts where there are numbers. */
  readonly odd: number;
  /** Units that stand in the cells with their numbers. */
  readonly cellUnits: ReadonlyMap<string, StatedUnit>;
  readonly least: number;
  /** Of the numbers without a unit of their own, where there are any. */
  readonly median: number;
  readonly greatest: number;
  /** Filled cells that were looked at for how they differ: of a long field the first ones. */
  readonly compared: number;
  /** Different texts or numbers among them, as tags are compared. */
  readonly distinct: number;
  /** Those of them with a letter. */
  readonly lettered: number;
  /** Whole numbers that count up by one. */
  readonly counting: boolean;
  readonly samples: readonly { readonly place: Place; readonly text: string }[];
}

/** A field of a block with the facts about it, and no opinion. */
export interface Field {
  readonly block: Block;
  readonly place: FieldPlace;
  /** The header as people would quote it, outermost group first. */
  readonly text: string;
  readonly parts: readonly HeaderRead[];
  readonly concepts: ReadonlyMap<Concept, ConceptFact>;
  readonly standard: readonly StandardName[];
  readonly units: readonly UnitFact[];
  /** What a column of units right beside it measures. */
  readonly besideOf: Dimension | null;
  readonly coverage: number | null;
  readonly years: readonly number[];
  readonly remarks: readonly string[];
  readonly values: ValueFacts;
}
