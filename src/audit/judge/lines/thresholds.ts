import { roundToPanelStep } from '../../../method/roundToEarlySide.ts';
import { shownAs, spreadBeyond } from '../../../method/ratio/acting.ts';
import { indicated } from '../../../method/vibration/panelReading.ts';
import type { Channel } from '../../model/channel.ts';
import { rank } from '../../model/order.ts';
import type { Policy } from '../../model/policy.ts';
import {
  trips,
  type BeyondLimit,
  type LineOfEvidence,
  type NotJudged,
  type Obstacle,
  type ThresholdName,
  type ThresholdResult,
  type UnreachableReason,
} from '../../model/threshold.ts';
import { timing, type Timing } from '../evaluate/timing.ts';
import { zonesOf } from '../evaluate/zones.ts';
import { axialLine } from './axialLine.ts';
import { curveLine } from './curveLine.ts';
import type { Evidence } from './evidence.ts';
import { incompleteThreshold } from './incompleteThreshold.ts';
import { finiteOrNull, type Asked, type Line, inOrder, setpointOf } from './line.ts';
import { actingLoop, actingPosition, divisorOf } from './spreads.ts';
import { linearReachOf, vibrationLine } from './vibrationLine.ts';

/**
 * Every threshold of a channel: alert and danger, the counter-direction ones that are given, and, where the set-point
 * multiplier is above 1, each of them once more with it.
 */
export function judgeThresholds(evidence: Evidence, policy: Policy): ThresholdResult[] {
  const { channel } = evidence;
  const judged: ThresholdResult[] = [];
  for (const name of inOrder) {
    const setpoint = setpointOf(channel, name);
    if (setpoint !== null) judged.push(judge(evidence, policy, { name, setpoint, multiplier: 1 }));
    else if (name === 'alert' || name === 'danger')
      judged.push(incompleteThreshold(name, null, withoutSetpoint(evidence)));
  }
  if (channel.multiplier <= 1) return judged;
  for (const name of inOrder) {
    const setpoint = setpointOf(channel, name);
    if (setpoint !== null)
      judged.push(judge(evidence, policy, { name, setpoint, multiplier: channel.multiplier }));
  }
  return judged;
}

/** Where two tables contradict each other, the setpoint may be there twice. */
function withoutSetpoint({ obstacles }: Evidence): readonly Obstacle[] {
  return obstacles.includes('two values contradict each other')
    ? obstacles
    : [...obstacles, 'a setpoint is missing'];
}

/** One threshold by all its lines of evidence: the worst of them governs, and of equals the one that acts latest. */
function judge(evidence: Evidence, policy: Policy, asked: Asked): ThresholdResult {
  const { channel, obstacles } = evidence;
  const { name, setpoint, multiplier } = asked;
  const lines = linesOf(evidence, policy, asked);
  const governing = governingLine(lines);
  const { effective, spread } = governing;
  const intended = multiplier * setpoint;
  const late = effective === null ? null : Math.sign(setpoint) * (effective - intended) + 0;
  const verdict =
    obstacles.length > 0 && rank(governing.verdict) > rank('incomplete') ? 'incomplete' : governing.verdict;
  const zones =
    effective === null ? { zone: null, intendedZone: null } : zonesOf(channel, intended, effective);
  const reading = readingAt(channel, asked, verdict === 'unreachable', lines);
  const times: Timing = timing(channel, name, intended, effective, reading.real);
  const panel = panelOf(channel, asked, lines);
  return {
    name,
    setpoint,
    multiplier,
    effective,
    low: governing.low,
    high: governing.high,
    shift: late,
    shiftFraction: late === null ? null : late / Math.abs(intended),
    spread: effective === null ? null : spread,
    verdict,
    governedBy: governing.by,
    lines: lines.map(asReported),
    unreachable: reasonsOf(lines),
    obstacles,
    notJudged: notJudged(evidence, policy, name),
    change: null,
    indicatedAtSetpoint: indicatedAt(channel, setpoint),
    panel,
    interimSetpoint: verdict === 'late' && multiplier === 1 ? interimOf(setpoint, panel, lines) : null,
    beyondLimit: trips(name) && multiplier === 1 ? beyondLimit(channel, policy, setpoint, lines) : null,
    probabilityBeyondLimit:
      trips(name) && channel.limit !== null && spread !== null && effective !== null
        ? finiteOrNull(spreadBeyond(effective, spread, Math.sign(effective), channel.limit, policy.coverage))
        : null,
    real: reading.real,
    alreadyThere: reading.alreadyThere,
    zone: zones.zone,
    intendedZone: zones.intendedZone,
    daysLate: times.daysLate,
    daysToGo: times.daysToGo,
    levelAtTrip: times.levelAtTrip,
    headroom: times.headroom,
  };
}

/** A line as the report shows it. */
function asReported({ by, effective, low, high, verdict, why, panel }: Line): LineOfEvidence {
  return { by, effective, low, high, verdict, why, panel };
}

/** Why it can't be reached, by any line. */
function reasonsOf(lines: readonly Line[]): readonly UnreachableReason[] {
  const [first, ...others] = lines;
  if (!first) return [];
  if (others.every(({ reasons }) => reasons.length === 0)) return first.reasons;
  return [...new Set(lines.flatMap(({ reasons }) => reasons))];
}

