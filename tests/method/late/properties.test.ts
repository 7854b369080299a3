import cdf from '@stdlib/stats-base-dists-normal-cdf';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestCorrections, greedyCorrections } from '../../../src/method/corrections/bestCorrections.ts';
import { rankCorrections } from '../../../src/method/corrections/rankCorrections.ts';
import { band } from '../../../src/method/decision/band.ts';
import { normalCdf } from '../../../src/method/decision/normal.ts';
import { probabilityLater } from '../../../src/method/decision/probabilityLater.ts';
import { gaussLegendre } from '../../../src/method/late/gaussLegendre.ts';
import { groupBand, groupQuantile } from '../../../src/method/late/groupBand.ts';
import { groupLate } from '../../../src/method/late/groupLate.ts';
import { countsGiven, lateCounts, lateCountsOf } from '../../../src/method/late/lateCounts.ts';
import { machineLate } from '../../../src/method/late/machineLate.ts';
import { type LateMember, againstLimit } from '../../../src/method/late/member.ts';
import { sharedNormal } from '../../../src/method/late/sharedNormal.ts';
import { liveVote, liveVoteText, liveThreshold } from '../../../src/method/voting/liveVote.ts';
import { votedThreshold } from '../../../src/method/voting/voting.ts';
import '../../seed.ts';
import { upTo } from '../ranges.ts';
import { normals } from './normals.ts';

const part = upTo(0.04);
const member: fc.Arbitrary<LateMember> = fc.record({
  threshold: fc.oneof(
    { weight: 9, arbitrary: fc.double({ min: 4.7, max: 5.8, noNaN: true }) },
    { weight: 1, arbitrary: fc.constant(Infinity) },
  ),
  shared: part,
  own: fc.oneof(part, fc.constant(0), fc.constant(1e-4)),
  batch: fc.constantFrom('a', 'b', null),
});
const voters = fc
  .array(member, { minLength: 1, maxLength: 6 })
  .chain((members) =>
    fc.record({ m: fc.integer({ min: 1, max: members.length }), members: fc.constant(members) }),
  );

describe('the rule of integration', () => {
  it('is exact for polynomials to degree 39, and its weights hold all of a normal', () => {
    const { nodes, weights } = gaussLegendre(20);
    for (const degree of [0, 1, 2, 19, 38, 39]) {
      const sum = nodes.reduce((total, x, at) => total + weights[at]! * x ** degree, 0);
      expect(sum).toBeCloseTo(degree % 2 === 0 ? 2 / (degree + 1) : 0, 14);
    }
    const { nodes: z, weights: w } = sharedNormal([]);
    for (const [power, moment] of [
      [0, 1],
      [1, 0],
      [2, 1],
      [4, 3],
    ] as const)
      expect(z.reduce((sum, one, at) => sum + w[at]! * one ** power, 0)).toBeCloseTo(moment, 13);
  });
});

