/** A reading on the way up or down; the readings of a record in the order in which they were taken. */
export interface GapReading {
  readonly gap: number;
  /** V, with its sign. */
  readonly volts: number;
}

/** Readings of one direction, gaps strictly rising or strictly falling. */
export interface Run {
  readonly up: boolean;
  readonly readings: readonly GapReading[];
}

/** A gap that stands twice in one run: which of its voltages counts is nobody's to guess; counts readings from 0. */
export interface RunFault {
  readonly repeated: number;
}

/**
 * The runs of a record that goes up and down: a new one at each turn. A turning point belongs to both; read twice there,
 * the first reading belongs to the run that ends, the second to the one that begins. Gaps finite, in one unit. Source:
 * common practice, no source. Example: gaps 10, 30, 50, 50, 30, 10 → one run up, one down.
 */
export function runsOf(readings: readonly GapReading[]): Run[] | RunFault {
  const runs: Run[] = [];
  let from = 0;
  let side = 0;
  /** Side of the run before a gap that was read twice. */
  let turned = 0;
  const close = (end: number): void => {
    runs.push({ up: side > 0, readings: readings.slice(from, end) });
  };
  for (let at = 1; at < readings.length; at++) {
    const step = Math.sign((readings[at]?.gap ?? NaN) - (readings[at - 1]?.gap ?? NaN));
    if (step === 0) {
      if (side === 0) return { repeated: at };
      close(at);
      [from, turned, side] = [at, side, 0];
    } else if (side === 0) {
      if (step === turned) return { repeated: at - 1 };
      side = step;
    } else if (step !== side) {
      close(at);
      [from, side] = [at - 1, step];
    }
  }
  if (side !== 0) close(readings.length);
  else if (readings.length > 1) return { repeated: readings.length - 1 };
  return runs;
}

/** Whether a record cannot be told into runs. */
export function isRunFault(runs: readonly Run[] | RunFault): runs is RunFault {
  return 'repeated' in runs;
}
