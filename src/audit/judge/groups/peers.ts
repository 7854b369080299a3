import { convert } from '../../../units/convert.ts';
import { convertDetection } from '../../../units/detection.ts';
import { amount } from '../../model/wording.ts';
import type { EvaluatedGroup, GroupComplaint } from './groups.ts';
import type { Member } from './members.ts';

const factors = [
  { factor: 2, why: 'one may be peak-to-peak and the other zero-to-peak' },
  { factor: 25.4, why: 'one may be in µm and the other in mil' },
] as const;

/**
 * Setpoints of one group that differ by just the factor between two units: peak-to-peak and zero-to-peak, or mil and µm.
 * Members of a group watch the same motion, so their setpoints are expected to be equal (common practice, no source).
 */
export function peerSlips(groups: readonly EvaluatedGroup[]): GroupComplaint[] {
  return groups
    .filter(({ result }) => result.threshold === 'danger')
    .flatMap(({ members }) => {
      const [first, ...others] = members.filter((member) => dangerOf(member) !== null);
      return first ? others.flatMap((other) => compare(first, other)) : [];
    });
}

function dangerOf(member: Member): number | null {
  return member.thresholds.find((threshold) => threshold.name === 'danger')?.setpoint ?? null;
}

function compare(first: Member, other: Member): GroupComplaint[] {
  const [a, b] = [dangerOf(first), dangerOf(other)];
  if (a === null || b === null || !first.unit || !other.unit) return [];
  const level = convert(b, other.unit, first.unit);
  const known = first.detection && other.detection;
  const ratio = (known ? convertDetection(level, other.detection, first.detection) : level) / a;
  const found = factors.find(({ factor }) => Math.abs(Math.abs(Math.log(ratio)) - Math.log(factor)) < 0.01);
  if (!found) return [];
  const message =
    `Danger ${amount(b, other.unit.text)} of ${other.tag} and ${amount(a, first.unit.text)} of ${first.tag} in group '${first.group}' differ by a factor of ${found.factor}: ` +
    `${found.why}. Check the unit.`;
  return [{ member: other, column: 'group', rule: 'unit-slip-suspected', severity: 'warning', message }];
}
