import type { NotANumber } from '../../../cells/number.ts';
import type { NotADate } from '../../model/rules/cellRules.ts';
import { type ThresholdName, timesAtStartUp, trips } from '../../model/threshold.ts';
import type { OfSetpoint } from '../../model/rules/thresholdRules.ts';
import { amount, capital } from '../../model/wording.ts';

interface OfThreshold {
  readonly threshold: ThresholdName | null;
  readonly multiplier: number | null;
  readonly values: OfSetpoint;
}

/** How the findings of some rules are said, by nothing but their values. */
export type MessagesOf<V> = {
  readonly [K in keyof V]: (fact: { readonly values: V[K] }) => string;
};

/** Why something is no number, as what a sentence says of it. */
export const notANumber: Readonly<Record<NotANumber, string>> = {
  'yes or no': 'is yes/no, not a number',
  date: 'is a date, not a number',
  'spreadsheet error': 'is a spreadsheet error',
  'no stored result': 'is a formula without a stored result',
  'decimal or thousands': 'may be a decimal comma or a thousands comma',
  'no number': 'is not a number',
  'too large': 'is too large for a number',
  'too long': 'is too long for a number',
};

/** Why something is no date, as what a sentence says of it. */
export const notADate: Readonly<Record<NotADate, string>> = {
  'no date': 'is not a date',
  'two different days': 'could be two different days',
  'no day of the calendar': 'is no day of the calendar',
};

/** The start of a sentence about a threshold: `Danger 5 mil` or `Danger 5 mil × 3 at start-up`. */
export function subject({ threshold, multiplier, values: { setpoint, unit } }: OfThreshold): string {
  return `${capital(threshold ?? '')} ${amount(setpoint, unit)}${timesAtStartUp(multiplier ?? 1)}`;
}

/** What a threshold does that acts too early: it trips the machine, or it warns. */
export function spuriousAction({ threshold }: Pick<OfThreshold, 'threshold'>): string {
  return `Expect spurious ${threshold !== null && trips(threshold) ? 'trips' : 'alarms'}.`;
}
