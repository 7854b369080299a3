import type { Dimension } from '../../../units/unit.ts';
import { channelColumns } from '../tables/channelColumns.ts';
import type { ColumnSpec, Holds } from '../tables/columnSpec.ts';
import { settingsColumns } from '../tables/settingsColumns.ts';
import type { Matter } from './standing/certainties.ts';
import type { Concept } from './vocabulary/wordList.ts';

/** Quantities with a unit: of a header path only the one named last holds. */
export const hardQuantities: ReadonlySet<Concept> = new Set<Concept>([
  'sensitivity',
  'alert',
  'danger',
  'full scale',
  'gap voltage',
  'zero voltage',
  'uncertainty',
  'speed',
  'delay',
  'reading',
  'date',
]);

/** What a field can mean, by the ids of the columns of both tables. */
export type MeaningId = keyof typeof channelColumns | keyof typeof settingsColumns;

/** Sizes that are usual in a unit: numbers far outside them contradict the unit. */
interface UsualSize {
  readonly unit: string;
  readonly from: number;
  readonly to: number;
}

/** A meaning: the words for it, what it is measured in, how large it usually is, and what it is not. */
export interface Meaning {
  readonly id: MeaningId;
  /** Its name in messages and in a column map. */
  readonly name: string;
  readonly matter: Matter;
  readonly holds: Holds;
  readonly dimensions: readonly Dimension[];
  readonly usualUnit: string | null;
  /** Concepts of a header that name it, all of one of the lists. */
  readonly named: readonly (readonly Concept[])[];
  /** Concepts with which a header means something else. */
  readonly not: readonly Concept[];
  /** Absolute sizes, by unit; those of other units follow from them. */
  readonly sizes: readonly UsualSize[];
  /** A name of its kind may be a bare number. */
  readonly numbered: boolean;
  /** A channel can't be judged without it. */
  readonly needed: boolean;
}

type Own = Pick<Meaning, 'matter' | 'named'> &
  Partial<Pick<Meaning, 'not' | 'sizes' | 'numbered' | 'needed'>>;

const notValue: readonly Concept[] = [
  'deviation',
  'tolerance',
  'displacement limit',
  'uncertainty',
  'unit',
  'person',
  'remark',
  'date',
];
const notLevel: readonly Concept[] = [
  ...notValue,
  'delay',
  'multiplier',
  'resolution',
  'counter',
  'sensitivity',
  'gap voltage',
  'voting',
  'other',
];
const perDisplacement: readonly UsualSize[] = [{ unit: 'mV/mil', from: 20, to: 1200 }];
const displacement: readonly UsualSize[] = [{ unit: 'mil', from: 0.3, to: 80 }];

