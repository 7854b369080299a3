import { type Direction, signOf } from '../axial/position.ts';
import type { LoopEnds } from '../loop.ts';
import { positive } from '../range.ts';
import type { Acting } from './acting.ts';

/** A monitor with its gain: the sensitivity it was set to, indicated over injected, and how well that is known. */
interface Monitor {
  readonly configured: number;
  /** 1 is perfect. */
  readonly gain: number;
  /** Expanded, a fraction of the gain. */
  readonly gainUncertainty: number;
}

/** A position chain; voltages in V, sensitivities in mV per unit of the level, uncertainties expanded. */
export interface PositionChain extends Monitor {
  readonly measured: number;
  readonly uncertainty: number;
  readonly zeroConfigured: number;
  readonly zeroMeasured: number;
  /** V. */
  readonly zeroUncertainty: number;
  readonly direction: Direction;
}

/**
 * A position chain as it acts: T = (S·Kc/g + s·(V0c − V0m))/Km. Source: P = s·(V − V0c)·g/Kc and the real position
 * s·(V − V0m)/Km. Example: 200 and 160 mV/mil, zeros −10 and −9.7 V, toward → factor 1.25, shift −1.875 mil.
 */
export function positionActing(chain: PositionChain): Acting {
  const { configured, gain, gainUncertainty, measured, uncertainty } = chain;
  const moved = signOf(chain.direction) * (chain.zeroConfigured - chain.zeroMeasured);
  return {
    factor: positive(gain) ? configured / gain / measured : NaN,
    shift: (1000 * moved) / measured,
    ofDivisor: uncertainty,
    ofShift: (1000 * chain.zeroUncertainty) / measured,
    ofGain: gainUncertainty,
    both: 0,
  };
}

/** A current loop by its ends; currents in mA, uncertainties expanded. */
export interface LoopChain extends Pick<Monitor, 'gain' | 'gainUncertainty'> {
  /** Reading at the upper end, in the unit of the level, above 0. */
  readonly span: number;
  readonly measured: LoopEnds;
  readonly believed: LoopEnds;
  readonly at0Uncertainty: number;
  readonly at100Uncertainty: number;
  /** Kc/Km of a sensor before the loop, 1 where the loop is all there is; with its expanded uncertainty, a fraction. */
  readonly sensorRatio: number;
  readonly sensorUncertainty: number;
}

/**
 * A current loop as it acts: the current at which the monitor sees a setpoint, read with the measured ends, and through the
 * sensor before it. Source: two straight lines; both ends' currents share the one at 0 %. Example: 4.05 and 19.8 mA for 4
 * and 20, span 20 → factor 1.01587, shift −0.06349.
 */
export function loopActing(chain: LoopChain): Acting {
  const { span, measured, believed, gain, sensorRatio, at0Uncertainty: u0, at100Uncertainty: u100 } = chain;
  const [width, ideal] = [measured.at100 - measured.at0, believed.at100 - believed.at0];
  const sound = width * ideal > 0 && positive(span) && positive(gain) && positive(sensorRatio);
  return {
    factor: sound ? (ideal / width / gain) * sensorRatio : NaN,
    shift: ((span * (believed.at0 - measured.at0)) / width) * sensorRatio,
    ofDivisor: Math.hypot(Math.hypot(u0, u100) / width, chain.sensorUncertainty),
    ofShift: Math.abs((span * u0) / width) * sensorRatio,
    ofGain: chain.gainUncertainty,
    both: ((span * u0 * u0) / width ** 2) * sensorRatio,
  };
}
