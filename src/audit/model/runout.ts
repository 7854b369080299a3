import type { ThresholdName } from './threshold.ts';

/** A vector of one component: amplitude in the channel's unit and detection, phase in degrees. */
interface Vector {
  readonly amplitude: number;
  readonly phase: number;
}

/** How far the shaft really moves when a threshold acts on an uncompensated value. */
export interface RunoutThreshold {
  readonly name: ThresholdName;
  readonly multiplier: number;
  /** At the angle of the present component; `null` where that is not known. */
  readonly real: number | null;
  /** Over all angles; `null` where the runout alone reaches the threshold. */
  readonly least: number | null;
  readonly most: number | null;
}

/** What a channel's slow-roll vector means. Of one component (1X): overall values cannot be compensated. */
export interface RunoutResult {
  /** As shown. */
  readonly shown: number;
  readonly phase: number | null;
  /** Sensitivity when it was taken. */
  readonly measuredThen: number;
  /** Real, by that sensitivity. */
  readonly real: number;
  /** The component now as shown; `null` where it is not given whole. */
  readonly now: Vector | null;
  /** Real component now, without its runout. */
  readonly compensated: Vector | null;
  readonly thresholds: readonly RunoutThreshold[];
}
