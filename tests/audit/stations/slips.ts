import type { ChannelFacts, Evidence } from '../oracle/facts.ts';
import type { Dice } from '../records/plan.ts';
import type { PlannedChannel, PlannedStation } from './plan.ts';

/** A quantity that stands in both tables with two values. */
interface Contradiction {
  readonly tag: string;
  readonly header: string;
  readonly value: number | string;
}

/** A station with what is wrong in its workbook; the facts are those that the workbook still tells. */
export interface Slipped {
  readonly station: PlannedStation;
  /** Usual header → what stands in its place. */
  readonly misspelled: ReadonlyMap<string, string>;
  readonly contradictions: readonly Contradiction[];
  readonly secondPair: boolean;
  readonly names: readonly string[];
}

/** Near misses of a header, and the usual one. */
const nearMisses = [
  ['Full scale', 'Full scael'],
  ['Uncertainty', 'Uncertanty'],
  ['Bypass', 'Bypased'],
  ['Set-point multiplier', 'Start-up mult.'],
] as const;

type Slip = (dice: Dice, before: Slipped) => Slipped;

export const slips: Readonly<Record<string, Slip>> = {
  'misspelled header': misspell,
  contradiction: contradict,
  'no kind': (dice, before) => change(dice, before, belongsElsewhere, withoutKind),
  'gap voltage without its sign': (dice, before) => change(dice, before, hasGapVoltage, withoutSign),
  'fault limit in words': (dice, before) => change(dice, before, isDisplacement, faultInWords),
  'no measured sensitivity': (dice, before) => change(dice, before, isPlain, withoutSensitivity),
  'record of two points': (dice, before) => change(dice, before, hasRecord, shortRecord),
  'second pair of tables': (_, before) => ({ ...before, secondPair: true }),
};

export const noSlips: Omit<Slipped, 'station'> = {
  misspelled: new Map(),
  contradictions: [],
  secondPair: false,
  names: [],
};

/** None, one or two of the slips; one that finds nothing to spoil leaves the station as it is. */
export function withSlips(dice: Dice, station: PlannedStation): Slipped {
  let slipped: Slipped = { ...noSlips, station };
  const chosen = dice.shuffled(Object.entries(slips)).slice(0, dice.pick([0, 1, 1, 2]));
  for (const [name, slip] of chosen) {
    const after = slip(dice, slipped);
    if (after !== slipped) slipped = { ...after, names: [...slipped.names, name] };
  }
  return slipped;
}

function withFacts(channel: PlannedChannel, facts: Partial<ChannelFacts>): PlannedChannel {
  return { ...channel, facts: { ...channel.facts, ...facts } };
}

function withEvidence(channel: PlannedChannel, evidence: Partial<Evidence>): PlannedChannel {
  const { found, left } = channel.facts;
  return withFacts(channel, { found: { ...found, ...evidence }, left: left && { ...left, ...evidence } });
}

function unusable(channel: PlannedChannel, what: string): PlannedChannel {
  return withFacts(channel, { unusable: [...channel.facts.unusable, what] });
}

function change(
  { pick }: Dice,
  before: Slipped,
  fits: (channel: PlannedChannel) => boolean,
  slip: (channel: PlannedChannel) => PlannedChannel,
): Slipped {
  const { channels } = before.station;
  const fitting = channels.filter((one) => fits(one) && Object.keys(one.written).length === 0);
  if (fitting.length === 0) return before;
  const chosen = pick(fitting);
  return {
    ...before,
    station: { ...before.station, channels: channels.map((one) => (one === chosen ? slip(one) : one)) },
  };
}

function isPlain({ facts }: Pick<PlannedChannel, 'facts'>): boolean {
  return facts.left === null && facts.found.record === null && facts.found.check === null;
}

function isDisplacement({ units }: PlannedChannel): boolean {
  return units.displacement;
}

function hasGapVoltage({ facts }: PlannedChannel): boolean {
  return facts.found.gapVoltage !== null && isPlain({ facts });
}

function hasRecord({ facts }: PlannedChannel): boolean {
  return facts.found.record !== null && facts.left === null;
}

/** Whether something in its rows belongs to another kind than radial. */
function belongsElsewhere({ facts }: PlannedChannel): boolean {
  const { kind, zeroConfigured, direction, counterAlert, counterDanger, found } = facts;
  if (kind === 'velocity' || kind === 'acceleration') return true;
  const axial = [zeroConfigured, direction, counterAlert, counterDanger, found.zero];
  return kind === 'axial' && axial.some((value) => value !== null);
}

