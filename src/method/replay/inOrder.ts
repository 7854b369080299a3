/** A reading at a time in s; `NaN` where it is of bad quality, blank or no number. */
export interface Sample {
  readonly time: number;
  readonly reading: number;
}

/**
 * Samples in order of time, one for each instant: of two good readings the larger, a good one before a bad one. Times
 * finite. Source: a protection sees the larger. Example: 3 and 2.8 at one instant → 3.
 */
export function inOrder(samples: readonly Sample[]): Sample[] {
  const sorted = samples.toSorted((one, other) => one.time - other.time);
  const kept: Sample[] = [];
  const merge = onePerInstant((time, reading) => kept.push({ time, reading }));
  for (const { time, reading } of sorted) merge.sample(time, reading);
  merge.end();
  return kept;
}

/** Takes samples whose times never fall and passes one on for each instant, as `inOrder` says; `end` passes the last. */
export function onePerInstant(pass: (time: number, reading: number) => void): {
  readonly sample: (time: number, reading: number) => void;
  readonly end: () => void;
} {
  let at = NaN;
  let held = NaN;
  const end = (): void => {
    if (!Number.isNaN(at)) pass(at, held);
    at = NaN;
  };
  return {
    sample: (time, reading) => {
      if (time === at) {
        if (!(held >= reading) && !Number.isNaN(reading)) held = reading;
        return;
      }
      end();
      [at, held] = [time, reading];
    },
    end,
  };
}
