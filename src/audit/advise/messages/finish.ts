import type { Finding, PlacedFact } from '../../model/findings.ts';
import { messageOf, reportedRule } from './messages.ts';

/** Findings as a report shows them. */
export function finished(found: readonly PlacedFact[]): Finding[] {
  return found.map((one): Finding => {
    const { severity, threshold, multiplier, values, sheet, row, column } = one;
    return {
      rule: reportedRule(one),
      severity,
      threshold,
      multiplier,
      values: values as Finding['values'],
      message: messageOf(one),
      sheet,
      row,
      column,
    };
  });
}
