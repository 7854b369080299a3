import type { NotANumber } from '../../../cells/number.ts';
import type { Detection } from '../../../units/parse.ts';
import type { Kind } from '../channel.ts';

/** What can be said of units and of how a size of vibration is counted. */
export interface UnitRules {
  /** The quantity as a sentence names it, and a unit that it can have. */
  'unit-missing': { readonly what: string; readonly example: string };
  'unit-does-not-fit':
    | {
        readonly kind: 'level';
        readonly value: number;
        readonly unit: string;
        readonly setpointUnit: string;
      }
    | {
        readonly kind: 'sensitivities';
        readonly which: 'measured' | 'as left';
        readonly unit: string;
        readonly configuredUnit: string;
      }
    | {
        readonly kind: 'detections';
        readonly measured: Detection | null;
        readonly configured: Detection | null;
      }
    | { readonly kind: 'setpoints'; readonly unit: string; readonly sensitivityUnit: string }
    | {
        readonly kind: 'channel kind';
        readonly channelKind: Kind;
        readonly quantity: string;
        readonly unit: string;
      };
  /** A level whose detection is said while that of the setpoints is not, or the other way. */
  'detection-not-said': {
    readonly quantity: string;
    readonly own: Detection | null;
    readonly ofSetpoints: Detection | null;
  };
  'unit-assumed': { readonly header: string; readonly unit: string; readonly row: number };
  /** Every unit, and the rows in which the first and the second of them stand first. */
  'units-mixed': { readonly units: readonly string[]; readonly rows: readonly [number, number] };
  /** `factor`: what a size counted by the header is multiplied by to be counted by the column. */
  'detection-contradicts-header': {
    readonly ofColumn: Detection;
    readonly ofHeader: Detection;
    readonly factor: number;
  };
}

/** What a table says of a quantity, and where. */
interface Said {
  readonly text: string;
  readonly place: { readonly sheet: string; readonly row: number; readonly column: string };
}

/** The bound that a number breaks. */
export interface Bound {
  readonly kind: 'above' | 'at least' | 'at most';
  readonly than: number;
}

/** What in a row belongs to a kind of channel other than radial vibration. */
export type KindSign = 'zero voltage' | 'positive direction' | 'counter setpoint' | 'loop current' | 'unit';

/** Why the measured ends of a current loop can't be used, or not as they stand; currents in mA. */
type LoopEndsTrouble =
  | { readonly kind: 'one missing'; readonly which: 'at 0 %' | 'at 100 %' }
  | { readonly kind: 'not rising'; readonly at0: number; readonly at100: number }
  | { readonly kind: 'no span' }
  /** The lower end as found, and the upper one by the sensitivity as left. */
  | { readonly kind: 'not measured again'; readonly at0: number; readonly at100: number }
  /** Sensitivities in `unit`, the one by the ends and the listed one. */
  | {
      readonly kind: 'against the sensitivity';
      readonly byEnds: number;
      readonly listed: number;
      readonly unit: string;
    };

/** What can be said of the values of a channel and its settings. */
export interface ValueRules {
  'value-missing': {
    /** Name of the quantity, as a sentence says it. */
    readonly what: string;
  };
  'value-out-of-range':
    | {
        readonly kind: 'bound';
        readonly header: string;
        readonly value: number;
        readonly unit: string | null;
        readonly bound: Bound;
      }
    | {
        readonly kind: 'not finite';
        readonly header: string;
        readonly cell: string;
        readonly unit: string | null;
      }
    | { readonly kind: 'uncertainty not comparable'; readonly unit: string }
    | { readonly kind: 'uncertainty too large'; readonly fraction: number }
    /** Fractions of the measured sensitivity; `null`: no uncertainty is given. */
    | { readonly kind: 'shared above the whole'; readonly shared: number; readonly whole: number | null }
    | { readonly kind: 'reading below 0'; readonly value: number; readonly unit: string };
  'zero-voltage-missing': { readonly which: 'measured' | 'configured' };
  /** V. */
  'zero-voltage-positive': {
    readonly which: 'measured' | 'configured' | 'as left';
    readonly volts: number;
  };
  'direction-missing': Readonly<Record<string, never>>;
  /** V. */
  'gap-voltage-positive': { readonly which: 'as found' | 'as left'; readonly volts: number };
  'kind-missing': { readonly signs: readonly KindSign[] };
  'tables-contradict': {
    /** Standard header of the quantity. */
    readonly quantity: string;
    readonly inChannels: Said;
    readonly inSettings: Said;
  };
  /** A part of a slow-roll or 1X vector without which nothing is compensated. */
  'vector-not-whole': { readonly missing: string };
  'loop-ends-not-used': LoopEndsTrouble;
  'counter-setpoint-not-axial': Readonly<Record<string, never>>;
  /** From the record whose first point is in that row. */
  'sensitivity-from-record': {
    readonly sheet: string;
    readonly row: number;
    readonly value: number;
    readonly unit: string;
  };
}

/** Why a cell is no calendar day. */
export type NotADate = 'no date' | 'two different days' | 'no day of the calendar';

/** Why a number in a cell is none without a person: about so much, with a remark, a bound, one of several, a comma that may be either sign. */
export type NumberDoubt = 'about' | 'remark' | 'bound' | 'several' | 'comma';

/** Why the unit of a cell can't be told. Units as they are written. */
export type UnitFault =
  | { readonly kind: 'header does not fit'; readonly unit: string; readonly quantity: string }
  | { readonly kind: 'header not known'; readonly unit: string }
  | { readonly kind: 'header against row'; readonly ofHeader: string; readonly ofRow: string }
  | { readonly kind: 'cell not known'; readonly unit: string; readonly unitColumn: string }
  | { readonly kind: 'two in row'; readonly units: readonly [string, string] };

/** A cell by the header of its column, with its text as it stands. */
interface Quoted {
  readonly header: string;
  readonly cell: string;
}

/** What can be said of one cell as it is read. */
export interface CellRules {
  'value-is-an-error': Quoted & { readonly why: NotANumber };
  'value-not-a-number':
    | (Quoted & { readonly kind: 'text'; readonly why: NotANumber })
    | { readonly kind: 'percentage'; readonly header: string; readonly value: number };
  'number-written-as-text': Quoted & { readonly value: number };
  'unit-not-clear': { readonly header: string } & UnitFault;
  'value-not-a-date': Quoted & { readonly why: NotADate };
  'value-not-understood': Quoted & { readonly expected: readonly string[] };
  /** A word or sign that says that there is nothing. */
  'said-blank': Quoted;
  /** `of`: the unit of its column, into which it was converted; `null` where that names none. */
  'unit-in-cell': Quoted & { readonly unit: string; readonly of: string | null };
  'number-in-doubt': Quoted & { readonly doubt: NumberDoubt; readonly value: number | null };
  'share-of-full-scale': {
    readonly header: string;
    readonly percent: number;
    readonly scale: number;
    readonly unit: string;
  };
  /** A word for a kind of channel, and a unit of its sensitivity that another kind has. */
  'kind-against-unit': Quoted & { readonly unit: string };
  'share-without-full-scale': { readonly header: string; readonly percent: number };
}

/** What is wrong with one cell, with nothing of where it stands. */
export type CellFault = {
  readonly [R in keyof CellRules]: { readonly rule: R; readonly values: CellRules[R] };
}[keyof CellRules];
