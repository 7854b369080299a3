import { describe, expect, it } from 'vitest';
import { bracketedRoot } from '../../../src/method/bracketedRoot.ts';
import { bestCorrections, greedyCorrections } from '../../../src/method/corrections/bestCorrections.ts';
import { objectiveOf } from '../../../src/method/corrections/corrected.ts';
import { type Objective, rankCorrections } from '../../../src/method/corrections/rankCorrections.ts';
import { probabilityLater } from '../../../src/method/decision/probabilityLater.ts';
import { normalCdf } from '../../../src/method/decision/normal.ts';
import { groupQuantile } from '../../../src/method/late/groupBand.ts';
import { groupLate } from '../../../src/method/late/groupLate.ts';
import { lateCounts, withMember } from '../../../src/method/late/lateCounts.ts';
import { machineLate } from '../../../src/method/late/machineLate.ts';
import { type LateMember, againstLimit } from '../../../src/method/late/member.ts';
import { sharedNormal } from '../../../src/method/late/sharedNormal.ts';
import {
  liveVote,
  liveVoteText,
  memberOutPolicies,
  liveThreshold,
} from '../../../src/method/voting/liveVote.ts';
import { type Worked, worked } from './examples.ts';

interface Channel {
  readonly tag: string;
  readonly setpoint: number;
  readonly configured: number;
  readonly measured: number;
  readonly u_shared: number;
  readonly u_own: number;
  readonly batch: string | null;
  readonly acts?: boolean;
  readonly multiplier?: number;
}

interface Group {
  readonly m: number;
  readonly limit: number;
  readonly members: readonly Channel[];
}

function member(channel: Channel, measured = channel.measured): LateMember {
  const { setpoint, configured, u_shared, u_own, batch, acts = true, multiplier = 1 } = channel;
  return {
    threshold: acts ? (multiplier * setpoint * configured) / measured : Infinity,
    shared: u_shared,
    own: u_own,
    batch,
  };
}

function near({ tolerance }: Worked, value: number, expected: unknown): void {
  const wanted = Number(expected);
  const most = Math.max((tolerance.relative ?? 0) * Math.abs(wanted), tolerance.absolute ?? 0);
  expect(Math.abs(value - wanted), `${value} for ${wanted}`).toBeLessThanOrEqual(most);
}

const of = (...kinds: readonly string[]) => worked.filter(({ what }) => kinds.includes(what));

/** The k-th smallest of n normals with the correlation rho, at or below h: a group of members that share rho. */
function atOrBelow(n: number, rho: number, k: number, h: number): number {
  const members = Array.from({ length: n }, (): LateMember => ({
    // In time where shared·z + own·z′ ≥ −h·scale: by symmetry a normal at or below h.
    threshold: 1 - h * SCALE,
    shared: SCALE * Math.sqrt(rho),
    own: SCALE * Math.sqrt(1 - rho),
    batch: 'one',
  }));
  return groupLate({ m: k, limit: 1, members }).inTime;
}

const SCALE = 0.01;

describe('equally correlated normals, worked by hand and by simulation, independent of this code', () => {
  it.each(of('equicorrelated-quantile'))('$id', (example) => {
    const { n, rho, p } = example.inputs as Record<string, number>;
    const h = bracketedRoot((x) => atOrBelow(n!, rho!, n!, x) - p!, 0, 5);
    near(example, h, example.expected['h']);
    expect(h).toBeCloseTo(example.recomputed!['h'] as number, 9);
  });

  it.each(of('equicorrelated-cdf'))('$id', (example) => {
    const { n, rho, k, h } = example.inputs as Record<string, number>;
    near(example, atOrBelow(n!, rho!, k!, h!), example.expected['p']);
  });

  it.each(of('equicorrelated-box'))('$id', (example) => {
    const { n, rho, low, high } = example.inputs as Record<string, number>;
    const { nodes, weights } = sharedNormal([]);
    const root = Math.sqrt(rho!);
    const rest = Math.sqrt(1 - rho!);
    let sum = 0;
    for (const [at, z] of nodes.entries())
      sum +=
        weights[at]! * (normalCdf((high! - root * z) / rest) - normalCdf((low! - root * z) / rest)) ** n!;
    near(example, sum, example.expected['p']);
    expect(sum).toBeCloseTo(example.recomputed!['p'] as number, 12);
  });
});

