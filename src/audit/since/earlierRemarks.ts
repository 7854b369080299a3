import { percent } from '../report/wording.ts';
import type { EarlierRemark, Snapshot } from './snapshot.ts';

/** What can't be compared because the earlier results do not show it, or were judged by another policy. */
export function earlierRemarks(before: Snapshot, now: Snapshot): EarlierRemark[] {
  const place = { sheet: before.sheet ?? '', row: 1, column: 'A' };
  const remark = (message: string): EarlierRemark => ({ message, ...place });
  const remarks: EarlierRemark[] = [];
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
