import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { parsePolicy } from '../../src/audit/model/policy.ts';
import { runs } from '../seed.ts';
import { book } from './book.ts';
import { actsAt, firstSpeed, type Reading } from './oracle/recorded.ts';

const chain = fc.record({
  measured: fc.integer({ min: 120, max: 260 }),
  danger: fc.integer({ min: 20, max: 60 }).map((tenths) => tenths / 10),
  delay: fc.integer({ min: 0, max: 6 }),
});
type Chain = typeof chain extends fc.Arbitrary<infer T> ? T : never;

function tables({ measured, danger, delay }: Chain) {
  return [
    [
      'Channels',
      [
        ['Tag', 'Kind', 'Measured sensitivity (mV/mil)'],
        ['V-1', 'radial', measured],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Danger delay (s)'],
        ['V-1', 200, 1, danger, delay],
      ],
    ],
  ] as const;
}

/** Nine digits of both, or that neither is there. */
function expectSame(found: number | null | undefined, wanted: number | null, what: string): void {
  if (wanted === null) expect(found ?? null, what).toBeNull();
  else expect(Math.abs((found ?? NaN) - wanted), what).toBeLessThanOrEqual(1e-9 * Math.max(1, wanted));
}

describe('a second working, by spells of time and by bisection', () => {
  it('says when danger acted and when it should have, of random records with gaps', () => {
    const reading = fc.tuple(
      fc.integer({ min: 1, max: 9 }),
      fc.option(fc.integer({ min: 0, max: 80 }), { freq: 6 }),
    );
    fc.assert(
      fc.property(chain, fc.array(reading, { minLength: 2, maxLength: 25 }), (one, steps) => {
        let time = 0;
        const readings = steps.map(([step, tenths]): Reading => {
          time += step;
          return [time, tenths === null ? null : tenths / 10];
        });
        const origin = readings[0]![0];
        const rows = readings.map(([at, value]) => [
          new Date(Date.UTC(2025, 5, 1) + at * 1000).toISOString(),
          value ?? '',
        ]);
        const report = audit(book(...tables(one), ['Trend', [['Time', 'V-1 (mil)'], ...rows]]), {
          policy: parsePolicy({ replay: { maxGap: 6 } }),
        });
        const danger = report.replay?.channels[0]?.thresholds.find(({ name }) => name === 'danger');
        const intended = (one.danger * one.measured) / 200;
        const moved = readings.map(([at, value]): Reading => [at - origin, value]);
        for (const [acted, level] of [
          [danger?.acted, one.danger],
          [danger?.should, intended],
        ] as const) {
          expectSame(acted?.proven?.seconds, actsAt(moved, level, one.delay, 6, false), 'proven');
          expectSame(acted?.earliest?.seconds, actsAt(moved, level, one.delay, 6, true), 'earliest');
        }
      }),
      { numRuns: runs(150) },
    );
  });

  it('says at which speed danger acts and should, of random run-ups', () => {
    const amplitude = fc.integer({ min: 0, max: 80 }).map((tenths) => tenths / 10);
    fc.assert(
      fc.property(
        chain,
        fc.array(amplitude, { minLength: 2, maxLength: 15 }),
        fc.boolean(),
        (one, amplitudes, isReal) => {
          const rows = amplitudes.map((value, at) => ['V-1', 500 + 250 * at, value]);
          const header = isReal ? 'Real amplitude (mil)' : 'Indicated amplitude (mil)';
          const report = audit(book(...tables(one), ['Run-up', [['Tag', 'Speed', header], ...rows]]));
          const danger = report.runUps?.channels[0]?.thresholds.find(({ name }) => name === 'danger');
          const ratio = one.measured / 200;
          const curve = (factor: number) =>
            amplitudes.map((value, at) => [500 + 250 * at, value * factor] as const);
          expectSame(danger?.acts, firstSpeed(curve(isReal ? ratio : 1), one.danger), 'acts');
          expectSame(danger?.should, firstSpeed(curve(isReal ? 1 : 1 / ratio), one.danger), 'should');
        },
      ),
      { numRuns: runs(100) },
    );
  });
});
