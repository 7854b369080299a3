import { describe, expect, it } from 'vitest';
import { evaluateGroup } from '../../src/audit/judge/groups/evaluateGroup.ts';
import { groupChance } from '../../src/audit/judge/groups/groupChance.ts';
import { evaluateGroups } from '../../src/audit/judge/groups/groups.ts';
import { type MachineGroup, machineChances } from '../../src/audit/judge/groups/machineChances.ts';
import { type Member, membersByGroup, membersOut, voteLeft } from '../../src/audit/judge/groups/members.ts';
import { peerSlips } from '../../src/audit/judge/groups/peers.ts';
import { leastLimit, thresholdOf, voterOf } from '../../src/audit/judge/groups/voter.ts';
import { parsePolicy } from '../../src/audit/model/policy.ts';
import type { ThresholdName, ThresholdResult } from '../../src/audit/model/threshold.ts';
import { parseUnit } from '../../src/units/parse.ts';

const place = { sheet: 'Monitor', row: 2, column: 'E' };
const [mil, um, mms] = ['mil', 'µm', 'mm/s'].map((text) => parseUnit(text)!);

/** A threshold that acts there; only what groups look at. */
function at(name: ThresholdName, effective: number | null, more: Partial<ThresholdResult> = {}) {
  const setpoint = name.startsWith('counter') ? -5 : 5;
  const usual = {
    name,
    setpoint,
    multiplier: 1,
    effective,
    verdict: 'within',
    spread: null,
    unreachable: [],
  };
  return { ...usual, ...more } as unknown as ThresholdResult;
}

function member(tag: string, danger: ThresholdResult | number, more: Partial<Member> = {}): Member {
  return {
    ...{ tag, machine: 'K-1', group: 'G', voting: '2oo3', places: { group: place, voting: place } },
    ...{ bypass: false, faulty: false, batch: '', sharedUncertainty: null, limit: null },
    ...{ unit: mil!, detection: null, asFound: null, notAudited: null },
    thresholds: [typeof danger === 'number' ? at('danger', danger) : danger],
    ...more,
  };
}

const policy = parsePolicy({});
const evaluate = (
  members: readonly Member[],
  voting = { m: 2, n: 3 },
  of: object = {},
  name: ThresholdName = 'danger',
) => evaluateGroup('K-1', 'G', voting, name, members, parsePolicy(of)).map(({ result }) => result);

describe('a seat', () => {
  const first = member('A', 5);
  const seat = (one: Member) => voterOf(one, 'danger', 'running', first);

  it('is idle for the first of its reasons, though where it would act is known', () => {
    for (const [more, why] of [
      [{ bypass: null, faulty: true }, 'its bypass mark is not understood'],
      [{ bypass: true, faulty: true }, 'in bypass'],
      [
        { faulty: true, notAudited: 'not known' as const },
        'marked faulty: its gap voltage is outside the fault limits',
      ],
      [{ thresholds: [at('alert', 5)] }, 'no such setpoint'],
      [{ thresholds: [at('danger', 5, { setpoint: null })] }, 'no such setpoint'],
      [{ thresholds: [at('danger', 5, { verdict: 'incomplete' })] }, 'not known'],
      [
        { thresholds: [at('danger', 5, { verdict: 'unreachable', unreachable: ['above full scale'] })] },
        'above full scale',
      ],
      [{ unit: mms! }, 'its unit does not fit the group'],
    ] as const)
      expect(seat(member('B', 5, more)), why).toMatchObject({ tag: 'B', effective: null, why });
    expect(seat(member('B', 6))).toEqual({ tag: 'B', setpoint: 5, effective: 6, why: null });
    const strange = seat(member('B', 5, { unit: mms! }));
    expect(strange.setpoint).toBeNull();
    expect(seat(member('B', 5, { thresholds: [] })).setpoint).toBeNull();
  });

  it('is in the unit and detection of the first member (by hand)', () => {
    // 76.2 µm zero to peak are 152.4 peak to peak, 6 mil.
    const peak = member('A', 5, { detection: 'p-p' });
    const other = member('B', at('danger', 76.2, { setpoint: 63.5 }), { unit: um!, detection: '0-p' });
    const found = voterOf(other, 'danger', 'running', peak);
    expect(found.effective).toBeCloseTo(6, 12);
    expect(found.setpoint).toBeCloseTo(5, 12);
    expect(voterOf(other, 'danger', 'running', first).effective).toBeCloseTo(3, 12);
  });

  it('is the one of its stage: without a multiplier of its own it acts as ever', () => {
    const own = member('A', 5, { thresholds: [at('danger', 5), at('danger', 15, { multiplier: 3 })] });
    expect(thresholdOf(own, 'danger', 'running')?.effective).toBe(5);
    expect(thresholdOf(own, 'danger', 'start-up')?.effective).toBe(15);
    expect(thresholdOf(first, 'danger', 'start-up')?.effective).toBe(5);
    expect(voterOf(own, 'danger', 'start-up', own).setpoint).toBe(15);
  });

  it('has the least limit of all that can be compared (by hand)', () => {
    const limited = (...limits: [number | null, typeof mil][]) =>
      leastLimit(
        limits.map(([limit, unit], index) => member(`T${index}`, 5, { limit, unit: unit! })),
        first,
      );
    expect(limited([6, mil], [127, um], [8, mil], [null, mil])).toBeCloseTo(5, 12);
    expect(limited([1, mms], [6, mil])).toBe(6);
    expect(limited([null, mil], [1, mms])).toBeNull();
  });
});

