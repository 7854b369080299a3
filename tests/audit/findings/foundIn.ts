import { auditCase } from '../golden.ts';
import type { Finding } from '../../../src/audit/model/findings.ts';
import type { Workbook } from '../../../src/cells/sheet.ts';

/** The findings of a rule in the audit of a workbook, in the order of the report. */
export function foundIn(book: Workbook, rule: string, policy: unknown = {}): readonly Finding[] {
  return auditCase({ because: '', book, policy })
    .channels.flatMap(({ findings }) => findings)
    .filter((one) => one.rule === rule);
}

/** What makes the sentence of the only finding of that rule. */
export function valuesIn(book: Workbook, rule: string, policy: unknown = {}): Finding['values'] {
  const found = foundIn(book, rule, policy);
  if (found.length !== 1) throw new Error(`${rule} was found ${found.length} times`);
  return found[0]!.values;
}