describe('a group', () => {
  it('of one member is PROBABILITYLATER and BAND, in any split of its uncertainty', () => {
    const amount = fc.double({ min: 0.001, max: 0.2, noNaN: true });
    fc.assert(
      fc.property(amount, upTo(1), fc.double({ min: 5, max: 8, noNaN: true }), (u, share, limit) => {
        const one: LateMember = {
          threshold: 6.25,
          shared: u * Math.sqrt(share),
          own: u * Math.sqrt(1 - share),
          batch: 'x',
        };
        const { late, inTime } = groupLate({ m: 1, limit, members: [one] });
        expect(late).toBeCloseTo(probabilityLater(5, limit, 200, 160, 2 * u, 2, 1), 13);
        expect(late + inTime).toBeCloseTo(1, 13);
        const wanted = band(5, 200, 160, 2 * u, 1);
        const found = groupBand({ m: 1, members: [one] }, 2);
        expect(found.low).toBeCloseTo(wanted.low, 10);
        expect(found.high).toBeCloseTo(wanted.high, 10);
      }),
    );
  });

  it('is late or in time, the more votes the later, the farther the limit the less', () => {
    fc.assert(
      fc.property(voters, fc.double({ min: 4.8, max: 5.6, noNaN: true }), ({ m, members }, limit) => {
        const { late, inTime } = groupLate({ m, limit, members });
        expect(late + inTime).toBeCloseTo(1, 12);
        expect(groupLate({ m, limit: limit * 1.01, members }).late).toBeLessThanOrEqual(late + 1e-13);
        if (m < members.length)
          expect(groupLate({ m: m + 1, limit, members }).late).toBeGreaterThanOrEqual(late - 1e-13);
      }),
    );
  });

  it('independent and alike: 3p² − 2p³ (identity)', () => {
    fc.assert(
      fc.property(fc.double({ min: 4.8, max: 5.6, noNaN: true }), (threshold) => {
        const one: LateMember = { threshold, shared: 0.02, own: 0.01, batch: null };
        const p = groupLate({ m: 1, limit: 5.2, members: [one] }).late;
        const late = groupLate({ m: 2, limit: 5.2, members: [one, one, one] }).late;
        expect(late).toBeCloseTo(3 * p ** 2 - 2 * p ** 3, 13);
      }),
    );
  });

  it('all shared: Φ of the M-th smallest (identity)', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 4.8, max: 5.6, noNaN: true }), { minLength: 1, maxLength: 5 }),
        fc.nat(4),
        fc.double({ min: 0.002, max: 0.05, noNaN: true }),
        (thresholds, pick, shared) => {
          const m = 1 + (pick % thresholds.length);
          const members = thresholds.map((threshold): LateMember => ({
            threshold,
            shared,
            own: 0,
            batch: 'x',
          }));
          const voted = votedThreshold(thresholds, m);
          expect(groupLate({ m, limit: 5.2, members }).late).toBeCloseTo(
            normalCdf((voted / 5.2 - 1) / shared),
            13,
          );
        },
      ),
    );
  });

  it('of N alike at the limit, half shared, is all late with 1/(N + 1) (identity)', () => {
    for (const n of [1, 2, 3, 5, 8]) {
      const members = Array.from({ length: n }, (): LateMember => ({
        threshold: 5,
        shared: 0.01,
        own: 0.01,
        batch: 'x',
      }));
      expect(groupLate({ m: 1, limit: 5, members }).late).toBeCloseTo(1 / (n + 1), 13);
    }
  });

  it('sharing makes 1-out-of-N later and N-out-of-N less late, the members alike', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 5 }),
        fc.double({ min: 4.9, max: 5.5, noNaN: true }),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        (n, threshold, share) => {
          const alike = (batch: string | null) =>
            Array.from({ length: n }, (): LateMember => ({
              threshold,
              shared: 0.02 * Math.sqrt(share),
              own: 0.02 * Math.sqrt(1 - share),
              batch,
            }));
          const late = (m: number, batch: string | null) =>
            groupLate({ m, limit: 5.2, members: alike(batch) }).late;
          expect(late(1, 'x')).toBeGreaterThanOrEqual(late(1, null) - 1e-13);
          expect(late(n, 'x')).toBeLessThanOrEqual(late(n, null) + 1e-13);
        },
      ),
    );
  });

  it('is late for certain where it cannot trip, and has no band then', () => {
    const members: LateMember[] = [
      { threshold: 5, shared: 0.01, own: 0.01, batch: 'x' },
      { threshold: Infinity, shared: 0.01, own: 0.01, batch: 'x' },
    ];
    expect(groupLate({ m: 2, limit: 50, members })).toEqual({ late: 1, inTime: 0 });
    expect(groupBand({ m: 2, members }, 2)).toEqual({ low: NaN, high: NaN });
    expect(groupLate({ m: 1, limit: 50, members }).late).toBeLessThan(1e-15);
  });

  it('band and quantiles are where the probability is what they say', () => {
    fc.assert(
      fc.property(voters, fc.constantFrom(1, 2, 3), ({ m, members }, k) => {
        const { low, high } = groupBand({ m, members }, k);
        if (members.filter(({ threshold }) => threshold < Infinity).length < m) {
          expect(low).toBeNaN();
          return;
        }
        expect(low).toBeLessThanOrEqual(high * (1 + 1e-12));
        const at = (limit: number) => groupLate({ m, limit, members });
        const tail = normalCdf(-k);
        expect(at(low * (1 + 1e-9)).inTime).toBeGreaterThanOrEqual(tail * (1 - 1e-6));
        expect(at(low * (1 - 1e-9)).inTime).toBeLessThanOrEqual(tail * (1 + 1e-6));
        expect(at(high * (1 - 1e-9)).late).toBeGreaterThanOrEqual(tail * (1 - 1e-6));
        expect(at(high * (1 + 1e-9)).late).toBeLessThanOrEqual(tail * (1 + 1e-6));
        const median = groupQuantile({ m, members }, 0.5);
        expect(median).toBeGreaterThanOrEqual(low * (1 - 1e-12));
        expect(median).toBeLessThanOrEqual(high * (1 + 1e-12));
      }),
      { numRuns: 60 },
    );
  });

  it('refuses what cannot be: votes, limits, members', () => {
    const good: LateMember = { threshold: 5, shared: 0.01, own: 0.01, batch: null };
    for (const m of [0, 2, 1.5, NaN]) expect(groupLate({ m, limit: 5, members: [good] }).late).toBeNaN();
    for (const limit of [0, -1, NaN, Infinity])
      expect(groupLate({ m: 1, limit, members: [good] }).late).toBeNaN();
    const ugly = [NaN, Infinity].flatMap((bad) => [
      { shared: bad },
      { own: bad },
      { offset: bad },
      { both: bad },
    ]);
    for (const bad of [...ugly, { threshold: NaN }, { shared: -0.1 }, { own: -0.1 }, { offset: -1 }])
      expect(groupLate({ m: 1, limit: 5, members: [{ ...good, ...bad }] }).late).toBeNaN();
    expect(machineLate([])).toBeUndefined();
  });
});

