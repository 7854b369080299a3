/** Where a proposal would read a meaning from. */
export interface ProposedPlace {
  readonly meaning: string;
  readonly sheet: string;
  readonly column?: string;
  readonly row?: number;
}

/** What came of an audit, whoever ran it: the examiner knows no more of the reader than this. */
export interface Outcome {
  /** The report as `--json` writes it; `null` where there was none. */
  readonly report: unknown;
  /** Why there was none. */
  readonly refusal: string | null;
  /** What it asks: the places that it proposes, meaning by meaning. */
  readonly proposed: readonly ProposedPlace[];
  /** Sheets between which it asks to choose. */
  readonly choice: readonly string[];
  /** Audits again with the whole proposal accepted unchanged; `null` where it offers none. */
  readonly accepted: (() => Outcome) | null;
}

/** What a run is worth, best first; `refused` asks without a proposal that a person could accept. */
export const grades = ['read right', 'partly read', 'asked', 'refused', 'silently wrong'] as const;
export type Grade = (typeof grades)[number];

export interface Judgement {
  readonly grade: Grade;
  /** Why it is no better: one line each, for a person. */
  readonly reasons: readonly string[];
  /** Meanings that were inferred rightly, and nowhere said with their place. */
  readonly unsaid: readonly string[];
  /** The proposal, accepted as it is, reads something wrong. */
  readonly misleads: boolean;
}
