import type { SensitivityResult, ThresholdName, ThresholdResult, ThresholdVerdict } from './threshold.ts';

/**
 * What became of a threshold between as found and as left, from both verdicts alone: `cured` is within as left and was
 * not as found; `unchanged` is within both times; `still …` has the verdict that it had as found; `now …` has another one
 * that is not within. `not judged`: one of the two is incomplete.
 */
export type AsLeftChange =
  | 'cured'
  | 'unchanged'
  | `still ${Exclude<ThresholdVerdict, 'within' | 'incomplete'>}`
  | `now ${Exclude<ThresholdVerdict, 'within' | 'incomplete'>}`
  | 'not judged';

/** A threshold worked out with the as-left sensitivity. */
export interface AsLeftThreshold extends ThresholdResult {
  readonly change: AsLeftChange;
}

/** A channel as it was left after the correction, beside what was found. */
export interface AsLeftResult {
  /** With the as-left sensitivity as `measured`, in the unit of the configured one. */
  readonly sensitivity: SensitivityResult;
  readonly sensitivityFrom: 'channel list' | 'calibration record';
  /** V, as left; `null` where none was read. */
  readonly gapVoltage: number | null;
  /** In the channel's unit; the as-found gap voltage counts where none was read as left. */
  readonly linearReach: number | null;
  /** One for each threshold as found, in the same order. Headroom and time to go are `null`: the present reading is one as found. */
  readonly thresholds: readonly AsLeftThreshold[];
  /** The worst of its thresholds. */
  readonly verdict: ThresholdVerdict;
}

/** How long a threshold that was found late or unreachable may have been so. */
export interface Exposure {
  readonly name: ThresholdName;
  readonly multiplier: number;
  /** `YYYY-MM-DD` on which it was last known to be good; `null`: from when can't be told. */
  readonly from: string | null;
  /** `YYYY-MM-DD` on which it was found; `null` where that day is not known. */
  readonly to: string | null;
  readonly days: number | null;
  /** Whether it is still late or unreachable as left; `null` where that can't be told. */
  readonly goesOn: boolean | null;
}

/** Channels by what became of them. Late stands here for late, unreachable and undetermined. */
export interface AsLeftCounts {
  /** Channels with as-left readings that could be judged. */
  readonly judged: number;
  /** Not within as found, within as left. */
  readonly cured: number;
  /** Late as found and as left. */
  readonly stillLate: number;
  /** Late as left, and not as found. */
  readonly newlyLate: number;
}
