import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { onDelay } from '../../src/method/onDelay.ts';
import { inOrder } from '../../src/method/replay/inOrder.ts';
import {
  fixedOffset,
  localToUtc,
  offsetAtOf,
  offsetsOf,
  utcOf,
  zoneKnown,
} from '../../src/method/replay/localTime.ts';
import { relay } from '../../src/method/replay/relay.ts';
import { replay } from '../../src/method/replay/replay.ts';
import { type ReplaySetting, constantLevel } from '../../src/method/replay/setting.ts';
import { tripTime } from '../../src/method/replay/tripTime.ts';
import '../seed.ts';
import { upTo } from './ranges.ts';

const SETTING: ReplaySetting = { delay: 3, maxGap: Infinity, between: 'line', slack: 1e-9, deadband: null };

function actsOn(
  samples: readonly (readonly [number, number])[],
  level: number,
  setting: Partial<ReplaySetting> = {},
) {
  const watch = relay(constantLevel(level), { ...SETTING, ...setting });
  for (const [time, reading] of samples) watch.sample(time, reading);
  return watch.acts();
}

/** Readings at whole seconds, unknown ones now and then; values of a half, so that crossings fall on halves of a second. */
const record = fc.array(fc.option(fc.integer({ min: 0, max: 4 }), { nil: null, freq: 6 }), {
  minLength: 1,
  maxLength: 25,
});

/**
 * A second working: time stepped in small parts, a timer that runs while the value is beyond. `unknown` says what an
 * unknown value counts as. Whole seconds and halves lie on the grid.
 */
function stepped(
  readings: readonly (number | null)[],
  level: number,
  delay: number,
  between: 'line' | 'hold',
  unknown: boolean,
): number {
  const PARTS = 4;
  let since = NaN;
  for (let step = 0; step <= (readings.length - 1) * PARTS; step++) {
    const at = Math.floor(step / PARTS);
    const part = (step % PARTS) / PARTS;
    const [one, other] = [readings[at], readings[at + 1]];
    const value =
      part === 0
        ? one!
        : one === null || other === null
          ? null
          : between === 'hold'
            ? one!
            : one! + part * (other! - one!);
    const beyond = value === null ? unknown : value >= level;
    if (beyond) {
      if (Number.isNaN(since)) {
        // What begins inside an unknown piece, or right after a known value that is below, begins at its start.
        since = value === null && part > 0 && step % PARTS === 1 ? at : step / PARTS;
      }
      if (step / PARTS - since >= delay) return since + delay;
    } else {
      // A piece without its end that was beyond until here: it acts where the delay had ended before.
      if (!Number.isNaN(since) && since + delay < step / PARTS) {
        const inside = between === 'hold' || value !== null;
        if (inside && since + delay <= (step - 1) / PARTS) return since + delay;
      }
      since = NaN;
    }
  }
  return NaN;
}

