import type { Attention, Report } from '../../audit/model/report.ts';
import { machineCounts } from './machines.ts';
import type { Found } from './types.ts';

/** Entries that are shown of all workbooks together where fewer are critical, and critical ones kept of one workbook. */
export const usualActions = 50;
const mostKept = 2_000;

/** What a fleet keeps of one report: light, however many channels it has. */
export function foundIn(report: Report): Found {
  const { summary, attention } = report;
  return { summary, machines: machineCounts(report), attention: keptOf(attention) };
}

/** All that is critical and what is graver than some of it, as far as 2,000; of the rest what fills the list up to 50. */
function keptOf(attention: readonly Attention[]): readonly Attention[] {
  const lastCritical = attention.findLastIndex(({ severity }) => severity === 'critical');
  return attention.slice(0, Math.max(usualActions, Math.min(lastCritical + 1, mostKept)));
}
