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
export type KindSign = 'zero voltage' | 'positive direction' | 'counter setpoint' | 'unit';

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
  'counter-setpoint-not-axial': Readonly<Record<string, never>>;
  /** From the record whose first point is in that row. */
  'sensitivity-from-record': {
    readonly sheet: string;
    readonly row: number;
    readonly value: number;
    readonly unit: string;
  };
}
