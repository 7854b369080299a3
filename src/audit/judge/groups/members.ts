import type { Detection, Unit } from '../../../units/parse.ts';
import type { Place } from '../../model/findings.ts';
import type { MemberReason } from '../../model/report.ts';
import type { ThresholdResult } from '../../model/threshold.ts';

/** A channel as a member of its voting group, whether or not it could be audited. */
export interface Member {
  readonly tag: string;
  /** A group belongs to its machine: the same name on two machines is two groups. */
  readonly machine: string;
  readonly group: string;
  readonly voting: string;
  /** Where its group and its voting stand. */
  readonly places: { readonly group: Place; readonly voting: Place };
  readonly bypass: boolean | null;
  readonly limit: number | null;
  readonly unit: Unit | null;
  readonly detection: Detection | null;
  /** As it is now. */
  readonly thresholds: readonly ThresholdResult[];
  /** As it was found, where it was measured again since; else `null`. */
  readonly asFound: readonly ThresholdResult[] | null;
  /** Why nothing of it could be worked out; `null` where it was audited. */
  readonly notAudited: MemberReason | null;
}
