/** What is true of a workbook, whatever a reader makes of it: mV/mil, and mil peak to peak, throughout. */
export type Verdict = 'late' | 'early' | 'within' | 'incomplete';

/** A µm in a mil (international inch, exact). */
export const micrometresPerMil = 25.4;

/** Where a channel stands: in a row, and where channels lie in columns or forms, in that column too. */
export interface ChannelPlace {
  readonly sheet: string;
  readonly row?: number;
  readonly column?: string;
  /** First and last row of the headers above it: naming the table there names each of its channels. */
  readonly headerRows?: readonly [number, number];
}

/** Quantities that a verdict can do without; read, said as not read, but never read wrongly. */
export interface OptionalTruth {
  /** mil. */
  readonly fullScale?: number | null;
  /** V. */
  readonly gapVoltage?: number | null;
  /** mil. */
  readonly limit?: number | null;
  readonly group?: string | null;
  readonly voting?: string | null;
  readonly bypass?: boolean | null;
}

export interface ChannelTruth {
  /** `null`: a blank one is right, and so is any text of the sheet. */
  readonly machine: string | null;
  /** Machines that are right too; an empty text stands for a blank one. */
  readonly machineAlso?: readonly string[];
  /** All of these texts stand in the tag; more than one only where a tag is made of several cells. */
  readonly tag: readonly [string, ...string[]];
  readonly kind?: string;
  readonly configured: number | null;
  readonly measured: number | null;
  readonly alert: number | null;
  readonly danger: number | null;
  /** Of the danger as found, at a tolerance of 5 %. */
  readonly verdict: Verdict;
  /** Other verdicts that are right; with `incomplete`, any of its numbers may be missing. */
  readonly also: readonly Verdict[];
  readonly asLeft: number | null;
  readonly asLeftVerdict: Verdict | null;
  /** A person has to answer first: judged unasked it is silently wrong, even where it happens to be true. */
  readonly mustAsk: boolean;
  /** What is true by the other answer of that person. */
  readonly otherwise: readonly OtherAnswer[];
  readonly places: readonly ChannelPlace[];
  readonly optional: OptionalTruth;
}

export interface OtherAnswer {
  readonly configured?: number;
  readonly measured?: number;
  readonly alert?: number;
  readonly danger?: number;
  readonly verdict: Verdict;
}

/** Where a meaning stands: what a proposal has to name. */
export interface FieldTruth {
  readonly meaning: string;
  readonly sheet: string;
  /** Column, where the values stand below each other. */
  readonly column?: string;
  /** Row, where they stand beside each other. */
  readonly row?: number;
  /** The table knows this header by itself, so that nothing was inferred. */
  readonly standard: boolean;
}

export interface BookTruth {
  readonly channels: readonly ChannelTruth[];
  readonly fields: readonly FieldTruth[];
  /** Whether reading it unasked is right at all. */
  readonly accept: readonly ('read' | 'ask')[];
  /** Sheets between which only a person can choose. */
  readonly choice: readonly string[];
  /** Tags that may stand in the report as not known: settings without a probe, a spare. */
  readonly mayBeIncomplete: readonly string[];
  /** What would be silently wrong, in words: for the person who looks at a failure. */
  readonly traps: readonly string[];
}

/** Verdict of the simple rule at 5 %: late below 0.95 of the configured sensitivity, early above 1.05. */
export function verdictOf(configured: number, measured: number): Verdict {
  const ratio = measured / configured;
  if (ratio < 0.95) return 'late';
  return ratio > 1.05 ? 'early' : 'within';
}
