import cdf from '@stdlib/stats-base-dists-normal-cdf';
import { intervalOf } from './oracle/ratio.ts';

/**
 * A second working of every number of a report, written from the formulas of the method alone and sharing no code with the
 * project. Everything is in base units: displacements µm (peak-to-peak for vibration), velocities mm/s, accelerations
 * m/s², sensitivities mV per base unit, voltages V, times days but for delays (s).
 */
export interface PlannedChannel {
  readonly tag: string;
  readonly kind: 'radial' | 'axial' | 'velocity' | 'acceleration';
  readonly configured: number;
  /** `null`: the cell is empty. */
  readonly measured: number | null;
  /** Expanded, as a fraction. */
  readonly uncertainty: number | null;
  readonly coverage: number | null;
  /** Indicated over injected, and its expanded uncertainty as a fraction of it. */
  readonly gain: number | null;
  readonly gainUncertainty: number | null;
  /** V, expanded. */
  readonly zeroUncertainty: number | null;
  readonly alert: number;
  readonly danger: number;
  readonly counterAlert: number | null;
  readonly counterDanger: number | null;
  readonly fullScale: number | null;
  readonly multiplier: number | null;
  readonly resolution: number | null;
  readonly limit: number | null;
  readonly reading: number | null;
  readonly growth: number | null;
  readonly doubling: number | null;
  readonly alertDelay: number | null;
  readonly dangerDelay: number | null;
  readonly speed: number | null;
  readonly gapVoltage: number | null;
  readonly zeroConfigured: number | null;
  readonly zeroMeasured: number | null;
  readonly direction: 'toward' | 'away' | null;
  /** As left; all `null` where nothing was read. */
  readonly asLeft: number | null;
  readonly asLeftUncertainty: number | null;
  readonly asLeftGapVoltage: number | null;
  readonly group: string | null;
  readonly voting: string | null;
  readonly bypass: boolean;
}

export interface PlannedPolicy {
  readonly tolerance: number;
  readonly rule: 'guarded' | 'simple';
  readonly coverage: number;
  readonly near: number;
  readonly far: number;
}

export interface Worked {
  readonly name: string;
  readonly multiplier: number;
  readonly setpoint: number;
  /** `null`: not known, for want of a zero. */
  readonly effective: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly shift: number | null;
  readonly shiftFraction: number | null;
  readonly indicatedAtSetpoint: number | null;
  /** What stands for the setpoint on the panel before it is brought to a step; `null` where nothing does. */
  readonly shown: number | null;
  readonly headroom: number | null;
  readonly levelAtTrip: number | null;
  readonly daysLate: number | null;
  readonly daysToGo: number | null;
  readonly probabilityBeyondLimit: number | null;
  readonly zone: readonly (string | null)[];
  readonly intendedZone: readonly (string | null)[];
  /** Every verdict that may be given: several where a limit is met to within rounding. */
  readonly verdict: readonly string[];
}

/** Whether a channel was measured again. */
export function isLeft(c: PlannedChannel): boolean {
  return c.asLeft !== null && c.measured !== null;
}

/**
 * As it is now: with the sensitivity as left where there is one, the uncertainty and the gap voltage as found where none was
 * read with it, and no zero, since none was measured again.
 */
export function nowOf(c: PlannedChannel): PlannedChannel {
  if (!isLeft(c)) return c;
  return {
    ...c,
    measured: c.asLeft,
    uncertainty: c.asLeftUncertainty ?? c.uncertainty,
    gapVoltage: c.asLeftGapVoltage ?? c.gapVoltage,
    zeroMeasured: null,
  };
}

/** The uncertainty at the coverage of the policy; one without a factor of its own is stated at k = 2. */
export function broughtTo(c: PlannedChannel, policy: PlannedPolicy): number | null {
  return c.uncertainty === null ? null : (c.uncertainty * policy.coverage) / (c.coverage ?? 2);
}

/** Numerator and divisor of a threshold at what is shown, and their expanded uncertainties; `null`: none is stated. */
interface Parts {
  readonly a: number;
  readonly b: number;
  readonly uncertainties: { readonly ua: number; readonly ub: number } | null;
}

