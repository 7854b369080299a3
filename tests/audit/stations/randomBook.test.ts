import fc from 'fast-check';
import { expect, it } from 'vitest';
import { kinds, verdicts } from '../oracle/facts.ts';
import { criticalSubjects } from '../oracle/truth.ts';
import { mutations } from './mutations.ts';
import { mutatedBook, randomBook, type RandomBook } from './randomBook.ts';
import { slips } from './slips.ts';

const chainFacts = [
  'gain',
  'gainUncertainty',
  'zeroUncertainty',
  'loop',
  'batch',
  'sharedUncertainty',
  'slowRoll',
  'chainLength',
] as const;
const made: RandomBook[] = [];

/** The same books for every test. */
function books(): readonly RandomBook[] {
  const collect = fc.property(fc.gen(), (gen) => {
    made.push(randomBook(gen));
  });
  if (made.length === 0) fc.assert(collect, { seed: 20_260_101, numRuns: 400 });
  return made;
}

it('random workbooks reach every kind, verdict as left and as found, line of evidence, slip and reason to act', () => {
  const seen = new Map<string, number>();
  const see = (what: string): void => {
    seen.set(what, (seen.get(what) ?? 0) + 1);
  };
  books().forEach(({ facts, truth, slips: names, closeCall, policy }) => {
    for (const name of names) see(name);
    for (const { kind } of facts) see(kind ?? 'no kind');
    for (const one of facts)
      for (const name of chainFacts) if (one[name] !== null && one[name] !== '') see(name);
    for (const { out, liveVoting } of truth.groups) {
      see(liveVoting);
      for (const { because, policy: vote, saidBy } of out) see(`${because} ${vote} ${saidBy}`);
    }
    for (const { state, thresholds, inBypass, asFound } of truth.channels) {
      if (inBypass) see('in bypass');
      for (const { verdict, governedBy, interimSetpoint, multiplier } of thresholds) {
        see(`${verdict} ${state}`);
        see(`governed by ${governedBy}`);
        if (interimSetpoint !== null) see('interim');
        if (multiplier > 1) see('multiplied');
      }
      if (asFound) see(`was ${asFound.verdict}`);
    }
    for (const { multiplier, canTrip } of truth.groups) see(`group ×${multiplier} ${canTrip}`);
    for (const { code, severity } of truth.attention) see(`${severity} ${code}`);
    if (truth.exitCode === 0) see('nothing critical');
    if (truth.attention.length === 0) see('all well');
    see(policy.rule);
    if (closeCall) see('close call');
  });
  const states = verdicts.flatMap((one) => [`${one} as found`, `${one} as left`, `was ${one}`]);
  const lines = ['listed sensitivity', 'calibration record', 'known vibration', 'null'].map(
    (one) => `governed by ${one}`,
  );
  const critical = [
    'late',
    'unreachable',
    'undetermined',
    'incomplete',
    'beyond limit',
    'may act beyond limit',
  ];
  const others = ['already there', 'in bypass', 'group cannot trip', 'group late', 'not read'];
  const wanted = [
    ...kinds,
    'no kind',
    ...states,
    ...lines,
    ...Object.keys(slips),
    'in bypass',
    'interim',
    'multiplied',
  ];
  const codes = [...critical, ...others].map((one) => `critical ${one}`);
  const more = [
    'nothing critical',
    'all well',
    'guarded',
    'simple',
    'warning early',
    'group ×3 true',
    'group ×2 false',
  ];
  const votes = ['bypassed trip site', 'bypassed reduce group', 'faulty trip site', 'faulty no-trip null'];
  const live = ['tripped', 'cannot trip', '1oo1', '1oo2', '2oo2'];
  expect([...seen.keys()]).toEqual(
    expect.arrayContaining([...wanted, ...codes, ...more, ...chainFacts, ...votes, ...live]),
  );
  expect(seen.get('close call') ?? 0).toBeLessThan(books().length / 5);
});

it('every tag stands in both tables, and what cannot be read is not among the facts', () => {
  books().forEach(({ pages, facts, truth, slips: names }) => {
    for (const name of ['Channels', 'Monitor']) {
      const rows = pages.find((one) => one.name === name)!.rows;
      for (const { tag } of facts) expect(rows.filter((row) => row.includes(tag))).toHaveLength(1);
    }
    expect(truth.notRead.length > 0).toBe(
      names.includes('misspelled header') || names.includes('second pair of tables'),
    );
    if (truth.notRead.length > 0) expect(truth.exitCode).toBe(1);
    for (const { text, sheet, what } of truth.notRead) {
      const { rows } = pages.find((one) => one.name === sheet)!;
      if (what === 'column') expect(rows.flat().some((cell) => String(cell).startsWith(text))).toBe(true);
    }
  });
});

it('a channel that is not within is never silent: danger that is not early is critical, all else a warning', () => {
  books().forEach(({ truth }) => {
    const critical = criticalSubjects(truth);
    for (const { tag, machine, verdict, thresholds } of truth.channels) {
      const said = truth.attention.filter((one) => one.tag === tag);
      if (verdict !== 'within') expect(said).not.toEqual([]);
      const grave = thresholds.some(
        (one) => one.name.endsWith('danger') && !['within', 'early'].includes(one.verdict),
      );
      if (grave) expect(critical).toContain(`${machine} / ${tag}`);
    }
  });
});

it('no panel level is later than any line allows, and no interim setpoint stands where it would be late', () => {
  books().forEach(({ facts, truth, policy }) => {
    for (const { tag, thresholds } of truth.channels) {
      const { configured, fullScale, loop } = facts.find((one) => one.tag === tag)!;
      for (const { panel, interimSetpoint, setpoint, lines, verdict, multiplier } of thresholds) {
        if (interimSetpoint !== null) {
          expect(verdict).toBe('late');
          expect(interimSetpoint).toBe(panel);
          expect(Math.abs(interimSetpoint)).toBeLessThanOrEqual(
            Math.min(Math.abs(setpoint!), fullScale ?? Infinity),
          );
        }
        // On straight lines through zero what is shown at S is S²·m/T: a line with its upper end at T shows no less.
        if (panel === null || configured === null || tag.startsWith('AX') || loop !== null) continue;
        for (const { effective, high, by } of lines) {
          if (by === 'calibration record') continue;
          const latest = policy.rule === 'guarded' ? (high ?? effective!) : effective!;
          expect(panel).toBeLessThanOrEqual(((multiplier * setpoint! ** 2) / latest) * (1 + 1e-9));
        }
      }
    }
  });
});

it('every mutation is critical by the oracle, and all are reached', () => {
  const seen = new Set<string>();
  const property = fc.property(fc.gen(), (gen) => {
    const mutated = mutatedBook(gen);
    if (!mutated || mutated.closeCall) return;
    seen.add(mutated.mutation);
    expect(criticalSubjects(mutated.truth), mutated.mutation).toContain(mutated.subject);
    expect(mutated.truth.exitCode).toBe(1);
  });
  fc.assert(property, { seed: 20_260_101, numRuns: 400 });
  expect([...seen].toSorted()).toEqual(Object.keys(mutations).toSorted());
});