describe('members of one group', () => {
  it('have its machine and its name, however they are written; one without a machine belongs to the only one', () => {
    const groups = (...of: readonly (readonly [tag: string, machine: string, group: string])[]) =>
      membersByGroup(of.map(([tag, machine, group]) => member(tag, 5, { machine, group }))).map((all) =>
        all.map(({ tag }) => tag).join(''),
      );
    expect(
      groups(['A', 'K-1', 'drive  end'], ['B', ' k-1 ', 'Drive end '], ['C', 'K-2', 'drive end']),
    ).toEqual(['AB', 'C']);
    expect(groups(['A', '', 'G'], ['B', 'K-1', 'G'])).toEqual(['BA']);
    expect(groups(['A', '', 'G'], ['B', 'K-1', 'G'], ['C', 'K-2', 'G'])).toEqual(['A', 'B', 'C']);
    expect(groups(['A', '', 'G'], ['B', '', 'G'], ['C', 'K-1', ''])).toEqual(['AB']);
    expect(groups(['A', 'K-1', 'one'], ['B', 'K-1', 'o ne'])).toEqual(['A', 'B']);
  });

  it('are out by what the group, else the site, else nothing says of them', () => {
    const members = [
      member('A', 5, { bypass: true }),
      member('B', 5, { faulty: true }),
      member('C', 5, { bypass: null }),
      member('D', 5, { bypass: true, faulty: true }),
    ];
    const out = (of: object, all = members) =>
      membersOut(all, parsePolicy(of)).map(({ tag, because, policy: said, saidBy }) =>
        [tag, because, said, saidBy].join(' '),
      );
    expect(out({})).toEqual(['A bypassed no-trip ', 'B faulty no-trip ', 'D bypassed no-trip ']);
    expect(out({ bypassed: 'reduce', faulty: 'trip' })).toEqual([
      'A bypassed reduce site',
      'B faulty trip site',
      'D bypassed reduce site',
    ]);
    const groups = [
      { machine: 'K-2', group: 'G', bypassed: 'no-trip', faulty: 'no-trip' },
      { group: ' g ', bypassed: 'reduce' },
      { machine: 'k-1 ', group: 'G', bypassed: 'trip' },
      { machine: 'K-1', group: 'H', bypassed: 'no-trip' },
    ];
    // The entry of this machine counts alone; what it leaves open is the site’s.
    expect(out({ faulty: 'reduce', groups })).toEqual([
      'A bypassed trip group',
      'B faulty reduce site',
      'D bypassed trip group',
    ]);
    const elsewhere = members.map((one) => ({ ...one, machine: 'K-3' }));
    expect(out({ groups }, elsewhere)[0]).toBe('A bypassed reduce group');
    expect(out({ groups: groups.slice(2) }, elsewhere)[0]).toBe('A bypassed no-trip ');
  });

  it('leave a vote of as many as the voting takes or are listed, whichever is more (by counting)', () => {
    const out = (...policies: ('no-trip' | 'trip' | 'reduce')[]) =>
      policies.map((one, index) => ({
        tag: `T${index}`,
        because: 'bypassed' as const,
        policy: one,
        saidBy: null,
      }));
    expect(voteLeft({ m: 2, n: 3 }, 3, [])).toEqual({ m: 2, n: 3 });
    // A seat that is not listed casts no vote.
    expect(voteLeft({ m: 2, n: 3 }, 2, [])).toEqual({ m: 2, n: 2 });
    expect(voteLeft({ m: 2, n: 3 }, 4, [])).toEqual({ m: 2, n: 4 });
    expect(voteLeft({ m: 2, n: 3 }, 3, out('trip', 'reduce'))).toEqual({ m: 1, n: 1 });
    expect(voteLeft({ m: 2, n: 2 }, 2, out('no-trip'))).toBe('cannot trip');
  });
});

