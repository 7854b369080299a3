import { describe, expect, it } from 'vitest';
import type { Chain } from '../../src/audit/judge/replay/chain.ts';
import { type ReplaySettings, channelReplay } from '../../src/audit/judge/replay/channelReplay.ts';

/** A chain whose monitor shows so much of what is real. */
const shows = (part: number): Chain => ({
  measured: 200 * part,
  shownAt: (real) => part * real,
  realAt: (shown) => shown / part,
});
const START = Date.UTC(2026, 2, 14, 10);

/** Danger 4 with 3 s of delay, of which 80 % are shown, on readings so many seconds apart unless told otherwise. */
function recorded(readings: readonly number[], apart = 1, of: Partial<ReplaySettings> = {}) {
  const replay = channelReplay({
    chain: { first: shows(0.8), later: null },
    correctedAt: NaN,
    thresholds: [{ name: 'danger', setpoint: 4, delay: 3 }],
    maxGap: null,
    between: 'line',
    ...of,
  });
  for (const [at, reading] of readings.entries()) replay.sample(START + 1000 * apart * at, reading);
  return replay.end();
}

function outcome(readings: readonly number[], apart?: number, of?: Partial<ReplaySettings>) {
  const [only] = recorded(readings, apart, of)?.thresholds ?? [];
  const known = (at: number | undefined) => (at === undefined || Number.isNaN(at) ? null : at);
  return [only?.outcome, known(only?.replayed.acts.proven), known(only?.replayed.should.proven)];
}

const flat = (reading: number, count: number) => new Array<number>(count).fill(reading);

describe('what came of a threshold (by hand)', () => {
  it('that was never reached, or only by what was really there', () => {
    expect(outcome(flat(1, 6))).toEqual(['not reached', null, null]);
    // 3.5 shown is 4.375 real.
    expect(outcome(flat(3.5, 6))).toEqual(['did not act', null, 3]);
    expect(outcome(flat(3.2, 6))).toEqual(['did not act', null, 3]);
    expect(outcome(flat(3.1, 6))).toEqual(['not reached', null, null]);
  });

  it('that acted when it should have, later, earlier, or without need', () => {
    expect(outcome(flat(5, 6))).toEqual(['as set', 3, 3]);
    // From 0 to 8 in 10 s: 3.2 at 4 s, 4 at 5 s.
    expect(outcome([0, 8, 8], 10)).toEqual(['late', 8, 7]);
    // A monitor that shows 1.25 of it: 4 real is 5 shown, at 6.25 s.
    const over = { chain: { first: shows(1.25), later: null } };
    expect(outcome([0, 8, 8], 10, over)).toEqual(['early', 8, 9.25]);
    expect(outcome(flat(4.5, 6), 1, over)).toEqual(['false', 3, null]);
  });

  it('that the readings leave open: still running at the end, or rarer than the delay', () => {
    expect(outcome([1, 1, 5, 5])).toEqual(['not known', null, null]);
    // Beyond 3.2 for 1.9 s.
    expect(outcome([1, 1, 5, 5, 1, 1])).toEqual(['not reached', null, null]);
    expect(outcome([1, 1, 5, 1, 1])).toEqual(['not reached', null, null]);
    // One reading of 5 among those of every 4 s: beyond 3.2 from 2.2 to 5.8 s, beyond 4 for 2 s; it may have stayed there.
    expect(outcome([1, 5, 1, 1], 4)).toEqual(['not known', null, expect.closeTo(5.2, 9)]);
    expect(outcome([1, 5, 1, 1], 3)).toEqual(['not reached', null, null]);
    // Beside an unknown reading it may have acted.
    expect(outcome([1, 5, NaN, NaN, NaN, 1, 1])[0]).toBe('not known');
  });

  it('that the readings leave open: on its setpoint to the digit, or unknown after it should have acted', () => {
    // Beyond 3.2 for 2.1 s; at 4 for an instant, with 4 s to the next reading.
    expect(outcome([1, 4, 1, 1], 4)).toEqual(['not known', null, null]);
    expect(outcome([1, 1, 1, 4])).toEqual(['not known', null, null]);
    // Beyond 3.2 from the start, due at 3 s; beyond 4 from 3.3 to 4 s, then perhaps on.
    const unknown = [NaN, NaN, NaN, NaN, 1];
    expect(outcome([...flat(3.5, 4), 5, ...unknown])).toEqual(['not known', null, 3]);
    // The other way round: 4 real is 5 shown, beyond from 3.5 to 4 s, then perhaps on.
    const over = { chain: { first: shows(1.25), later: null } };
    expect(outcome([...flat(4.5, 4), 5.5, ...unknown], 1, over)).toEqual(['not known', 3, null]);
  });

  it('of the counter direction is watched upside down', () => {
    const counter = { thresholds: [{ name: 'counter danger' as const, setpoint: -4, delay: 3 }] };
    expect(outcome([0, -8, -8], 10, counter)).toEqual(['late', 8, 7]);
    expect(outcome([0, 8, 8], 10, counter)).toEqual(['not reached', null, null]);
    expect(outcome([0, 0, -8, -8], 1, counter)[0]).toBe('not known');
    expect(recorded(flat(-5, 6), 1, counter)?.thresholds[0]?.fromStart).toBe(true);
    expect(recorded([0, -8, -8], 10, counter)?.thresholds[0]?.shouldActAt).toBeCloseTo(-3.2, 12);
  });

  it('was beyond from the start where its first known reading was', () => {
    const fromStart = (readings: number[]) => recorded(readings)?.thresholds[0]?.fromStart;
    expect([fromStart([3.2, 1]), fromStart([3.1, 5]), fromStart([NaN, 5, 1]), fromStart([NaN])]).toEqual([
      true,
      false,
      true,
      false,
    ]);
  });
});

