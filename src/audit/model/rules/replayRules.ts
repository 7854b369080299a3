/** Why rows of a table of recorded readings were left out. */
export type TrendRowFault =
  | 'blank'
  | 'no time'
  | 'no zone'
  | 'two different days'
  | 'no day of the calendar'
  | 'does not exist'
  | 'ambiguous'
  | 'no tag';

/** Rows of a table of recorded readings: the first ones, how many in all, and the first text as it stands there. */
interface TrendRows {
  readonly rows: readonly number[];
  readonly count: number;
  readonly text: string;
}

/** Why a table of recorded readings, or a channel of it, was not replayed. */
export type NotReplayed =
  | { readonly kind: 'no channel'; readonly source: string }
  | { readonly kind: 'no reading'; readonly source: string }
  | {
      readonly kind: 'no sensitivity' | 'no zero voltage' | 'no day of the correction' | 'no setpoint';
      readonly tag: string;
    }
  | { readonly kind: 'several machines'; readonly tag: string }
  | { readonly kind: 'unit'; readonly tag: string; readonly unit: string; readonly wanted: string }
  | { readonly kind: 'too many out of order'; readonly source: string; readonly most: number };

/** A threshold of a record; times ISO 8601, levels in `unit`. */
interface Replayed {
  readonly source: string;
  readonly setpoint: number;
  readonly shouldActAt: number;
  readonly unit: string;
}

/** What can be said of recorded readings. */
export interface ReplayRules {
  'trend-rows-left-out': TrendRows & { readonly fault: TrendRowFault };
  'trend-readings-unknown': TrendRows & { readonly fault: 'no number' | 'bad quality' };
  'trend-columns-not-read': { readonly names: readonly string[] };
  'trend-unit-assumed': { readonly names: readonly string[] };
  'not-replayed': NotReplayed;
  'replay-did-not-act': Replayed & { readonly should: string };
  'replay-acted-late': Replayed & {
    /** s. */
    readonly late: number;
    readonly acted: string;
    readonly should: string;
  };
  'replay-not-proven': Replayed & { readonly should: string | null };
  'replay-acted-early': Replayed & { readonly acted: string };
}
