import type { NotANumber } from '../../../cells/number.ts';

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