describe('a replay', () => {
  it('agrees with a timer stepped through the record, level and delay on the grid', () => {
    fc.assert(
      fc.property(
        record,
        fc.constantFrom(1, 2, 3),
        fc.integer({ min: 1, max: 5 }),
        (readings, level, delay) => {
          const samples = readings.map((reading, at) => [at, reading ?? NaN] as const);
          // Whole levels cross between whole readings at quarters only where steps are of 1, 2 or 4: so hold is compared.
          const { proven, earliest } = actsOn(samples, level, { delay, between: 'hold' });
          expect(proven).toEqual(stepped(readings, level, delay, 'hold', false));
          expect(earliest).toEqual(stepped(readings, level, delay, 'hold', true));
        },
      ),
      { numRuns: 500 },
    );
  });

  it('never acts earlier than is possible, and with all known both are one', () => {
    fc.assert(
      fc.property(record, fc.double({ min: 0.5, max: 4, noNaN: true }), upTo(5), (readings, level, delay) => {
        const samples = readings.map((reading, at) => [at, reading ?? NaN] as const);
        const { proven, earliest } = actsOn(samples, level, { delay });
        if (!Number.isNaN(proven)) expect(earliest).toBeLessThanOrEqual(proven);
        if (!readings.includes(null)) expect(earliest).toEqual(proven);
        const higher = actsOn(samples, level * 1.1, { delay }).proven;
        if (!Number.isNaN(higher)) expect(proven).toBeLessThanOrEqual(higher);
      }),
      { numRuns: 500 },
    );
  });

  it('says the same of a record with samples added on its straight lines', () => {
    fc.assert(
      fc.property(fc.array(upTo(5), { minLength: 2, maxLength: 12 }), upTo(4), (readings, delay) => {
        const plain = readings.map((reading, at) => [at, reading] as const);
        const dense = plain.flatMap(([time, reading], at) =>
          at + 1 < readings.length
            ? [[time, reading] as const, [time + 0.5, (reading + readings[at + 1]!) / 2] as const]
            : [[time, reading] as const],
        );
        const one = actsOn(plain, 2.5, { delay, slack: 1e-7 }).proven;
        const other = actsOn(dense, 2.5, { delay, slack: 1e-7 }).proven;
        if (Number.isNaN(one)) expect(other).toBeNaN();
        else expect(other).toBeCloseTo(one, 9);
      }),
    );
  });

  it('both ends count: a touch acts without a delay; a hold that ends with the delay does not (by hand)', () => {
    expect(
      actsOn(
        [
          [0, 1],
          [1, 4],
          [2, 1],
        ],
        4,
        { delay: 0 },
      ).proven,
    ).toBe(1);
    expect(
      actsOn(
        [
          [0, 4],
          [3, 4],
          [4, 0],
        ],
        4,
      ).proven,
    ).toBe(3);
    expect(
      actsOn(
        [
          [0, 4],
          [3, 0],
        ],
        4,
        { between: 'hold' },
      ).proven,
    ).toBeNaN();
    expect(
      actsOn(
        [
          [0, 4],
          [3, 4],
          [4, 0],
        ],
        4,
        { between: 'hold' },
      ).proven,
    ).toBe(3);
    expect(
      actsOn(
        [
          [0, 4],
          [3, 3.9],
        ],
        4,
      ).proven,
    ).toBeNaN();
  });

  it('a value held until the next sample acts between them (by hand)', () => {
    const samples = [
      [0, 5],
      [10, 1],
    ] as const;
    expect(actsOn(samples, 4, { between: 'hold' }).proven).toBe(3);
    // On a straight line it is below 4 from 2.5 s on.
    expect(actsOn(samples, 4).proven).toBeNaN();
    expect(actsOn(samples, 4, { delay: 2.5 }).proven).toBe(2.5);
    expect(actsOn(samples, 4, { delay: 2 }).proven).toBe(2);
  });

  it('a longer gap than allowed is unknown, one as long is not (by hand)', () => {
    const samples = [
      [0, 5],
      [6, 5],
      [9, 5],
    ] as const;
    expect(actsOn(samples, 4, { delay: 5, maxGap: 6 })).toEqual({ proven: 5, earliest: 5 });
    expect(actsOn(samples, 4, { delay: 3, maxGap: 5 })).toEqual({ proven: 9, earliest: 3 });
  });

  it('a level that changes inside the record keeps the delay going (by hand)', () => {
    const samples = [
      [0, 5],
      [10, 5],
      [20, 5],
    ] as const;
    const of = (later: { from: number; level: number }[], delay: number) => {
      const watch = relay({ level: 4, later }, { ...SETTING, delay });
      for (const [time, reading] of samples) watch.sample(time, reading);
      return watch.acts().proven;
    };
    expect(of([{ from: 2, level: 4.5 }], 3)).toBe(3);
    expect(of([{ from: 2, level: 6 }], 3)).toBeNaN();
    expect(
      of(
        [
          { from: 2, level: 6 },
          { from: 4, level: 5 },
        ],
        3,
      ),
    ).toBe(7);
    expect(of([{ from: -5, level: 6 }], 3)).toBeNaN();
    expect(of([{ from: 3, level: 6 }], 3)).toBeNaN();
    expect(of([{ from: 3.5, level: 6 }], 3)).toBe(3);
    // On a ramp from 0 to 10 in 10 s: beyond 8 from 8 s; from 5 s on the level is 3, so beyond from 5 s.
    const ramp = relay({ level: 8, later: [{ from: 5, level: 3 }] }, { ...SETTING, delay: 1 });
    ramp.sample(0, 0);
    ramp.sample(10, 10);
    expect(ramp.acts().proven).toBe(6);
  });

  it('a level holds from its instant on, before, at and between samples (by hand)', () => {
    const of = (
      samples: readonly (readonly [number, number])[],
      level: number,
      later: { from: number; level: number }[],
      setting: Partial<ReplaySetting> = {},
    ) => {
      const watch = relay({ level, later }, { ...SETTING, delay: 0, ...setting });
      for (const [time, reading] of samples) watch.sample(time, reading);
      return watch.acts();
    };
    const [five, falling] = [
      [
        [10, 5],
        [20, 5],
        [30, 5],
      ],
      [
        [10, 5],
        [20, 5],
        [30, 1],
      ],
    ] as const;
    expect(of(five, 6, [{ from: 20, level: 4 }]).proven).toBe(20);
    expect(of(five, 6, [{ from: 15, level: 4 }]).proven).toBe(15);
    // 3 at 25 s, where 4 comes to hold.
    expect(of(falling, 6, [{ from: 25, level: 4 }]).proven).toBeNaN();
    // Those of before the record: the last of them, and one that begins with it.
    expect(of([[0, 5]], 4, [{ from: -5, level: 6 }]).proven).toBeNaN();
    expect(of([[0, 5]], 4, [{ from: 0, level: 6 }]).proven).toBeNaN();
    const two = [
      { from: -5, level: 6 },
      { from: -3, level: 7 },
    ];
    expect(of([[0, 6.5]], 4, two).proven).toBeNaN();
    // A ramp from 0 at 10 s to 10 at 20 s: 5 at 15 s.
    const ramp = [
      [10, 0],
      [20, 10],
    ] as const;
    expect(of(ramp, 8, [{ from: 15, level: 3 }], { delay: 1 }).proven).toBe(16);
    expect(of(ramp, 8, [{ from: 15, level: 6 }]).proven).toBe(16);
    // 8 to 0 in 8 or 10 s: below 4 from the middle on, though beyond 3 a little longer.
    expect(
      of(
        [
          [0, 8],
          [10, 0],
        ],
        4,
        [{ from: 6, level: 3 }],
        { delay: 5.5 },
      ),
    ).toEqual({
      proven: NaN,
      earliest: NaN,
    });
    expect(
      of(
        [
          [0, 8],
          [8, 0],
        ],
        4,
        [{ from: 4, level: 3 }],
        { delay: 5 },
      ),
    ).toEqual({ proven: 5, earliest: 5 });
    // Over a gap that is too long nothing is known, a new level or not.
    const gap = of(
      [
        [0, 5],
        [100, 5],
        [104, 5],
      ],
      4,
      [{ from: 50, level: 4.5 }],
      { delay: 3, maxGap: 10 },
    );
    expect(gap).toEqual({ proven: 103, earliest: 3 });
  });

  it('what a sample says counts at its instant, also where a level begins there (by hand)', () => {
    const at10 = (reading: number, setting: Partial<ReplaySetting>) => {
      const watch = relay(
        { level: 6, later: [{ from: 10, level: 4 }] },
        { ...SETTING, delay: 0, ...setting },
      );
      watch.sample(0, 5);
      watch.sample(10, reading);
      return watch.acts();
    };
    // 5 was held until 10 s, then it is 1: never beyond 4. Beyond a gap it may have been beyond 6 before.
    expect(at10(1, { between: 'hold' }).proven).toBeNaN();
    expect(at10(1, { between: 'hold' }).earliest).toBeNaN();
    expect(at10(4, { between: 'hold' }).proven).toBe(10);
    expect(at10(4, { maxGap: 5 }).proven).toBe(10);
    const held = relay(
      { level: 6, later: [{ from: 10, level: 4 }] },
      { ...SETTING, delay: 12, between: 'hold' },
    );
    for (const [time, reading] of [
      [0, 7],
      [10, 5],
      [20, 5],
    ] as const)
      held.sample(time, reading);
    expect(held.acts().proven).toBe(12);
  });

  it('a relay with a delay: both ends of a spell count, a piece without its end does not (by hand)', () => {
    const touched = onDelay(3, 0);
    touched.point(1, true);
    touched.piece(1, 4, true);
    expect(touched.acted()).toBeNaN();
    touched.point(4, true);
    expect(touched.acted()).toBe(4);
    const fell = onDelay(5, 0);
    fell.point(0, true);
    fell.line(0, 8, 10, 0, 4);
    expect(fell.acted()).toBe(5);
  });

  it('an alarm returns below its deadband and can act again; danger latches (by hand)', () => {
    const samples = [
      [0, 0],
      [4, 8],
      [8, 0],
      [12, 8],
      [16, 8],
    ] as const;
    const alarm = relay(constantLevel(4), { ...SETTING, delay: 1, deadband: 2 });
    for (const [time, reading] of samples) alarm.sample(time, reading);
    expect(alarm.spells()).toEqual([
      { acted: 3, returned: 7 },
      { acted: 11, returned: NaN },
    ]);
    expect(alarm.acts().proven).toBe(3);
    const danger = relay(constantLevel(4), { ...SETTING, delay: 1 });
    for (const [time, reading] of samples) danger.sample(time, reading);
    expect(danger.spells()).toEqual([{ acted: 3, returned: NaN }]);
  });

  it('an alarm returns where it is below its deadband for certain, and not at it (by hand)', () => {
    const spells = (
      samples: readonly (readonly [number, number])[],
      setting: Partial<ReplaySetting> = {},
      later: { from: number; level: number }[] = [],
    ) => {
      const alarm = relay({ level: 4, later }, { ...SETTING, delay: 1, deadband: 2, ...setting });
      for (const [time, reading] of samples) alarm.sample(time, reading);
      return { spells: alarm.spells(), first: alarm.acts().proven };
    };
    const acted = (returned: number) => [{ acted: 1, returned }];
    expect(
      spells([
        [0, 8],
        [4, 8],
        [8, 2],
      ]).spells,
    ).toEqual(acted(NaN));
    expect(
      spells([
        [0, 8],
        [4, 8],
        [8, 0],
      ]).spells,
    ).toEqual(acted(7));
    expect(
      spells(
        [
          [0, 8],
          [4, 8],
          [8, 0],
        ],
        { between: 'hold' },
      ).spells,
    ).toEqual(acted(8));
    expect(
      spells(
        [
          [0, 8],
          [4, 8],
          [80, 0],
        ],
        { maxGap: 10 },
      ).spells,
    ).toEqual(acted(80));
    // Twice acted and returned: the first counts.
    expect(
      spells([
        [0, 8],
        [4, 0],
        [8, 8],
        [12, 8],
        [16, 0],
      ]),
    ).toEqual({
      spells: [
        { acted: 1, returned: 3 },
        { acted: 7, returned: 15 },
      ],
      first: 1,
    });
    // A level that rises away from what stands returns it there; one that falls after it does not undo that it did.
    expect(
      spells(
        [
          [0, 5],
          [4, 5],
          [6, 4],
        ],
        {},
        [{ from: 5, level: 8 }],
      ).spells,
    ).toEqual(acted(5));
    expect(
      spells(
        [
          [0, 8],
          [8, 0],
        ],
        {},
        [{ from: 7, level: 3 }],
      ).spells,
    ).toEqual(acted(6));
    // The delay starts anew after it: 1 s beyond a level of 1 from 7 s on is 8 s, when nothing is left.
    expect(
      spells(
        [
          [0, 8],
          [8, 0],
          [12, 0],
        ],
        {},
        [{ from: 7, level: 0.5 }],
      ).spells,
    ).toEqual(acted(6));
  });

  it('tells while it goes on whether it acted and whether it should have', () => {
    const run = replay(constantLevel(4), constantLevel(3), { ...SETTING, delay: 0, deadband: 1 });
    const so = (time: number, reading: number) => {
      run.sample(time, reading);
      // The next sample passes this one on.
      return [run.hasActed(), run.shouldHave()];
    };
    expect(so(0, 1)).toEqual([false, false]);
    expect(so(1, 3.5)).toEqual([false, false]);
    expect(so(2, 5)).toEqual([false, true]);
    expect(so(3, 0)).toEqual([true, true]);
    // Returned, it has acted all the same.
    expect(so(4, 0)).toEqual([true, true]);
  });

  it('takes one value an instant: the larger of two good ones, a good one before a bad one', () => {
    const samples = [
      { time: 2, reading: NaN },
      { time: 1, reading: 3 },
      { time: 2, reading: 4 },
      { time: 1, reading: 5 },
      { time: 2, reading: 3 },
    ];
    expect(inOrder(samples)).toEqual([
      { time: 1, reading: 5 },
      { time: 2, reading: 4 },
    ]);
    const run = replay(constantLevel(4), constantLevel(3), { ...SETTING, delay: 0 });
    run.sample(1, 1);
    run.sample(1, 5);
    expect(run.end().acts.proven).toBe(1);
  });

  it('of spreadsheet days is the same to the last digits that they hold', () => {
    const base = 45_809.416_666_666_664;
    const days = [0, 2, 4, 5, 6, 9, 12].map((second) => base + second / 86_400);
    const values = [3, 4.2, 4.4, 3.9, 4.1, 4.1, 3];
    const { proven, earliest } = tripTime(
      days.map((day, at) => ({ day, reading: values[at]! })),
      4,
      { delay: 3, maxGap: Infinity, between: 'hold' },
    );
    expect((proven - base) * 86_400).toBeCloseTo(9, 4);
    expect(earliest).toBe(proven);
    expect(tripTime([], 4, { delay: 0, maxGap: Infinity, between: 'line' }).proven).toBeNaN();
  });
});

