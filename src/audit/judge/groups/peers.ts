import { convert } from '../../../units/unit.ts';
import { convertDetection } from '../../../units/detection.ts';
import { factOf } from '../../model/findings.ts';
import type { EvaluatedGroup, GroupDiagnostic } from './groups.ts';
import type { Member } from './members.ts';

/** Peak-to-peak and zero-to-peak; mil and µm. */
const factors = [2, 25.4] as const;

/**
 * Setpoints of one group that differ by just the factor between two units: peak-to-peak and zero-to-peak, or mil and µm.
 * Members of a group watch the same motion, so their setpoints are expected to be equal (common practice, no source).
 */
export function peerSlips(groups: readonly EvaluatedGroup[]): GroupDiagnostic[] {
  return groups
    .filter(({ result }) => result.threshold === 'danger' && result.multiplier === 1)
    .flatMap(({ members }) => {
      const [first, ...others] = members.filter((member) => dangerOf(member) !== null);
      return first ? others.flatMap((other) => compare(first, other)) : [];
    });
}

function dangerOf(member: Member): number | null {
  return member.thresholds.find((threshold) => threshold.name === 'danger')?.setpoint ?? null;
}

function compare(first: Member, other: Member): GroupDiagnostic[] {
  const [a, b] = [dangerOf(first), dangerOf(other)];
  if (a === null || b === null || !first.unit || !other.unit) return [];
  const level = convert(b, other.unit, first.unit);
  const known = first.detection && other.detection;
  const ratio = (known ? convertDetection(level, other.detection, first.detection) : level) / a;
  const factor = factors.find((one) => Math.abs(Math.abs(Math.log(ratio)) - Math.log(one)) < 0.01);
  if (factor === undefined) return [];
  const values = {
    kind: 'peers',
    group: first.group,
    own: { tag: other.tag, danger: b, unit: other.unit.text },
    other: { tag: first.tag, danger: a, unit: first.unit.text },
    factor,
  } as const;
  return [{ member: other, column: 'group', fact: factOf('unit-slip-suspected', 'warning', values) }];
}
