import { expect, it } from 'vitest';
import { curveOf, displacementOf } from './curve.ts';
import type { ChannelFacts, PolicyFacts, Points } from './facts.ts';
import type { ThresholdName, ThresholdTruth } from './judge.ts';
import { known } from './lines.ts';
import { early } from './panel.ts';
import { measured, nothing, plainChannel, usualPolicy } from './plainChannel.ts';
import { criticalSubjects, truthOf, type Truth } from './truth.ts';

/** Worked examples and figures by hand; the source stands with each. */
function truth(
  some: Partial<ChannelFacts> | readonly Partial<ChannelFacts>[],
  by: Partial<PolicyFacts> = {},
) {
  const all = 'length' in some ? some : [some];
  return truthOf(
    all.map((one) => ({ ...plainChannel, ...one })),
    { ...usualPolicy, ...by },
  );
}

function threshold({ channels }: Truth, name: ThresholdName = 'danger', multiplier = 1): ThresholdTruth {
  return channels[0]!.thresholds.find((one) => one.name === name && one.multiplier === multiplier)!;
}

function straight(sensitivity: number, from: number, to: number, step: number): Points {
  const count = Math.round((to - from) / step) + 1;
  return Array.from({ length: count }, (_, at) => {
    const gap = from + at * step;
    return [gap, (-sensitivity * gap) / 1000];
  });
}

it('the monotone cubic gives the published values of RPN 14 (Fritsch and Carlson 1980; example of the NAG library)', () => {
  const x = [7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20];
  const f = [0, 2.7643e-5, 0.04375, 0.16918, 0.46943, 0.94374, 0.99864, 0.99992, 0.99999];
  const curve = curveOf(
    x.map((gap, at) => [gap, f[at]!]),
    'monotone cubic',
  );
  const q = [7.99, 9.191, 10.392, 11.593, 12.794, 13.995, 15.196, 16.397, 17.598, 18.799, 20];
  const published = [0, 0.464, 0.9645, 0.9965, 0.9992, 0.9998, 0.9999, 1, 1, 1, 1];
  q.forEach((gap, at) => {
    expect(Math.abs(curve.voltsAt(gap) - published[at]!)).toBeLessThan(5e-5 + 1e-12);
  });
});

it('M-out-of-N acts at the M-th smallest: 4, 4.301 and 3.7 mil (derivation, no source)', () => {
  for (const [voting, acts] of [
    ['1oo3', 3.7],
    ['2oo3', 4],
    ['3oo3', 4.3010752688172],
  ] as const) {
    const member = (tag: string, sensitivity: number) => ({
      tag,
      ...measured(sensitivity),
      danger: 4,
      group: 'G',
      voting,
    });
    const { groups } = truth([member('a', 200), member('b', 186), member('c', 800 / 3.7)]);
    const danger = groups.find((one) => one.threshold === 'danger');
    expect(danger?.effective).toBeCloseTo(acts, 12);
    expect(danger?.late).toBe(voting === '3oo3');
  }
});

it('a check at levels of 198, 200 and 202 has k of t with 2 degrees of freedom: 4.53 · 2/√3 (JCGM 100 table G.2)', () => {
  const { sensitivity, uncertainty } = known(
    [
      [1, 198],
      [1, 200],
      [1, 202],
    ],
    2,
  );
  expect(sensitivity).toBeCloseTo(200, 12);
  expect(uncertainty! * 200).toBeCloseTo((4.53 * 2) / Math.sqrt(3), 1);
  expect(known([[4, 800]], 2)).toEqual({ sensitivity: 200, uncertainty: null });
});

it('20 % low makes a threshold 25 % late; its interval and panel level by hand', () => {
  // 5·200/160 = 6.25; 6.25/1.03 = 6.068, 6.25/0.97 = 6.443; 5·0.8·0.97 = 3.88, two digits down 3.8.
  const one = threshold(truth(measured(160, { uncertainty: 0.03 })));
  expect(one).toMatchObject({ effective: 6.25, verdict: 'late', panel: 3.8, interimSetpoint: 3.8 });
  expect(one.low).toBeCloseTo(6.25 / 1.03, 12);
  expect(one.high).toBeCloseTo(6.25 / 0.97, 12);
  expect(threshold(truth(measured(160, { uncertainty: 0.03 }), { rule: 'simple' })).panel).toBeCloseTo(4, 12);
});