/** Shares of late groups by plain sampling of the model as it is written. */
function sampled(
  groups: readonly { m: number; limit: number; members: readonly LateMember[] }[],
  count: number,
) {
  const next = normals(20_261_130);
  let [any, all, expected] = [0, 0, 0];
  for (let at = 0; at < count; at++) {
    const batch = new Map<string, number>();
    let late = 0;
    for (const { m, limit, members } of groups) {
      let acted = 0;
      for (const { threshold, shared, own, batch: name } of members) {
        let z = name === null ? undefined : batch.get(name);
        if (z === undefined) {
          z = next();
          if (name !== null) batch.set(name, z);
        }
        if (threshold / (1 + shared * z + own * next()) <= limit) acted++;
      }
      if (acted < m) late++;
    }
    if (late > 0) any++;
    if (late === groups.length) all++;
    expected += late;
  }
  return { any: any / count, all: all / count, expected: expected / count };
}

describe('a machine', () => {
  const X = (threshold: number, batch: string | null): LateMember => ({
    threshold,
    shared: 0.015,
    own: 0.01,
    batch,
  });

  it('agrees with plain sampling of the model, batches within and across groups', () => {
    const machines = [
      [
        { m: 1, limit: 5.263, members: [X(5.35, 'a'), X(5.29, 'a')] },
        { m: 2, limit: 5.263, members: [X(5.2, 'a'), X(5.3, 'a'), X(5.1, null)] },
      ],
      [
        { m: 1, limit: 5.263, members: [X(5.35, 'a'), X(5.29, 'b')] },
        { m: 2, limit: 5.263, members: [X(5.2, 'a'), X(5.3, 'b'), X(5.1, 'c')] },
        { m: 2, limit: 5.263, members: [X(5.2, 'c'), X(5.25, 'c')] },
        { m: 1, limit: 5.263, members: [X(5.3, null), X(5.26, 'd')] },
      ],
    ];
    const count = 300_000;
    for (const groups of machines) {
      const found = machineLate(groups)!;
      const drawn = sampled(groups, count);
      for (const name of ['any', 'all', 'expected'] as const)
        expect(Math.abs(found[name] - drawn[name]), name).toBeLessThan(
          (5 * groups.length * 0.5) / Math.sqrt(count),
        );
    }
  });

  it('of independent groups: any is 1 − Π(1 − p), all Π p (identity), also where batches stay inside', () => {
    fc.assert(
      fc.property(fc.array(voters, { minLength: 1, maxLength: 4 }), (all) => {
        const groups = all.map(({ m, members }, at) => ({
          m,
          limit: 5.2,
          members: members.map((one) => ({ ...one, batch: one.batch === null ? null : `${one.batch}${at}` })),
        }));
        const late = groups.map((group) => groupLate(group).late);
        const found = machineLate(groups)!;
        expect(found.any).toBeCloseTo(1 - late.reduce((product, p) => product * (1 - p), 1), 12);
        expect(found.all).toBeCloseTo(
          late.reduce((product, p) => product * p, 1),
          12,
        );
      }),
      { numRuns: 60 },
    );
  });

  it('is bounded by its groups however batches reach: max ≤ any ≤ Σ, all ≤ min, and any + all = Σ for two', () => {
    fc.assert(
      fc.property(fc.array(voters, { minLength: 2, maxLength: 3 }), (all) => {
        const groups = all.map((one) => ({ ...one, limit: 5.2 }));
        const late = groups.map((group) => groupLate(group).late);
        const found = machineLate(groups)!;
        const sum = late.reduce((total, p) => total + p, 0);
        expect(found.expected).toBeCloseTo(sum, 12);
        expect(found.any).toBeGreaterThanOrEqual(Math.max(...late) - 1e-12);
        expect(found.any).toBeLessThanOrEqual(Math.min(1, sum) + 1e-12);
        expect(found.all).toBeLessThanOrEqual(Math.min(...late) + 1e-12);
        if (late.length === 2) expect(found.any + found.all).toBeCloseTo(sum, 11);
      }),
      { numRuns: 60 },
    );
  });

  it('counts of a group sum to 1, and their mean is the sum of the members’ probabilities', () => {
    fc.assert(
      fc.property(voters, ({ members }) => {
        const counts = lateCounts(members.map((one) => againstLimit(one, 5.2)));
        expect(counts.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
        const singly = members.map((one) => groupLate({ m: 1, limit: 5.2, members: [one] }).late);
        expect(counts.reduce((sum, one, late) => sum + late * one, 0)).toBeCloseTo(
          singly.reduce((sum, one) => sum + one, 0),
          11,
        );
      }),
    );
  });
});

describe('late counts, the cheaper way', () => {
  const spread = fc.oneof(part, fc.constant(0), fc.constant(1e-6));
  const lone: fc.Arbitrary<LateMember> = fc.record({
    threshold: fc.oneof(
      { weight: 9, arbitrary: fc.double({ min: 4.7, max: 5.8, noNaN: true }) },
      { weight: 1, arbitrary: fc.constantFrom(Infinity, -1, 5.2) },
    ),
    shared: spread,
    own: spread,
    offset: fc.option(upTo(0.3), { nil: undefined as never }),
    batch: fc.constant(null),
  });

  /** Sum over every set of late members of the product of their probabilities, the normal distribution by @stdlib. */
  function overAllSets(members: readonly LateMember[], limit: number): number[] {
    const late = members.map(({ threshold, shared, own, offset = 0 }) => {
      const sigma = Math.sqrt(shared ** 2 + own ** 2 + (offset / limit) ** 2);
      if (threshold === Infinity) return 1;
      return sigma === 0 ? Number(threshold > limit) : cdf(threshold / limit - 1, 0, sigma);
    });
    const counts = new Array<number>(members.length + 1).fill(0);
    for (let set = 0; set < 2 ** members.length; set++) {
      const isLate = (at: number): boolean => Math.floor(set / 2 ** at) % 2 === 1;
      const count = members.filter((_, at) => isLate(at)).length;
      counts[count]! += late.reduce((product, p, at) => product * (isLate(at) ? p : 1 - p), 1);
    }
    return counts;
  }

  it('of members that share nothing are the sum over every set of late ones, at one limit after another', () => {
    fc.assert(
      fc.property(
        fc.array(lone, { minLength: 1, maxLength: 6 }),
        fc.array(fc.double({ min: 4.8, max: 5.6, noNaN: true }), { minLength: 2, maxLength: 3 }),
        (members, limits) => {
          const at = lateCountsOf(members);
          for (const limit of limits) {
            const wanted = overAllSets(members, limit);
            const found = [...(at(limit) as Float64Array)];
            expect(found.length).toBe(wanted.length);
            found.forEach((share, count) => {
              expect(Math.abs(share - wanted[count]!), `${count} at ${limit}`).toBeLessThan(1e-12);
            });
            expect(found).toEqual(lateCounts(members.map((one) => againstLimit(one, limit))));
          }
        },
      ),
    );
  });

  it('of members that share all are the integral over what they share, small ones to their digits', () => {
    const wholly = fc.record({
      threshold: fc.oneof(
        { weight: 9, arbitrary: fc.double({ min: 4.7, max: 5.8, noNaN: true }) },
        { weight: 1, arbitrary: fc.constant(Infinity) },
      ),
      shared: fc.oneof(fc.double({ min: 1e-3, max: 0.05, noNaN: true }), fc.constant(0)),
      own: fc.constant(0),
      batch: fc.constant('x'),
    });
    fc.assert(
      fc.property(
        fc.array(wholly, { minLength: 2, maxLength: 5 }),
        fc.double({ min: 4.8, max: 5.6, noNaN: true }),
        (members, limit) => {
          const against = members.map((one) => againstLimit(one, limit));
          const { nodes, weights } = sharedNormal(against);
          const wanted = new Float64Array(members.length + 1);
          const counts = new Float64Array(members.length + 1);
          nodes.forEach((z, at) => {
            countsGiven([1], against, z, counts);
            counts.forEach((share, count) => (wanted[count]! += weights[at]! * share));
          });
          lateCounts(against).forEach((share, count) => {
            expect(Math.abs(share - wanted[count]!)).toBeLessThan(1e-12);
            expect(share).toBeGreaterThanOrEqual(0);
          });
          const turns = against.map(({ reach, shared }) => (shared > 0 ? (reach - 1) / shared : Infinity));
          if (!against.every(({ shared }) => shared > 0)) return;
          // One late member is enough: the normal that lets none be late lies beyond the farthest turn.
          const none = groupLate({ m: members.length, limit, members }).inTime;
          const beyond = cdf(-Math.max(...turns), 0, 1);
          expect(Math.abs(none - beyond)).toBeLessThanOrEqual(1e-12 * beyond + 1e-300);
        },
      ),
    );
  });

  it('gives a band that halving alone finds, however its members share', () => {
    fc.assert(
      fc.property(
        fc.array(lone, { minLength: 1, maxLength: 5 }),
        fc.nat(4),
        fc.boolean(),
        (all, pick, one) => {
          const members = all.map((member) => ({
            ...member,
            batch: one ? 'x' : null,
            own: one ? 0.01 : member.own,
          }));
          const m = 1 + (pick % members.length);
          const { low, high } = groupBand({ m, members }, 2);
          if (Number.isNaN(low)) return;
          const tail = cdf(-2, 0, 1);
          const halved = (isBelow: (limit: number) => boolean): number => {
            let [from, to] = [1e-3, 1e6];
            for (let turn = 0; turn < 200; turn++) {
              const middle = Math.sqrt(from * to);
              if (isBelow(middle)) from = middle;
              else to = middle;
            }
            return from;
          };
          const at = (limit: number) => groupLate({ m, limit, members });
          expect(low / halved((limit) => at(limit).inTime < tail)).toBeCloseTo(1, 11);
          expect(high / halved((limit) => at(limit).late > tail)).toBeCloseTo(1, 11);
        },
      ),
      { numRuns: 30 },
    );
  });
});

describe('corrections', () => {
  it('every set is never worse than greedy, and for one they are the same', () => {
    const p = upTo(1);
    fc.assert(
      fc.property(
        fc.array(p, { minLength: 3, maxLength: 6 }),
        fc.integer({ min: 1, max: 3 }),
        (late, budget) => {
          const tags = late.map((_, at) => `T${at}`);
          const objective = (corrected: ReadonlySet<string>) => {
            const left = late.map((one, at) => (corrected.has(`T${at}`) ? one / 10 : one));
            // 2-out-of-N: late with all but one late.
            const all = left.reduce((product, one) => product * one, 1);
            return left.reduce(
              (sum, one, at) => sum + left.reduce((q, other, j) => q * (j === at ? 1 - one : other), 1),
              all,
            );
          };
          const best = bestCorrections(tags, budget, objective);
          expect(best.left).toBeLessThanOrEqual(greedyCorrections(tags, budget, objective).left + 1e-12);
          const one = bestCorrections(tags, 1, objective);
          expect(one.tags[0]).toBe(rankCorrections(tags, objective)[0]!.tag);
        },
      ),
    );
  });

  it('goes one after the other where the sets are too many, and says so; ties go by tag', () => {
    const tags = Array.from({ length: 40 }, (_, at) => `T${String(at).padStart(2, '0')}`).reverse();
    const best = bestCorrections(tags, 5, (corrected) => 10 - corrected.size);
    expect(best).toEqual({ tags: ['T00', 'T01', 'T02', 'T03', 'T04'], left: 5, how: 'one after the other' });
    expect(bestCorrections(tags.slice(38), 5, (corrected) => -corrected.size).tags).toEqual(['T00', 'T01']);
  });
});

describe('members out', () => {
  it('T(trip) ≤ T(reduce) ≤ T(no-trip), and none out changes nothing', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 9, noNaN: true }), { minLength: 1, maxLength: 6 }),
        fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }),
        fc.nat(5),
        (thresholds, out, pick) => {
          const m = 1 + (pick % thresholds.length);
          const at = (policy: 'trip' | 'reduce' | 'no-trip') =>
            liveThreshold(m, thresholds, out.slice(0, thresholds.length), policy)!.threshold;
          expect(at('trip')).toBeLessThanOrEqual(at('reduce'));
          expect(at('reduce')).toBeLessThanOrEqual(at('no-trip'));
          for (const policy of ['trip', 'reduce', 'no-trip'] as const)
            expect(liveThreshold(m, thresholds, [], policy)!.threshold).toBe(votedThreshold(thresholds, m));
        },
      ),
    );
  });

  it('all out: no vote is left, unless the votes cast have tripped it (by counting)', () => {
    const all = (policy: 'trip' | 'reduce' | 'no-trip') => liveVoteText(liveVote({ m: 2, n: 3 }, 3, policy)!);
    expect([all('no-trip'), all('trip'), all('reduce')]).toEqual(['cannot trip', 'tripped', 'cannot trip']);
    for (const out of [-1, 4, 0.5, NaN]) expect(liveVote({ m: 2, n: 3 }, out, 'trip')).toBeUndefined();
  });
});
