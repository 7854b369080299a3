import { callable } from '../../src/functions/call/callable.ts';
import { EFFECTIVE } from '../../src/functions/catalogue/thresholds.ts';
import { effectiveThreshold } from '../../src/method/vibration/threshold.ts';

/** Cost of a worksheet function beside the bare arithmetic: a million single cells, and one call for a long column. */
const CALLS = 1_000_000;
const ROWS = 100_000;
const REPEATS = 7;

function nanosecondsEach(count: number, work: () => unknown): number {
  let best = Infinity;
  for (let repeat = 0; repeat < REPEATS; repeat++) {
    const start = performance.now();
    if (work() === 0) throw new Error('the work was optimised away');
    best = Math.min(best, performance.now() - start);
  }
  return Math.round((best * 1e6) / count);
}

function summed(one: (setpoint: number) => number): () => number {
  return () => {
    let sum = 0;
    for (let index = 0; index < CALLS; index++) sum += one(5 + index);
    return sum;
  };
}

const effective = callable(EFFECTIVE);
const column = (cell: (row: number) => number) => Array.from({ length: ROWS }, (_, row) => [cell(row)]);
const setpoints = column((row) => 5 + row);
const configured = column(() => 200);
const measured = column(() => 160);

console.table([
  {
    what: 'bare arithmetic',
    'ns a result': nanosecondsEach(
      CALLS,
      summed((s) => (s * 200) / 160),
    ),
  },
  {
    what: 'method',
    'ns a result': nanosecondsEach(
      CALLS,
      summed((s) => effectiveThreshold(s, 200, 160, 1)),
    ),
  },
  {
    what: 'function, single cells',
    'ns a result': nanosecondsEach(
      CALLS,
      summed((s) => effective(s, 200, 160) as number),
    ),
  },
  {
    what: 'function, single cells as ranges',
    'ns a result': nanosecondsEach(
      CALLS,
      summed((s) => effective([[s]], [[200]], [[160]], null) as number),
    ),
  },
  {
    what: `function, one column of ${ROWS}`,
    'ns a result': nanosecondsEach(ROWS, () => effective(setpoints, configured, measured)),
  },
]);
