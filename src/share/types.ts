import type { Deflater } from '../hosts/file/zip/deflater.ts';

/** What stands in the copy where a function of ours stood. */
export type ShareFormulas = 'values' | 'native';

export interface ShareOptions {
  /** `native` puts native formulas where there is one that is sure to do the same, and values elsewhere. */
  readonly formulas: ShareFormulas;
  /** The day that the notes name, such as `2026-11-27`. */
  readonly date: string;
  /** Packs changed parts; by default fflate does. */
  readonly deflater?: Deflater;
}

/** A copy that needs no function of ours. */
export interface SharedCopy {
  readonly bytes: Uint8Array;
  /** Formulas that became values, and native ones. */
  readonly replaced: { readonly values: number; readonly native: number };
  /** Cells whose result was neither in the file nor could be worked out; they have what the file had. */
  readonly unknown: readonly UnknownResult[];
  /** What a person should know about the copy; each is one sentence. */
  readonly notes: readonly string[];
}

/** A cell whose result can't be told, and why: a clause for a person. */
export interface UnknownResult {
  readonly place: CellPlace;
  readonly why: string;
}

/** One cell of the workbook; row and column count from 1. */
export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}
