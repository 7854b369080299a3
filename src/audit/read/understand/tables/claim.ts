import type { Field } from '../fields/field.ts';
import type { MeaningId } from '../meaning.ts';
import type { Evidence, Standing } from '../standing/evidence.ts';
import type { UnitSource } from './units.ts';

/** A field taken for a meaning, with everything that speaks for it and how far it is believed. */
export interface Claim {
  readonly meaning: MeaningId;
  readonly field: Field;
  /** Of a tag: the column that tells the probes of one place apart, whose texts belong to the tag. */
  readonly probe?: Field;
  readonly unit: UnitSource;
  readonly evidence: readonly Evidence[];
  readonly standing: Standing;
  /** Other fields that could have the meaning, best first. */
  readonly rivals: readonly Field[];
}

/** The claims of a lane by their meanings, and numbers of the audit's kinds that have none. */
export interface Settled {
  readonly claims: ReadonlyMap<MeaningId, Claim>;
  readonly open: readonly OpenField[];
}

/** A field that looks like a quantity of the audit and has no meaning. */
export interface OpenField {
  readonly field: Field;
  readonly looksLike: 'sensitivity' | 'level' | 'gap voltage' | 'date' | 'other';
}
