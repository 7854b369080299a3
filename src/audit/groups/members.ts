import type { Unit, Detection } from '../../units/parse.ts';
import type { ThresholdName } from '../report/types.ts';

/** A channel as a member of its voting group, whether or not it could be audited. */
export interface Member {
  readonly tag: string;
  readonly group: string;
  readonly voting: string;
  readonly bypass: boolean;
  readonly limit: number | null;
  readonly unit: Unit | null;
  readonly detection: Detection | null;
  readonly thresholds: readonly MemberThreshold[];
  /** Why nothing of it could be worked out; `null` where it was audited. */
  readonly notAudited: string | null;
}

export interface MemberThreshold {
  readonly name: ThresholdName;
  readonly setpoint: number | null;
  /** `null`: it cannot act, or it can't be shown to. */
  readonly effective: number | null;
  readonly why: string | null;
}
