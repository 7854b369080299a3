import { factOf, type Fact } from '../../model/findings.ts';
import type { GroupResult } from '../../model/report.ts';
import { trips } from '../../model/threshold.ts';

/** Whether a vote acts later than the tolerance of a sensitivity allows; levels away from zero, in one unit. */
export function isLate(acts: number, meant: number, tolerance: number): boolean {
  return acts > (meant / (1 - tolerance)) * (1 + 1e-12);
}

/** What there is to say about a voting group as a whole. */
export function groupFindings(result: Omit<GroupResult, 'findings'>, tolerance: number): Fact[] {
  const { name: group, voting, threshold, effective, intended, limit, decidedBy } = result;
  const trip = trips(threshold);
  const severity = trip ? 'critical' : 'warning';
  const vote = { group, voting, threshold };
  if (effective === null) {
    const idle = result.members
      .filter((member) => member.effective === null)
      .map(({ tag, why }) => ({ tag, why }));
    return [factOf(trip ? 'group-cannot-trip' : 'group-cannot-act', severity, { ...vote, idle })];
  }
  const found: Fact[] = [];
  const [acts, meant] = [Math.abs(effective), Math.abs(intended ?? NaN)];
  const acting = { ...vote, effective, unit: result.unit ?? '', decidedBy };
  if (trip && limit !== null && acts > limit) {
    found.push(factOf('group-beyond-limit', 'critical', { ...acting, limit }));
  }
  if (isLate(acts, meant, tolerance)) {
    found.push(factOf('group-late', severity, { ...acting, intended: intended ?? NaN }));
  }
  return found;
}
