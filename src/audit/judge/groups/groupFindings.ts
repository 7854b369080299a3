import type { Severity } from '../../model/findings.ts';
import type { GroupResult } from '../../model/report.ts';
import { amount } from '../../model/wording.ts';
import { trips } from '../../model/threshold.ts';

export interface GroupStatement {
  readonly rule: string;
  readonly severity: Severity;
  readonly message: string;
}

/** Whether a vote acts later than the tolerance of a sensitivity allows; levels away from zero, in one unit. */
export function isLate(acts: number, meant: number, tolerance: number): boolean {
  return acts > (meant / (1 - tolerance)) * (1 + 1e-12);
}

/** What there is to say about a voting group as a whole. */
export function groupFindings(group: GroupResult, tolerance: number): GroupStatement[] {
  const { name, voting, threshold, effective, intended, limit } = group;
  const unit = group.unit ?? '';
  const trip = trips(threshold);
  const critical: Severity = trip ? 'critical' : 'warning';
  if (effective === null) {
    const idle = group.members.filter((member) => member.effective === null);
    const why = idle.map((member) => `${member.tag} (${member.why ?? 'cannot act'})`).join(', ');
    const message = `Group '${name}' (${voting}) cannot ${trip ? 'trip' : 'act'} on ${threshold}: these members can't act: ${why}.`;
    return [{ rule: trip ? 'group-cannot-trip' : 'group-cannot-act', severity: critical, message }];
  }
  const found: GroupStatement[] = [];
  const [acts, meant] = [Math.abs(effective), Math.abs(intended ?? NaN)];
  const where = `Group '${name}' (${voting}) acts on ${threshold} at ${amount(effective, unit)}`;
  const by = `decided by ${group.decidedBy.join(', ')}`;
  if (trip && limit !== null && acts > limit) {
    found.push({
      rule: 'group-beyond-limit',
      severity: 'critical',
      message: `${where}, beyond its limit of ${amount(limit, unit)}; ${by}.`,
    });
  }
  if (isLate(acts, meant, tolerance)) {
    found.push({
      rule: 'group-late',
      severity: critical,
      message: `${where} instead of ${amount(intended ?? NaN, unit)}; ${by}.`,
    });
  }
  return found;
}
