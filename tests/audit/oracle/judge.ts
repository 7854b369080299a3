import { outOfVolts, zeroOf } from './axial.ts';
import { curveOf, straightPart } from './curve.ts';
import {
  ownSign,
  verdicts,
  type ChannelFacts,
  type Evidence,
  type PolicyFacts,
  type Verdict,
} from './facts.ts';
import { divisorOf, linesOf, type Line, type Scatter, type Source } from './lines.ts';
import { interimOf, panelOf } from './panel.ts';
import { readings } from './readings.ts';

/** What one line of evidence says of one threshold. */
export interface LineTruth {
  readonly by: Source;
  /** `null`: the evidence does not show where it acts. */
  readonly effective: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly verdict: Verdict;
}

export interface ThresholdTruth {
  readonly name: ThresholdName;
  readonly multiplier: number;
  /** Signed; `null`: not known. */
  readonly setpoint: number | null;
  readonly effective: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly verdict: Verdict;
  readonly governedBy: Source | null;
  readonly lines: readonly LineTruth[];
  /** How widely it is known, by the line that governs; `null` where the value alone decides or where it acts is not shown. */
  readonly spread: Scatter | null;
  readonly panel: number | null;
  readonly interimSetpoint: number | null;
}

export type ThresholdName = 'alert' | 'danger' | 'counter alert' | 'counter danger';

/**
 * Every threshold of a channel by the given evidence. `hair` moves every limit by that part, so that a case in which a
 * limit is met to within rounding shows itself by two answers.
 */
export function thresholdsOf(c: ChannelFacts, e: Evidence, policy: PolicyFacts, hair = 0): ThresholdTruth[] {
  const given: [ThresholdName, number | null][] = [
    ['alert', c.alert],
    ['danger', c.danger],
  ];
  const position = c.kind === 'axial' || c.kind === null;
  if (position && c.counterAlert !== null) given.push(['counter alert', -c.counterAlert]);
  if (position && c.counterDanger !== null) given.push(['counter danger', -c.counterDanger]);
  const multipliers = c.multiplier !== null && c.multiplier > 1 ? [1, c.multiplier] : [1];
  return multipliers.flatMap((multiplier) =>
    given.map(([name, setpoint]) => judge(c, e, policy, { name, multiplier, setpoint }, hair)),
  );
}

type Named = Pick<ThresholdTruth, 'name' | 'multiplier' | 'setpoint'>;

function judge(
  c: ChannelFacts,
  e: Evidence,
  policy: PolicyFacts,
  named: Named,
  hair: number,
): ThresholdTruth {
  const unknown: ThresholdTruth = {
    ...named,
    effective: null,
    low: null,
    high: null,
    verdict: 'incomplete',
    governedBy: null,
    lines: [],
    spread: null,
    panel: null,
    interimSetpoint: null,
  };
  const { setpoint, multiplier } = named;
  if (c.kind === null || c.configured === null || setpoint === null) return unknown;
  const meant = multiplier * setpoint;
  const zero = zeroOf(c, e);
  if (zero === null) return withoutZero(c, e, policy, meant, unknown, hair);
  const all = linesOf(c, e, policy, zero);
  if (all.length === 0) return unknown;
  const never = cannotAct(c, e, policy, meant, hair);
  const lines = all.map((line) => lineTruth(c, e, policy, line, meant, never, hair));
  const governing = governs(lines, setpoint);
  const governingLine = all[lines.indexOf(governing)]!;
  const capped = governing.verdict === 'within' && c.unusable.length > 0 ? 'incomplete' : governing.verdict;
  const panel = panelOf(c, policy, all, readings.panelOfMultiplied === 'setpoint' ? setpoint : meant);
  const interim = panelOf(c, policy, all, setpoint);
  const wouldBeLate = (to: number): boolean =>
    all.some((line) => {
      const then = lineTruth(c, e, policy, line, multiplier * to, false, 0);
      return then.effective === null || decision(policy, meant, then, 0) === 'late';
    });
  return {
    ...named,
    effective: governing.effective,
    low: governing.low,
    high: governing.high,
    verdict: capped,
    governedBy: governing.by,
    lines,
    spread: governingLine.isUncertain && governing.effective !== null ? governingLine.scatter(meant) : null,
    panel,
    // What is entered is the plain setpoint.
    interimSetpoint:
      governing.verdict === 'late' && multiplier === 1 ? interimOf(c, setpoint, interim, wouldBeLate) : null,
  };
}

