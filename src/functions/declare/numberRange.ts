/** Numbers that an argument takes: above `above`, below `below`, 0 only where `zero` says so. */
export interface NumberRange {
  readonly above: number;
  readonly below: number;
  readonly zero: boolean;
  readonly whole: boolean;
  /** What to enter instead, after "Setpoint is −5: ". */
  readonly cure: string;
}

const anyNumber = { above: -Infinity, below: Infinity, zero: true, whole: false } as const;
const share = { above: 0, below: 1, zero: false, whole: false } as const;

/**
 * The ranges of the arguments. A blank cell arrives as 0 in some spreadsheet programs, so 0 is taken only where it has
 * a meaning of its own.
 */
export const ranges = {
  any: { ...anyNumber, cure: 'enter a number.' },
  notZero: { ...anyNumber, zero: false, cure: 'enter a number other than 0.' },
  positive: { ...anyNumber, above: 0, zero: false, cure: 'enter a number above 0.' },
  notNegative: { ...anyNumber, above: -Number.MIN_VALUE, cure: 'enter 0 or a number above 0.' },
  gapVoltage: { ...anyNumber, zero: false, cure: 'enter the voltage, or select filled cells alone.' },
  share: { ...share, cure: 'enter a fraction above 0 and below 1 (3 % is 0.03).' },
  shareOrNone: {
    ...share,
    above: -Number.MIN_VALUE,
    zero: true,
    cure: 'enter a fraction from 0 to below 1 (3 % is 0.03).',
  },
  countOrNone: {
    ...anyNumber,
    above: -Number.MIN_VALUE,
    whole: true,
    cure: 'enter a whole number, 0 or above.',
  },
  count: { ...anyNumber, above: 0, zero: false, whole: true, cure: 'enter a whole number, 1 or above.' },
} as const satisfies Record<string, NumberRange>;

export type RangeName = keyof typeof ranges;

/** Whether a number lies in a range; `NaN` and the infinities lie in none. */
export function inRange(value: number, { above, below, zero, whole }: NumberRange): boolean {
  return value > above && value < below && (zero || value !== 0) && (!whole || Number.isInteger(value));
}
