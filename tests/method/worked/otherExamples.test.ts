import { describe, expect, it } from 'vitest';
import type { Direction } from '../../../src/method/axial/position.ts';
import { axialEffective } from '../../../src/method/axial/threshold.ts';
import {
  positionChances,
  positionRatio,
  uncertainZeroBand,
} from '../../../src/method/axial/uncertainZero.ts';
import { bracketedRoot } from '../../../src/method/bracketedRoot.ts';
import { band } from '../../../src/method/decision/band.ts';
import { probabilityLater } from '../../../src/method/decision/probabilityLater.ts';
import { sensitivityAt, sensitivityByResponse, highPass, lowPass } from '../../../src/method/frequency.ts';
import { loopEffective, loopRatio, loopUncertainty } from '../../../src/method/loop.ts';
import { ratioBand, ratioBeyond, ratioSpread, productSpread } from '../../../src/method/ratio/ratio.ts';
import { isUpDownFault, upDown } from '../../../src/method/record/upDown.ts';
import { inOrder } from '../../../src/method/replay/inOrder.ts';
import { localToUtc, offsetsOf } from '../../../src/method/replay/localTime.ts';
import { replay } from '../../../src/method/replay/replay.ts';
import { constantLevel } from '../../../src/method/replay/setting.ts';
import { compensated, realAtDanger } from '../../../src/method/runout.ts';
import { runUpTrip } from '../../../src/method/runup/runUp.ts';
import { unbalanceCrossings, unbalancePeak, unbalanceResponse } from '../../../src/method/runup/unbalance.ts';
import { effectiveThreshold } from '../../../src/method/vibration/threshold.ts';
import { configuredFromGain, withGainUncertainty } from '../../../src/method/vibration/sensitivity.ts';
import { type Worked, worked } from './examples.ts';

function near({ tolerance }: Worked, value: number, expected: unknown): void {
  const wanted = Number(expected);
  const most = Math.max((tolerance.relative ?? 0) * Math.abs(wanted), tolerance.absolute ?? 0);
  expect(Math.abs(value - wanted), `${value} for ${wanted}`).toBeLessThanOrEqual(most);
}

const of = (what: string) => worked.filter((one) => one.what === what);
const numbersOf = (example: Worked) => example.inputs as Readonly<Record<string, number | undefined>>;

describe('ratios of uncertain quantities, worked by hand and by simulation, independent of this code', () => {
  it.each(of('axial'))('$id', (example) => {
    const { S, Kc, Km, V0c, V0m, s, uV0, U, L } = example.inputs as Record<string, number>;
    const direction: Direction = s === 1 ? 'toward' : 'away';
    const position = {
      setpoint: S!,
      configured: Kc!,
      measured: Km!,
      zeroConfigured: V0c!,
      zeroMeasured: V0m!,
      direction,
      uncertainty: U!,
      zeroUncertainty: 2 * uV0!,
    };
    near(example, axialEffective(S!, Kc!, Km!, V0c!, V0m!, direction), example.expected['T']);
    const { low, high } = uncertainZeroBand(position, 2);
    near(example, low, example.expected['low']);
    near(example, high, example.expected['high']);
    const { first, second, mean } = ratioSpread(positionRatio(position, 2)!);
    near(example, first, example.expected['u_first']);
    near(example, second, example.expected['u_second']);
    near(example, mean, example.expected['mean_second']);
    if (L === undefined) return;
    const { later, atRest } = positionChances(position, L, 2);
    near(example, later, example.expected['p_later']);
    near(example, atRest, example.expected['p_at_rest']);
  });

  it.each(of('gain'))('$id', (example) => {
    const { S, Kc, Km, g, U, Ug, m = 1, L } = example.inputs as Record<string, number>;
    const divisor = configuredFromGain(Kc!, g!);
    const both = withGainUncertainty(U!, Ug!);
    near(example, both, example.expected['U']);
    near(example, both / 2, example.expected['w']);
    near(example, effectiveThreshold(S!, divisor, Km!, m), example.expected['T']);
    const { low, high } = band(S!, divisor, Km!, both, m);
    near(example, low, example.expected['low']);
    near(example, high, example.expected['high']);
    near(example, probabilityLater(S!, L!, divisor, Km!, both, 2, m), example.expected['p_later']);
  });

  it.each(of('loop'))('$id', (example) => {
    const { S, span, I0, I100, u0, u100, L } = example.inputs as Record<string, number>;
    const [measured, believed] = [
      { at0: I0!, at100: I100! },
      { at0: 4, at100: 20 },
    ];
    const effective = loopEffective(S!, span!, measured, believed);
    near(example, effective, example.expected['T']);
    near(example, loopUncertainty(effective, span!, measured, u0!, u100!), example.expected['u_T']);
    const ratio = loopRatio(S!, span!, measured, believed, u0!, u100!);
    near(example, ratio.a / span! + I0!, example.expected['I_at_setpoint']);
    const { low, high } = ratioBand(ratio, 2);
    near(example, low, example.expected['low']);
    near(example, high, example.expected['high']);
    near(example, ratioBeyond(ratio, L!), example.expected['p_later']);
  });

  it.each(of('product'))('$id', (example) => {
    const { x, ux, y, uy } = example.inputs as Record<string, number>;
    const { first, second } = productSpread(x!, ux!, y!, uy!);
    near(example, first, example.expected['u_first']);
    near(example, second, example.expected['u_second']);
  });
});

