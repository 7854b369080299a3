import type { ChannelFacts, Evidence, Kind, Points } from '../oracle/facts.ts';
import type { Dice } from '../records/plan.ts';
import { planChain } from './chainFacts.ts';
import { detectionsOf, inDetection, unitsOf, type Units } from './units.ts';

/** A level of a channel as its cell states it, in a detection of its own. */
export interface Stated {
  readonly value: number;
  readonly detection: string;
}

export interface PlannedChannel {
  /** What the cells say. */
  readonly cells: ChannelFacts;
  /** What can be told from them. */
  readonly facts: ChannelFacts;
  readonly units: Units;
  /** Detection of the setpoints; blank where none is stated. */
  readonly detection: string;
  readonly fullScale: Stated | null;
  readonly limit: Stated | null;
  readonly reading: Stated | null;
  /** What stands in cells where nothing can be used: by column, in place of its value. */
  readonly written: Readonly<Record<string, string | number | null>>;
}

export interface PlannedStation {
  readonly channels: readonly PlannedChannel[];
  /** Where the units stand: in headers, then all channels measure displacement in one unit, or in columns of their own. */
  readonly unitsIn: 'headers' | 'columns';
  /** `k` of the uncertainties where their header states it. */
  readonly headerCoverage: number | null;
  /** Detections of full scale, limit and reading where their headers state them for all. */
  readonly perHeader: readonly string[] | null;
}

/** Usual sizes (common practice, no source), in mil, in/s, g and %. */
const sizes: Readonly<Record<Kind, { readonly danger: readonly [number, number]; readonly step: number }>> = {
  radial: { danger: [3, 8], step: 0.1 },
  axial: { danger: [12, 30], step: 0.5 },
  velocity: { danger: [0.3, 1], step: 0.01 },
  acceleration: { danger: [2, 12], step: 0.1 },
  loop: { danger: [60, 95], step: 1 },
};

/** A number of few digits. */
function short(value: number, step: number): number {
  return Number((Math.round(value / step) * step).toPrecision(8));
}

export function planStation(dice: Dice): PlannedStation {
  const { whole, pick } = dice;
  const unitsIn = pick(['headers', 'columns'] as const);
  const metric = pick([false, true]);
  const allKinds: readonly Kind[] =
    unitsIn === 'headers'
      ? ['radial', 'radial', 'axial']
      : ['radial', 'axial', 'velocity', 'acceleration', 'loop'];
  const machines = ['Feed pump', 'Gas turbine', 'Fan 3'].slice(0, whole(1, 3));
  const headerCoverage = pick([null, null, null, 3]);
  const onlyRadial = unitsIn === 'columns' || pick([true, false]);
  const detection = onlyRadial && unitsIn === 'headers' ? pick(['', 'p-p', '0-p']) : '';
  const perHeader = unitsIn === 'headers' ? [0, 1, 2].map(() => other(dice, 'radial', detection)) : null;
  const channels: PlannedChannel[] = [];
  for (const machine of machines) {
    const clusters = whole(1, 2);
    for (let cluster = 0; cluster < clusters; cluster++) {
      const kind = unitsIn === 'headers' && onlyRadial ? 'radial' : pick(allKinds);
      const size = whole(1, 3);
      const group = pick([null, `Brg ${cluster + 1}`, `Brg ${cluster + 1}`]);
      const shared: Shared = {
        machine,
        kind,
        group,
        voting: group === null ? null : `${whole(1, size)}oo${size}`,
        multiplier: kind === 'loop' ? null : pick([null, null, 1, 2, 3]),
        units: unitsOf(kind, metric),
        detection: unitsIn === 'headers' ? detection : pick(detectionsOf(kind)),
        headerCoverage,
        perHeader,
      };
      for (let member = 0; member < size; member++)
        channels.push(
          planChannel(dice, shared, `${kind.slice(0, 2).toUpperCase()}-${channels.length + 101}`),
        );
    }
  }
  return { channels, unitsIn, headerCoverage, perHeader };
}

interface Shared {
  readonly machine: string;
  readonly kind: Kind;
  readonly group: string | null;
  readonly voting: string | null;
  readonly multiplier: number | null;
  readonly units: Units;
  readonly detection: string;
  readonly headerCoverage: number | null;
  /** Detections of full scale, limit and reading where their headers state them for all. */
  readonly perHeader: readonly string[] | null;
}

