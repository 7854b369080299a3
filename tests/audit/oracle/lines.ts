import normal from '@stdlib/stats-base-dists-normal-cdf';
import quantile from '@stdlib/stats-base-dists-t-quantile';
import { mean, sampleStandardDeviation } from 'simple-statistics';
import { displacementOf, curveOf, swingOf, type Curve } from './curve.ts';
import { ownSign, type ChannelFacts, type Evidence, type Levels, type PolicyFacts } from './facts.ts';
import { intervalOf, type Ratio } from './ratio.ts';
import { straightLine, type Signal } from './straight.ts';

export type Source = 'listed sensitivity' | 'calibration record' | 'known vibration';

/** Expanded parts by which chances are worked out: of the divisor, a fraction; of the numerator, in the unit of the level. */
export interface Scatter {
  readonly ofDivisor: number;
  readonly ofNumerator: number;
  readonly both: number;
}

/** One line of evidence as a function between what the monitor shows and what the shaft really does, both signed. */
export interface Line {
  readonly by: Source;
  /** Whether any uncertainty is known, at the policy's coverage; without, the value alone decides. */
  readonly isUncertain: boolean;
  /** Real value at an indicated one; `null` where the evidence does not reach. */
  readonly real: (indicated: number) => number | null;
  /** Both ends of it; `null` for one that the evidence does not show. */
  readonly ends: (indicated: number) => readonly [number | null, number | null];
  /** What is shown at a real value; guarded: where the interval of the real value ends at it. */
  readonly shown: (real: number, isGuarded: boolean) => number | null;
  readonly scatter: (indicated: number) => Scatter;
}

/** Shift of a position in mV, positive in the direction of the channel; 0 for all but axial channels. */
export interface Zero {
  readonly moved: number;
  readonly side: 1 | -1;
}

/** Sensitivity that the monitor really divides by: its gain multiplies what it shows. */
export function divisorOf({ configured, gain }: ChannelFacts): number {
  return (configured ?? NaN) / (gain ?? 1);
}

/** A stated uncertainty brought to the coverage of the policy: U = U_given·k/k_given. */
export function atCoverage(given: number | null, { coverage }: ChannelFacts, policy: PolicyFacts) {
  return given === null ? null : (given * policy.coverage) / (coverage ?? 2);
}

export function linesOf(c: ChannelFacts, e: Evidence, policy: PolicyFacts, zero: Zero): Line[] {
  if (c.configured === null) return [];
  const listed = atCoverage(e.uncertainty, c, policy);
  const signal: Signal = {
    kc: divisorOf(c),
    moved: zero.moved,
    isPosition: c.kind === 'axial',
    ofGain: atCoverage(c.gainUncertainty, c, policy),
    ofZero: c.kind === 'axial' ? atCoverage(c.zeroUncertainty, c, policy) : null,
    loop: c.kind === 'loop' ? ends(c, e, policy) : null,
    believed: c.configured,
  };
  const lines: Line[] = [];
  if (e.sensitivity !== null) lines.push(straightLine('listed sensitivity', signal, e.sensitivity, listed));
  if (e.record !== null) {
    const curve = curveOf(e.record, policy.curve);
    const line =
      c.kind === 'axial'
        ? positionOnCurve(c, e, curve, zero.side, listed, signal)
        : swingOnCurve(c, e.gapVoltage, curve, listed, signal);
    if (line) lines.push(line);
  }
  if (e.check !== null && e.check.length > 0) {
    const { sensitivity, uncertainty } = known(e.check, policy.coverage);
    lines.push(straightLine('known vibration', signal, sensitivity, uncertainty));
  }
  return lines;
}

/**
 * The ends of the loop. Once its sensitivity was measured again that tells the distance of the ends, and its uncertainty
 * where it has one of its own, though none below the lower end's; the lower end was not measured again and stays as found.
 */
function ends(c: ChannelFacts, e: Evidence, policy: PolicyFacts): Signal['loop'] {
  if (c.loop === null || c.configured === null) return null;
  const { at0, at100, at0Uncertainty, at100Uncertainty } = c.loop;
  const [u0, u100] = [at0Uncertainty, at100Uncertainty].map((one) => atCoverage(one, c, policy) ?? null);
  const found = { at0, u0: u0 ?? null, width: at100 - at0, u100: u100 ?? null };
  const { left } = c;
  if (left === null || e === c.found || left.sensitivity === null) return found;
  const width = (16 * left.sensitivity) / c.configured;
  const own = atCoverage(left.uncertainty, c, policy);
  const rest = own === null ? null : Math.sqrt(Math.max(0, (own * width) ** 2 - (u0 ?? 0) ** 2));
  return { ...found, width, u100: rest ?? found.u100 };
}