describe('where a group acts', () => {
  it('of the counter direction is negative, its members counted away from zero', () => {
    const counter = (tag: string, effective: number) => member(tag, at('counter danger', effective));
    const [result] = evaluate(
      [counter('A', -4), counter('B', -7), counter('C', -6)],
      undefined,
      {},
      'counter danger',
    );
    expect(result).toMatchObject({
      effective: -6,
      intended: -5,
      decidedBy: ['C'],
      late: true,
      multiplier: 1,
    });
  });

  it('that has tripped already is told by those whose votes are cast alone', () => {
    const [result] = evaluate(
      [member('A', 5, { bypass: true }), member('B', 5, { faulty: true }), member('C', 5)],
      { m: 1, n: 3 },
      { bypassed: 'trip', faulty: 'no-trip' },
    );
    expect(result).toMatchObject({ effective: 0, canTrip: true, decidedBy: ['A'], liveVoting: 'tripped' });
  });

  it('that cannot trip acts nowhere, decided by nobody', () => {
    const [result] = evaluate([member('A', 5, { bypass: true }), member('B', 5)], { m: 2, n: 2 });
    expect(result).toMatchObject({
      effective: null,
      canTrip: false,
      decidedBy: [],
      liveVoting: 'cannot trip',
    });
    const idle = at('danger', null, { verdict: 'unreachable', unreachable: ['above full scale'] });
    const [other] = evaluate([member('A', idle), member('B', 5)], { m: 2, n: 2 });
    expect(other).toMatchObject({ effective: null, canTrip: false, decidedBy: [], liveVoting: '2oo2' });
  });

  it('is late beyond what the tolerance allows, and beyond a limit of the running danger alone (by hand)', () => {
    // 5/0.95 = 5.26.
    const of = (effective: number, limit: number | null = null) =>
      evaluate([member('A', at('danger', effective), { limit })], { m: 1, n: 1 })[0];
    expect([of(5.26)?.late, of(5.27)?.late]).toEqual([false, true]);
    expect([of(5.2, 5.1)?.beyondLimit, of(5, 5.1)?.beyondLimit, of(5)?.limit]).toEqual([true, false, null]);
    const [alert] = evaluate([member('A', at('alert', 5), { limit: 4 })], { m: 1, n: 1 }, {}, 'alert');
    expect([alert?.limit, alert?.beyondLimit]).toEqual([null, false]);
    const both = evaluate(
      [member('A', 5, { limit: 6, thresholds: [at('danger', 5), at('danger', 15, { multiplier: 3 })] })],
      { m: 1, n: 1 },
    );
    expect(both.map(({ multiplier, limit, beyondLimit }) => [multiplier, limit, beyondLimit])).toEqual([
      [1, 6, false],
      [3, null, false],
    ]);
  });
});

