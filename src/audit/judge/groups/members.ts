import type { ThresholdResult } from '../../model/threshold.ts';
import type { Detection, Unit } from '../../../units/parse.ts';

/** A channel as a member of its voting group, whether or not it could be audited. */
export interface Member {
  readonly tag: string;
  /** Its row in the monitor settings. */
  readonly row: number;
  readonly group: string;
  readonly voting: string;
  readonly bypass: boolean | null;
  readonly limit: number | null;
  readonly unit: Unit | null;
  readonly detection: Detection | null;
  /** Those with a start-up multiplier do not count in a group. */
  readonly thresholds: readonly ThresholdResult[];
  /** The same as left; `null` where it was not judged as left, so that what was found counts. */
  readonly asLeft: readonly ThresholdResult[] | null;
  /** Why nothing of it could be worked out; `null` where it was audited. */
  readonly notAudited: string | null;
}
