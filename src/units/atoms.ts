/** The simple units that compound ones are made of, and the one axis each lies on. */
export type Axis = 'length' | 'voltage' | 'current' | 'time' | 'gravity' | 'percent';

export interface Atom {
  readonly text: string;
  readonly axis: Axis;
  /** To µm, mV, mA, s, m/s² or %, by axis. */
  readonly factor: number;
}

/**
 * Exact by definition: the inch is 25.4 mm (international yard and pound agreement, 1959; NIST SP 811 App. B.8),
 * standard gravity is 9.80665 m/s² (3rd CGPM, 1901; NIST SP 811 App. B.8).
 */
const ATOMS: ReadonlyMap<string, Atom> = new Map<string, Atom>([
  ['um', { text: 'µm', axis: 'length', factor: 1 }],
  ['mm', { text: 'mm', axis: 'length', factor: 1000 }],
  ['cm', { text: 'cm', axis: 'length', factor: 10_000 }],
  ['m', { text: 'm', axis: 'length', factor: 1_000_000 }],
  ['mil', { text: 'mil', axis: 'length', factor: 25.4 }],
  ['inch', { text: 'in', axis: 'length', factor: 25_400 }],
  ['mV', { text: 'mV', axis: 'voltage', factor: 1 }],
  ['V', { text: 'V', axis: 'voltage', factor: 1000 }],
  ['mA', { text: 'mA', axis: 'current', factor: 1 }],
  ['A', { text: 'A', axis: 'current', factor: 1000 }],
  ['ms', { text: 'ms', axis: 'time', factor: 0.001 }],
  ['s', { text: 's', axis: 'time', factor: 1 }],
  ['min', { text: 'min', axis: 'time', factor: 60 }],
  ['h', { text: 'h', axis: 'time', factor: 3600 }],
  ['day', { text: 'day', axis: 'time', factor: 86_400 }],
  ['week', { text: 'week', axis: 'time', factor: 604_800 }],
  ['g', { text: 'g', axis: 'gravity', factor: 9.80665 }],
  ['percent', { text: '%', axis: 'percent', factor: 1 }],
]);

/** The simple unit of a symbol that `expression.ts` gives, or `undefined`. */
export function atomOf(symbol: string): Atom | undefined {
  return ATOMS.get(symbol);
}
