/** A calibration record marked as left, by its first point. */
interface RecordAt {
  readonly sheet: string;
  readonly row: number;
}

/** What can be said of the readings of a channel as it was left. Days as `YYYY-MM-DD`. */
export interface AsLeftReadingRules {
  'as-left-not-judged': { readonly why: 'found unusable' | 'value unusable' | 'no sensitivity' };
  'record-as-left-of-another-day': RecordAt & {
    readonly takenOn: string;
    readonly lies:
      | { readonly kind: 'after the audit'; readonly today: string }
      | { readonly kind: 'before what was found'; readonly found: string };
  };
  'as-left-sensitivity-from-record': RecordAt & {
    readonly value: number;
    readonly unit: string;
    readonly takenOn: string | null;
  };
}
