import type { ChannelFacts, Evidence, Points } from '../oracle/facts.ts';
import type { PlannedChannel, PlannedStation, Stated } from './plan.ts';
import { inDetection } from './units.ts';

type Mutation = (channel: PlannedChannel, station: PlannedStation) => PlannedChannel | undefined;

/** Changes of one input that leave a danger late, without effect, not known or beyond the machine's limit. */
export const mutations: Readonly<Record<string, Mutation>> = {
  'sensitivity low': (channel) => {
    const { left, found } = channel.facts;
    const low = (e: Evidence): Evidence => ({ ...e, sensitivity: (channel.facts.configured ?? NaN) * 0.5 });
    // Measured ends that say otherwise would contradict it.
    return alter(channel, { loop: null, ...(left ? { left: low(left) } : { found: low(found) }) });
  },
  'no sensitivity': (channel) => {
    const { left, found } = channel.facts;
    if (left || found.record || found.check) return undefined;
    return alter(channel, { found: { ...found, sensitivity: null } });
  },
  'full scale below danger': (channel, station) => {
    const fullScale = level(channel, station, 0, 0.8);
    return fullScale && { ...alter(channel, { fullScale: (channel.facts.danger ?? NaN) * 0.8 }), fullScale };
  },
  'limit far below danger': (channel, station) => {
    const limit = level(channel, station, 1, 0.4);
    // Made so high that neither an early danger nor one without its zero stays below the limit.
    if (!limit || channel.facts.kind === 'axial') return undefined;
    return { ...alter(channel, { limit: (channel.facts.danger ?? NaN) * 0.4 }), limit };
  },
  'in bypass': (channel) => alter(channel, { bypass: true }),
  'no danger': (channel) => alter(channel, { danger: null }),
  'record flat': (channel) => {
    const { left, found, kind, configured } = channel.facts;
    if (kind !== 'radial' || left || configured === null) return undefined;
    const record = straight(configured * 0.5, channel.units.perMil);
    return alter(channel, { found: { ...found, record, gapVoltage: Number(record[4]![1].toFixed(1)) } });
  },
  'known vibration low': (channel) => {
    const { left, found, kind, configured } = channel.facts;
    if (kind !== 'radial' || left || configured === null) return undefined;
    const level = 4 * channel.units.perUsual;
    return alter(channel, { found: { ...found, check: [[level, level * configured * 0.5]] } });
  },
  'zero moved': (channel) => {
    const { left, found, kind, configured, danger, zeroConfigured, direction } = channel.facts;
    if (kind !== 'axial' || left || configured === null || danger === null) return undefined;
    if (zeroConfigured === null || direction === null) return undefined;
    const moved = ((direction === 'away' ? -1 : 1) * danger * configured) / 1000;
    return alter(channel, {
      found: { ...found, sensitivity: configured, zero: Number((zeroConfigured - 0.5 * moved).toFixed(2)) },
    });
  },
  'zero not measured': (channel) =>
    channel.facts.kind === 'axial'
      ? alter(channel, { found: { ...channel.facts.found, zero: null } })
      : undefined,
  'faulty before it trips': (channel) => {
    const { kind, configured, danger, zeroConfigured } = channel.facts;
    if (kind !== 'axial' || configured === null || danger === null || zeroConfigured === null)
      return undefined;
    const half = (danger * configured) / 2000;
    return alter(channel, {
      faultHigh: Number((zeroConfigured + half).toFixed(2)),
      faultLow: Number((zeroConfigured - half).toFixed(2)),
    });
  },
};

function alter(channel: PlannedChannel, change: Partial<ChannelFacts>): PlannedChannel {
  return { ...channel, cells: { ...channel.cells, ...change }, facts: { ...channel.facts, ...change } };
}

/** A part of danger, stated in the detection of its column. */
function level(
  { facts, detection }: PlannedChannel,
  { perHeader }: PlannedStation,
  at: number,
  part: number,
): Stated | undefined {
  const { kind, danger } = facts;
  if (kind === null || danger === null) return undefined;
  const own = kind === 'axial' ? '' : (perHeader?.[at] ?? detection);
  const value = inDetection(kind, danger * part, detection, own);
  return value === null ? undefined : { value, detection: own };
}

function straight(sensitivity: number, perMil: number): Points {
  return Array.from({ length: 9 }, (_, at): [number, number] => {
    const gap = 10 + 20 * at;
    return [gap * perMil, Number(((-sensitivity * gap * perMil) / 1000 - 1).toFixed(5))];
  });
}
