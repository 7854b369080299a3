import { percent } from '../model/wording.ts';
import { byTag, pairsOf } from './byTag.ts';
import type { EarlierRemark, Snapshot } from '../model/snapshot.ts';

/** What can't be compared because the earlier results do not show it, or were judged by another policy. */
export function earlierRemarks(before: Snapshot, now: Snapshot): EarlierRemark[] {
  const place = { sheet: before.sheet ?? '', row: 1, column: 'A' };
  const remark = (message: string): EarlierRemark => ({ message, ...place });
  const remarks: EarlierRemark[] = [];
  const reversed = whyReversed(before, now);
  if (reversed !== null) {
    remarks.push(
      remark(
        `What was named as the earlier audit looks like the later one: ${reversed}. What is called corrected may then be what went wrong. Check which workbook is which.`,
      ),
    );
  }
  if (before.unknown.length > 0) {
    remarks.push(
      remark(`The earlier results do not show ${before.unknown.join(', ')}, so these were not compared.`),
    );
  }
  const older = olderRules(before, now);
  if (older !== null) remarks.push(remark(older));
  const { tolerance, rule } = before;
  const known = tolerance !== null && rule !== null;
  if (known && (tolerance !== now.tolerance || rule !== now.rule)) {
    const own = `${percent(now.tolerance ?? NaN)} by the ${now.rule ?? ''} rule`;
    remarks.push(
      remark(
        `The earlier results were judged with a tolerance of ${percent(tolerance)} by the ${rule} rule, these with ${own}: verdicts may differ for that alone.`,
      ),
    );
  }
  return remarks;
}

/** First version of the rules that judges a channel as it stands now; those before judged it as it was found. */
const judgesNow = [0, 4, 0] as const;

/** What to know of an earlier audit by other rules; `null` where it was by the same, or does not say. */
function olderRules(before: Snapshot, now: Snapshot): string | null {
  if (before.rules === null || before.rules === now.rules) return null;
  const changed = `The earlier audit was made by rules version ${before.rules.slice(0, 20)}, this one by ${now.rules ?? ''}: verdicts may differ for that alone.`;
  if (before.from !== 'result sheet' || !isBefore(before.rules, judgesNow)) return changed;
  return `${changed} Its results show each channel as it was found then; what it was left at is not compared. Audit the earlier workbook anew to compare that too.`;
}

function isBefore(rules: string, version: readonly number[]): boolean {
  const parts = rules.split('.').map(Number);
  const at = version.findIndex((part, index) => parts[index] !== part);
  return at >= 0 && (parts[at] ?? NaN) < (version[at] ?? NaN);
}

/** What shows that an audit named as the earlier one is the later; `null` where nothing does. */
function whyReversed(before: Snapshot, now: Snapshot): string | null {
  const [then, today] = [before.audited, now.audited];
  if (before.from !== 'tables' && then !== null && today !== null && then > today) {
    return `it was made on ${then.slice(0, 10)}, this one on ${today.slice(0, 10)}`;
  }
  const earlier = byTag(before);
  for (const [key, channels] of byTag(now)) {
    for (const { old, channel } of pairsOf(earlier.get(key) ?? [], channels) ?? []) {
      const [was, is] = [old?.calibratedOn ?? null, channel?.calibratedOn ?? null];
      if (channel && was !== null && is !== null && was > is)
        return `${channel.tag.slice(0, 60)} was calibrated on ${was} there, and on ${is} here`;
    }
  }
  return null;
}