describe('the chances of a group', () => {
  const spread = { ofDivisor: 0.03, ofNumerator: 0, both: 0 };
  const uncertain = (tag: string, effective: number, more: Partial<Member> = {}) =>
    member(tag, at('danger', effective, { spread }), more);

  it('are against its limit, or where late begins, by its live members alone', () => {
    const limited = evaluate([uncertain('A', 5, { limit: 5 })], { m: 1, n: 1 })[0]?.chance;
    expect([limited?.of, limited?.limit]).toEqual(['its limit', 5]);
    // At its limit, as likely as not.
    expect(limited?.later).toBeCloseTo(0.5, 12);
    const open = evaluate([uncertain('A', 5)], { m: 1, n: 1 })[0]?.chance;
    expect([open?.of, open?.limit]).toEqual(['where late begins', 5 / 0.95]);
    const outOf = (bypass: boolean) =>
      evaluate(
        [uncertain('A', 5, { limit: 5 }), uncertain('B', 1, { bypass })],
        { m: 1, n: 2 },
        { bypassed: 'no-trip' },
      )[0]?.chance;
    expect(outOf(true)?.later).toBeCloseTo(0.5, 12);
    expect(outOf(false)?.later).toBeCloseTo(0, 12);
  });

  it('take what a zero adds in the unit of the group (by hand)', () => {
    // 25.4 µm expanded, 12.7 standard, half a mil; at 5.5 with a limit of 5: Φ(1).
    const zero = { ofDivisor: 0, ofNumerator: 25.4, both: 0 };
    const position = member('B', at('danger', 139.7, { setpoint: 127, spread: zero }), { unit: um! });
    const first = member('A', at('danger', 1), { limit: 5 });
    const [result] = evaluate([first, position], { m: 2, n: 2 });
    expect(result?.chance?.later).toBeCloseTo(0.8413447460685429, 9);
    expect(result?.chance?.exact).toEqual(['A']);
  });

  it('take what the ends of a loop share in the unit of the group (by hand)', () => {
    // In mil 1, 0.1 and 10 %: at a limit of 5, 1 − 2·5·0.1 + 0.25 = 0.25, so that 5.25 is Φ(0.25/0.25).
    const ends = { ofDivisor: 0.1, ofNumerator: 25.4, both: 2.54 };
    const loop = member('B', at('danger', 133.35, { setpoint: 127, spread: ends }), { unit: um! });
    const [result] = evaluate([member('A', at('danger', 1), { limit: 5 }), loop], { m: 2, n: 2 });
    expect(result?.chance?.later).toBeCloseTo(0.8413447460685429, 9);
  });

  it('once corrected are those at the setpoint, but of what cannot act', () => {
    const idle = at('danger', null, { verdict: 'unreachable', unreachable: ['above full scale'] });
    const members = [uncertain('A', 6), member('B', idle), member('C', 6, { thresholds: [] })];
    const [worked] = evaluateGroup('K-1', 'G', { m: 1, n: 3 }, 'danger', members, policy);
    expect(
      worked?.correctable?.members.map(({ tag, threshold, corrected }) => [
        tag,
        threshold,
        corrected.threshold,
      ]),
    ).toEqual([
      ['A', 6, 5],
      ['B', Infinity, Infinity],
      ['C', Infinity, Infinity],
    ]);
  });

  it('of a vote that cannot trip are certain, of one that has tripped none', () => {
    const voter = { tag: 'A', effective: 5, setpoint: 5, spread, sharedUncertainty: null, batch: '' };
    const limit = { level: 6, of: 'its limit' as const };
    expect(groupChance([voter], 'tripped', limit, 2)).toBeUndefined();
    expect(groupChance([voter], 'cannot trip', limit, 2)?.chance).toMatchObject({
      later: 1,
      low: null,
      high: null,
    });
    const nobody = groupChance([], 'cannot trip', limit, 2);
    expect([nobody?.chance, nobody?.group.members.length]).toEqual([null, 1]);
    expect(groupChance([voter], { m: 1, n: 1 }, { ...limit, level: NaN }, 2)).toBeUndefined();
    // Nobody who acts has an uncertainty.
    const idle = { ...voter, effective: null };
    expect(groupChance([idle, { ...voter, spread: null }], { m: 1, n: 2 }, limit, 2)?.chance).toBeNull();
  });

  it('of members of one batch are those of one batch, however its label is written', () => {
    const voter = (batch: string) => ({
      tag: batch,
      effective: 5.9,
      setpoint: 5,
      spread,
      sharedUncertainty: 0.03,
      batch,
    });
    const of = (...labels: string[]) =>
      groupChance(labels.map(voter), { m: 2, n: 2 }, { level: 6, of: 'its limit' }, 2)?.chance;
    // Late by itself with Φ(−(6/5.9 − …)): one shared error makes both late together or none.
    const alone =
      groupChance([voter('x')], { m: 1, n: 1 }, { level: 6, of: 'its limit' }, 2)?.chance?.later ?? NaN;
    expect(of('Lot 7', ' lot  7 ')?.later).toBeCloseTo(alone, 9);
    expect(of('Lot 7', 'Lot 8')?.later).toBeCloseTo(1 - (1 - alone) ** 2, 9);
    expect(of('Lot 7', 'Lot7')?.later).toBeCloseTo(1 - (1 - alone) ** 2, 9);
    expect(of('Lot 7', 'Lot 8')?.ends).toBeNull();
    const open = of('', 'Lot 8')?.ends;
    expect(open?.independent).toBeCloseTo(1 - (1 - alone) ** 2, 9);
    expect(open?.allShared).toBeCloseTo(alone, 9);
    expect(
      groupChance([voter('')], { m: 1, n: 1 }, { level: 6, of: 'its limit' }, 2)?.chance?.ends,
    ).toBeNull();
  });
});

