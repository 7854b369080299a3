import { randomLcg, randomNormal } from 'd3-random';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import type { GroupResult, Report } from '../../src/audit/model/report.ts';
import { runs } from '../seed.ts';
import { book } from './book.ts';
import { bothEnds, groupChance, interval, machineChances, type Vote, type Voter } from './oracle/chances.ts';

const tolerance = 0.05;
const coverage = 2;

/** A channel as its rows have it, at 200 mV/mil; percents at k = 2. */
const channel = fc.record({
  axial: fc.boolean(),
  measured: fc.integer({ min: 176, max: 212 }),
  uncertainty: fc.option(fc.integer({ min: 4, max: 60 }).map((tenths) => tenths / 10)),
  /** Of the uncertainty. */
  sharedPart: fc.constantFrom<number>(0, 0, 0.3, 0.8, 1),
  batch: fc.constantFrom<string>('', '', 'Lot 1', 'lot 1 ', 'Lot 2'),
  gain: fc.constantFrom(null, null, 0.97, 1.02),
  gainUncertainty: fc.constantFrom(null, 1, 0.5),
  zero: fc.constantFrom(-10, -9.8, -10.13),
  zeroUncertainty: fc.constantFrom<number | null>(null, 0.05, 0.12),
  bypass: fc.constantFrom(false, false, false, false, true),
  limit: fc.constantFrom(null, null, 1.04, 1.11),
});
type Channel = Parameters<Parameters<(typeof channel)['map']>[0]>[0];
const station = fc.array(
  fc.record({
    votes: fc.integer({ min: 1, max: 3 }),
    axial: fc.boolean(),
    channels: fc.array(channel, { minLength: 1, maxLength: 3 }),
  }),
  { minLength: 1, maxLength: 3 },
);
type Group = Parameters<Parameters<(typeof station)['map']>[0]>[0][number];

const danger = ({ axial }: Pick<Group, 'axial'>): number => (axial ? 17 : 5);
const votesOf = ({ votes, channels }: Group): number => Math.min(votes, channels.length);

function workbook(groups: readonly Group[]) {
  const rows = groups.flatMap((group, at) =>
    group.channels.map((one, member) => ({ ...one, group, tag: `T${at}-${member}`, name: `G${at}` })),
  );
  return book(
    [
      'Channels',
      [
        [
          ...['Tag', 'Machine', 'Kind', 'Measured sensitivity (mV/mil)', 'Uncertainty (%)', 'Batch'],
          ...['Shared uncertainty (%)', 'Zero voltage (V)', 'Zero voltage uncertainty (V)', 'Direction'],
          'Limit (mil)',
        ],
        ...rows.map(
          ({ tag, group, measured, uncertainty, batch, sharedPart, zero, zeroUncertainty, limit }) => [
            ...[tag, 'K-1', group.axial ? 'axial' : 'radial', measured, uncertainty, batch],
            ...[uncertainty === null ? null : uncertainty * sharedPart, group.axial ? zero : null],
            ...[group.axial ? zeroUncertainty : null, group.axial ? 'toward' : null],
            limit === null ? null : limit * danger(group),
          ],
        ),
      ],
    ],
    [
      'Monitor',
      [
        [
          ...['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Monitor gain'],
          ...['Monitor gain uncertainty (%)', 'Configured zero voltage (V)', 'Group', 'Voting', 'Bypass'],
        ],
        ...rows.map(({ tag, group, gain, gainUncertainty, name, bypass }) => [
          ...[tag, 200, danger(group) / 2, danger(group), gain, gainUncertainty],
          ...[group.axial ? -10 : null, name, `${votesOf(group)}oo${group.channels.length}`],
          bypass ? 'yes' : 'no',
        ]),
      ],
    ],
  );
}

/** T = (S·Kc/g + V0c − V0m)/Km toward the probe; a gain's uncertainty is the sensitivity's, or the numerator's of a position. */
function voterOf(group: Group, one: Channel): Voter {
  const { measured, gain, gainUncertainty, zero, zeroUncertainty, bypass } = one;
  const ofSetpoint = (danger(group) * 200) / (gain ?? 1);
  const numerator = ofSetpoint + (group.axial ? 1000 * (-10 - zero) : 0);
  const u = (one.uncertainty ?? 0) / 100 / coverage;
  const ofGain = (gainUncertainty ?? 0) / 100 / coverage;
  const shared = u * one.sharedPart;
  const whole = group.axial ? u : Math.hypot(u, ofGain);
  const ofZero = group.axial ? (1000 * (zeroUncertainty ?? 0)) / coverage : 0;
  const batch = one.batch.trim().toLowerCase();
  return {
    threshold: bypass ? Infinity : numerator / measured,
    shared,
    own: Math.sqrt(Math.max(0, whole ** 2 - shared ** 2)),
    zero: group.axial ? Math.hypot(ofZero, ofSetpoint * ofGain) / measured : 0,
    batch: batch === '' ? null : batch,
  };
}