describe('local times', () => {
  it('come back from every zone as they went, but for the hour that does not exist', () => {
    for (const zone of [
      'Europe/Berlin',
      'America/New_York',
      'Asia/Kolkata',
      'Australia/Lord_Howe',
      'UTC',
      'Asia/Kathmandu',
    ]) {
      const offsetAt = offsetsOf(zone);
      fc.assert(
        fc.property(fc.integer({ min: Date.UTC(2000, 0), max: Date.UTC(2030, 0) }), (utc) => {
          expect(utcOf(utc + offsetAt(utc), offsetAt)).toContain(utc);
        }),
        { numRuns: 60 },
      );
    }
  });

  it('of a repeated hour without a step back are ambiguous, and with two as well', () => {
    const offsetAt = offsetsOf('Europe/Berlin');
    const at = (...times: string[]) =>
      localToUtc(
        times.map((one) => Date.parse(`2025-10-26T${one}Z`)),
        offsetAt,
      );
    expect(at('01:59:00', '02:30:00', '03:00:00')[1]).toBe('ambiguous');
    expect(at('02:30:00', '02:10:00', '02:40:00', '02:20:00')).toEqual(Array(4).fill('ambiguous'));
    const stepped = [Date.parse('2025-10-26T00:30:00Z'), Date.parse('2025-10-26T01:10:00Z')];
    expect(at('02:30:00', '02:10:00')).toEqual(stepped);
    // Twice one time is no step back; a step into the hour or after it is none of the hour.
    expect(at('02:10:00', '02:10:00')).toEqual(['ambiguous', 'ambiguous']);
    expect(at('03:30:00', '02:10:00')[1]).toBe('ambiguous');
    expect(at('01:00:00', '02:30:00', '02:10:00', '03:00:00', '01:00:00').slice(1, 3)).toEqual(stepped);
  });

  it('know a zone by its name alone', () => {
    expect(['Europe/Berlin', 'UTC', 'Nowhere/Here', ''].map(zoneKnown)).toEqual([true, true, false, false]);
  });

  it('know an offset in its usual forms, of hours that a clock can be off', () => {
    const MINUTE = 60_000;
    for (const [text, minutes] of [
      ['Z', 0],
      ['utc', 0],
      ['GMT', 0],
      ['+01:00', 60],
      ['-0330', -210],
      ['+05', 300],
      ['+14:00', 840],
      ['-00:30', -30],
      ['+12:59', 779],
    ] as const)
      expect(fixedOffset(text), text).toBe(minutes * MINUTE);
    for (const text of [
      '',
      'xUTC',
      'UTC+1',
      '1:00',
      '+1:00',
      '01:00',
      'x+01:00',
      '+01:00x',
      '+01:',
      '+aa:00',
    ])
      expect(fixedOffset(text), text).toBeNull();
    // No clock is that far off: a slip, as in 2026-03-14T02:15+99:00.
    for (const text of ['+99:00', '+01:60', '-15:00', '+14:30']) expect(fixedOffset(text), text).toBeNull();
  });

  it('know a zone by an offset or by a place, spaces around it or not', () => {
    const july = Date.UTC(2026, 6, 1);
    expect(offsetAtOf(' +01:00 ')?.(july)).toBe(3_600_000);
    expect(offsetAtOf(' Europe/Berlin ')?.(july)).toBe(7_200_000);
    // Names without a place stand for several zones.
    for (const text of ['CET', 'EST', 'Nowhere/Here', '/', '']) expect(offsetAtOf(text), text).toBeNull();
  });
});