it('the guard band decides, at the coverage of the policy (ILAC-G8:09/2019 4.2: w = U)', () => {
  // 191/200 = 0.955: ±0.5 % is inside 0.95, ±2 % across; 2 % at k = 4 is 1 %, across too; 0.5 % at k = 1 is 1 %.
  const verdict = (uncertainty: number, coverage: number | null) =>
    threshold(truth({ ...measured(191, { uncertainty }), coverage })).verdict;
  expect(verdict(0.005, null)).toBe('within');
  expect(verdict(0.02, null)).toBe('undetermined');
  expect(verdict(0.005, 1)).toBe('undetermined');
  expect(verdict(0.02, 10)).toBe('within');
});

it('rounds down to the step, or to two digits, and never off a step', () => {
  expect(early(3.98, 0.1)).toBeCloseTo(3.9, 12);
  expect(early(0.3, 0.1)).toBeCloseTo(0.3, 12);
  expect(early(3, 0.1)).toBeCloseTo(3, 12);
  expect(early(128, null)).toBeCloseTo(120, 12);
  expect(early(0.0379, null)).toBeCloseTo(0.037, 12);
  expect(early(2.9, 3)).toBeNull();
  expect(early(-1, 1)).toBeNull();
});

it('a record that puts danger at 8 mil governs a listed sensitivity that puts it at 6', () => {
  // 6·200/150 = 8; panel 6·150/200 = 4.5.
  const record = straight(150, 10, 90, 10);
  const one = threshold(truth({ danger: 6, ...measured(200, { gapVoltage: -7.5, record }) }));
  expect(one).toMatchObject({
    verdict: 'late',
    governedBy: 'calibration record',
    panel: 4.5,
    interimSetpoint: 4.5,
  });
  expect(one.effective).toBeCloseTo(8, 9);
  expect(one.lines.map(({ by, verdict }) => `${by} ${verdict}`)).toEqual([
    'listed sensitivity within',
    'calibration record late',
  ]);
});

it('on a bent record the swing solves V(g0 − T/2) − V(g0 + T/2) = S·Kc, and cannot be shown beyond its ends', () => {
  // 0.2 V/mil to 50 mil, 0.1 from there: T at 50 mil is 1 V/0.15 = 6.667 mil on straight pieces.
  const bent: Points = [10, 20, 30, 40, 50, 60, 70, 80, 90].map((gap) => [
    gap,
    gap <= 50 ? -0.2 * gap : -10 - 0.1 * (gap - 50),
  ]);
  expect(displacementOf(curveOf(bent, 'linear'), 50, 1)).toBeCloseTo(20 / 3, 9);
  const cubic = curveOf(bent, 'monotone cubic');
  const acts = displacementOf(cubic, 50, 1)!;
  expect(cubic.voltsAt(50 - acts / 2) - cubic.voltsAt(50 + acts / 2)).toBeCloseTo(1, 9);
  expect(displacementOf(cubic, 88, 1)).toBeNull();
  // 12 mil and a record from 10 mil on: 4 mil of swing. Danger of 5 by the list is out of reach, and not shown by the record.
  const one = threshold(truth(measured(200, { gapVoltage: -2.4, record: straight(200, 10, 30, 5) })));
  expect(one.lines.map(({ effective, verdict }) => [effective, verdict])).toEqual([
    [5, 'unreachable'],
    [null, 'undetermined'],
  ]);
});

it('a known vibration is a line of its own', () => {
  const one = threshold(truth(measured(200, { check: [[4, 640]] })));
  expect(one).toMatchObject({ effective: 6.25, verdict: 'late', governedBy: 'known vibration', panel: 4 });
});

it('now: worse by its correction is late, and the uncertainty as found serves as left', () => {
  // 191 as left is within by itself; ±2 % of the reading as found leaves it undetermined.
  const worse = truth({ ...measured(200), left: { ...nothing, sensitivity: 160 } });
  expect(worse.channels[0]).toMatchObject({
    verdict: 'late',
    state: 'as left',
    asFound: { verdict: 'within' },
  });
  expect(worse.exitCode).toBe(1);
  const kept = { ...measured(160, { uncertainty: 0.02 }), left: { ...nothing, sensitivity: 191 } };
  expect(truth(kept).channels[0]!.verdict).toBe('undetermined');
  const axial = { kind: 'axial', zeroConfigured: -10, direction: 'toward', alert: 15, danger: 20 } as const;
  const found = measured(160, { zero: -10 });
  expect(truth({ ...axial, ...found }).channels[0]!.verdict).toBe('late');
  expect(truth({ ...axial, ...found, left: { ...nothing, sensitivity: 200 } }).channels[0]!.verdict).toBe(
    'incomplete',
  );
});

