import normal from '@stdlib/stats-base-dists-normal-cdf';
import quantile from '@stdlib/stats-base-dists-t-quantile';
import { mean, sampleStandardDeviation } from 'simple-statistics';
import { displacementOf, curveOf, swingOf, type Curve } from './curve.ts';
import type { ChannelFacts, Evidence, Levels, PolicyFacts } from './facts.ts';

export type Source = 'listed sensitivity' | 'calibration record' | 'known vibration';

/** One line of evidence as a function between what the monitor shows and what the shaft really does, both signed. */
export interface Line {
  readonly by: Source;
  /** Expanded, at the policy's coverage, a fraction; `null`: the value alone decides. */
  readonly uncertainty: number | null;
  /**
   * Real value at an indicated one, with the sensitivity that many times the measured one; `null` where the evidence does
   * not reach.
   */
  readonly real: (indicated: number, scale?: number) => number | null;
  /** Indicated value at a real one. */
  readonly indicated: (real: number, scale?: number) => number | null;
}

/** Shift of a position in mV, positive in the direction of the channel; 0 for all but axial channels. */
export interface Zero {
  readonly moved: number;
  readonly side: 1 | -1;
}

export function linesOf(c: ChannelFacts, e: Evidence, policy: PolicyFacts, zero: Zero): Line[] {
  const { configured } = c;
  if (configured === null) return [];
  const listed = atCoverage(e.uncertainty, c.coverage, policy.coverage);
  const lines: Line[] = [];
  if (e.sensitivity !== null)
    lines.push(straightLine('listed sensitivity', configured, e.sensitivity, listed, zero.moved));
  if (e.record !== null) {
    const curve = curveOf(e.record, policy.curve);
    const line =
      c.kind === 'axial'
        ? positionOnCurve(c, e, curve, zero.side, listed)
        : swingOnCurve(c, e.gapVoltage, curve, listed);
    if (line) lines.push(line);
  }
  if (e.check !== null && e.check.length > 0) {
    const { sensitivity, uncertainty } = known(e.check, policy.coverage);
    lines.push(straightLine('known vibration', configured, sensitivity, uncertainty, zero.moved));
  }
  return lines;
}

/** A stated uncertainty brought to the coverage of the policy: U = U_given·k/k_given. */
function atCoverage(given: number | null, k: number | null, coverage: number): number | null {
  return given === null ? null : (given * coverage) / (k ?? 2);
}

/** T = (S·Kc + s·(V0c − V0m))/Km and what is shown, the same the other way round. */
function straightLine(by: Source, kc: number, km: number, uncertainty: number | null, moved: number): Line {
  return {
    by,
    uncertainty,
    real: (indicated, scale = 1) => (indicated * kc + moved) / (km * scale),
    indicated: (real, scale = 1) => (real * km * scale - moved) / kc,
  };
}

/** Section 6: V(g0 − T/2) − V(g0 + T/2) = S·Kc; an error of the sensitivity stretches the whole curve. */
function swingOnCurve(
  { configured, swing }: ChannelFacts,
  gapVoltage: number | null,
  curve: Curve,
  uncertainty: number | null,
): Line | undefined {
  if (gapVoltage === null || configured === null) return undefined;
  const gap = curve.gapAt(gapVoltage);
  const volts = (configured * swing) / 1000;
  return {
    by: 'calibration record',
    uncertainty,
    real: (indicated, scale = 1) => {
      const found = gap === null ? null : displacementOf(curve, gap, (indicated * volts) / scale);
      return found === null ? null : found / swing;
    },
    indicated: (real, scale = 1) => {
      const found = gap === null ? null : swingOf(curve, gap, real * swing);
      return found === null ? null : (found * scale) / volts;
    },
  };
}

/** A position on the curve: from the gap at rest, by the zero as measured, to the gap at the voltage where it acts. */
function positionOnCurve(
  { configured, zeroConfigured }: ChannelFacts,
  { zero }: Evidence,
  curve: Curve,
  side: 1 | -1,
  uncertainty: number | null,
): Line | undefined {
  if (configured === null || zeroConfigured === null || zero === null) return undefined;
  const rest = curve.gapAt(zero);
  return {
    by: 'calibration record',
    uncertainty,
    real: (indicated, scale = 1) => {
      const acting = curve.gapAt(zeroConfigured + (side * indicated * configured) / 1000);
      return rest === null || acting === null ? null : (side * (rest - acting)) / scale;
    },
    indicated: (real, scale = 1) => {
      if (rest === null) return null;
      const volts = curve.voltsAt(rest - side * real * scale);
      return Number.isNaN(volts) ? null : (side * (volts - zeroConfigured) * 1000) / configured;
    },
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