function withoutKind(channel: PlannedChannel): PlannedChannel {
  return { ...withFacts(channel, { kind: null }), written: { ...channel.written, Kind: null } };
}

function withoutSign(channel: PlannedChannel): PlannedChannel {
  const volts = Math.abs(channel.facts.found.gapVoltage ?? 10);
  return {
    ...unusable(withEvidence(channel, { gapVoltage: null }), 'gap voltage'),
    written: { ...channel.written, 'Gap voltage': volts },
  };
}

function faultInWords(channel: PlannedChannel): PlannedChannel {
  return {
    ...unusable(withFacts(channel, { faultHigh: null }), 'fault limit'),
    written: { ...channel.written, 'Fault limit high': 'see drawing' },
  };
}

function withoutSensitivity(channel: PlannedChannel): PlannedChannel {
  return {
    ...withEvidence(channel, { sensitivity: null }),
    written: { ...channel.written, 'Measured sensitivity': null },
  };
}

/** Its record is left with its first two points, which are no curve. */
function shortRecord(channel: PlannedChannel): PlannedChannel {
  const written = { ...channel.written, points: 2 };
  return { ...unusable(withEvidence(channel, { record: null }), 'calibration record'), written };
}

function misspell({ pick }: Dice, before: Slipped): Slipped {
  const twice = before.contradictions.map(({ header }) => header);
  const [usual, near] = pick(nearMisses.filter(([one]) => !twice.includes(one)));
  const { channels } = before.station;
  const has = ({ facts, fullScale }: PlannedChannel): boolean => {
    if (usual === 'Full scale') return fullScale !== null;
    if (usual === 'Uncertainty') return facts.found.uncertainty !== null;
    return usual === 'Bypass' ? facts.bypass === true : facts.multiplier !== null;
  };
  if (!channels.some(has)) return before;
  const drop = (one: PlannedChannel): PlannedChannel => {
    if (usual === 'Full scale') return withFacts(one, { fullScale: null });
    if (usual === 'Bypass') return withFacts(one, { bypass: false });
    if (usual === 'Set-point multiplier') return withFacts(one, { multiplier: null });
    return withFacts(one, { found: { ...one.facts.found, uncertainty: null } });
  };
  return {
    ...before,
    misspelled: new Map([...before.misspelled, [usual, near]]),
    station: { ...before.station, channels: channels.map(drop) },
  };
}

/** One value of a channel stands in both tables, and not the same. */
function contradict({ pick }: Dice, before: Slipped): Slipped {
  const headers = ['Danger', 'Full scale', 'Gap voltage', 'Limit', 'Bypass', 'Uncertainty'];
  const header = pick(headers.filter((one) => !before.misspelled.has(one)));
  const { channels } = before.station;
  const value = (one: PlannedChannel): number | string | null => {
    const { danger, found, bypass, left } = one.facts;
    const numbers: Readonly<Record<string, number | null | undefined>> = {
      Danger: danger,
      'Full scale': one.facts.fullScale === null ? null : one.fullScale?.value,
      'Gap voltage': left === null && found.record === null ? found.gapVoltage : null,
      Limit: one.facts.limit === null ? null : one.limit?.value,
      Uncertainty: left === null && found.uncertainty !== null ? found.uncertainty * 100 : null,
    };
    if (header === 'Bypass') return bypass === true ? 'no' : 'yes';
    const own = numbers[header] ?? null;
    return own === null ? null : Number((own * 1.25).toPrecision(6));
  };
  const fitting = channels.filter((one) => value(one) !== null && Object.keys(one.written).length === 0);
  if (fitting.length === 0) return before;
  const chosen = pick(fitting);
  const drop = (one: PlannedChannel): PlannedChannel => {
    const { found } = one.facts;
    const without: Readonly<Record<string, Partial<ChannelFacts>>> = {
      Danger: { danger: null },
      'Full scale': { fullScale: null },
      'Gap voltage': { found: { ...found, gapVoltage: null } },
      Limit: { limit: null },
      Bypass: { bypass: null },
      Uncertainty: { found: { ...found, uncertainty: null } },
    };
    const dropped = withFacts(one, without[header] ?? {});
    const said = header === 'Bypass' && one.facts.bypass !== true ? { Bypass: 'no' } : {};
    return { ...unusable(dropped, header.toLowerCase()), written: { ...dropped.written, ...said } };
  };
  return {
    ...before,
    contradictions: [...before.contradictions, { tag: chosen.facts.tag, header, value: value(chosen) ?? '' }],
    station: { ...before.station, channels: channels.map((one) => (one === chosen ? drop(one) : one)) },
  };
}
