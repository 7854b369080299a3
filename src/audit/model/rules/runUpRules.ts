/** Why a row of a run-up, or of a sensitivity against speed, was left out. */
export type RunUpRowFault =
  | 'no tag'
  | 'no speed'
  | 'no amplitude'
  | 'no sensitivity'
  | 'no corner'
  | 'no damping'
  | 'no measuring frequency'
  | 'no multiplier speed'
  | 'no rate'
  | 'not as above';

/** Why a run-up, or a response, was not judged. */
export type RunUpNotJudged =
  | {
      readonly kind: 'real or indicated' | 'no channel' | 'no sensitivity' | 'position' | 'no setpoint';
      readonly tag: string;
    }
  | {
      readonly kind: 'several machines' | 'beyond the record' | 'no measuring frequency';
      readonly tag: string;
    }
  | { readonly kind: 'unit'; readonly tag: string; readonly unit: string; readonly wanted: string };

interface OnRunUp {
  readonly source: string;
  readonly setpoint: number;
  readonly unit: string;
  readonly multiplier: number;
  readonly multiplierSpeed: number | null;
}

/** What can be said of run-ups. Speeds in r/min. */
export interface RunUpRules {
  'run-up-row-left-out': { readonly fault: RunUpRowFault; readonly row: number; readonly text: string };
  'run-up-not-judged': RunUpNotJudged;
  'run-up-no-action': OnRunUp & {
    readonly should: number;
    readonly peak: number;
    readonly peakSpeed: number;
    readonly shownAtPeak: number;
  };
  'run-up-late': OnRunUp & {
    readonly acts: number;
    readonly should: number;
    readonly realAtTrip: number;
  };
  /** Within by the one sensitivity, late by that at running speed. */
  'late-at-running-speed': {
    readonly setpoint: number;
    readonly effective: number;
    readonly unit: string;
    readonly speed: number;
    readonly sensitivity: number;
    readonly sensitivityUnit: string;
  };
  'run-up-early': OnRunUp & { readonly acts: number };
}