function planChannel(dice: Dice, shared: Shared, tag: string): PlannedChannel {
  const { pick, real } = dice;
  const { machine, kind, group, voting, multiplier, units, detection, headerCoverage } = shared;
  const { danger: range, step } = sizes[kind];
  const maybe = <T>(chance: number, value: () => T): T | null => (real(0, 1) < chance ? value() : null);
  const size = (value: number): number => short(value * units.perUsual, step * units.stepPerUsual);
  const danger = size(real(...range));
  const amount = (from: number, to: number): number => size((danger / units.perUsual) * real(from, to));
  const axial = kind === 'axial';
  const stated = (at: number, value: number): Stated => ({
    value,
    detection: axial || kind === 'loop' ? '' : (shared.perHeader?.[at] ?? other(dice, kind, detection)),
  });
  const scales = pick<[number, number]>([
    [1.3, 4],
    [1.3, 4],
    [0.5, 0.95],
  ]);
  const fullScale = maybe(0.6, () => stated(0, amount(...scales)));
  const limit = maybe(0.3, () => stated(1, amount(0.9, 1.7)));
  const reading = maybe(0.4, () => stated(2, amount(0.05, 1.05) * (axial ? pick([1, 1, -1]) : 1)));
  const zeroConfigured = axial ? maybe(0.92, () => short(real(-12, -8), 0.1)) : null;
  const configured = units.sensitivity;
  const measured = planEvidence(dice, shared, zeroConfigured);
  const chain = planChain(dice, kind, units, danger, measured);
  // The sensitivity of a loop is what its ends say.
  const byEnds = chain.loop && (configured * (chain.loop.at100 - chain.loop.at0)) / 16;
  const found = byEnds === null ? measured : { ...measured, sensitivity: Number(byEnds.toPrecision(4)) };
  const left = maybe(0.3, () => leftEvidence(dice, planEvidence(dice, shared, zeroConfigured), found));
  const usable = ({ value, detection: own }: Stated): number | null =>
    inDetection(kind, value, own, detection);
  const level = (one: Stated | null): number | null => one && usable(one);
  const facts: ChannelFacts = {
    ...chain,
    tag,
    machine,
    kind,
    configured,
    alert: amount(0.4, 0.8),
    danger,
    counterAlert: axial ? maybe(0.5, () => amount(0.4, 0.8)) : null,
    counterDanger: axial ? maybe(0.5, () => amount(0.6, 1.1)) : null,
    fullScale: level(fullScale),
    multiplier,
    resolution: detection === '0-p' ? null : maybe(0.5, () => short(step * units.stepPerUsual, 0.001)),
    limit: level(limit),
    reading: level(reading),
    zeroConfigured,
    direction: axial ? pick(['toward', 'away', 'toward', 'away', 'toward', 'away', null]) : null,
    faultHigh: units.displacement ? maybe(0.3, () => short(real(-3, -0.5), 0.1)) : null,
    faultLow: units.displacement ? maybe(0.3, () => short(real(-20, -16), 0.1)) : null,
    group,
    voting,
    bypass: real(0, 1) < 0.1,
    coverage: headerCoverage ?? (found.uncertainty === null ? null : pick([null, null, 1, 3])),
    found,
    left,
    unusable: [],
    swing: detection === '0-p' ? 2 : 1,
    perMil: units.perMil,
  };
  return { cells: facts, facts, units, detection, fullScale, limit, reading, written: {} };
}

/** A detection for a level beside setpoints of another; unlike ones are not always both stated. */
function other({ pick }: Dice, kind: Kind, setpoint: string): string {
  if (kind !== 'radial') return pick([setpoint, setpoint, ...detectionsOf(kind)]);
  return setpoint === '0-p' ? pick(['p-p', '0-p']) : pick(['', '', 'p-p']);
}

function planEvidence(dice: Dice, { kind, units }: Shared, zeroConfigured: number | null): Evidence {
  const { pick, real, whole } = dice;
  const maybe = <T>(chance: number, value: () => T): T | null => (real(0, 1) < chance ? value() : null);
  const near = (from: number, to: number): number =>
    short(units.sensitivity * real(from, to), units.sensitivity / 1000);
  const sensitivity = pick([
    () => units.sensitivity,
    () => near(0.97, 1.03),
    () => near(0.9, 1.1),
    () => near(0.7, 1.3),
  ])();
  const radial = kind === 'radial';
  const record = radial ? maybe(0.3, () => planRecord(dice, units)) : null;
  const gapVoltage =
    record === null
      ? radial
        ? maybe(0.6, () => short(real(-16.5, -3.5), 0.1))
        : null
      : short(record[0]![1] + real(0.3, 0.7) * (record.at(-1)![1] - record[0]![1]), 0.1);
  const ofCheck = near(0.75, 1.25);
  return {
    sensitivity,
    uncertainty: maybe(0.5, () => short(real(0.003, 0.05), 0.001)),
    gapVoltage,
    zero:
      zeroConfigured === null
        ? null
        : maybe(0.9, () => short(zeroConfigured + pick([0, 0, 0.1, -0.1, real(-2, 2)]), 0.1)),
    record,
    check: radial
      ? maybe(0.15, () =>
          Array.from({ length: whole(1, 3) }, (_, at) => {
            const level = (at + 2) * units.perUsual;
            return [level, level * ofCheck] as const;
          }),
        )
      : null,
  };
}

/** What is measured again: not always the zero, and no record without one as found. */
function leftEvidence({ pick }: Dice, again: Evidence, found: Evidence): Evidence {
  const record = found.record === null ? null : again.record;
  return {
    ...again,
    zero: pick([again.zero, null]),
    check: null,
    record,
    gapVoltage:
      record === null ? pick([again.record === null ? again.gapVoltage : null, null]) : again.gapVoltage,
    uncertainty: pick([again.uncertainty, null]),
  };
}

/** Straight, or of two slopes that meet in its middle, neither near the median of the steps. */
function planRecord({ pick, real, whole }: Dice, { sensitivity, perMil }: Units): Points {
  const steps = 2 * whole(3, 6);
  const [one, two] = pick([
    [1, 1],
    [0.75, 0.75],
    [1.2, 1.2],
    [1.1, 0.8],
    [0.85, 0.55],
  ]).map((part) => short(sensitivity * part * real(0.98, 1.02), sensitivity / 1000));
  const step = (80 / steps) * perMil;
  const middle = steps / 2;
  return Array.from({ length: steps + 1 }, (_, at): [number, number] => {
    const slopes = Math.min(at, middle) * (one ?? 0) + Math.max(0, at - middle) * (two ?? 0);
    return [short(10 * perMil + at * step, 0.001 * perMil), short(-1.9 - (slopes * step) / 1000, 0.00001)];
  });
}
