import type { CellFault } from './cellRules.ts';
import type { DriftResult } from '../drift.ts';

/** A channel's drift, in `unit` a year, and when it leaves the tolerance (a fraction). Dates `YYYY-MM-DD`. */
export interface Drift extends Pick<
  DriftResult,
  'unit' | 'perYear' | 'perYearFraction' | 'expandedUncertainty' | 'startsAnew' | 'leaves'
> {
  /** Readings that count. */
  readonly readings: number;
  readonly from: string;
  readonly to: string;
  readonly tolerance: number;
}

/** What can be said of a channel's readings over the years. Dates `YYYY-MM-DD`. */
export interface DriftRules {
  'history-has-newer-reading': {
    readonly sensitivity: number;
    readonly on: string;
    /** From the configured sensitivity, as a fraction. */
    readonly off: number;
    readonly measured: number;
    readonly calibratedOn: string;
    readonly unit: string;
  };
  'drift-not-told': {
    readonly readings: number;
    readonly days: number;
    /** The correction after which readings count; `null` where none is known. */
    readonly since: string | null;
  };
  'drift-of-sensitivity': Drift;
  'drift-leaves-tolerance': Drift &
    (
      | { readonly kind: 'unseen by the last reading' }
      | { readonly kind: 'before the next calibration'; readonly due: string; readonly interval: number }
    );
}

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
