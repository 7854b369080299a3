/** Work done step by step, told in whatever a step tells, with its result at the end. */
export type Steps<Told, Result> = Generator<Told, Result, void>;

/** Does all of the work at once; `heard` hears what each step tells. */
export function finish<Told, Result>(steps: Steps<Told, Result>, heard?: (told: Told) => void): Result {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    heard?.(step.value);
  }
}

/** The same work as part of some larger one: tells of each step which part of the larger work is done, from 0 to 1. */
export function* asPart<Told, Result>(
  steps: Steps<Told, Result>,
  done: (told: Told) => number,
): Steps<number, Result> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    yield done(step.value);
  }
}
