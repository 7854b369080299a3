import { audit } from '../../../src/audit/audit.ts';
import { snapshotOf } from '../../../src/audit/since/fromReport.ts';
import type { Change, SinceResult } from '../../../src/audit/model/since.ts';
import type { Workbook } from '../../../src/cells/sheet.ts';
import { now } from '../golden.ts';

/** What changed from one workbook to another. */
export function since(before: Workbook, after: Workbook): SinceResult {
  const report = audit(after, { now, before: snapshotOf(audit(before, { now })) });
  if (!report.since) throw new Error('nothing was compared');
  return report.since;
}

/** A change in short: `newly late V-1 danger`, `changed setting V-1 full scale`. */
export function short({ kind, tag, threshold, multiplier, quantity }: Change): string {
  const times = multiplier === null || multiplier === 1 ? '' : `×${multiplier}`;
  return [kind, tag, threshold ?? quantity ?? '', times].filter((part) => part !== '').join(' ');
}
