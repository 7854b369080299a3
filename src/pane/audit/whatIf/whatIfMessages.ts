import { chanceWords, ofMeasurement } from '../../../audit/advise/machineSentences.ts';
import type { WhatIf } from '../../../audit/advise/whatIf.ts';

/** Texts of the panel that answers what follows from a correction. */
export const whatIfMessages = {
  title: 'What if',
  intro:
    'Tick channels as corrected to their configured sensitivity and see the machine change. Nothing is written.',
  machine: 'Machine',
  channels: 'Corrected',
  none: 'Clear all',
  now: 'Now',
  then: (count: number) => (count === 1 ? 'With 1 channel corrected' : `With ${count} channels corrected`),
  ofMeasurement: `Every probability is worked out ${ofMeasurement}.`,
} as const;

/** What may be late on a machine, in one sentence; `groups` is how many danger groups it has. */
export function lateWords(late: WhatIf, groups: number): string {
  if (late === null) return 'This can’t be worked out.';
  const { any, all, expected } = late;
  const count = Number(expected.toPrecision(3));
  if (any === null || all === null) return `Expected number of late danger groups: ${count}.`;
  if (groups === 1) return `${chanceWords(any)} that its danger group acts later than its limit.`;
  return `${chanceWords(any)} that at least one of its ${groups} danger groups acts later than its limit; all do: ${chanceWords(all)}; expected number: ${count}.`;
}
