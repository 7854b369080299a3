import { onePerInstant } from './inOrder.ts';
import { relay } from './relay.ts';
import type { Acts, LevelOverTime, ReplaySetting, AlarmPeriod } from './setting.ts';

/** When a setpoint acted and when it should have, and the difference of what is proven; times in s, `NaN` for never. */
export interface Replayed {
  readonly acts: Acts;
  readonly should: Acts;
  /** Proven act less proven should. */
  readonly late: number;
  readonly spells: readonly AlarmPeriod[];
}

/** Takes a record sample by sample, in order of time. */
export interface Replay {
  readonly sample: (time: number, reading: number) => void;
  /** Whether it has acted, and whether it should have, as far as is proven by the samples that went by. */
  readonly hasActed: () => boolean;
  readonly shouldHave: () => boolean;
  /** The answer once all samples were taken. */
  readonly end: () => Replayed;
}

/**
 * Replays a setpoint over a record of what its monitor showed: the monitor acts at `indicated` (m·S), should have acted at
 * `intended` (m·S·Km/Kc, the reading of a real m·S). Times in s, never falling; a deadband goes with `indicated`. It keeps
 * nothing of the record, so that millions of readings go through it. Source: as `relay`.
 * Example: 1, 3, 5, 5 at 0, 10, 20, 30 s, 4 and 3.2, delay 3 s → acts at 18, should at 14, 4 s late.
 */
export function replay(indicated: LevelOverTime, intended: LevelOverTime, setting: ReplaySetting): Replay {
  const inOrder = replayInOrder(indicated, intended, setting);
  const { sample, end } = onePerInstant(inOrder.sample);
  return {
    ...inOrder,
    sample,
    end: () => {
      end();
      return inOrder.end();
    },
  };
}

/** The same over samples of which no two are of one instant. */
export function replayInOrder(
  indicated: LevelOverTime,
  intended: LevelOverTime,
  setting: ReplaySetting,
): Replay {
  const monitor = relay(indicated, setting);
  const right = relay(intended, { ...setting, deadband: null });
  return {
    sample: (time, reading) => {
      monitor.sample(time, reading);
      right.sample(time, reading);
    },
    hasActed: monitor.hasActed,
    shouldHave: right.hasActed,
    end: () => {
      const [acts, should] = [monitor.acts(), right.acts()];
      return { acts, should, late: acts.proven - should.proven, spells: monitor.spells() };
    },
  };
}