const own: Readonly<Partial<Record<MeaningId, Own>>> = {
  tag: { matter: 'tag', named: [['tag']], needed: true },
  machine: { matter: 'text', named: [['machine']], not: ['date', 'person'] },
  location: { matter: 'text', named: [['location']] },
  kind: { matter: 'text', named: [['kind']] },
  measured: {
    matter: 'sensitivity',
    named: [['sensitivity']],
    not: notValue,
    sizes: perDisplacement,
    needed: true,
  },
  configured: {
    matter: 'sensitivity',
    named: [['sensitivity']],
    not: notValue,
    sizes: perDisplacement,
    needed: true,
  },
  asLeftSensitivity: {
    matter: 'sensitivity',
    named: [['sensitivity']],
    not: notValue,
    sizes: perDisplacement,
  },
  referenceSensitivity: {
    matter: 'sensitivity',
    named: [['sensitivity']],
    not: notValue,
    sizes: perDisplacement,
  },
  alert: {
    matter: 'setpoint',
    named: [['alert']],
    not: [...notLevel, 'danger'],
    sizes: displacement,
    needed: true,
  },
  danger: { matter: 'setpoint', named: [['danger']], not: notLevel, sizes: displacement, needed: true },
  fullScale: { matter: 'scale', named: [['full scale']], not: notLevel, sizes: displacement },
  gapVoltage: {
    matter: 'quantity',
    named: [['gap voltage']],
    not: [...notValue, 'sensitivity', 'as left'],
    sizes: [{ unit: 'V', from: 1, to: 30 }],
  },
  asLeftGapVoltage: {
    matter: 'quantity',
    named: [['gap voltage', 'as left']],
    not: [...notValue, 'sensitivity'],
    sizes: [{ unit: 'V', from: 1, to: 30 }],
  },
  zeroMeasured: {
    matter: 'quantity',
    named: [
      ['zero voltage', 'measured'],
      ['zero voltage', 'as found'],
    ],
    not: notValue,
  },
  zeroConfigured: { matter: 'quantity', named: [['zero voltage', 'configured']], not: notValue },
  runoutAmplitude: { matter: 'quantity', named: [['runout amplitude']], not: notValue },
  runoutPhase: { matter: 'quantity', named: [['runout phase']], not: notValue },
  runoutSensitivity: { matter: 'sensitivity', named: [['runout sensitivity']], not: notValue },
  vectorAmplitude: { matter: 'quantity', named: [['1X amplitude']], not: notValue },
  vectorPhase: { matter: 'quantity', named: [['1X phase']], not: notValue },
  chainLength: { matter: 'quantity', named: [['chain length']], not: notValue },
  zeroUncertainty: { matter: 'quantity', named: [['zero voltage', 'uncertainty']], not: ['as left'] },
  gain: { matter: 'quantity', named: [['monitor gain']], not: notValue },
  gainUncertainty: { matter: 'quantity', named: [['monitor gain', 'uncertainty']] },
  loopAtZero: { matter: 'quantity', named: [['loop zero']], not: notValue },
  loopAtZeroUncertainty: { matter: 'quantity', named: [['loop zero', 'uncertainty']] },
  loopAtSpan: { matter: 'quantity', named: [['loop span']], not: notValue },
  loopAtSpanUncertainty: { matter: 'quantity', named: [['loop span', 'uncertainty']] },
  uncertainty: {
    matter: 'quantity',
    named: [['uncertainty']],
    not: ['as left', 'zero voltage', 'monitor gain', 'loop zero', 'loop span'],
  },
  asLeftUncertainty: { matter: 'quantity', named: [['uncertainty', 'as left']] },
  speed: { matter: 'quantity', named: [['speed']] },
  calibratedOn: {
    matter: 'text',
    named: [['date']],
    not: ['old', 'proposed', 'person', 'as left', 'reference'],
  },
  reading: { matter: 'quantity', named: [['reading']], not: [...notLevel, 'alert', 'danger'] },
  limit: {
    matter: 'quantity',
    named: [['displacement limit']],
    not: [
      'sensitivity',
      'gap voltage',
      'deviation',
      'uncertainty',
      'unit',
      'person',
      'remark',
      'date',
      'alert',
      'danger',
    ],
    sizes: displacement,
  },
  group: { matter: 'text', named: [['voting group']], numbered: true },
  voting: { matter: 'text', named: [['voting']], not: ['voting group'] },
  bypass: { matter: 'text', named: [['bypass']] },
  alertDelay: { matter: 'quantity', named: [['alert', 'delay']], not: ['danger'] },
  dangerDelay: { matter: 'quantity', named: [['danger', 'delay']] },
};

function declared(id: MeaningId, spec: ColumnSpec): Meaning {
  const {
    matter,
    named,
    not = [],
    sizes = [],
    numbered = false,
    needed = false,
  } = own[id] ?? { matter: spec.holds === 'number' ? 'quantity' : 'text', named: [] };
  return {
    id,
    name: spec.name,
    matter,
    holds: spec.holds,
    dimensions: spec.dimensions ?? [],
    usualUnit: spec.usualUnit ?? null,
    named,
    not,
    sizes,
    numbered,
    needed,
  };
}

/** Every meaning by its id. */
export const meanings: ReadonlyMap<MeaningId, Meaning> = new Map(
  Object.entries({ ...settingsColumns, ...channelColumns } as Record<MeaningId, ColumnSpec>).map(
    ([id, spec]) => [id as MeaningId, declared(id as MeaningId, spec)],
  ),
);

/** Meanings of which a channel has one value: two tables that hold one rival. */
export const core: readonly MeaningId[] = ['measured', 'configured', 'alert', 'danger', 'asLeftSensitivity'];

/** A meaning by its id. */
export function meaning(id: MeaningId): Meaning {
  const found = meanings.get(id);
  if (!found) throw new Error(`no meaning ${id}`);
  return found;
}
