import { percent } from '../model/wording.ts';
import { tagKey } from '../read/tables/tagKey.ts';
import { byTag } from './byTag.ts';
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
        `What was named as the earlier audit looks like the later one: ${reversed}. What is said to be cured may then be newly late. Check which workbook is which.`,
      ),
    );
  }
  if (before.unknown.length > 0) {
    remarks.push(
      remark(`The earlier results do not show ${before.unknown.join(', ')}, so these were not compared.`),
    );
  }
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

/** What shows that an audit named as the earlier one is the later; `null` where nothing does. */
function whyReversed(before: Snapshot, now: Snapshot): string | null {
  const [then, today] = [before.audited, now.audited];
  if (before.from === 'result sheet' && then !== null && today !== null && then > today) {
    return `it was made on ${then.slice(0, 10)}, this one on ${today.slice(0, 10)}`;
  }
  const earlier = byTag(before);
  for (const { tag, calibratedOn } of now.channels) {
    const was = earlier.get(tagKey(tag))?.[0]?.calibratedOn ?? null;
    if (was !== null && calibratedOn !== null && was > calibratedOn) {
      return `${tag.slice(0, 60)} was calibrated on ${was} there, and on ${calibratedOn} here`;
    }
  }
  return null;
}
