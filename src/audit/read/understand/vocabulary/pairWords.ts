import type { ConceptWords } from './word.ts';

/** Short names of two setpoints that only mean something together: the low one is the alert, the high one the danger. */
export const pairs: readonly (readonly [low: string, high: string])[] = [
  ['H', 'HH'],
  ['H', 'H/H'],
  ['Hi', 'HiHi'],
  ['Hi', 'Hi-Hi'],
  ['high', 'high high'],
  ['A1', 'A2'],
  ['AL', 'DG'],
  ['AL', 'DA'],
  ['L1', 'L2'],
  ['S1', 'S2'],
  ['SP1', 'SP2'],
  ['G1', 'G2'],
  ['GW1', 'GW2'],
  ['HA', 'HHA'],
  ['AH', 'AHH'],
  ['alarm 1', 'alarm 2'],
  ['alarme 1', 'alarme 2'],
  ['alarma 1', 'alarma 2'],
  ['allarme 1', 'allarme 2'],
  ['seuil 1', 'seuil 2'],
  ['soglia 1', 'soglia 2'],
  ['grenzwert 1', 'grenzwert 2'],
  ['stufe 1', 'stufe 2'],
  ['nivel 1', 'nivel 2'],
  ['stage 1', 'stage 2'],
  ['level 1', 'level 2'],
  ['limit 1', 'limit 2'],
  ['setpoint 1', 'setpoint 2'],
  ['first stage', 'second stage'],
  ['first level', 'second level'],
  ['1st level', '2nd level'],
  ['erste Stufe', 'zweite Stufe'],
  ['primer nivel', 'segundo nivel'],
  ['premier seuil', 'deuxième seuil'],
  ['primeiro nível', 'segundo nível'],
  ['prima soglia', 'seconda soglia'],
  ['relay 1', 'relay 2'],
  ['1st stage', '2nd stage'],
];

/** Pairs that say an alarm or its grade by themselves; the others only count, so that a person has to say what they are. */
export const surePairs: ReadonlySet<string> = new Set([
  'H',
  'Hi',
  'high',
  'A1',
  'AL',
  'HA',
  'AH',
  'alarm 1',
  'alarme 1',
  'alarma 1',
  'allarme 1',
]);

/** The words of pairs, weak each: a pair counts only where both stand in one table, in one unit and in order. */
export const pairWords: readonly ConceptWords[] = [
  { concept: 'pair low', from: 'memory', weak: { en: pairs.map(([low]) => low).join(' | ') } },
  { concept: 'pair high', from: 'memory', weak: { en: pairs.map(([, high]) => high).join(' | ') } },
];
