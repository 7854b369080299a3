import type { AttentionCode, Report } from '../../src/audit/model/report.ts';
import { parsePolicy } from '../../src/audit/model/policy.ts';
import { audit } from '../../src/audit/audit.ts';
import { AuditRefused } from '../../src/audit/model/refused.ts';
import { book } from './book.ts';
import { now } from './golden.ts';
import type { PolicyFacts } from './oracle/facts.ts';
import type { NeedsAction } from './oracle/needsAction.ts';
import type { Truth } from './oracle/truth.ts';
import type { RandomBook } from './stations/randomBook.ts';
import type { Page } from './stations/write.ts';

/** Plain sheets audited under the oracle's policy. */
export function auditPages(pages: readonly Page[], policy: PolicyFacts): Report {
  const { tolerance, rule, coverage, near, far, curve, bypassed, faulty, groups } = policy;
  return audit(book(...pages.map(({ name, rows }) => [name, rows] as const)), {
    now,
    policy: parsePolicy({
      tolerance,
      rule,
      coverage,
      bypassed,
      faulty,
      groups,
      curve: curve === 'linear' ? curve : 'monotone',
      linearVolts: { near, far },
    }),
  });
}

/** The report of a random workbook; `undefined` where the audit refuses it, so that there is nothing to show. */
export function reportOf({ pages, policy }: RandomBook): Report | undefined {
  try {
    return auditPages(pages, policy);
  } catch (error) {
    if (error instanceof AuditRefused) return undefined;
    throw error;
  }
}

/** What the oracle calls an entry of what needs action; it knows none of remarks on cells and tables. */
const codes: Readonly<Record<AttentionCode, NeedsAction['code'] | null>> = {
  'past-danger': 'already there',
  'past-alert': 'already there',
  'group-cannot-trip': 'group cannot trip',
  'group-cannot-act': 'group cannot trip',
  'group-tripped': null,
  unreachable: 'unreachable',
  'in-bypass': 'in bypass',
  late: 'late',
  'did-not-act': null,
  'acted-late': null,
  'run-up-no-action': null,
  'run-up-late': null,
  'not-proven': null,
  'beyond-limit': 'beyond limit',
  'group-late': 'group late',
  'group-beyond-limit': 'group beyond limit',
  undetermined: 'undetermined',
  'may-be-beyond-limit': 'may act beyond limit',
  incomplete: 'incomplete',
  'not-read': 'not read',
  question: null,
  early: 'early',
  finding: null,
  problem: null,
};

/** What a report says, in the form of the oracle's truth; an unknown bypass counts as none. */
export function truthOfReport(report: Report): Truth {
  const { channels, groups, attention, notRead, summary } = report;
  return {
    channels: channels.map((one) => ({ ...one, inBypass: one.inBypass === true })),
    groups,
    attention: attention.flatMap(({ code, severity, subject }) => {
      const { machine, tag, group, threshold, multiplier } = subject;
      const known = codes[code];
      if (known === null) return [];
      const of = { machine, tag: tag === '' ? null : tag, group };
      return [{ severity, code: known, ...of, threshold, multiplier: multiplier ?? 1 }];
    }),
    notRead,
    summary,
    exitCode: attention.some(({ severity }) => severity === 'critical') ? 1 : 0,
  };
}
