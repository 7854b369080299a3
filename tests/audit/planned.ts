import fc from 'fast-check';
import type { PlannedChannel, PlannedPolicy } from './oracle.ts';

/** A number between two ends in steps of a thousandth of the span, so that a failure shrinks to a short number. */
const between = (from: number, to: number) =>
  fc.integer({ min: 0, max: 1000 }).map((part) => from + ((to - from) * part) / 1000);
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null, freq: 2 });

interface Scale {
  readonly sensitivity: number;
  readonly danger: readonly [number, number];
}

/** Usual sizes in base units: µm, mm/s, m/s² and mV per each of them (common practice, no source). */
const scales: Readonly<Record<PlannedChannel['kind'], Scale>> = {
  radial: { sensitivity: 7.874, danger: [40, 400] },
  axial: { sensitivity: 7.874, danger: [150, 900] },
  velocity: { sensitivity: 3.937, danger: [5, 40] },
  acceleration: { sensitivity: 10.197, danger: [20, 300] },
};

function channel(index: number, kind: PlannedChannel['kind']): fc.Arbitrary<PlannedChannel> {
  const { sensitivity, danger } = scales[kind];
  const axial = kind === 'axial';
  const radial = kind === 'radial';
  const only = <T>(when: boolean, value: fc.Arbitrary<T>): fc.Arbitrary<T | null> =>
    when ? maybe(value) : fc.constant(null);
  return fc
    .record({
      configured: between(0.8, 1.2),
      ratio: fc.oneof(between(0.7, 1.4), between(0.9, 1.1), fc.constant(1)),
      empty: fc.integer({ min: 0, max: 14 }).map((part) => part === 14),
      uncertainty: maybe(between(0.002, 0.08)),
      coverage: maybe(fc.constantFrom(1, 1.96, 2, 2.58)),
      gain: maybe(fc.oneof(between(0.85, 1.15), fc.constant(1))),
      gainUncertainty: maybe(between(0, 0.03)),
      zeroUncertainty: axial ? maybe(between(0, 0.3)) : fc.constant(null),
      danger: between(danger[0], danger[1]),
      alert: between(0.3, 0.95),
      counterAlert: only(axial, between(0.3, 0.9)),
      counterDanger: only(axial, between(0.5, 1.5)),
      fullScale: maybe(fc.oneof(between(1.05, 4), between(0.6, 1))),
      multiplier: maybe(fc.constantFrom(1, 2, 3)),
      resolution: maybe(fc.constantFrom(0.01, 0.05, 0.1, 0.4)),
      limit: maybe(between(0.8, 1.6)),
      reading: maybe(between(0.05, 0.9)),
      growing: fc.constantFrom('no', 'evenly', 'doubling', 'both'),
      growth: between(0.001, 0.05),
      doubling: between(2, 90),
      alertDelay: maybe(between(0, 5)),
      dangerDelay: maybe(between(0, 5)),
      speed: maybe(between(900, 15_000)),
      gapVoltage: only(radial, between(-17.9, -2.1)),
      zero: axial ? maybe(between(-12, -8)) : fc.constant(null),
      zeroShift: fc.oneof(fc.constant(0), between(-6, 6)),
      direction: fc.constantFrom('toward', 'away'),
      asLeft: maybe(fc.oneof(between(0.7, 1.4), between(0.93, 1.07))),
      asLeftUncertainty: maybe(between(0.002, 0.08)),
      asLeftGapVoltage: only(radial || axial, between(-17.9, -2.1)),
      group: maybe(fc.constantFrom('1', '2')),
      bypass: fc.integer({ min: 0, max: 5 }).map((part) => part === 5),
    })
    .map((r): PlannedChannel => {
      const of = (part: number | null) => (part === null ? null : part * r.danger);
      const configured = r.configured * sensitivity;
      const growing = axial ? 'no' : r.growing;
      return {
        tag: `${kind.slice(0, 2).toUpperCase()}-${index}`,
        kind,
        configured,
        measured: r.empty ? null : configured * r.ratio,
        uncertainty: r.uncertainty,
        coverage: r.coverage,
        gain: r.gain,
        gainUncertainty: r.gainUncertainty,
        zeroUncertainty: r.zero === null ? null : r.zeroUncertainty,
        alert: r.alert * r.danger,
        danger: r.danger,
        counterAlert: of(r.counterAlert),
        counterDanger: of(r.counterDanger),
        fullScale: of(r.fullScale),
        multiplier: r.multiplier,
        resolution: of(r.resolution),
        limit: of(r.limit),
        reading: of(r.reading),
        growth: growing === 'evenly' || growing === 'both' ? r.growth * r.danger : null,
        doubling: growing === 'doubling' || growing === 'both' ? r.doubling : null,
        alertDelay: r.alertDelay,
        dangerDelay: r.dangerDelay,
        speed: r.speed,
        gapVoltage: r.gapVoltage,
        zeroConfigured: r.zero,
        zeroMeasured: r.zero === null ? null : r.zero + r.zeroShift,
        direction: axial ? r.direction : null,
        asLeft: r.asLeft === null ? null : configured * r.asLeft,
        asLeftUncertainty: r.asLeft === null ? null : r.asLeftUncertainty,
        asLeftGapVoltage: r.asLeft === null ? null : r.asLeftGapVoltage,
        group: r.group === null || r.empty ? null : `${kind} ${r.group}`,
        voting: null,
        bypass: r.bypass,
      };
    });
}

export interface Plan {
  readonly channels: readonly PlannedChannel[];
  readonly policy: PlannedPolicy;
  /** Whether units stand in the headers (then all channels measure displacement) or in unit columns. */
  readonly unitsIn: 'headers' | 'columns';
  /** Decides all that is only a matter of layout. */
  readonly layout: number;
}

const policy: fc.Arbitrary<PlannedPolicy> = fc.record({
  tolerance: fc.constantFrom(0.05, 0.02, 0.1),
  rule: fc.constantFrom('guarded', 'simple'),
  coverage: fc.constantFrom(2, 3),
  near: fc.constantFrom(-2, -1.5),
  far: fc.constantFrom(-18, -20),
});

/** Random workbooks: up to eight channels with their settings, voting groups and policy. */
export const plans: fc.Arbitrary<Plan> = fc
  .constantFrom('headers' as const, 'columns' as const)
  .chain((unitsIn) => {
    const kinds: PlannedChannel['kind'][] =
      unitsIn === 'headers' ? ['radial', 'axial'] : ['radial', 'axial', 'velocity', 'acceleration'];
    return fc.record({
      channels: fc
        .array(fc.constantFrom(...kinds), { minLength: 1, maxLength: 8 })
        .chain((all) => fc.tuple(...all.map((kind, index) => channel(index, kind))))
        .chain((all) =>
          fc
            .constantFrom('1oo1', '1oo2', '2oo2', '2oo3', '3oo3')
            .map((voting) => all.map((one) => ({ ...one, voting: one.group === null ? null : voting }))),
        ),
      policy,
      unitsIn: fc.constant(unitsIn),
      layout: fc.integer({ min: 0, max: 2 ** 31 - 1 }),
    });
  });