describe('frequency and run-up, worked by hand and by simulation, independent of this code', () => {
  it.each(of('response'))('$id', (example) => {
    const { f, f0, zeta } = numbersOf(example);
    near(example, highPass(f!, f0!, zeta!), example.expected['ratio']);
    expect(highPass(f!, f0!, zeta!)).toBeCloseTo(example.recomputed!['ratio'] as number, 12);
  });

  it.each(of('high-pass-frequency'))('$id', (example) => {
    const { f0, zeta, ratio } = numbersOf(example);
    const f = bracketedRoot((x) => highPass(x, f0!, zeta!) - ratio!, 2 * f0!, 100 * f0!);
    near(example, f, example.expected['f']);
    near(example, f / f0!, example.expected['r']);
    expect(f).toBeCloseTo(example.recomputed!['f'] as number, 9);
  });

  it.each(of('threshold-at-frequency'))('$id', (example) => {
    const { f0, zeta, measured, measured_at, f, setpoint, configured } = numbersOf(example);
    const record = example.inputs['record'] as { f: number[]; K: number[] } | undefined;
    const response = (frequency: number): number =>
      zeta === undefined ? lowPass(frequency, f0!) : highPass(frequency, f0!, zeta);
    const found = record
      ? sensitivityAt({ frequencies: record.f, sensitivities: record.K }, f!)
      : sensitivityByResponse(measured!, response(f!), response(measured_at!));
    if (example.expected['K'] === null) {
      expect(found).toBeNaN();
      return;
    }
    near(example, found, example.expected['K']);
    near(example, effectiveThreshold(setpoint!, configured!, found, 1), example.expected['T']);
  });

  it.each(of('jeffcott'))('$id', (example) => {
    const { e, zeta, T, critical } = numbersOf(example);
    const { ratio, amplitude } = unbalancePeak(e!, zeta!);
    near(example, ratio, example.expected['peak_ratio']);
    near(example, amplitude, example.expected['peak']);
    near(example, unbalanceResponse(e!, zeta!, ratio), example.expected['peak']);
    const crossings = unbalanceCrossings(e!, zeta!, T!);
    const wanted = example.expected['crossings'] as number[];
    expect(crossings).toHaveLength(wanted.length);
    crossings.forEach((crossing, at) => {
      near(example, crossing, wanted[at]);
      near(example, crossing * critical!, (example.expected['crossing_speeds'] as number[])[at]);
    });
  });

  it.each(of('run-up'))('$id', (example) => {
    const {
      setpoint,
      configured,
      K,
      multiplier = 1,
      multiplier_below,
      rate = 0,
      delay_s = 0,
    } = numbersOf(example);
    const { speed, amplitude, what } = example.inputs as unknown as {
      speed: number[];
      amplitude: number[];
      what: string;
    };
    const points = speed.map((one, at) => {
      const read = amplitude[at]!;
      return what === 'real'
        ? { speed: one, real: read, indicated: (read * K!) / configured! }
        : { speed: one, real: (read * configured!) / K!, indicated: read };
    });
    const trip = runUpTrip(points, {
      setpoint: setpoint!,
      multiplier,
      multiplierSpeed: multiplier_below ?? Infinity,
      hold: rate * delay_s,
    });
    const same = (value: number, expected: unknown): void => {
      if (expected === null) expect(value).toBeNaN();
      else near(example, value, expected);
    };
    same(trip.acts, example.expected['acts']);
    same(trip.should, example.expected['should']);
    same(trip.realAtTrip, example.expected['real_at_act']);
    same(trip.peak, example.expected['peak']);
    same(trip.peakSpeed, example.expected['peak_speed']);
  });
});