describe('votings that are written', () => {
  const facts = (...votings: (string | Partial<Member>)[]) => {
    const members = votings.map((one, index) =>
      member(`T${index}`, 5, typeof one === 'string' ? { voting: one } : one),
    );
    const { groups, diagnostics } = evaluateGroups(members, policy);
    return [
      groups[0]?.result.voting,
      ...diagnostics.map(
        ({ member: of, column, fact }) => `${of.tag} ${column} ${fact.rule} ${fact.severity}`,
      ),
    ];
  };

  it('contradict each other: the one that asks most counts, and of equals the one with fewer to ask', () => {
    const contradicts = [0, 1, 2].map((at) => `T${at} voting voting-contradicts warning`);
    expect(facts('2oo3', '1oo3', '2oo3')).toEqual(['2oo3', ...contradicts]);
    expect(facts('1oo3', '3oo3', '')).toEqual(['3oo3', ...contradicts]);
    expect(facts('2oo3', '1oo2', '2oo3')).toEqual(['2oo3', ...contradicts]);
    const size = [0, 1, 2].map((at) => `T${at} group group-size-differs warning`);
    expect(facts('2oo3', '2oo2', '2oo3')).toEqual(['2oo2', ...contradicts, ...size]);
    expect(facts('2oo2', '2oo3', '2oo2')).toEqual(['2oo2', ...contradicts, ...size]);
  });

  it('are none, missing, or without a group', () => {
    expect(facts('2oo3', 'two', '2oo3')).toEqual(['2oo3', 'T1 voting voting-not-understood warning']);
    expect(facts('', '', '')).toEqual([
      undefined,
      ...[0, 1, 2].map((at) => `T${at} voting voting-missing warning`),
    ]);
    expect(facts('3oo2', '3oo2')).toEqual([
      undefined,
      'T0 voting voting-not-understood warning',
      'T1 voting voting-not-understood warning',
    ]);
    const alone = (voting: string) => facts({ group: '', voting });
    expect(alone('1oo2')).toEqual([undefined, 'T0 group group-missing warning']);
    expect(alone('1oo1')).toEqual([undefined]);
    expect(alone('')).toEqual([undefined]);
    expect(alone('any')).toEqual([undefined, 'T0 group group-missing warning']);
  });

  it('are told with what they need and what is listed', () => {
    const { diagnostics } = evaluateGroups([member('A', 5), member('B', 5)], policy);
    expect(diagnostics[0]?.fact.values).toEqual({ group: 'G', voting: '2oo3', needed: 3, listed: 2 });
    const contradicted = evaluateGroups([member('A', 5), member('B', 5, { voting: '1oo3' })], policy)
      .diagnostics[0];
    expect(contradicted?.fact.values).toEqual({ group: 'G', votings: ['2oo3', '1oo3'], used: '2oo3' });
  });

  it('and what is found of a group, with how grave it is', () => {
    const found = (members: readonly Member[], of: object = {}) =>
      evaluateGroups(members, parsePolicy(of)).groups.flatMap(({ facts: all }) =>
        all.map(({ rule, severity }) => `${rule} ${severity}`),
      );
    const of = (effective: number, name: ThresholdName = 'danger', more: Partial<Member> = {}) =>
      ['A', 'B', 'C'].map((tag) => member(tag, at(name, effective), more));
    expect(found(of(5))).toEqual([]);
    expect(found(of(6))).toEqual(['group-late critical']);
    expect(found(of(6, 'alert'))).toEqual(['group-late warning']);
    expect(found(of(5.1, 'danger', { limit: 5.05 }))).toEqual(['group-beyond-limit critical']);
    expect(found(of(5, 'danger', { limit: 6 }))).toEqual([]);
    expect(found(of(5, 'danger', { bypass: true }))).toEqual(['group-cannot-trip critical']);
    expect(found(of(5, 'alert', { bypass: true }))).toEqual(['group-cannot-act warning']);
    expect(found(of(5, 'danger', { bypass: true }), { bypassed: 'trip' })).toEqual(['group-tripped warning']);
    const { groups } = evaluateGroups(
      [member('A', 5, { bypass: true }), member('B', 5), member('C', 5, { bypass: null })],
      policy,
    );
    expect(groups[0]?.facts[0]?.values).toMatchObject({
      idle: [
        { tag: 'A', why: 'in bypass' },
        { tag: 'C', why: 'its bypass mark is not understood' },
      ],
    });
  });
});

