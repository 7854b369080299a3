/**
 * What is true of a channel, whatever a workbook says of it and wherever. Displacements and other levels are in the unit
 * and detection of its setpoints, sensitivities in mV (a loop: mA) per that unit, voltages in V. `null`: not known.
 */
export interface ChannelFacts {
  readonly tag: string;
  readonly machine: string;
  /** `null`: not stated, and something in the row belongs to another kind than radial. */
  readonly kind: Kind | null;
  readonly configured: number | null;
  readonly alert: number | null;
  readonly danger: number | null;
  /** Axial, positive amounts; `null`: the channel has none. */
  readonly counterAlert: number | null;
  readonly counterDanger: number | null;
  readonly fullScale: number | null;
  readonly multiplier: number | null;
  readonly resolution: number | null;
  readonly limit: number | null;
  readonly reading: number | null;
  readonly zeroConfigured: number | null;
  readonly direction: 'toward' | 'away' | null;
  readonly faultHigh: number | null;
  readonly faultLow: number | null;
  readonly group: string | null;
  readonly voting: string | null;
  /** `null`: stated, and not to be told which. */
  readonly bypass: boolean | null;
  /** Coverage factor of the stated uncertainties; `null`: 2. */
  readonly coverage: number | null;
  /** Indicated over injected; `null`: taken as 1. */
  readonly gain: number | null;
  /** Expanded, a fraction of the gain. */
  readonly gainUncertainty: number | null;
  /** Of the measured zero, V, expanded. */
  readonly zeroUncertainty: number | null;
  readonly loop: LoopEnds | null;
  /** Blank: a batch of its own. */
  readonly batch: string;
  /** The part of the uncertainty that its batch shares, expanded, a fraction. */
  readonly sharedUncertainty: number | null;
  readonly slowRoll: SlowRoll | null;
  /** Nominal, m. */
  readonly chainLength: number | null;
  readonly found: Evidence;
  /** What was measured again; `null`: nothing. */
  readonly left: Evidence | null;
  /** Evidence that is there and unusable, or contradicts itself: its value is `null` above. */
  readonly unusable: readonly string[];
  /** Peak-to-peak displacement per unit of the setpoints: 2 for 0-to-peak. */
  readonly swing: number;
  /** Units of displacement per mil. */
  readonly perMil: number;
}

export const kinds = ['radial', 'axial', 'velocity', 'acceleration', 'loop'] as const;
export type Kind = (typeof kinds)[number];

/** Measured ends of a current loop that its monitor takes for 4 and 20, mA, uncertainties expanded. */
export interface LoopEnds {
  readonly at0: number;
  readonly at100: number;
  readonly at0Uncertainty: number | null;
  readonly at100Uncertainty: number | null;
}

/** A vector of one component: amplitude as shown, phase in degrees. */
export interface Vector {
  readonly amplitude: number;
  readonly phase: number;
}

/** The runout as it was shown, and the same component now. */
export interface SlowRoll {
  readonly amplitude: number;
  readonly phase: number | null;
  /** Sensitivity when it was taken; `null`: as it is now. */
  readonly sensitivityThen: number | null;
  readonly now: Vector | null;
}

/** What was measured on one occasion. */
export interface Evidence {
  readonly sensitivity: number | null;
  /** Expanded, a fraction, at the stated coverage factor. */
  readonly uncertainty: number | null;
  readonly gapVoltage: number | null;
  readonly zero: number | null;
  readonly record: Points | null;
  readonly check: Levels | null;
}

/** Gap (peak-to-peak unit of the channel) and voltage (V), gaps rising, voltages falling. */
export type Points = readonly (readonly [gap: number, volts: number])[];
/** Displacement and output of a known vibration, both peak to peak: unit of the channel and mV. */
export type Levels = readonly (readonly [displacement: number, output: number])[];

export interface PolicyFacts {
  readonly tolerance: number;
  readonly rule: 'guarded' | 'simple';
  readonly coverage: number;
  /** Ends of the linear span, V. */
  readonly near: number;
  readonly far: number;
  readonly curve: 'monotone cubic' | 'linear';
  /** What the system does with the vote of a member in bypass, of one marked faulty; `null`: not said. */
  readonly bypassed: OutPolicy | null;
  readonly faulty: OutPolicy | null;
  /** Groups that are said otherwise. */
  readonly groups: readonly GroupPolicy[];
}

export const outPolicies = ['no-trip', 'trip', 'reduce'] as const;
export type OutPolicy = (typeof outPolicies)[number];

export interface GroupPolicy {
  readonly machine: string;
  readonly group: string;
  readonly bypassed: OutPolicy | null;
  readonly faulty: OutPolicy | null;
}

/** Worst first. */
export const verdicts = ['unreachable', 'late', 'undetermined', 'early', 'incomplete', 'within'] as const;
export type Verdict = (typeof verdicts)[number];

export function worstOf(all: readonly Verdict[]): Verdict {
  return verdicts.find((one) => all.includes(one)) ?? 'incomplete';
}

/** Away from zero in the direction of the setpoint. */
export function ownSign(setpoint: number): 1 | -1 {
  return setpoint < 0 ? -1 : 1;
}