describe('a chain that was corrected', () => {
  const chain = { first: shows(0.8), later: { from: 0, chain: shows(1) } };
  const at = (seconds: number) => ({ chain, correctedAt: START + 1000 * seconds });

  it('is as found before that moment and as left from it on', () => {
    // 3.5 shown is beyond 4 before, not after.
    expect(outcome(flat(3.5, 10), 1, at(-5))).toEqual(['not reached', null, null]);
    expect(outcome(flat(3.5, 10), 1, at(2))).toEqual(['not reached', null, null]);
    expect(outcome(flat(3.5, 10), 1, at(3.5))).toEqual(['did not act', null, 3]);
    expect(outcome(flat(3.5, 10), 1, at(50))).toEqual(['did not act', null, 3]);
    const shouldActAt = (seconds: number) => recorded(flat(1, 9), 1, at(seconds))?.thresholds[0]?.shouldActAt;
    expect([shouldActAt(-5), shouldActAt(0), shouldActAt(2)]).toEqual([4, 4, 3.2]);
  });
});

describe('a record', () => {
  it('counts its readings and those that are unknown, and knows its times', () => {
    const record = recorded([1, NaN, 1, 1], 2);
    expect(record).toMatchObject({ origin: START, last: START + 6000, readings: 4, unknown: 1 });
    expect([record?.interval, record?.maxGap]).toEqual([2, 6]);
    expect(recorded([])).toBeNull();
    const single = recorded([1]);
    expect([single?.interval, single?.maxGap]).toEqual([null, null]);
    expect(recorded([1, 1], 2, { maxGap: 1 })?.maxGap).toBe(1);
  });

  it('has the middle one of its first 500 times between readings as the usual one', () => {
    const interval = (steps: readonly number[]) => {
      const replay = channelReplay({
        ...{ chain: { first: shows(0.8), later: null }, correctedAt: NaN },
        thresholds: [{ name: 'danger', setpoint: 4, delay: 3 }],
        ...{ maxGap: null, between: 'line' },
      });
      let time = START;
      for (const step of [0, ...steps]) replay.sample((time += 1000 * step), 1);
      return replay.end()?.interval;
    };
    expect(interval([1, 1, 9, 1, 1])).toBe(1);
    expect(interval([9, 1, 2, 8, 3])).toBe(3);
    expect(interval([...flat(1, 500), ...flat(2, 900)])).toBe(1);
    expect(interval([...flat(1, 249), ...flat(2, 251), ...flat(1, 900)])).toBe(2);
  });

  it('leaves what is between unknown where readings are more than three usual times apart', () => {
    const of = (gap: number) => {
      const replay = channelReplay({
        chain: { first: shows(0.8), later: null },
        correctedAt: NaN,
        thresholds: [{ name: 'danger', setpoint: 4, delay: 2.5 }],
        maxGap: null,
        between: 'line',
      });
      // Out of order of size: the usual time is the middle one.
      let time = START;
      for (const step of [0, gap, 1, 1, 1, 1]) replay.sample((time += 1000 * step), 5);
      return replay.end()?.thresholds[0]?.replayed.acts.proven;
    };
    expect(of(3)).toBe(2.5);
    expect(of(3.1)).toBeCloseTo(5.6, 9);
  });

  it('of one instant twice is its larger reading', () => {
    const replay = channelReplay({
      chain: { first: shows(1), later: null },
      correctedAt: NaN,
      thresholds: [{ name: 'danger', setpoint: 4, delay: 0 }],
      maxGap: null,
      between: 'hold',
    });
    for (const reading of [1, 5, 2]) replay.sample(START, reading);
    replay.sample(START + 1000, 1);
    const record = replay.end();
    expect(record?.readings).toBe(2);
    expect(record?.thresholds[0]?.replayed.acts.proven).toBe(0);
  });

  it('is drawn with its highest, lowest and unknown reading wherever they stand', () => {
    // 1,000 readings in stretches of 16: a low and a high of each, and where its first unknown one is.
    for (let at = 0; at < 1000; at += 37) {
      const with1 = (special: number) =>
        recorded(Array.from({ length: 1000 }, (_, index) => (index === at ? special : 1 + (index % 2) / 10)));
      for (const special of [2, 0, NaN]) {
        const drawn = with1(special)?.timeline ?? [];
        expect(drawn).toContainEqual({ time: at, reading: special });
        expect(drawn.length).toBeGreaterThan(120);
        expect(drawn.length).toBeLessThanOrEqual(241);
      }
    }
  });

  it('is drawn about what happened, thinned to its lowest and highest readings where nothing did', () => {
    const quiet = recorded(Array.from({ length: 1000 }, (_, at) => (at === 500 ? 2 : at === 700 ? 0 : 1)));
    const drawn = quiet?.timeline ?? [];
    expect(drawn.length).toBeLessThan(260);
    expect(drawn).toContainEqual({ time: 500, reading: 2 });
    expect(drawn).toContainEqual({ time: 700, reading: 0 });
    expect(drawn.map(({ time }) => time)).toEqual(drawn.map(({ time }) => time).toSorted((a, b) => a - b));
    // It acts at 2003 s: of what was before it the last 60, of what follows as many.
    const event = recorded([...flat(1, 2000), ...flat(5, 10), ...flat(1, 2000)]);
    const times = (event?.timeline ?? []).map(({ time }) => time);
    expect(times[0]).toBeGreaterThan(1940);
    expect(times.at(-1)).toBeLessThan(2070);
    expect(event?.timeline).toContainEqual({ time: 2003, reading: 5 });
  });
});
