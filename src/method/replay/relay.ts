import { onDelay } from '../onDelay.ts';
import type { Acts, LevelOverTime, ReplaySetting, AlarmPeriod } from './setting.ts';

/** A relay that watches a record of readings as it goes by. */
export interface Relay {
  /** The next sample: times in s, never falling; `NaN` a reading that is unknown. */
  readonly sample: (time: number, reading: number) => void;
  /** Whether it acted, as far as is proven by the samples so far. */
  readonly hasActed: () => boolean;
  /** When it acted first. */
  readonly acts: () => Acts;
  /** Every time that it acted, one alone where it latches. */
  readonly spells: () => readonly AlarmPeriod[];
}

/**
 * Replays one level over samples in order of time, in memory that does not grow with them. Between good neighbours no
 * farther apart than the longest gap the value is known; beside an unknown reading, or over a longer gap, it is not.
 * Beyond means at or above. A level that changes inside the record holds from its instant on, and the delay goes on.
 * Source: OPC UA Part 9 B.1.5 (read) for the on-delay; the two answers are a derivation.
 * Example: 3 at 10 s, 5 at 20 s and 30 s, level 4, delay 3 s → both 18 s.
 */
export function relay({ level: first, later }: LevelOverTime, setting: ReplaySetting): Relay {
  const { delay, slack, maxGap, deadband } = setting;
  const hold = setting.between === 'hold';
  const proven = onDelay(delay, slack);
  const possible = onDelay(delay, slack);
  let level = first;
  let change = 0;
  let last = NaN;
  let value = NaN;
  const returned: AlarmPeriod[] = [];
  let firstProven = NaN;

  /** Known from the last sample to `to`, but for its end. */
  function known(to: number, end: number): void {
    if (hold) {
      const beyond = value >= level;
      proven.piece(last, to, beyond);
      possible.piece(last, to, beyond);
    } else {
      proven.line(last, value, to, end, level);
      possible.line(last, value, to, end, level);
    }
  }

  function unknown(to: number): void {
    proven.piece(last, to, false);
    possible.piece(last, to, true);
  }

  /** Whether an alarm that stands returns on the way to a sample that is known, and where. */
  function returns(time: number, reading: number, isKnown: boolean): void {
    const acted = proven.acted();
    if (deadband === null || Number.isNaN(acted)) return;
    const below = level - deadband;
    if (!(reading < below)) return;
    const falls = isKnown && !hold && value >= below;
    returned.push({
      acted,
      returned: falls ? last + ((value - below) / (value - reading)) * (time - last) : time,
    });
    if (Number.isNaN(firstProven)) firstProven = acted;
    proven.reset();
  }

  function point(time: number, reading: number): void {
    proven.point(time, reading >= level);
    possible.point(time, !(reading < level));
  }

  /** Goes through the changes of the level up to a sample, the reading there known or not. */
  function changes(time: number, reading: number, isKnown: boolean): void {
    for (let next = later[change]; next && next.from <= time; next = later[++change]) {
      if (next.from > last) {
        const there = hold ? value : value + ((next.from - last) / (time - last)) * (reading - value);
        if (isKnown) {
          known(next.from, there);
          proven.piece(next.from, next.from, there >= level);
          possible.piece(next.from, next.from, there >= level);
        } else unknown(next.from);
        // At its own instant a sample counts, whatever was held or unknown before it.
        const so = next.from === time ? reading : isKnown ? there : NaN;
        returns(next.from, so, isKnown);
        level = next.level;
        point(next.from, so);
        [last, value] = [next.from, so];
        returns(next.from, so, isKnown);
      } else level = next.level;
    }
  }

  return {
    sample: (time, reading) => {
      // Known and below all along: nothing runs, and nothing begins to.
      const isQuiet = value < level && reading < level && deadband === null && change >= later.length;
      if (isQuiet && time > last && time - last <= maxGap + slack) {
        last = time;
        value = reading;
        return;
      }
      if (time > last) {
        const isKnown = !Number.isNaN(value) && !Number.isNaN(reading) && time - last <= maxGap + slack;
        if (change < later.length) changes(time, reading, isKnown);
        if (time > last) {
          if (isKnown) known(time, reading);
          else unknown(time);
          returns(time, reading, isKnown);
        }
      } else if (Number.isNaN(last)) {
        for (let next = later[change]; next && next.from <= time; next = later[++change]) level = next.level;
      }
      point(time, reading);
      [last, value] = [time, reading];
    },
    hasActed: () => !Number.isNaN(firstProven) || !Number.isNaN(proven.acted()),
    acts: () => ({
      proven: Number.isNaN(firstProven) ? proven.acted() : firstProven,
      earliest: possible.acted(),
    }),
    spells: () =>
      Number.isNaN(proven.acted()) ? returned : [...returned, { acted: proven.acted(), returned: NaN }],
  };
}