/** Without both zeros nothing is known of where a position acts, unless the ratio alone makes it late. */
function withoutZero(
  c: ChannelFacts,
  e: Evidence,
  policy: PolicyFacts,
  meant: number,
  unknown: ThresholdTruth,
  hair: number,
): ThresholdTruth {
  const never = cannotAct(c, e, policy, meant, hair);
  // As a ratio of sensitivities alone, whatever is known of its zero.
  const byRatio = { ...c, kind: 'radial', zeroUncertainty: null } as const;
  const [line] = linesOf(byRatio, { ...e, record: null, check: null }, policy, { moved: 0, side: 1 });
  if (!line) return unknown;
  const ratio = lineTruth(c, e, policy, line, meant, false, hair);
  const isLate = ratio.verdict === 'late';
  const verdict: Verdict = never ? 'unreachable' : isLate ? 'late' : 'incomplete';
  const { by } = ratio;
  const own = isLate
    ? ({ ...ratio, verdict } as const)
    : ({ by, effective: null, low: null, high: null, verdict } as const);
  const { effective, low, high } = own;
  const spread = line.isUncertain && effective !== null ? line.scatter(meant) : null;
  return { ...unknown, effective, low, high, verdict, governedBy: by, lines: [own], spread };
}

/** What keeps a threshold from acting whatever the sensitivity: full scale, a swing or position out of volts. */
function cannotAct(c: ChannelFacts, e: Evidence, policy: PolicyFacts, meant: number, hair: number): boolean {
  if (c.fullScale !== null && Math.abs(meant) > c.fullScale * (1 + hair)) return true;
  if (c.kind === 'axial') return outOfVolts(c, policy, meant, hair);
  const { gapVoltage, record } = e;
  if (c.kind !== 'radial' || gapVoltage === null || c.configured === null) return false;
  if (record !== null && curveOf(record, policy.curve).gapAt(gapVoltage) !== null) return false;
  const room = 2 * Math.min(Math.abs(gapVoltage - policy.near), Math.abs(policy.far - gapVoltage));
  return (meant * divisorOf(c) * c.swing) / 1000 > room * (1 + hair);
}

/** Whether a swing that acts at `effective` stays inside the straight part of the record. */
function beyondStraightPart(
  c: ChannelFacts,
  { record, gapVoltage }: Evidence,
  policy: PolicyFacts,
  effective: number | null,
  hair: number,
): boolean {
  if (c.kind !== 'radial' || record === null || gapVoltage === null || effective === null) return false;
  const gap = curveOf(record, policy.curve).gapAt(gapVoltage);
  if (gap === null) return false;
  const [from, to] = straightPart(record, gap, c.perMil);
  return effective * c.swing > 2 * Math.max(0, Math.min(gap - from, to - gap)) * (1 + hair);
}

function lineTruth(
  c: ChannelFacts,
  e: Evidence,
  policy: PolicyFacts,
  line: Line,
  meant: number,
  never: boolean,
  hair: number,
): LineTruth {
  const { by } = line;
  const effective = line.real(meant);
  const [low, high] = line.ends(meant);
  const truth = { by, effective, low, high };
  if (never || beyondStraightPart(c, e, policy, effective, hair)) return { ...truth, verdict: 'unreachable' };
  const hasZero = c.kind === 'axial' || c.loop !== null;
  if (hasZero && effective !== null && effective * meant <= 0)
    return { ...truth, verdict: readings.actsAtRest };
  return { ...truth, verdict: decision(policy, meant, truth, hair, line.isUncertain) };
}

/** Inside the band with all of the interval, outside with all of it, or neither (ILAC-G8:09/2019). */
function decision(
  { tolerance, rule }: PolicyFacts,
  meant: number,
  { effective, low, high }: Pick<LineTruth, 'effective' | 'low' | 'high'>,
  hair: number,
  stated = low !== null || high !== null,
): Verdict {
  if (effective === null) return 'undetermined';
  const own = ownSign(meant);
  const [from, to] = [Math.abs(meant) / (1 + tolerance), Math.abs(meant) / (1 - tolerance)];
  const guarded = rule === 'guarded' && stated;
  const ends = guarded ? [low, high] : [effective, effective];
  const away = ends.map((end) => (end === null ? Infinity : own * end));
  const [least, most] = [Math.min(...away), Math.max(...away)];
  if (least >= from * (1 - hair) && most <= to * (1 + hair)) return 'within';
  if (most < from * (1 - hair)) return 'early';
  return least > to * (1 + hair) ? 'late' : 'undetermined';
}

/** The worst; of equals the one that acts latest: one that does not show where it acts is the latest. */
function governs(lines: readonly LineTruth[], setpoint: number): LineTruth {
  const own = ownSign(setpoint);
  const latest = ({ effective }: LineTruth): number => (effective === null ? Infinity : own * effective);
  return lines.toSorted(
    (one, other) =>
      verdicts.indexOf(one.verdict) - verdicts.indexOf(other.verdict) || latest(other) - latest(one),
  )[0]!;
}