function linesOf({ channel, curve, vibration }: Evidence, policy: Policy, asked: Asked): Line[] {
  const line = channel.kind === 'axial' ? axialLine : vibrationLine;
  const lines = [line('listed sensitivity', channel, policy, asked)];
  if (curve && canUseCurve(channel)) lines.push(curveLine(curve, channel, policy, asked));
  if (vibration) {
    const { sensitivity, uncertainty } = vibration;
    const other = { ...channel, measured: sensitivity, uncertainty };
    const known = line('known vibration', other, policy, asked);
    const why =
      known.why ?? (uncertainty !== null && uncertainty >= 1 ? 'its uncertainty is 100 % or more' : null);
    lines.push({ ...known, why });
  }
  return lines;
}

/** Positions are read off a curve from the zero voltages, swings about the gap voltage. */
function canUseCurve({ kind, zeroConfigured, zeroMeasured, direction, gapVoltage }: Channel): boolean {
  if (kind !== 'axial') return gapVoltage !== null;
  return zeroConfigured !== null && zeroMeasured !== null && direction !== null;
}

function governingLine(lines: readonly Line[]): Line {
  const [first, ...others] = lines;
  if (!first) throw new Error('a threshold without a line of evidence');
  return others.reduce((worst, line) => (isWorse(line, worst) ? line : worst), first);
}

/** A worse verdict, or the same one with a later threshold; one that can't be shown to act is the latest. */
function isWorse(line: Line, than: Line): boolean {
  const by = rank(line.verdict) - rank(than.verdict);
  if (by !== 0) return by < 0;
  return lateness(line) > lateness(than);
}

function lateness({ effective }: Line): number {
  return effective === null ? Infinity : Math.abs(effective);
}

/** The least reading of all lines, at the monitor's step, and never above what it can show. */
function panelOf(channel: Channel, { setpoint }: Asked, lines: readonly Line[]): number | null {
  const sign = Math.sign(setpoint);
  let least = channel.fullScale ?? Infinity;
  for (const { panel } of lines) least = Math.min(least, panel === null ? NaN : sign * panel);
  const stepped = roundToPanelStep(least, channel.resolution);
  return stepped > 0 ? sign * stepped : null;
}

/** The panel level as a setpoint: never above the present one, and none where a line of evidence can't show it to act. */
function interimOf(setpoint: number, panel: number | null, lines: readonly Line[]): number | null {
  if (panel === null || lines.some(({ effective }) => effective === null)) return null;
  return Math.abs(panel) > Math.abs(setpoint) ? null : panel;
}

function beyondLimit(
  { limit }: Channel,
  { rule }: Policy,
  setpoint: number,
  lines: readonly Line[],
): BeyondLimit | null {
  if (limit === null) return null;
  const acting = lines.filter(({ effective }) => effective !== null);
  if (acting.length === 0) return null;
  if (acting.some(({ effective }) => Math.abs(effective ?? 0) > limit)) return 'yes';
  return rule === 'guarded' && acting.some((line) => latest(line, setpoint) > limit) ? 'may' : 'no';
}

/** The upper end of where a line puts a threshold, away from zero; infinite where it can't be shown to act there. */
function latest({ effective, low, high, spread }: Line, setpoint: number): number {
  if (spread === null) return Math.abs(effective ?? Infinity);
  return Math.abs((setpoint < 0 ? low : high) ?? Infinity);
}

const noReading = { real: null, alreadyThere: null } as const;

/** What the shaft really does at the present reading, by the line that puts it farthest, and whether it is past what was meant. */
function readingAt(
  channel: Channel,
  { setpoint, multiplier }: Asked,
  cannotAct: boolean,
  lines: readonly Line[],
): { real: number | null; alreadyThere: boolean | null } {
  const { reading, bypass } = channel;
  if (reading === null) return noReading;
  const sign = Math.sign(setpoint);
  let farthest = -Infinity;
  for (const { realAt } of lines) {
    const real = sign * realAt(reading);
    if (Number.isFinite(real)) farthest = Math.max(farthest, real);
  }
  if (!Number.isFinite(farthest)) return noReading;
  const silent = bypass !== false || cannotAct || sign * reading < sign * multiplier * setpoint;
  return { real: sign * farthest, alreadyThere: silent && farthest >= sign * multiplier * setpoint };
}

function indicatedAt(channel: Channel, setpoint: number): number | null {
  const { kind, measured, zeroConfigured, zeroMeasured, direction, loop } = channel;
  if (loop !== null) return finiteOrNull(shownAs(actingLoop('listed sensitivity', channel, loop), setpoint));
  if (kind !== 'axial') return finiteOrNull(indicated(setpoint, divisorOf(channel), measured));
  if (zeroConfigured === null || zeroMeasured === null) return null;
  const zeros = { zeroConfigured, zeroMeasured, direction: direction ?? 'toward' };
  return finiteOrNull(shownAs(actingPosition(channel, zeros), setpoint));
}

/** What was not looked at because its evidence, which is no more than useful, is not given. */
function notJudged(evidence: Evidence, policy: Policy, name: ThresholdName): readonly NotJudged[] {
  const { channel, curve } = evidence;
  const missing: NotJudged[] = [...channel.notCompared];
  if (channel.kind === 'radial' && linearReachOf(channel, policy) === null) missing.push('reach');
  if (channel.uncertainty === null && policy.rule === 'guarded') missing.push('uncertainty');
  if (curve && !canUseCurve(channel)) missing.push('curve');
  if (trips(name) && channel.limit === null && !missing.includes('limit')) missing.push('limit');
  if (channel.fullScale === null && !missing.includes('full scale')) missing.push('full scale');
  return missing.length === 0 ? everything : missing;
}

const everything: readonly NotJudged[] = [];
