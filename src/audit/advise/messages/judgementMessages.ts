import type { FactOf } from '../../model/findings.ts';
import type { JudgementRules } from '../../model/rules/judgementRules.ts';
import { amount, capital, percent } from '../../model/wording.ts';

/** What is said of channels, thresholds and voting groups. */
export const judgementMessages: { readonly [K in keyof JudgementRules]: (fact: FactOf<K>) => string } = {
  late: ({ threshold, values: { setpoint, unit, effective, shift, shiftFraction } }) =>
    `${capital(threshold ?? '')} ${amount(setpoint, unit)} acts at ${amount(effective, unit)}: ${amount(shift, unit)} (${percent(shiftFraction)}) late.`,
};
