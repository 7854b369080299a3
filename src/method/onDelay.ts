/**
 * A relay with an on-delay, told piece by piece how a value goes along one axis (time, or speed in a run-up). It acts at
 * the end of a spell of the delay's length in which the value was at or beyond the level throughout, both ends included;
 * any value below clears the delay. Pieces come in order and adjoin; each piece is followed by the point at its end.
 */
export interface OnDelay {
  /** The value at one place; `beyond` at or above the level. */
  readonly point: (at: number, beyond: boolean) => void;
  /** A straight piece between two values, both ends included. */
  readonly line: (from: number, first: number, to: number, last: number, level: number) => void;
  /** A piece without its end in which the value is beyond throughout, or nowhere. */
  readonly piece: (from: number, to: number, beyond: boolean) => void;
  /** Where it acted first; `NaN` while it has not. */
  readonly acted: () => number;
  /** Forgets that it acted, so that it can act again. */
  readonly reset: () => void;
}

/**
 * Makes a relay. `delay` 0 or above, in the unit of the axis; places closer than `slack` are the same, which decides only
 * what falls exactly at the end of a delay. Source: OPC UA Part 9 B.1.5 (read) for the on-delay; both ends included is
 * the method's. Example: delay 3, beyond on [1, 4] → acts at 4; on [1, 4) it does not.
 */
export function onDelay(delay: number, slack: number): OnDelay {
  let since = NaN;
  let acted = NaN;

  function throughout(to: number, included: boolean): void {
    const end = since + delay;
    if (Number.isNaN(acted) && (included ? end <= to + slack : end < to - slack)) acted = end;
  }

  return {
    point: (at, beyond) => {
      if (!beyond) {
        since = NaN;
        return;
      }
      if (Number.isNaN(since)) since = at;
      throughout(at, true);
    },
    line: (from, first, to, last, level) => {
      const rises = first < level && last >= level;
      const falls = first >= level && last < level;
      if (!rises && !falls) return;
      const crossing = from + ((level - first) / (last - first)) * (to - from);
      if (rises) since = crossing;
      else throughout(crossing, true);
    },
    piece: (from, to, beyond) => {
      if (!beyond) {
        since = NaN;
        return;
      }
      if (Number.isNaN(since)) since = from;
      throughout(to, false);
    },
    acted: () => acted,
    reset: () => {
      acted = NaN;
    },
  };
}
