import type { CellFault } from './cellRules.ts';

/** Why a reading of a history, or its uncertainty alone, was left out. Days as `YYYY-MM-DD`. */
export type HistoryRowFault =
  | { readonly kind: 'no tag' | 'no date' | 'no sensitivity'; readonly row: number }
  | { readonly kind: 'after the audit'; readonly day: string; readonly today: string }
  | { readonly kind: 'no unit'; readonly header: string }
  | { readonly kind: 'not above 0'; readonly header: string; readonly value: number; readonly unit: string }
  | { readonly kind: 'uncertainty'; readonly value: number }
  /** `wanted`: the unit of the channel's sensitivities. */
  | {
      readonly kind: 'unit does not fit';
      readonly value: number;
      readonly unit: string;
      readonly wanted: string;
    }
  | {
      readonly kind: 'cell';
      readonly leftOut: 'reading' | 'uncertainty';
      readonly fault: CellFault;
    };

/** What can be said of histories of dated readings. */
export interface HistoryRules {
  'history-row-left-out': HistoryRowFault;
  'history-without-channel': { readonly tag: string; readonly count: number };
}
