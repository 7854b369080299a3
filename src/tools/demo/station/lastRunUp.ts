import { unbalanceResponse } from '../../../method/runup/unbalance.ts';

/** An amplitude that a channel showed while the machine ran up, mil p-p. */
export interface RunUpReading {
  readonly tag: string;
  /** r/min */
  readonly speed: number;
  readonly shown: number;
}

/** An unbalance over a critical speed: the amplitude far above it, mil, and the damping ratio. */
interface Resonance {
  readonly tag: string;
  readonly far: number;
  readonly damping: number;
  readonly critical: number;
}

const bearingTwo: readonly Resonance[] = [
  { tag: 'K101-2X', far: 1.096, damping: 0.12, critical: 5200 },
  { tag: 'K101-2Y', far: 0.882, damping: 0.12, critical: 5350 },
];

/** The last run-up of K-101 as its channels at bearing 2 showed it, every 200 r/min. */
export const lastRunUp: readonly RunUpReading[] = bearingTwo.flatMap(({ tag, far, damping, critical }) =>
  Array.from({ length: 55 }, (_, step) => {
    const speed = 1000 + 200 * step;
    return { tag, speed, shown: Number(unbalanceResponse(far, damping, speed / critical).toFixed(3)) };
  }),
);
