import { chanceWords, ofMeasurement } from '../../audit/advise/machineSentences.ts';
import type { GroupResult } from '../../audit/model/report.ts';

/** What a group's probability is of, and what it leaves out; `null` where there is none. */
export function chanceText({ chance }: GroupResult): string | null {
  if (!chance) return null;
  const { later, of, ends, exact } = chance;
  const parts = [
    `Later than ${of === 'its limit' ? 'its limit' : 'where late begins'}: ${chanceWords(later)}, ${ofMeasurement}.`,
  ];
  if (ends)
    parts.push(
      `A batch is missing: nothing shared ${chanceWords(ends.independent)}, all shared ${chanceWords(ends.allShared)}; neither is a bound.`,
    );
  if (exact.length > 0) parts.push(`Without an uncertainty, taken as exact: ${exact.join(', ')}.`);
  return parts.join(' ');
}
