import { zeroOf } from './axial.ts';
import { ownSign, type ChannelFacts, type Evidence, type PolicyFacts } from './facts.ts';
import type { GroupTruth } from './groups.ts';
import type { ThresholdName, ThresholdTruth } from './judge.ts';
import { linesOf } from './lines.ts';
import { readings } from './readings.ts';

export interface NeedsAction {
  readonly severity: 'critical' | 'warning';
  readonly code:
    | 'late'
    | 'unreachable'
    | 'undetermined'
    | 'early'
    | 'incomplete'
    | 'beyond limit'
    | 'may act beyond limit'
    | 'already there'
    | 'in bypass'
    | 'group cannot trip'
    | 'group late'
    | 'group beyond limit'
    | 'not read';
  readonly machine: string;
  readonly tag: string | null;
  readonly group: string | null;
  readonly threshold: ThresholdName | null;
  readonly multiplier: number;
}

export function isDanger(name: ThresholdName): boolean {
  return name === 'danger' || name === 'counter danger';
}

/** Thresholds that are not as set: critical for danger but for an early one, a warning else. */
export function ofThresholds(c: ChannelFacts, thresholds: readonly ThresholdTruth[]): NeedsAction[] {
  return thresholds.flatMap(({ name, multiplier, verdict }) => {
    if (verdict === 'within') return [];
    const severity = isDanger(name) && verdict !== 'early' ? 'critical' : 'warning';
    return [about(c, severity, verdict, name, multiplier)];
  });
}

function about(
  { machine, tag }: ChannelFacts,
  severity: NeedsAction['severity'],
  code: NeedsAction['code'],
  threshold: ThresholdName | null,
  multiplier: number,
): NeedsAction {
  return { severity, code, machine, tag, group: null, threshold, multiplier };
}

/** Dangers beyond the greatest displacement that the machine may reach; under the guarded rule by their upper end. */
export function ofLimit(
  c: ChannelFacts,
  thresholds: readonly ThresholdTruth[],
  { rule }: PolicyFacts,
  hair: number,
): NeedsAction[] {
  const { limit } = c;
  if (limit === null) return [];
  return thresholds.flatMap((threshold) => {
    const { name, multiplier, lines, governedBy, setpoint } = threshold;
    if (!isDanger(name) || setpoint === null || multiplier !== 1) return [];
    const own = ownSign(setpoint);
    const counted = lines.filter(({ by }) => readings.anyLineBeyondLimit || by === governedBy);
    const beyond = (values: readonly (number | null)[]): boolean =>
      values.some((value) => value !== null && own * value > limit * (1 + hair));
    if (beyond(counted.map(({ effective }) => effective)))
      return [about(c, 'critical', 'beyond limit', name, multiplier)];
    const ends = rule === 'guarded' ? counted.flatMap(({ low, high }) => [low, high]) : [];
    return beyond(ends) ? [about(c, 'critical', 'may act beyond limit', name, multiplier)] : [];
  });
}

/** Levels that the machine really has reached though the monitor does not show them, or could not act on them. */
export function alreadyThere(
  c: ChannelFacts,
  e: Evidence,
  policy: PolicyFacts,
  thresholds: readonly ThresholdTruth[],
  hair: number,
): NeedsAction[] {
  const { reading, kind } = c;
  const zero = zeroOf(c, e);
  if (reading === null || kind === null || zero === null) return [];
  const lines = linesOf(c, e, policy, zero);
  return thresholds.flatMap(({ name, multiplier, setpoint, governedBy, verdict }) => {
    if (multiplier !== 1 || setpoint === null) return [];
    const own = ownSign(setpoint);
    const counted = lines.filter(({ by }) => readings.realValueBy === 'worst line' || by === governedBy);
    // A reading of vibration is an amount; one of position on the other side of zero is never there.
    if (own * reading <= 0 && kind !== 'axial') return [];
    const real = counted.flatMap((line) => line.real(reading) ?? []).map((value) => own * value);
    const idle = c.bypass !== false || verdict === 'unreachable';
    const silent = idle || own * reading < Math.abs(setpoint) * (1 - hair);
    const there = real.some((value) => value >= Math.abs(setpoint) * (1 + hair));
    if (!silent || !there) return [];
    return [about(c, isDanger(name) ? 'critical' : 'warning', 'already there', name, 1)];
  });
}

export function ofBypass(c: ChannelFacts): NeedsAction[] {
  return c.bypass === true ? [about(c, 'critical', 'in bypass', 'danger', 1)] : [];
}

/** A group of dangers that cannot trip, acts late or beyond a limit is critical, one of alerts a warning. */
export function ofGroups(groups: readonly GroupTruth[]): NeedsAction[] {
  return groups.flatMap(
    ({ machine, name, threshold, multiplier, canTrip, late, beyondLimit }): NeedsAction[] => {
      const severity = isDanger(threshold) ? 'critical' : 'warning';
      const of = { severity, machine, tag: null, group: name, threshold, multiplier } as const;
      if (!canTrip) return [{ ...of, code: 'group cannot trip' }];
      return [
        ...(late ? [{ ...of, code: 'group late' as const }] : []),
        ...(beyondLimit ? [{ ...of, code: 'group beyond limit' as const }] : []),
      ];
    },
  );
}