describe('setpoints of one group', () => {
  const slips = (own: Partial<Member> & { readonly danger: number }, first: Partial<Member> = {}) => {
    const of = (setpoint: number) => [at('danger', 5, { setpoint })];
    const { groups } = evaluateGroups(
      [
        member('A', 5, { ...first, voting: '1oo2' }),
        member('B', 5, { voting: '1oo2', thresholds: of(own.danger), ...own }),
      ],
      policy,
    );
    return peerSlips(groups).map(({ member: at, fact }) => {
      const values = fact.values as { readonly factor?: number };
      return `${at.tag} ${values.factor} ${fact.severity}`;
    });
  };

  it('that differ by the factor between two units are said, others are not (by hand)', () => {
    expect(slips({ danger: 10 })).toEqual(['B 2 warning']);
    expect(slips({ danger: 2.5 })).toEqual(['B 2 warning']);
    expect(slips({ danger: 127 })).toEqual(['B 25.4 warning']);
    expect(slips({ danger: 0.197 })).toEqual(['B 25.4 warning']);
    expect(slips({ danger: 5 })).toEqual([]);
    expect(slips({ danger: 9 })).toEqual([]);
    // In their own units they are the same; in unlike ones they are not compared.
    expect(slips({ danger: 127, unit: um! })).toEqual([]);
    expect(slips({ danger: 127, unit: null })).toEqual([]);
    expect(slips({ danger: 5, thresholds: [at('danger', null, { setpoint: null })] })).toEqual([]);
    expect(slips({ danger: 5, thresholds: [at('alert', 5, { setpoint: 10 })] })).toEqual([]);
    expect(slips({ danger: 10, unit: mms! })).toEqual([]);
    // 2.5 mil zero to peak are 5 peak to peak; where one states nothing, the numbers are compared.
    expect(slips({ danger: 2.5, detection: '0-p' }, { detection: 'p-p' })).toEqual([]);
    expect(slips({ danger: 5, detection: '0-p' }, { detection: 'p-p' })).toEqual(['B 2 warning']);
    expect(slips({ danger: 2.5, detection: '0-p' })).toEqual(['B 2 warning']);
  });

  it('are those of the running danger alone, once a pair', () => {
    const alert = (setpoint: number) => at('alert', 5, { setpoint });
    const multiplied = at('danger', 15, { multiplier: 3, setpoint: 5 });
    const { groups } = evaluateGroups(
      [
        member('A', 5, { voting: '1oo3', thresholds: [alert(3), at('danger', 5), multiplied] }),
        member('B', 5, { voting: '1oo3', thresholds: [alert(6), at('danger', 5)] }),
        member('C', 5, { voting: '1oo3', thresholds: [alert(3), at('danger', 10, { setpoint: 10 })] }),
      ],
      policy,
    );
    expect(peerSlips(groups).map(({ member: of }) => of.tag)).toEqual(['C']);
  });
});