describe('groups, worked by hand and by simulation, independent of this code', () => {
  it.each(of('group-late'))('$id', (example) => {
    const { m, limit, members } = example.inputs as unknown as Group;
    near(
      example,
      groupLate({ m, limit, members: members.map((one) => member(one)) }).late,
      example.expected['p_late'],
    );
  });

  it('of one current loop, both of whose ends hang on the current at 0 %, is late as the loop by itself', () => {
    const loops = worked.filter(({ what }) => what === 'loop');
    expect(loops.length).toBeGreaterThan(1);
    for (const { inputs, expected } of loops) {
      const { span, I0, I100, u0, u100, L } = inputs as Record<string, number>;
      const width = I100! - I0!;
      const loop = {
        threshold: expected['T'] as number,
        ...{ shared: 0, own: Math.hypot(u0!, u100!) / width, offset: (span! * u0!) / width },
        ...{ both: (span! * u0! ** 2) / width ** 2, batch: null },
      };
      const late = expected['p_later'] as number;
      expect(groupLate({ m: 1, limit: L!, members: [loop] }).late).toBeCloseTo(late, 9);
      expect(machineLate([{ m: 1, limit: L!, members: [loop] }])?.any).toBeCloseTo(late, 9);
      // Beside one that always is late, in a 2oo2, and beside one that never is, in a 1oo2.
      const [always, never] = [Infinity, 1e-6].map((threshold) => ({ ...loop, both: 0, threshold }));
      expect(groupLate({ m: 1, limit: L!, members: [loop, always!] }).late).toBeCloseTo(late, 9);
      expect(groupLate({ m: 2, limit: L!, members: [loop, never!] }).late).toBeCloseTo(late, 9);
    }
  });

  it('with one member is PROBABILITYLATER to the last digits', () => {
    const [{ inputs }] = of('group-late') as [Worked];
    const { limit, members } = inputs as unknown as Group;
    const late = groupLate({ m: 1, limit, members: [member(members[0]!)] }).late;
    expect(late).toBeCloseTo(probabilityLater(5, 6, 200, 160, 0.03, 2, 1), 14);
  });

  it.each(of('group-counts'))('$id', (example) => {
    const { limit, members } = example.inputs as unknown as Group;
    const counts = lateCounts(members.map((one) => againstLimit(member(one), limit)));
    (example.expected['late_counts'] as number[]).forEach((share, late) => {
      near(example, counts[late]!, share);
    });
  });

  it.each(of('group-quantiles'))('$id', (example) => {
    const { m, q, members } = example.inputs as unknown as Group & { q: number[] };
    const voters = { m, members: members.map((one) => member(one)) };
    (example.expected['thresholds'] as number[]).forEach((limit, at) => {
      near(example, groupQuantile(voters, q[at]!), limit);
    });
  });

  it.each(of('machine-late'))('$id', (example) => {
    const { groups } = example.inputs as { groups: Group[] };
    const machine = machineLate(
      groups.map((group) => ({ ...group, members: group.members.map((one) => member(one)) })),
    )!;
    near(example, machine.any, example.expected['any']);
    near(example, machine.all, example.expected['all']);
    near(example, machine.expected, example.expected['expected']);
  });
});

/** What an example expects of a list of corrections, by the names of its fields. */
function holdsRank(
  example: Worked,
  tags: readonly string[],
  objective: Objective,
  budgets: readonly number[],
) {
  const { expected } = example;
  near(example, objective(new Set()), expected['base']);
  for (const budget of budgets) {
    const greedy = greedyCorrections(tags, budget, objective);
    const best = bestCorrections(tags, budget, objective);
    expect(best.how).toBe('every set');
    expect(greedy.tags).toEqual(expected[`greedy_${budget}`] ?? expected['greedy']);
    near(example, greedy.left, expected[`greedy_${budget}_value`] ?? expected['greedy_value']);
    expect(best.tags).toEqual(expected[`best_${budget}`] ?? expected['best']);
    near(example, best.left, expected[`best_${budget}_value`] ?? expected['best_value']);
  }
}

describe('which correction first, worked by hand and by simulation, independent of this code', () => {
  it.each(of('rank'))('$id', (example) => {
    const { groups, goal, budgets } = example.inputs as unknown as {
      groups: Group[];
      goal: 'any' | 'expected';
      budgets: number[];
    };
    const objective = objectiveOf(
      groups.map((group) => ({
        ...group,
        members: group.members.map((one) => ({
          ...member(one),
          tag: one.tag,
          corrected: member(one, one.configured),
        })),
      })),
      goal,
    );
    const tags = groups.flatMap(({ members }) => members.map(({ tag }) => tag));
    const ranked = rankCorrections(tags, objective);
    expect(ranked.map(({ tag }) => tag)).toEqual(example.expected['order']);
    (example.expected['drop'] as number[]).forEach((drop, at) => {
      expect(Math.abs(ranked[at]!.gain - drop)).toBeLessThan(1e-13);
    });
    holdsRank(example, tags, objective, budgets);
  });

  const part = (text: string): number => {
    const [over = '', under = '1'] = text.split('/');
    return Number(over) / Number(under);
  };

  it.each(of('plain-rank'))('$id', (example) => {
    const { groups, goal, budget } = example.inputs as unknown as {
      groups: { late_needs: number; channels: Record<string, [string, string]> }[];
      goal: 'any' | 'expected';
      budget: number;
    };
    const objective: Objective = (corrected) => {
      const late = groups.map(({ late_needs, channels }) => {
        let counts = [1];
        for (const [tag, [now, then]] of Object.entries(channels)) {
          const p = part(corrected.has(tag) ? then : now);
          counts = withMember(counts, [p, 1 - p]);
        }
        return counts.slice(late_needs).reduce((sum, one) => sum + one, 0);
      });
      return goal === 'any'
        ? 1 - late.reduce((none, p) => none * (1 - p), 1)
        : late.reduce((sum, p) => sum + p, 0);
    };
    const fractions = Object.fromEntries(
      Object.entries(example.expected).map(([name, value]) => [
        name,
        typeof value === 'string' ? part(value) : value,
      ]),
    );
    holdsRank(
      { ...example, expected: fractions, tolerance: { relative: 1e-12, absolute: 1e-15 } },
      groups.flatMap(({ channels }) => Object.keys(channels)),
      objective,
      [budget],
    );
  });
});

describe('members out, worked by hand, independent of this code', () => {
  it.each(of('degraded'))('$id', (example) => {
    const { m, n, out, thresholds } = example.inputs as {
      m: number;
      n: number;
      out: number | number[];
      thresholds?: number[];
    };
    for (const policy of memberOutPolicies) {
      if (thresholds && Array.isArray(out)) {
        const found = liveThreshold(
          m,
          thresholds,
          thresholds.map((_, at) => out.includes(at)),
          policy,
        )!;
        expect(liveVoteText(found.vote)).toBe(example.expected[policy]);
        expect(found.threshold).toBe(example.expected[`${policy} threshold`]);
      } else {
        const table = example.expected['table'] as Record<string, string>;
        expect(liveVoteText(liveVote({ m, n }, Number(out), policy)!)).toBe(table[policy]);
      }
    }
  });
});