/** A gain belongs to the sensitivity of a vibration, to the numerator of a position (section 17). */
function partsOf(c: PlannedChannel, policy: PlannedPolicy, moved: number, shown: number): Parts {
  const of = (one: number | null): number => ((one ?? 0) * policy.coverage) / (c.coverage ?? 2);
  const [b, ofSetpoint] = [c.measured ?? NaN, (shown * c.configured) / (c.gain ?? 1)];
  const isPosition = c.kind === 'axial' && c.zeroConfigured !== null && c.zeroMeasured !== null;
  const zero = isPosition ? c.zeroUncertainty : null;
  const isUncertain = c.uncertainty !== null || c.gainUncertainty !== null || zero !== null;
  const [ug, uz] = [of(c.gainUncertainty), of(zero)];
  const relative = isPosition ? of(c.uncertainty) : Math.hypot(of(c.uncertainty), ug);
  const ua = isPosition ? Math.hypot(1000 * uz, ofSetpoint * ug) : 0;
  return { a: ofSetpoint + moved, b, uncertainties: isUncertain ? { ua, ub: b * relative } : null };
}

/** Both ends, lower first; empty where the value alone decides. */
function endsOf({ a, b, uncertainties }: Parts): readonly number[] {
  if (uncertainties === null) return [];
  return intervalOf({ a, b, ...uncertainties, uab: 0 }) ?? [];
}

/** What is shown when the shaft really moves S: under the guarded rule where the interval's farther end is S. */
function shownAt(parts: (shown: number) => Parts, s: number, guarded: boolean): number {
  const farthest = (shown: number): number => {
    const one = parts(own * shown);
    const ends = guarded ? endsOf(one) : [];
    return Math.max(...[one.a / one.b, ...ends].map((end) => own * end));
  };
  const own = Math.sign(s);
  let [from, to] = [-20 * Math.abs(s), 20 * Math.abs(s)];
  for (let step = 0; step < 80; step++) {
    const middle = (from + to) / 2;
    if (farthest(middle) > Math.abs(s)) to = middle;
    else from = middle;
  }
  return own * from;
}

/** Values this close to a limit, in part of it, may fall on either side in floating point. */
const hair = 1e-9;

export function thresholdsOf(c: PlannedChannel, policy: PlannedPolicy): Worked[] {
  const given: [string, number | null][] = [
    ['alert', c.alert],
    ['danger', c.danger],
    ['counter alert', c.kind === 'axial' && c.counterAlert !== null ? -c.counterAlert : null],
    ['counter danger', c.kind === 'axial' && c.counterDanger !== null ? -c.counterDanger : null],
  ];
  const multipliers = c.multiplier !== null && c.multiplier > 1 ? [1, c.multiplier] : [1];
  return multipliers.flatMap((m) =>
    given.flatMap(([name, setpoint]) => (setpoint === null ? [] : [threshold(c, policy, name, setpoint, m)])),
  );
}

function threshold(c: PlannedChannel, policy: PlannedPolicy, name: string, s: number, m: number): Worked {
  const km = c.measured ?? NaN;
  const kc = c.configured / (c.gain ?? 1);
  const side = c.direction === 'away' ? -1 : 1;
  const moved =
    c.kind === 'axial' && c.zeroConfigured !== null && c.zeroMeasured !== null
      ? side * (c.zeroConfigured - c.zeroMeasured) * 1000
      : 0;
  const own = s < 0 ? -1 : 1;
  const meant = m * s;
  const parts = (shown: number): Parts => partsOf(c, policy, moved, shown);
  const { uncertainties } = parts(meant);
  if (c.kind === 'axial' && (c.zeroConfigured === null || c.zeroMeasured === null))
    return withoutZero(c, policy, name, s, m);
  const effective = (meant * kc + moved) / km;
  const ends = endsOf(parts(meant));
  const real = c.reading === null ? null : (c.reading * kc + moved) / km;
  const shown = (s * km - moved) / kc;
  const least = Math.min(own * shownAt(parts, s, policy.rule === 'guarded'), c.fullScale ?? Infinity);
  const danger = name.includes('danger');
  return {
    name,
    multiplier: m,
    setpoint: s,
    effective,
    low: ends[0] ?? null,
    high: ends[1] ?? null,
    shift: own * (effective - meant),
    shiftFraction: (effective - meant) / meant,
    indicatedAtSetpoint: shown,
    shown: least > 0 ? own * least : null,
    headroom: real === null ? null : own * (effective - real),
    ...times(c, own * effective, own * meant, real === null ? null : own * real, danger, own),
    probabilityBeyondLimit:
      danger && c.limit !== null && uncertainties !== null
        ? beyond(parts(meant), c.limit, policy.coverage)
        : null,
    zone: zones(c, effective),
    intendedZone: zones(c, meant),
    verdict: verdicts(c, policy, meant, effective, ends),
  };
}