describe('the chances of a machine', () => {
  /** Late with ½ at a limit of 5, never once corrected. */
  const even = (tag: string, threshold = 5) => ({
    ...{ tag, threshold, shared: 0, own: 0.01, batch: null },
    corrected: { threshold: threshold === Infinity ? Infinity : 1, shared: 0, own: 0.01, batch: null },
  });
  const group = (machine: string, ...members: ReturnType<typeof even>[]): MachineGroup => ({
    machine,
    group: { m: 1, limit: 5, members },
    uncertain: true,
  });

  it('are of its groups together, its name written one way or another; of machines with an uncertainty alone', () => {
    const found = machineChances([
      group('K-1', even('A')),
      group(' k-1', even('B')),
      { ...group('K-2', even('C')), uncertain: false },
    ]);
    expect(found.map(({ machine, groups }) => `${machine} ${groups}`)).toEqual(['K-1 2']);
    expect(found[0]?.any).toBeCloseTo(0.75, 12);
    expect(found[0]?.all).toBeCloseTo(0.25, 12);
    expect(found[0]?.expected).toBeCloseTo(1, 12);
    // One group that can be used, and one that can not.
    expect(machineChances([group('K-1', even('A', NaN))])).toEqual([]);
  });

  it('say the best two and three of few channels, the best two of many, and none where nothing is late', () => {
    const budgets = (count: number) =>
      machineChances([group('K', ...Array.from({ length: count }, (_, at) => even(`T${at}`)))]).flatMap(
        ({ corrections }) => corrections.best.map(({ budget }) => budget),
      );
    expect([1, 2, 3, 4].map(budgets)).toEqual([[], [2], [2, 3], [2, 3]]);
    const many = machineChances(Array.from({ length: 13 }, (_, at) => group('K', even(`T${at}`))));
    expect(many[0]?.corrections.best.map(({ budget }) => budget)).toEqual([2]);
    const most = machineChances(Array.from({ length: 12 }, (_, at) => group('K', even(`T${at}`))));
    expect(most[0]?.corrections.best.map(({ budget }) => budget)).toEqual([2, 3]);
    const nothing = { singly: [], latest: null, expected: [], best: [] };
    expect(machineChances([group('K', even('A', 1))])[0]?.corrections).toEqual(nothing);
    // What cannot act cannot be corrected.
    expect(machineChances([group('K', even('A', Infinity))])[0]?.corrections).toEqual(nothing);
    const [one] = machineChances([
      group('K', even('A', Infinity)),
      group('K', even('B'), even('C', Infinity)),
    ]);
    expect([one?.corrections.singly, one?.corrections.best]).toEqual([[], []]);
    expect(one?.corrections.expected.map(({ tag }) => tag)).toEqual(['B']);
  });

  it('say which channel acts latest for its setpoint, and what its correction alone leaves', () => {
    const late = { ...even('A'), corrected: { ...even('A').corrected, threshold: 4.9 } };
    const later = even('B', 6);
    const [machine] = machineChances([group('K', late), group('K', later)]);
    expect(machine?.corrections.latest?.tag).toBe('B');
    // A is as likely late as not.
    expect(machine?.corrections.latest?.left).toBeCloseTo(0.5, 9);
    // Earlier than it is meant to act is none.
    const early = { ...even('C'), corrected: { ...even('C').corrected, threshold: 5.5 } };
    expect(machineChances([group('K', early)])[0]?.corrections.latest).toBeNull();
  });
});
