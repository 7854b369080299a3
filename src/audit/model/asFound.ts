import type { RecordResult } from './records.ts';
import type { SensitivityResult, ThresholdName, ThresholdResult, ThresholdVerdict } from './threshold.ts';

/** What was found of a channel that was measured again after its correction: history beside what it is now. */
export interface AsFoundResult {
  readonly sensitivity: SensitivityResult;
  /** V. */
  readonly gapVoltage: number | null;
  readonly zeroMeasured: number | null;
  /** In the channel's unit. */
  readonly linearReach: number | null;
  /** One for each threshold as it is now, in the same order. */
  readonly thresholds: readonly ThresholdResult[];
  readonly verdict: ThresholdVerdict;
  readonly record: RecordResult | null;
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
  /** Whether it is still late or unreachable now; `null` where that can't be told. */
  readonly goesOn: boolean | null;
}
