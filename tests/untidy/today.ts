import type { Workbook } from '../../src/cells/sheet.ts';
import { audit } from '../../src/audit/audit.ts';
import { AuditRefused } from '../../src/audit/model/refused.ts';
import { parsePolicy } from '../../src/audit/model/policy.ts';
import type { Outcome } from './judge/outcome.ts';

/** How a workbook is audited: the one thing to change where another reader is to be examined. */
export type Reader = (workbook: Workbook) => Outcome;

const now = new Date('2026-08-01T12:00:00Z');

/** The audit as it is: a report, or a refusal that proposes nothing. */
export const today: Reader = (workbook) => {
  try {
    const report: unknown = JSON.parse(JSON.stringify(audit(workbook, { policy: parsePolicy({}), now })));
    return { report, refusal: null, proposed: [], choice: [], accepted: null };
  } catch (error) {
    if (!(error instanceof AuditRefused)) throw error;
    return { report: null, refusal: error.message, proposed: [], choice: [], accepted: null };
  }
};
