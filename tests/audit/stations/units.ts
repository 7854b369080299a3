import type { Kind } from '../oracle/facts.ts';

/** How the numbers of a channel are written. */
export interface Units {
  readonly level: string;
  readonly sensitivity: number;
  readonly sensitivityUnit: string;
  /** Of mil, in/s, g or %: how many of its unit. */
  readonly perUsual: number;
  readonly stepPerUsual: number;
  readonly perMil: number;
  readonly displacement: boolean;
}

const plain = { perUsual: 1, stepPerUsual: 1, perMil: 1, displacement: false };

/** mil = 25.4 µm exactly (NIST SP 811 App. B.8); sensitivities common practice, no source. */
export function unitsOf(kind: Kind, metric: boolean): Units {
  if (kind === 'velocity') {
    return metric
      ? {
          ...plain,
          level: 'mm/s',
          sensitivity: 4,
          sensitivityUnit: 'mV/(mm/s)',
          perUsual: 25.4,
          stepPerUsual: 10,
        }
      : { ...plain, level: 'in/s', sensitivity: 100, sensitivityUnit: 'mV/in/s' };
  }
  if (kind === 'acceleration') return { ...plain, level: 'g', sensitivity: 100, sensitivityUnit: 'mV/g' };
  if (kind === 'loop') return { ...plain, level: '%', sensitivity: 0.16, sensitivityUnit: 'mA/%' };
  const size = { ...plain, displacement: true };
  return metric
    ? {
        ...size,
        level: 'µm',
        sensitivity: 7.874,
        sensitivityUnit: 'mV/µm',
        perUsual: 25.4,
        stepPerUsual: 10,
        perMil: 25.4,
      }
    : { ...size, level: 'mil', sensitivity: 200, sensitivityUnit: 'mV/mil' };
}

/** Words for the detection of a kind's levels; blank: not stated. */
export function detectionsOf(kind: Kind): readonly string[] {
  if (kind === 'velocity') return ['', 'pk', 'rms', 'rms'];
  if (kind === 'acceleration') return ['', 'pk', 'rms'];
  return kind === 'radial' ? ['', 'p-p'] : [''];
}

/** Of a sinusoid, peak to peak. */
const peakToPeak: Readonly<Record<string, number>> = { 'p-p': 1, '0-p': 2, pk: 2, rms: 2 * Math.SQRT2 };

/**
 * A level in another detection; `null` where one is stated and the other is not. Displacement is peak to peak unless it is
 * stated otherwise.
 */
export function inDetection(kind: Kind, value: number, from: string, to: string): number | null {
  if (from === to) return value;
  const usual = kind === 'radial' ? 'p-p' : '';
  const [own, wanted] = [peakToPeak[from === '' ? usual : from], peakToPeak[to === '' ? usual : to]];
  return own === undefined || wanted === undefined ? null : (value * own) / wanted;
}
