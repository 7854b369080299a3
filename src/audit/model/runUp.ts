import type { Severity } from './findings.ts';
import { trips, type ThresholdName, type ThresholdVerdict } from './threshold.ts';

/** What a run-up says of a threshold, worst first: `no action`, though it should have acted; `false`: it acts and should not. */
export const runUpOutcomes = ['no action', 'late', 'early', 'false', 'as set', 'not reached'] as const;
export type RunUpOutcome = (typeof runUpOutcomes)[number];

export interface RunUpThreshold {
  readonly name: ThresholdName;
  /** In the channel's unit. */
  readonly setpoint: number;
  readonly multiplier: number;
  /** r/min from which the plain setpoint holds; `null`: the multiplier holds throughout. */
  readonly multiplierSpeed: number | null;
  /** r/min run through while the delay lasts. */
  readonly hold: number;
  /** r/min at which it acts, and at which it should have; `null`: not on this run-up. */
  readonly acts: number | null;
  readonly should: number | null;
  /** Real amplitude where it acts. */
  readonly realAtTrip: number | null;
  readonly outcome: RunUpOutcome;
}

export interface RunUpPointResult {
  /** r/min */
  readonly speed: number;
  readonly real: number;
  readonly shown: number;
  /** Of the chain at that speed, in the channel's sensitivity unit. */
  readonly sensitivity: number;
}

/** How the sensitivity at each speed was told. */
export type ResponseSource = 'one sensitivity' | 'record against speed' | 'corner and damping of the sensor';

/** Where the thresholds act at the running speed, by the sensitivity there. */
interface AtRunningSpeed {
  readonly speed: number;
  readonly sensitivity: number;
  readonly thresholds: readonly { readonly name: ThresholdName; readonly effective: number }[];
}

export interface RunUpChannel {
  readonly tag: string;
  readonly machine: string;
  readonly source: string;
  readonly unit: string;
  readonly sensitivityUnit: string;
  readonly configured: number;
  readonly amplitudes: 'real' | 'indicated';
  readonly sensitivityFrom: ResponseSource;
  readonly points: readonly RunUpPointResult[];
  /** Largest real point. */
  readonly peak: number;
  readonly peakSpeed: number;
  readonly thresholds: readonly RunUpThreshold[];
}

/** A channel whose sensitivity is known against speed, at its running speed. */
export interface ResponseChannel {
  readonly tag: string;
  readonly machine: string;
  readonly unit: string;
  readonly sensitivityFrom: ResponseSource;
  readonly atSpeed: AtRunningSpeed;
}

/** Run-ups: at which speed each threshold acts, and at which it should have. */
export interface RunUpResult {
  /** Worst first. */
  readonly channels: readonly RunUpChannel[];
  readonly responses: readonly ResponseChannel[];
}

/** The setpoint in force at a speed, r/min: multiplied below the multiplier's speed. */
export function setpointAt({ setpoint, multiplier, multiplierSpeed }: RunUpThreshold, speed: number): number {
  return speed < (multiplierSpeed ?? Infinity) ? multiplier * setpoint : setpoint;
}

/** How grave it is what a run-up says of a threshold; `null`: nothing to say. As `replaySeverity`. */
export function runUpSeverity(
  { name, outcome }: Pick<RunUpThreshold, 'name' | 'outcome'>,
  verdict: ThresholdVerdict | undefined,
): Severity | null {
  const grave = trips(name) ? 'critical' : 'warning';
  if (outcome === 'no action') return grave;
  if (outcome === 'late') return verdict === 'within' ? 'note' : grave;
  return outcome === 'early' || outcome === 'false' ? 'note' : null;
}