/** Φ((A − L·B)/√(u_A² + L²·u_B²)), on the side on which it acts. */
function beyond({ a, b, uncertainties }: Parts, limit: number, coverage: number): number {
  const { ua, ub } = uncertainties ?? { ua: 0, ub: 0 };
  const u = Math.hypot(ua, limit * ub) / coverage;
  const margin = Math.abs(a) - limit * b;
  if (u === 0) return margin > 0 ? 1 : 0;
  return cdf(margin / u, 0, 1);
}

/** Without both zeros nothing is known of where a position acts, unless the ratio alone makes it late. */
function withoutZero(c: PlannedChannel, policy: PlannedPolicy, name: string, s: number, m: number): Worked {
  const meant = m * s;
  const parts = partsOf(c, policy, 0, meant);
  const ratio = parts.a / parts.b;
  const ends = endsOf(parts);
  const verdict = verdicts(c, policy, meant, ratio, ends).map((one) =>
    one === 'late' || one === 'unreachable' ? one : 'incomplete',
  );
  const isLate = decision(policy, meant, ratio, ends, 0) === 'late';
  const only = <T>(value: T): T | null => (isLate ? value : null);
  return {
    name,
    multiplier: m,
    setpoint: s,
    effective: only(ratio),
    low: only(ends[0] ?? null),
    high: only(ends[1] ?? null),
    shift: only(Math.sign(s) * (ratio - meant)),
    shiftFraction: only((ratio - meant) / meant),
    indicatedAtSetpoint: null,
    shown: null,
    headroom: null,
    daysLate: null,
    daysToGo: null,
    levelAtTrip: null,
    probabilityBeyondLimit:
      name.includes('danger') && c.limit !== null && parts.uncertainties !== null
        ? only(beyond(parts, c.limit, policy.coverage))
        : null,
    zone: [null],
    intendedZone: [null],
    verdict,
  };
}

/** A level on the panel, in a unit: down to the step or to two digits; two answers where it is on a step to within rounding. */
export function panelsOf(shown: number | null, resolution: number | null, unit: number): (number | null)[] {
  if (shown === null) return [null];
  const level = Math.abs(shown) / unit;
  return [level * (1 - hair), level * (1 + hair)].map((one) => {
    const step = resolution === null ? 10 ** (Math.floor(Math.log10(one)) - 1) : resolution / unit;
    const whole = Math.floor(one / step);
    return whole === 0 ? null : Math.sign(shown) * whole * step;
  });
}

function times(
  c: PlannedChannel,
  acts: number,
  meant: number,
  real: number | null,
  danger: boolean,
  own: number,
): Pick<Worked, 'daysLate' | 'daysToGo' | 'levelAtTrip'> {
  const none = { daysLate: null, daysToGo: null, levelAtTrip: null };
  if (acts <= 0 || (c.growth === null) === (c.doubling === null)) return none;
  const delay = ((danger ? c.dangerDelay : c.alertDelay) ?? 0) / 86_400;
  if (c.growth !== null) {
    return {
      daysLate: (acts - meant) / c.growth,
      daysToGo: real === null ? null : Math.max(0, (acts - real) / c.growth) + delay,
      levelAtTrip: own * (acts + c.growth * delay),
    };
  }
  const tau = c.doubling ?? NaN;
  return {
    daysLate: (tau * Math.log(acts / meant)) / Math.LN2,
    daysToGo: real === null ? null : Math.max(0, (tau * Math.log(acts / real)) / Math.LN2) + delay,
    levelAtTrip: own * acts * Math.exp((Math.LN2 * delay) / tau),
  };
}

