/** Readings that came out of order of time, kept to be sorted: sixteen bytes each. */
export interface SortedReadings {
  readonly add: (utc: number, reading: number) => void;
  /** Every reading in order of time; of one instant in the order in which they came. */
  readonly each: (take: (utc: number, reading: number) => void) => void;
}

export function sortedReadings(): SortedReadings {
  let [times, readings] = [new Float64Array(1024), new Float64Array(1024)];
  let count = 0;
  return {
    add: (utc, reading) => {
      if (count === times.length) [times, readings] = [doubled(times), doubled(readings)];
      times[count] = utc;
      readings[count] = reading;
      count++;
    },
    each: (take) => {
      const order = new Uint32Array(count);
      for (let at = 0; at < count; at++) order[at] = at;
      order.sort((one, other) => (times[one] ?? 0) - (times[other] ?? 0) || one - other);
      for (const at of order) take(times[at] ?? NaN, readings[at] ?? NaN);
    },
  };
}

function doubled(values: Float64Array<ArrayBuffer>): Float64Array<ArrayBuffer> {
  const more = new Float64Array(2 * values.length);
  more.set(values);
  return more;
}
