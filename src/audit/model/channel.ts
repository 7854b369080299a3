import type { NotJudged } from './threshold.ts';
import type { Direction } from '../../method/axial/position.ts';
import type { Detection, Unit } from '../../units/parse.ts';

/** Kinds of channel that a rack has; see `method` for how each is evaluated. */
export const kinds = ['radial', 'axial', 'velocity', 'acceleration', 'loop'] as const;

export type Kind = (typeof kinds)[number];

/** Circuit-fault limits, V; `null`: none on that side. */
export interface FaultLimits {
  readonly far: number | null;
  readonly near: number | null;
}

/** A current loop with its ends as measured; currents in mA, uncertainties expanded at the policy's coverage factor. */
export interface MeasuredLoop {
  readonly at0: number;
  readonly at100: number;
  readonly at0Uncertainty: number | null;
  readonly at100Uncertainty: number | null;
  /** Reading at its upper end, in the channel's unit. */
  readonly span: number;
  /** Whether the sensitivities are the loop's own, in mA: its ends then stand in their place; else a sensor comes before it. */
  readonly isAll: boolean;
}

/** Vectors of one component as the monitor shows them, amplitudes in the channel's unit and detection, phases in degrees. */
export interface ShownVectors {
  readonly runout: number;
  /** `null`: only how large the runout is, is known. */
  readonly runoutPhase: number | null;
  /** Sensitivity when the runout was taken, in the channel's unit of it; `null`: that of now. */
  readonly measuredThen: number | null;
  /** The component now; `null` where it is not given whole. */
  readonly now: { readonly amplitude: number; readonly phase: number } | null;
}

/**
 * One channel with its settings, ready to be worked out. Displacements (or the channel's own quantity) are in `unit` and
 * `detection`, both sensitivities in `sensitivityUnit`, voltages in V, times as named. `null`: not given, or not usable.
 */
export interface Channel {
  readonly kind: Kind;
  readonly unit: Unit;
  /** `null` for position and loop channels, which are not counted peak to peak. */
  readonly detection: Detection | null;
  readonly sensitivityUnit: Unit;
  readonly configured: number;
  readonly measured: number;
  /** Units of displacement per volt, at a sensitivity of 1 `sensitivityUnit`: 1000 for mV/mil and mil. */
  readonly unitsPerVolt: number;
  /** Of the monitor, indicated over injected; 1 where none was measured. */
  readonly gain: number;
  /** Expanded at the policy's coverage factor, as a fraction of the gain. */
  readonly gainUncertainty: number | null;
  /** Of the measured zero voltage, V, expanded alike. */
  readonly zeroUncertainty: number | null;
  /** Ends of a current loop as measured; `null` for other kinds and where they were not. */
  readonly loop: MeasuredLoop | null;
  /** Expanded at the policy's coverage factor, as a fraction of `measured`. */
  readonly uncertainty: number | null;
  /** The part of it that the batch shares, expanded alike and no more than the whole. */
  readonly sharedUncertainty: number | null;
  /** Empty: a batch of its own. */
  readonly batch: string;
  readonly alert: number | null;
  readonly danger: number | null;
  /** Negative, as positions are counted. */
  readonly counterAlert: number | null;
  readonly counterDanger: number | null;
  readonly fullScale: number | null;
  readonly multiplier: number;
  readonly resolution: number | null;
  readonly limit: number | null;
  /** As the monitor indicates it now. */
  readonly reading: number | null;
  /** Of one component (1X) at slow roll and now, as shown; of radial channels. */
  readonly vectors: ShownVectors | null;
  readonly growthPerDay: number | null;
  readonly doublingDays: number | null;
  readonly alertDelay: number | null;
  readonly dangerDelay: number | null;
  /** r/min. */
  readonly speed: number | null;
  readonly gapVoltage: number | null;
  /** Nominal, m. */
  readonly chainLength: number | null;
  readonly referenceSensitivity: number | null;
  readonly referenceGapVoltage: number | null;
  readonly zeroConfigured: number | null;
  readonly zeroMeasured: number | null;
  readonly direction: Direction | null;
  /** The more and the less negative of the two fault limits, V. */
  readonly faultLimits: FaultLimits | null;
  readonly calibratedOn: number | null;
  readonly lastGoodOn: number | null;
  readonly group: string;
  readonly voting: string;
  /** Peak-to-peak swing in `unit` over which the calibration record is straight; `null` without one. */
  readonly recordReach: number | null;
  /** `null`: it can't be told. */
  readonly bypass: boolean | null;
  /** Levels that are given but can't be compared with the setpoints. */
  readonly notCompared: readonly NotJudged[];
}
