import type { FaultLimits } from '../channel.ts';
import type { EvidenceName } from '../threshold.ts';

/** A setpoint and the unit of every level in that channel. */
export interface OfSetpoint {
  readonly setpoint: number;
  readonly unit: string;
}

/** A threshold that does not act where it is set. */
interface Moved extends OfSetpoint {
  readonly effective: number;
  /** Without its sign. */
  readonly shift: number;
  /** Without its sign. */
  readonly shiftFraction: number;
}

interface AboveFullScale extends OfSetpoint {
  readonly fullScale: number;
}

interface BeyondZero extends OfSetpoint {
  readonly effective: number;
  /** V; `null`: not the zero but the end of a loop has moved. */
  readonly zeroConfigured: number | null;
  /** V. */
  readonly zeroMeasured: number | null;
}

/** Voltages between which a chain is linear. */
interface LinearSpan {
  readonly near: number;
  readonly far: number;
}

/** How a threshold leaves the linear reach: by its voltage, by its record, or by the swing about the gap voltage. */
type OutOfReach = OfSetpoint &
  (
    | { readonly kind: 'voltage'; readonly volts: readonly number[]; readonly span: LinearSpan }
    | { readonly kind: 'outside the straight part'; readonly effective: number; readonly gapVoltage: number }
    | {
        readonly kind: 'near the end of the straight part';
        readonly effective: number;
        readonly gapVoltage: number;
        readonly reach: number;
      }
    | {
        readonly kind: 'swing';
        readonly effective: number;
        readonly gapVoltage: number;
        readonly reach: number;
        readonly span: LinearSpan;
      }
  );

/** The voltages at which a position acts: one, or two where its direction is not given. */
interface OutsideFaultLimits extends OfSetpoint {
  readonly volts: readonly number[];
  readonly faultLimits: FaultLimits;
}

/** What can be said of where a threshold acts. Levels in `unit`, voltages in V. */
export interface ThresholdRules {
  late: Moved;
  early: Moved;
  undetermined: OfSetpoint & {
    /** `null`: by the evidence that governs it can't be shown to act. */
    readonly low: number | null;
    readonly high: number | null;
    readonly governedBy: EvidenceName;
    /** `null` where none is known. */
    readonly uncertainty: number | null;
    readonly tolerance: number;
  };
  'above-full-scale': AboveFullScale;
  'multiplied-above-full-scale': AboveFullScale;
  'on-the-other-side-of-zero': BeyondZero;
  'multiplied-on-the-other-side-of-zero': BeyondZero;
  'out-of-linear-reach': OutOfReach;
  'multiplied-out-of-linear-reach': OutOfReach;
  'outside-fault-limits': OutsideFaultLimits;
  'multiplied-outside-fault-limits': OutsideFaultLimits;
  'beyond-limit': OfSetpoint & {
    readonly effective: number;
    readonly limit: number;
    /** That it acts beyond the limit; `null` where no uncertainty is known. */
    readonly probability: number | null;
  };
  'may-be-beyond-limit': OfSetpoint & {
    readonly limit: number;
    /** Upper end of where it acts; `null` where it can't be shown to act there. */
    readonly high: number | null;
  };
  'in-worse-zone': OfSetpoint & {
    readonly zone: string;
    readonly intendedZone: string;
    /** r/min. */
    readonly speed: number;
  };
  'swing-leaves-fault-limits': OfSetpoint & {
    readonly swing: LinearSpan;
    readonly faultLimits: FaultLimits;
  };
  'interim-below-reading': OfSetpoint & { readonly reading: number; readonly interimSetpoint: number };
  /** `indicated`: what the monitor shows at the setpoint; `null` where it is not known. */
  'has-no-interim-setpoint': OfSetpoint & { readonly indicated: number | null };
  'delay-long': {
    /** s. */
    readonly delay: number;
    /** s. */
    readonly allowed: number;
    /** Real level after the delay at the present growth; `null` where it is not known. */
    readonly level: number | null;
    readonly unit: string;
  };
}