/** ISO 20816-3 boundaries, from memory; a value on one to within rounding may be in either zone. */
function zones(c: PlannedChannel, level: number): (string | null)[] {
  if (c.kind !== 'radial' || c.speed === null) return [null];
  const root = Math.sqrt(c.speed);
  const at = (x: number) =>
    x * root <= 4800 ? 'A' : x * root <= 9000 ? 'B' : x * root <= 13_200 ? 'C' : 'D';
  return [at(level * (1 - hair)), at(level * (1 + hair))];
}

function verdicts(
  c: PlannedChannel,
  policy: PlannedPolicy,
  meant: number,
  effective: number,
  ends: readonly number[],
): string[] {
  const reached = [-hair, hair].map((off) => unreachable(c, policy, meant, effective, 1 + off));
  const decided = [-hair, 0, hair].flatMap((off) => decision(policy, meant, effective, ends, off));
  return reached.flatMap((not) => (not ? ['unreachable'] : decided));
}

function unreachable(
  c: PlannedChannel,
  policy: PlannedPolicy,
  meant: number,
  effective: number,
  near1: number,
): boolean {
  if (c.fullScale !== null && Math.abs(meant) > c.fullScale * near1) return true;
  if (c.kind === 'radial' && c.gapVoltage !== null) {
    const toEnd = Math.min(Math.abs(c.gapVoltage - policy.near), Math.abs(policy.far - c.gapVoltage));
    return effective > ((2000 * toEnd) / (c.measured ?? NaN)) * near1;
  }
  if (c.kind !== 'axial') return false;
  if (effective * meant <= 0) return true;
  if (c.zeroConfigured === null || c.direction === null) return false;
  const kc = c.configured / (c.gain ?? 1);
  const volts = c.zeroConfigured + ((c.direction === 'away' ? -1 : 1) * meant * kc) / 1000;
  return volts > policy.near + 10 * (near1 - 1) || volts < policy.far - 10 * (near1 - 1);
}

function decision(
  { tolerance: t, rule }: PlannedPolicy,
  meant: number,
  effective: number,
  ends: readonly number[],
  off: number,
): string {
  const [from, to] = [(Math.abs(meant) / (1 + t)) * (1 + off), (Math.abs(meant) / (1 - t)) * (1 - off)];
  const counted = rule === 'guarded' && ends.length > 0 ? ends : [effective];
  const away = counted.map((end) => Math.sign(meant) * end);
  const [low, high] = [Math.min(...away), Math.max(...away)];
  if (low >= from && high <= to) return 'within';
  if (high < from) return 'early';
  return low > to ? 'late' : 'undetermined';
}

export interface WorkedGroup {
  readonly intended: number | null;
  readonly effective: number | null;
  /** Members whose threshold decides to within rounding. */
  readonly decidedBy: readonly string[];
}

/** The M-th smallest of the members' thresholds away from zero; who can't act counts as infinite. `undefined`: nobody has it. */
export function groupOf(
  members: readonly PlannedChannel[],
  policy: PlannedPolicy,
  name: string,
  m: number,
): WorkedGroup | undefined {
  const voters = members.map((member) => {
    const own = thresholdsOf(member, policy).find((one) => one.name === name && one.multiplier === 1);
    // On its limit to within rounding a threshold is not beyond it, and acts.
    const reached = own?.verdict.some((verdict) => verdict !== 'unreachable' && verdict !== 'incomplete');
    const acts = own && reached && member.measured !== null && !member.bypass;
    return {
      tag: member.tag,
      setpoint: own ? Math.abs(own.setpoint) : Infinity,
      effective: acts ? Math.abs(own.effective ?? Infinity) : Infinity,
    };
  });
  if (voters.every((voter) => voter.setpoint === Infinity)) return undefined;
  const mth = (values: number[]) => values.toSorted((a, b) => a - b)[m - 1] ?? Infinity;
  const effective = mth(voters.map((voter) => voter.effective));
  const intended = mth(voters.map((voter) => voter.setpoint));
  const sign = name.startsWith('counter') ? -1 : 1;
  return {
    intended: intended === Infinity ? null : sign * intended,
    effective: effective === Infinity ? null : sign * effective,
    decidedBy:
      effective === Infinity
        ? []
        : voters
            .filter((voter) => Math.abs(voter.effective / effective - 1) < hair)
            .map((voter) => voter.tag),
  };
}
