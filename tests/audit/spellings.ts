import type { PlannedChannel } from './oracle.ts';

export type Measured =
  'sensitivity' | 'level' | 'growth' | 'voltage' | 'fraction' | 'speed' | 'days' | 'seconds';

export interface Spelling {
  readonly text: string;
  /** Base units per unit. */
  readonly factor: number;
  /** Whether it is also meant where no unit is named. */
  readonly usual?: true;
}

/** mil = 25.4 µm and inch = 25.4 mm exactly: NIST SP 811 App. B.8. */
const lengths: readonly Spelling[] = [
  { text: 'µm', factor: 1 },
  { text: 'um', factor: 1 },
  { text: 'mm', factor: 1000 },
  { text: 'mil', factor: 25.4 },
  { text: 'mils', factor: 25.4 },
  { text: 'thou', factor: 25.4 },
  { text: 'in', factor: 25_400 },
];
const perLength: readonly Spelling[] = [
  { text: 'mV/µm', factor: 1 },
  { text: 'mV/um', factor: 1 },
  { text: 'V/mm', factor: 1 },
  { text: 'mV/mm', factor: 0.001 },
  { text: 'mV/mil', factor: 1 / 25.4 },
  { text: 'mV per mil', factor: 1 / 25.4 },
  { text: 'V/mil', factor: 1000 / 25.4 },
  { text: 'mV/thou', factor: 1 / 25.4 },
  { text: 'V/in', factor: 1 / 25.4 },
];
const growths: readonly Spelling[] = [
  { text: 'µm/day', factor: 1 },
  { text: 'mil/day', factor: 25.4 },
  { text: 'mil/week', factor: 25.4 / 7 },
  { text: 'µm', factor: 1 },
];

/** Standard gravity 9.80665 m/s² exactly: NIST SP 811 App. B.8. */
const byKind: Readonly<
  Record<PlannedChannel['kind'], Readonly<Record<'sensitivity' | 'level' | 'growth', readonly Spelling[]>>>
> = {
  radial: { sensitivity: perLength, level: lengths, growth: growths },
  axial: { sensitivity: perLength, level: lengths, growth: growths },
  velocity: {
    sensitivity: [
      { text: 'mV/(mm/s)', factor: 1 },
      { text: 'mV/in/s', factor: 1 / 25.4 },
    ],
    level: [
      { text: 'mm/s', factor: 1 },
      { text: 'in/s', factor: 25.4 },
      { text: 'ips', factor: 25.4 },
    ],
    growth: [
      { text: 'mm/s/day', factor: 1 },
      { text: 'in/s', factor: 25.4 },
    ],
  },
  acceleration: {
    sensitivity: [
      { text: 'mV/g', factor: 1 / 9.80665 },
      { text: 'mV/(m/s²)', factor: 1 },
    ],
    level: [
      { text: 'g', factor: 9.80665 },
      { text: 'm/s^2', factor: 1 },
    ],
    growth: [{ text: 'g/day', factor: 9.80665 }],
  },
};

const fixed: Readonly<Record<Exclude<Measured, 'sensitivity' | 'level' | 'growth'>, readonly Spelling[]>> = {
  voltage: [
    { text: 'V', factor: 1, usual: true },
    { text: 'V DC', factor: 1, usual: true },
    { text: 'mV', factor: 0.001 },
  ],
  fraction: [
    { text: '%', factor: 0.01, usual: true },
    { text: 'percent', factor: 0.01, usual: true },
  ],
  speed: [
    { text: 'r/min', factor: 1, usual: true },
    { text: 'RPM', factor: 1, usual: true },
    { text: 'Hz', factor: 60 },
  ],
  days: [
    { text: 'days', factor: 1, usual: true },
    { text: 'h', factor: 1 / 24 },
    { text: 'weeks', factor: 7 },
  ],
  seconds: [
    { text: 's', factor: 1, usual: true },
    { text: 'ms', factor: 0.001 },
    { text: 'min', factor: 60 },
  ],
};

/** The ways in which a unit is written. */
export function spellings(measured: Measured | undefined, kind: PlannedChannel['kind']): readonly Spelling[] {
  if (measured === undefined) return [{ text: '', factor: 1 }];
  return measured === 'sensitivity' || measured === 'level' || measured === 'growth'
    ? byKind[kind][measured]
    : fixed[measured];
}

/** p-p = 2 × 0-p for a sinusoid. */
export const detectionFactors: Readonly<Record<string, number>> = {
  '': 1,
  'p-p': 1,
  'pk-pk': 1,
  '0-p': 2,
  pk: 2,
  '0-pk': 2,
};
