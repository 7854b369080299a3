import { factOf, type Fact } from '../../model/findings.ts';
import { trips } from '../../model/threshold.ts';
import type { JudgedGroup } from './evaluateGroup.ts';

/** What there is to say about a voting group as a whole. */
export function groupFindings(result: JudgedGroup): Fact[] {
  const { name: group, voting, threshold, multiplier, effective, intended, limit, decidedBy } = result;
  const trip = trips(threshold);
  const severity = trip ? 'critical' : 'warning';
  const vote = { group, voting, threshold, multiplier };
  if (effective === null) {
    const idle = result.members
      .filter((member) => member.effective === null)
      .map(({ tag, why }) => ({ tag, why }));
    return [factOf(trip ? 'group-cannot-trip' : 'group-cannot-act', severity, { ...vote, idle })];
  }
  if (result.liveVoting === 'tripped')
    return [factOf('group-tripped', 'warning', { ...vote, out: result.out })];
  const found: Fact[] = [];
  const acting = { ...vote, effective, unit: result.unit ?? '', decidedBy };
  if (result.beyondLimit && limit !== null)
    found.push(factOf('group-beyond-limit', 'critical', { ...acting, limit }));
  if (result.late) found.push(factOf('group-late', severity, { ...acting, intended: intended ?? NaN }));
  return found;
}
