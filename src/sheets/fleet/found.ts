import { needsAction as isStrict } from '../../audit/advise/summary.ts';
import type { Report } from '../../audit/model/report.ts';
import { actionOf } from '../summary/action.ts';
import { needsAction, type Item } from '../summary/needsAction.ts';
import { machineCounts } from './machines.ts';
import type { Found } from './types.ts';

/** Groups and thresholds that a fleet keeps of each workbook, and shows of all. */
export const mostActions = 50;

/** What a fleet keeps of one report: light, however many channels it has. */
export function foundIn(report: Report): Found {
  const { items, total } = needsAction(report, Infinity);
  const ordered = items
    .map((item) => ({ item, rank: item.rank, shift: shiftOf(item) }))
    .sort(worstActionFirst)
    .slice(0, mostActions);
  return {
    summary: report.summary,
    strict: isStrict(report.channels, report.groups),
    machines: machineCounts(report),
    actions: ordered.map(({ item, rank, shift }) => ({ ...actionOf(item), rank, shift })),
    actionsInAll: total,
  };
}

function shiftOf(item: Item): number {
  return 'group' in item ? 0 : Math.abs(item.threshold.shiftFraction ?? 0);
}

/** Order of what needs action, in one workbook or in all: by rank, of equals the larger shift first. */
export function worstActionFirst(
  a: { readonly rank: number; readonly shift: number },
  b: { readonly rank: number; readonly shift: number },
): number {
  return a.rank - b.rank || b.shift - a.shift;
}