describe('replay, worked by hand and by a timer stepped through the record, independent of this code', () => {
  it.each(of('replay'))('$id', (example) => {
    const {
      setpoint,
      configured,
      measured,
      delay_s,
      max_gap_s = Infinity,
      deadband = null,
    } = numbersOf(example);
    const { samples, mode } = example.inputs as { samples: [string, number | null][]; mode?: string };
    const origin = Math.min(...samples.map(([at]) => Date.parse(at)));
    const run = replay(constantLevel(setpoint!), constantLevel((setpoint! * measured!) / configured!), {
      delay: delay_s!,
      maxGap: max_gap_s,
      between: mode === 'hold' ? 'hold' : 'line',
      slack: 1e-6,
      deadband,
    });
    const given = samples.map(([at, reading]) => ({
      time: (Date.parse(at) - origin) / 1000,
      reading: reading ?? NaN,
    }));
    for (const { time, reading } of inOrder(given)) run.sample(time, reading);
    const { acts, should, late, spells } = run.end();
    // Examples give times to the millisecond.
    const same = (seconds: number, expected: unknown): void => {
      if (expected === null) expect(seconds).toBeNaN();
      else
        expect(Math.abs(1000 * seconds - (Date.parse(expected as string) - origin))).toBeLessThanOrEqual(0.5);
    };
    same(acts.proven, example.expected['acts']);
    same(acts.earliest, example.expected['earliest_acts']);
    same(should.proven, example.expected['should_have']);
    same(should.earliest, example.expected['earliest_should']);
    if (example.expected['late_s'] === null) expect(late).toBeNaN();
    else expect(Math.abs(late - (example.expected['late_s'] as number))).toBeLessThan(1e-9);
    if (example.expected['returns'] !== undefined) same(spells[0]!.returned, example.expected['returns']);
  });

  it.each(of('local-time'))('$id', (example) => {
    const { zone, local } = example.inputs as { zone: string; local: string[] };
    const utc = localToUtc(
      local.map((one) => Date.parse(`${one}Z`)),
      offsetsOf(zone),
    );
    const wanted = example.expected['utc'] as string[];
    expect(utc).toEqual(wanted.map((one) => (one === 'does not exist' ? one : Date.parse(one))));
  });
});

describe('runout and records up and down, worked by hand, independent of this code', () => {
  it.each(of('runout'))('$id', (example) => {
    const { V, R } = example.inputs as { V: [number, number]; R: [number, number] };
    const { Kc, Km, Kr = Km } = numbersOf(example);
    const real = compensated(
      { amplitude: V[0], phase: V[1] },
      { amplitude: R[0], phase: R[1] },
      Kc!,
      Km!,
      Kr!,
    );
    near(example, real.amplitude, example.expected['amplitude']);
    near(example, real.phase, example.expected['phase']);
  });

  it.each(of('real-at-danger'))('$id', (example) => {
    const { T, runout, angle } = numbersOf(example);
    const { real, least, most } = realAtDanger(T!, runout!, angle!);
    near(example, real, example.expected['real']);
    near(example, least, example.expected['least']);
    near(example, most, example.expected['most']);
  });

  it.each(of('up-down'))('$id', (example) => {
    const { g, ups, downs } = example.inputs as unknown as {
      g: number[];
      ups: number[][];
      downs: number[][];
    };
    const readings = ups.flatMap((up, cycle) => [
      ...g.map((gap, at) => ({ gap, volts: up[at]! })),
      ...g.map((gap, at) => ({ gap, volts: downs[cycle]![at]! })).reverse(),
    ]);
    const found = upDown(readings);
    if (isUpDownFault(found)) throw new Error(JSON.stringify(found));
    const { expected } = example;
    const same = (value: number, name: string) => {
      near(example, value, expected[name]);
    };
    (expected['mean'] as number[]).forEach((volt, at) => {
      near(example, found.mean.volts[at]!, volt);
    });
    same(found.span, 'span');
    same(1000 * found.sensitivity, 'sensitivity');
    same(found.hysteresis.volts, 'hysteresis');
    same(100 * found.hysteresis.ofSpan, 'hysteresis_percent');
    same(found.hysteresis.displacement, 'hysteresis_displacement');
    same(found.terminal.volts, 'terminal');
    same(100 * found.terminal.ofSpan, 'terminal_percent');
    same(found.independent.volts, 'independent');
    same(100 * found.independent.ofSpan, 'independent_percent');
    if (expected['repeatability'] === undefined) expect(found.repeatability).toBeUndefined();
    else {
      same(found.repeatability!.volts, 'repeatability');
      same(100 * found.repeatability!.ofSpan, 'repeatability_percent');
    }
  });
});

describe('the worked examples', () => {
  it('are 77, each of a kind that is examined', () => {
    expect(worked).toHaveLength(77);
    const examined = [
      ...[
        'equicorrelated-quantile',
        'equicorrelated-cdf',
        'equicorrelated-box',
        'group-late',
        'group-counts',
      ],
      ...[
        'group-quantiles',
        'machine-late',
        'rank',
        'plain-rank',
        'degraded',
        'axial',
        'gain',
        'loop',
        'product',
      ],
      ...['response', 'high-pass-frequency', 'threshold-at-frequency', 'jeffcott', 'run-up', 'replay'],
      ...['local-time', 'runout', 'real-at-danger', 'up-down'],
    ];
    expect(worked.filter(({ what }) => !examined.includes(what))).toEqual([]);
  });
});
