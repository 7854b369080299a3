import type { Kind } from '../../model/channel.ts';
import type { Detection } from '../../../units/parse.ts';
import type { Direction } from '../../../method/axial/position.ts';
import { headerKey } from '../tables/header.ts';

/** A closed list of words with what each is understood as. */
export interface Words<T> {
  readonly expected: readonly string[];
  readonly meaning: ReadonlyMap<string, T>;
}

function words<T>(expected: readonly string[], meanings: Readonly<Record<string, T>>): Words<T> {
  return {
    expected,
    meaning: new Map(Object.entries(meanings).map(([word, value]) => [headerKey(word) || word, value])),
  };
}

export const kindWords = words<Kind>(['radial', 'axial', 'velocity', 'acceleration', 'loop'], {
  radial: 'radial',
  'radial vibration': 'radial',
  'shaft vibration': 'radial',
  axial: 'axial',
  'axial position': 'axial',
  thrust: 'axial',
  'thrust position': 'axial',
  velocity: 'velocity',
  acceleration: 'acceleration',
  loop: 'loop',
  '4-20 mA': 'loop',
  '4-20 mA loop': 'loop',
});

export const directionWords = words<Direction>(['toward', 'away'], {
  toward: 'toward',
  towards: 'toward',
  'toward probe': 'toward',
  'towards probe': 'toward',
  away: 'away',
  'away from probe': 'away',
});

export const detectionWords = words<Detection>(['p-p', '0-p'], {
  'p-p': 'p-p',
  'pk-pk': 'p-p',
  'peak to peak': 'p-p',
  'peak-peak': 'p-p',
  '0-p': '0-p',
  '0-pk': '0-p',
  'zero to peak': '0-p',
  pk: '0-p',
  peak: '0-p',
  rms: 'rms',
});

export const flagWords = words<boolean>(['yes', 'no'], {
  '✓': true,
  '✔': true,
  '☑': true,
  '-': false,
  '–': false,
  '☐': false,
  bypassed: true,
  yes: true,
  y: true,
  true: true,
  x: true,
  1: true,
  on: true,
  ja: true,
  oui: true,
  sí: true,
  sim: true,
  no: false,
  n: false,
  nein: false,
  non: false,
  não: false,
  false: false,
  0: false,
  off: false,
});

/** What a text means in a list of words; `undefined` where it is none of them. */
export function meaningOf<T>(list: Words<T>, text: string): T | undefined {
  return list.meaning.get(headerKey(text) || text);
}