it('a position acts at (S·Kc + s·(V0c − V0m))/Km and at V0c + s·S·Kc in volts', () => {
  const axial = {
    kind: 'axial',
    alert: 15,
    danger: 20,
    zeroConfigured: -10,
    direction: 'toward',
    counterAlert: 15,
    counterDanger: 20,
    ...measured(200, { zero: -11 }),
  } as const;
  // +5 mil: 25 and −15; the monitor shows 15 at 20 and −25 at −20.
  const shifted = truth(axial);
  expect(threshold(shifted)).toMatchObject({ effective: 25, verdict: 'late', panel: 15 });
  expect(threshold(shifted, 'counter danger')).toMatchObject({
    effective: -15,
    verdict: 'early',
    panel: -25,
  });
  // −10 + 4 = −6 V, −10 − 4 = −14 V: a fault limit of −7 V is met first, one of −13 V only by the other way.
  expect(threshold(truth({ ...axial, faultHigh: -7 })).verdict).toBe('unreachable');
  expect(threshold(truth({ ...axial, faultLow: -13 })).verdict).toBe('late');
  const same = { ...axial, ...measured(200, { zero: -10 }) };
  expect(threshold(truth(same)).verdict).toBe('within');
  expect(threshold(truth({ ...same, direction: null, faultLow: -13 })).verdict).toBe('unreachable');
  // No measured zero: nothing is known, but that 160 for 200 alone is 25 % late.
  expect(threshold(truth({ ...axial, ...measured(200) }))).toMatchObject({
    effective: null,
    verdict: 'incomplete',
  });
  expect(threshold(truth({ ...axial, ...measured(160) }))).toMatchObject({ effective: 25, verdict: 'late' });
});

it('groups belong to their machine, count bypass as infinite and are judged with the multiplier on', () => {
  const member = (tag: string, machine: string, more: Partial<ChannelFacts> = {}) => ({
    tag,
    machine,
    group: 'Brg',
    voting: '2oo2',
    ...more,
  });
  const { groups, exitCode } = truth([
    member('a', 'Pump', { multiplier: 3, fullScale: 10 }),
    member('b', 'Pump', { multiplier: 3, fullScale: 20 }),
    member('c', 'Fan'),
    member('d', 'Fan', { bypass: true }),
  ]);
  const dangers = groups.filter((one) => one.threshold === 'danger');
  expect(dangers.map((one) => [one.machine, one.multiplier, one.effective])).toEqual([
    ['Pump', 1, 5],
    ['Pump', 3, null],
    ['Fan', 1, null],
  ]);
  expect(exitCode).toBe(1);
});

it('what is critical: already there, beyond the limit, in bypass; early is a warning', () => {
  // 2.4 shown is 2.4·200/160 = 3 mil: the alert; 4 is 5: danger. 5.2/1.03 to 5.2/0.97 = 5.361: may act beyond 5.3.
  const of = (some: Partial<ChannelFacts>) =>
    truth(some).attention.map(({ severity, code, threshold: name }) => `${severity} ${code} ${name}`);
  const there = [...of({ ...measured(160), reading: 2.4 }), ...of({ ...measured(160), reading: 4 })];
  expect(there).toContain('warning already there alert');
  expect(there).toContain('critical already there danger');
  expect(of({ ...measured(1000 / 5.2, { uncertainty: 0.03 }), limit: 5.3 })).toContain(
    'critical may act beyond limit danger',
  );
  expect(of({ limit: 4.9 })).toEqual(['critical beyond limit danger']);
  expect(of({ bypass: true })).toEqual(['critical in bypass danger']);
  expect(of(measured(220))).toEqual(['warning early alert', 'warning early danger']);
  expect(truth(measured(220)).exitCode).toBe(0);
  expect(criticalSubjects(truth({ bypass: true }))).toEqual(['Pump / V-1']);
  expect(truth({ bypass: true }).summary).toMatchObject({ within: 0, inBypass: 1 });
});