function voteOf(group: Group): Vote {
  const limits = group.channels.flatMap(({ limit }) => (limit === null ? [] : [limit * danger(group)]));
  return {
    votes: votesOf(group),
    limit: limits.length > 0 ? Math.min(...limits) : danger(group) / (1 - tolerance),
    members: group.channels.map((one) => voterOf(group, one)),
  };
}

/** Whether the uncertainty of anything of a member is stated. */
function isUncertain(group: Group, one: Channel): boolean {
  return (
    one.uncertainty !== null || one.gainUncertainty !== null || (group.axial && one.zeroUncertainty !== null)
  );
}

function reported({ groups }: Report, at: number): GroupResult {
  const found = groups.find(({ name, threshold }) => name === `G${at}` && threshold === 'danger');
  if (!found) throw new Error(`no group G${at}`);
  return found;
}

// Source: the method's text of section 15, worked out by enumerating every set of late members and Simpson's rule.
it('chances of groups and machines of random workbooks are those of a second working, to nine digits', () => {
  fc.assert(
    fc.property(station, (groups) => {
      const report = audit(workbook(groups), {});
      const votes = groups.map(voteOf);
      groups.forEach((group, at) => {
        const { chance } = reported(report, at);
        const acting = group.channels.filter(({ bypass }) => !bypass);
        const uncertain = acting.filter((one) => isUncertain(group, one));
        expect(chance === null, `G${at}`).toBe(uncertain.length === 0);
        const vote = votes[at];
        if (!chance || !vote) return;
        expect(chance.limit).toBeCloseTo(vote.limit, 9);
        expect(chance.later).toBeCloseTo(groupChance(vote), 9);
        const unlabelled = uncertain.some(({ batch }) => batch === '') && acting.length > 1;
        expect(chance.ends !== null).toBe(unlabelled);
        if (chance.ends) {
          const ends = bothEnds(vote);
          expect(chance.ends.independent).toBeCloseTo(ends.independent, 9);
          expect(chance.ends.allShared).toBeCloseTo(ends.allShared, 9);
        }
      });
      const [machine] = report.machines;
      expect(machine === undefined).toBe(groups.every((_, at) => reported(report, at).chance === null));
      if (!machine) return;
      const wanted = machineChances(votes);
      expect(machine.any).toBeCloseTo(wanted.any, 9);
      expect(machine.all).toBeCloseTo(wanted.all, 9);
      expect(machine.expected).toBeCloseTo(wanted.expected, 9);
    }),
    { numRuns: runs(40) },
  );
});

it('intervals of groups are those of a second working, where every member has scatter of its own', () => {
  const smooth = station.map((groups) =>
    groups.slice(0, 1).map((group) => ({
      ...group,
      channels: group.channels.map((one) => ({
        ...one,
        bypass: false,
        uncertainty: one.uncertainty ?? 3,
        sharedPart: Math.min(one.sharedPart, 0.8),
      })),
    })),
  );
  fc.assert(
    fc.property(smooth, (groups) => {
      const report = audit(workbook(groups), {});
      groups.forEach((group, at) => {
        const { chance } = reported(report, at);
        const { low, high } = interval(voteOf(group), coverage);
        expect((chance?.low ?? NaN) / low).toBeCloseTo(1, 8);
        expect((chance?.high ?? NaN) / high).toBeCloseTo(1, 8);
      });
    }),
    { numRuns: runs(8) },
  );
});

// Source: normal variates of a general library (d3-random), a simulation of the true sensitivities; within five standard errors.
it('a simulation says the same of a machine whose groups share a batch', () => {
  const one = (measured: number, batch: string, axial = false): Channel => ({
    ...{ axial, measured, batch, uncertainty: 3.6, sharedPart: 0.8, gain: null, gainUncertainty: null },
    ...{ zero: -10, zeroUncertainty: axial ? 0.1 : null, bypass: false, limit: null },
  });
  const groups: Group[] = [
    { votes: 2, axial: false, channels: [one(188, 'Lot 1'), one(192, 'Lot 1'), one(197, '')] },
    { votes: 1, axial: true, channels: [one(189, 'Lot 1', true), one(193, '', true)] },
  ];
  const normal = randomNormal.source(randomLcg(0.37))(0, 1);
  const trials = 200_000;
  let any = 0;
  let all = 0;
  const votes = groups.map(voteOf);
  for (let trial = 0; trial < trials; trial++) {
    const lot = normal();
    const late = votes.map(({ votes: needed, limit, members }) => {
      const acts = members.map(({ threshold, shared, own, zero, batch }) => {
        const error = shared * (batch === null ? normal() : lot) + own * normal();
        return (threshold + zero * normal()) / (1 + error);
      });
      return (acts.toSorted((x, y) => x - y)[needed - 1] ?? Infinity) > limit;
    });
    any += Number(late.some(Boolean));
    all += Number(late.every(Boolean));
  }
  const [machine] = audit(workbook(groups), {}).machines;
  for (const [simulated, said] of [
    [any / trials, machine?.any ?? NaN],
    [all / trials, machine?.all ?? NaN],
  ] as const)
    expect(Math.abs(simulated - said)).toBeLessThan(5 * Math.sqrt((said * (1 - said)) / trials));
});
