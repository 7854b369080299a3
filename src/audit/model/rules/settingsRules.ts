import type { LengthOff } from '../../../method/lengthOff.ts';
import type { PointsTo } from '../../../method/pointsTo.ts';
import type { Kind } from '../channel.ts';

type Nothing = Readonly<Record<string, never>>;

/** Readings of sensitivity and gap voltage (V) against those of a sound channel, and what they point to. */
interface Readings<C extends PointsTo> {
  readonly cause: C;
  readonly measured: number;
  readonly reference: number;
  /** Of `measured` from `reference`, as a fraction. */
  readonly off: number;
  readonly unit: string;
  readonly gapVoltage: number;
  readonly referenceGapVoltage: number;
  /** Of the chain; `null` where its nominal length is not given or the two are not off alike. */
  readonly length: LengthHint | null;
}

/** How much too long (+) or too short (−) a chain seems: fractions of its nominal length, in m; a rough rule, no source. */
export interface LengthHint {
  readonly nominal: number;
  readonly off: LengthOff | 'beyond';
}

/** Why a value looks as if it were in another unit than it is said to be. */
export type UnitSlip =
  | { readonly kind: 'sensitivities'; readonly ratio: number }
  | {
      readonly kind: 'detection of a sensitivity';
      readonly measured: number;
      readonly configured: number;
      readonly ratio: number;
      readonly unit: string;
    }
  | {
      readonly kind: 'rated sensitivity';
      readonly which: 'measured' | 'configured';
      readonly value: number;
      readonly rated: number;
      readonly unit: string;
      readonly factor: 25.4 | 1000;
    }
  | {
      readonly kind: 'setpoint';
      readonly danger: number;
      readonly against: 'alert' | 'full scale' | 'limit';
      readonly level: number;
      readonly ratio: number;
      readonly unit: string;
    }
  | {
      readonly kind: 'size of a setpoint';
      readonly danger: number;
      readonly unit: string;
      readonly is: 'too small' | 'too large';
    }
  | { readonly kind: 'speed'; /** r/min. */ readonly speed: number }
  | {
      readonly kind: 'uncertainty';
      readonly of: 'sensitivity' | 'monitor gain' | 'batch';
      /** As a fraction. */
      readonly uncertainty: number;
    }
  | {
      readonly kind: 'peers';
      readonly group: string;
      readonly own: PeerSetpoint;
      readonly other: PeerSetpoint;
      readonly factor: 2 | 25.4;
    };

interface PeerSetpoint {
  readonly tag: string;
  readonly danger: number;
  readonly unit: string;
}

/** What can be said of a channel's settings and readings, about no threshold in particular. Dates `YYYY-MM-DD`. */
export interface SettingsRules {
  'alert-not-below-danger': { readonly alert: number; readonly danger: number; readonly unit: string };
  'configured-far-from-rated': {
    readonly configured: number;
    readonly rated: number;
    /** Of `configured` from `rated`, as a fraction. */
    readonly off: number;
    readonly unit: string;
    readonly kind: Kind;
  };
  /** Indicated over injected. */
  'monitor-gain-off': { readonly gain: number; readonly off: number; readonly tolerance: number };
  /** A runout that is a large part of a danger; all real, in the channel's unit. */
  'runout-large': {
    readonly runout: number;
    readonly setpoint: number;
    readonly part: number;
    readonly effective: number;
    readonly real: number | null;
    /** `null`: the runout alone reaches the danger. */
    readonly least: number | null;
    readonly most: number | null;
    readonly unit: string;
  };
  'channel-in-bypass': Nothing;
  'linear-range-short': {
    /** V. */
    readonly span: number;
    readonly covered: number;
    readonly least: number;
    readonly unit: string;
  };
  'calibration-in-the-future': { readonly calibratedOn: string; readonly today: string };
  'calibration-overdue': {
    readonly calibratedOn: string;
    /** Days. */
    readonly age: number;
    /** Days. */
    readonly interval: number;
  };
  'growth-given-twice': Nothing;
  'reading-above-full-scale': { readonly reading: number; readonly fullScale: number; readonly unit: string };
  'readings-point-to-a-cause': Readings<Exclude<PointsTo, 'nothing' | 'hidden by the gap voltage'>>;
  'gap-voltage-hides-fault': Readings<'hidden by the gap voltage'>;
  'unit-slip-suspected': UnitSlip;
}