it('evidence that is there and unusable keeps a threshold from being within', () => {
  expect(truth({ unusable: ['gap voltage'] }).channels[0]!.verdict).toBe('incomplete');
  expect(truth({ unusable: ['gap voltage'], ...measured(160) }).channels[0]!.verdict).toBe('late');
  expect(truth({ kind: null }).channels[0]!.verdict).toBe('incomplete');
  expect(truth({ danger: null, ...measured(160) }).channels[0]!.verdict).toBe('incomplete');
});

it('a gain divides, a zero and a loop have their part of the interval: the figures of the method, section 17', () => {
  // 3700/190 = 19.474 with 50 mV and 1.5 %: Fieller, by its quadratic, 18.704 to 20.278.
  const axial = { kind: 'axial', zeroConfigured: -10, direction: 'toward', alert: 15, danger: 20 } as const;
  const uncertain = { zeroUncertainty: 0.1, ...measured(190, { zero: -9.7, uncertainty: 0.03 }) };
  const one = threshold(truth({ ...axial, ...uncertain }));
  expect(one.effective).toBeCloseTo(3700 / 190, 12);
  expect([one.low, one.high].map((end) => end?.toFixed(3))).toEqual(['18.704', '20.278']);
  // Gain 0.9 on a right sensitivity: 5/0.9.
  expect(threshold(truth({ gain: 0.9 })).effective).toBeCloseTo(5 / 0.9, 12);
  // Ends of 4.4 and 20 mA: 16.8 mA is 12.4/15.6 of the span.
  const loop = { at0: 4.4, at100: 20, at0Uncertainty: null, at100Uncertainty: null };
  const left = threshold(
    truth({ kind: 'loop', configured: 0.16, alert: 60, danger: 80, loop, ...measured(0.156) }),
  );
  expect(left.effective).toBeCloseTo(1240 / 15.6, 12);
});

it('votes out of service leave what the table of the method says (section 22)', () => {
  const of = (voting: string, out: number, bypassed: PolicyFacts['bypassed']) => {
    const size = Number(voting[3]);
    const members = Array.from({ length: size }, (_, at) => ({
      tag: `m${at}`,
      group: 'G',
      voting,
      bypass: at < out,
    }));
    return truth(members, { bypassed }).groups.find((one) => one.threshold === 'danger')?.liveVoting;
  };
  const cases = [
    ['2oo3', 1],
    ['2oo2', 1],
    ['1oo2', 1],
    ['2oo3', 2],
  ] as const;
  const row = (policy: PolicyFacts['bypassed']) => cases.map(([voting, out]) => of(voting, out, policy));
  expect(row('no-trip')).toEqual(['2oo2', 'cannot trip', '1oo1', 'cannot trip']);
  expect(row(null)).toEqual(row('no-trip'));
  expect(row('trip')).toEqual(['1oo2', '1oo1', 'tripped', 'tripped']);
  expect(row('reduce')).toEqual(['2oo2', '1oo1', '1oo1', '1oo1']);
});

it('a runout of 0.75 mil real and a danger at 6.25: 6.591 at 120°, 5.5 to 7 (method, section 20)', () => {
  // 3 mil shown at 0° less 4 at 90°, 200/160: 6.25 at 306.87° by the vectors (3·1.25, −5).
  const slowRoll = { amplitude: 4, phase: 90, sensitivityThen: 160, now: { amplitude: 3, phase: 0 } };
  const found = truth({ ...measured(160), slowRoll }).channels[0]!.runout!;
  expect(found.compensated?.amplitude).toBeCloseTo(6.25, 12);
  expect(found.compensated?.phase).toBeCloseTo(306.8698976458, 9);
  // −ρ·cos θ + √(T² − ρ²·sin²θ) with ρ 0.75: the component at 90°, the runout at 210°.
  const turned = { amplitude: 0.6, phase: 210, sensitivityThen: 160, now: null };
  const shown = { amplitude: 0.9, phase: 0 };
  const at120 = truth({ ...measured(160), slowRoll: { ...turned, phase: 120, now: shown } });
  const [, danger] = at120.channels[0]!.runout!.thresholds;
  expect(danger).toMatchObject({ least: 5.5, most: 7 });
  // The component without its runout lies at atan2(−0.75·sin 120°, 1.125 − 0.75·cos 120°) = −23.413°.
  const theta = ((120 + 23.413224446) * Math.PI) / 180;
  expect(danger!.real).toBeCloseTo(
    -0.75 * Math.cos(theta) + Math.sqrt(6.25 ** 2 - (0.75 * Math.sin(theta)) ** 2),
    8,
  );
});
