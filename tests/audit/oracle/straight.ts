import type { Line, Source } from './lines.ts';
import { intervalOf, type Ratio } from './ratio.ts';

/** What the monitor makes of what its chain gives; uncertainties expanded at the policy's coverage, `null`: not stated. */
export interface Signal {
  /** Configured sensitivity over gain. */
  readonly kc: number;
  /** Configured sensitivity. */
  readonly believed: number;
  /** mV. */
  readonly moved: number;
  readonly isPosition: boolean;
  /** A fraction. */
  readonly ofGain: number | null;
  /** V. */
  readonly ofZero: number | null;
  /** mA. */
  readonly loop: {
    readonly at0: number;
    /** From its lower to its upper end. */
    readonly width: number;
    readonly u0: number | null;
    readonly u100: number | null;
  } | null;
}

/** A line by one sensitivity: where it acts is a ratio of two normal quantities (section 17). */
export function straightLine(by: Source, signal: Signal, km: number, uncertainty: number | null): Line {
  const { loop, ofGain, ofZero } = signal;
  const ratio = loop
    ? (indicated: number) => ofLoop(signal, loop, uncertainty, indicated)
    : (indicated: number) => ofChain(signal, km, uncertainty, indicated);
  const isUncertain = [uncertainty, ofGain, ofZero, loop?.u0 ?? null, loop?.u100 ?? null].some(
    (one) => one !== null,
  );
  const real = (indicated: number): number => ratio(indicated).a / ratio(indicated).b;
  return {
    by,
    isUncertain,
    real,
    ends: (indicated) => (isUncertain ? (intervalOf(ratio(indicated)) ?? [null, null]) : [null, null]),
    shown: (wanted, isGuarded) => shownAt(ratio, wanted, isGuarded),
    scatter: (indicated) => {
      const { b, ua, ub, uab } = ratio(indicated);
      return { ofDivisor: ub / b, ofNumerator: ua / b, both: uab / b ** 2 };
    },
  };
}

/** T = (S·Kc/g + s·(V0c − V0m))/Km. The gain's part is the sensitivity's for a vibration, the numerator's for a position. */
function ofChain(
  { kc, moved, isPosition, ofGain, ofZero }: Signal,
  km: number,
  uncertainty: number | null,
  indicated: number,
): Ratio {
  const gain = ofGain ?? 0;
  return {
    a: indicated * kc + moved,
    b: km,
    ua: isPosition ? Math.hypot(1000 * (ofZero ?? 0), indicated * kc * gain) : 0,
    ub: km * (isPosition ? (uncertainty ?? 0) : Math.hypot(uncertainty ?? 0, gain)),
    uab: 0,
  };
}

/**
 * I_S = 4 + 16·S/span, A = I_S − I0, B = I100 − I0, T = span·A/B; the gain multiplies what is shown. Where the ends state no
 * uncertainty of their own, that of the listed sensitivity is the one of their distance.
 */
function ofLoop(
  { kc, believed, ofGain }: Signal,
  { at0, width: b, u0, u100 }: NonNullable<Signal['loop']>,
  uncertainty: number | null,
  indicated: number,
): Ratio {
  const span = 16 / believed;
  const current = indicated * kc;
  const unsaid = u0 === null && u100 === null;
  const ofEnds = unsaid ? b * (uncertainty ?? 0) : Math.hypot(u0 ?? 0, u100 ?? 0);
  return {
    a: span * (4 + current - at0),
    b,
    ua: span * Math.hypot(u0 ?? 0, current * (ofGain ?? 0)),
    ub: ofEnds,
    uab: span * (u0 ?? 0) ** 2,
  };
}

/** By halving between zero and where the best value stands; guarded: the farther end of the interval. */
function shownAt(ratio: (indicated: number) => Ratio, wanted: number, isGuarded: boolean): number | null {
  const own = Math.sign(wanted);
  const farther = (indicated: number): number => {
    const best = ratio(indicated).a / ratio(indicated).b;
    const ends = isGuarded ? intervalOf(ratio(indicated)) : null;
    return own * (ends === null ? best : own > 0 ? ends[1] : ends[0]);
  };
  const size = Math.abs(wanted);
  let [below, above] = [-16 * size, 16 * size];
  if (farther(own * below) > size) return null;
  for (let step = 0; step < 70; step++) {
    const middle = (below + above) / 2;
    if (farther(own * middle) > size) above = middle;
    else below = middle;
  }
  return own * below;
}
