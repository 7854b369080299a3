import type { Draft } from '../draft.ts';

/** What was drawn so far: the name of the option by the name of its dimension. */
export type Chosen = Readonly<Record<string, string>>;

/** One way in which plants keep their sheets. */
export interface Option {
  readonly name: string;
  readonly weight: number;
  /** Whether it can stand beside what was drawn before it. */
  readonly fits?: (chosen: Chosen) => boolean;
  /** What only a person can answer; reading without asking is then silently wrong. */
  readonly asks?: string;
  /** What a hasty reader makes of it. */
  readonly silentlyWrong?: string;
  readonly apply?: (draft: Draft) => void;
}

/** A kind of untidiness that is independent of the others but for what `fits` says. */
export interface Dimension {
  readonly name: string;
  readonly options: readonly Option[];
}