/** Uncertainties of sensitivity and gain together: √(U² + U_g²). */
function together(...some: readonly (number | null)[]): number | null {
  const stated = some.filter((one) => one !== null);
  return stated.length === 0 ? null : Math.hypot(...stated);
}

/** Section 6: V(g0 − T/2) − V(g0 + T/2) = S·Kc; an error of the sensitivity stretches the whole curve. */
function swingOnCurve(
  { swing }: ChannelFacts,
  gapVoltage: number | null,
  curve: Curve,
  listed: number | null,
  { kc, ofGain }: Signal,
): Line | undefined {
  if (gapVoltage === null) return undefined;
  const gap = curve.gapAt(gapVoltage);
  const volts = (kc * swing) / 1000;
  const u = together(listed, ofGain);
  const real = (indicated: number, scale = 1): number | null => {
    const found = gap === null ? null : displacementOf(curve, gap, (indicated * volts) / scale);
    return found === null ? null : found / swing;
  };
  return {
    by: 'calibration record',
    isUncertain: u !== null,
    real: (indicated) => real(indicated),
    ends: (indicated) => (u === null ? [null, null] : [real(indicated, 1 + u), real(indicated, 1 - u)]),
    shown: (wanted, isGuarded) => {
      const found = gap === null ? null : swingOf(curve, gap, wanted * swing);
      return found === null ? null : (found * (1 - (isGuarded ? (u ?? 0) : 0))) / volts;
    },
    scatter: () => ({ ofDivisor: u ?? 0, ofNumerator: 0, both: 0 }),
  };
}

/** A position on the curve: from the gap at rest, by the zero as measured, to the gap at the voltage where it acts. */
function positionOnCurve(
  { zeroConfigured }: ChannelFacts,
  { zero, sensitivity }: Evidence,
  curve: Curve,
  side: 1 | -1,
  listed: number | null,
  { kc, ofGain, ofZero }: Signal,
): Line | undefined {
  if (zeroConfigured === null || zero === null) return undefined;
  const rest = curve.gapAt(zero);
  const u = together(listed, ofGain);
  // The zero's part is that of the chain's one sensitivity.
  const z = ofZero === null || sensitivity === null ? null : (1000 * ofZero) / sensitivity;
  const real = (indicated: number, scale = 1): number | null => {
    const acting = curve.gapAt(zeroConfigured + (side * indicated * kc) / 1000);
    return rest === null || acting === null ? null : (side * (rest - acting)) / scale;
  };
  return {
    by: 'calibration record',
    isUncertain: u !== null || z !== null,
    real: (indicated) => real(indicated),
    ends: (indicated) => {
      if (z !== null) {
        const acts = real(indicated);
        const of = (a: number): Ratio => ({ a, b: 1, ua: z, ub: u ?? 0, uab: 0 });
        return (acts === null ? null : intervalOf(of(acts))) ?? [null, null];
      }
      if (u === null) return [null, null];
      const both = [real(indicated, 1 + u), real(indicated, 1 - u)] as const;
      return ownSign(both[0] ?? indicated) < 0 ? [both[1], both[0]] : both;
    },
    shown: (wanted, isGuarded) => {
      if (rest === null) return null;
      const scale = 1 - (isGuarded ? Math.hypot(u ?? 0, (z ?? 0) / wanted) : 0);
      const volts = curve.voltsAt(rest - side * wanted * scale);
      return Number.isNaN(volts) ? null : (side * (volts - zeroConfigured) * 1000) / kc;
    },
    scatter: () => ({ ofDivisor: u ?? 0, ofNumerator: z ?? 0, both: 0 }),
  };
}

/** Mean of output over displacement; from two levels on their scatter gives an uncertainty (JCGM 100:2008 4.2, G.3). */
export function known(levels: Levels, coverage: number): { sensitivity: number; uncertainty: number | null } {
  const each = levels.map(([displacement, output]) => output / displacement);
  const sensitivity = mean(each);
  if (each.length < 2) return { sensitivity, uncertainty: null };
  const standard = sampleStandardDeviation(each) / Math.sqrt(each.length);
  const factor = quantile(normal(coverage, 0, 1), each.length - 1);
  return { sensitivity, uncertainty: (factor * standard) / sensitivity };
}
