import type { MachineChance } from '../model/report.ts';
import { listed, percent } from '../model/wording.ts';

/** Less than this is said as such. */
const LEAST = 1e-9;

/** A probability as people read it, rounded but never to certainty. */
export function chanceWords(probability: number): string {
  if (probability < LEAST) return 'less than 1 in 1,000,000,000';
  return probability > 0.9995 ? 'more than 99.9 %' : percent(probability);
}

/** What a probability of this kind leaves out; it stands beside each. */
export const ofMeasurement = 'of the measurement alone; wiring, logic and relays are not in it';

/** What is said of a machine as a whole: the chance that anything is late, and what to correct first; from its numbers alone. */
export function machineSentences({
  groups,
  any,
  all,
  expected,
  corrections,
}: MachineChance): readonly string[] {
  const count = groups === 1 ? 'its danger group acts' : `at least one of its ${groups} danger groups acts`;
  if (any === null || all === null)
    return [
      `Expected number of late danger groups: ${Number(expected.toPrecision(3))}, ${ofMeasurement}; too many batches reach across groups to say more.`,
    ];
  const more = groups === 1 ? '' : `; that all do: ${chanceWords(all)}`;
  const chance = `${chanceWords(any)} that ${count} later than its limit${more}; ${ofMeasurement}.`;
  const { singly, best } = corrections;
  const [first] = singly;
  if (!first && best.length === 0) return [chance];
  const steps = best
    .filter(({ left }) => left < (first?.left ?? any))
    .map(
      ({ budget, tags, left, how }) =>
        `Only ${budget === 2 ? 'two' : 'three'}: ${listed(tags)} (leaves ${chanceWords(left)}${how === 'every set' ? '' : ', chosen one after the other'}).`,
    );
  const one = first
    ? `If you can correct only one: ${first.tag} (leaves ${chanceWords(first.left)}).`
    : 'No single correction makes it less likely.';
  return [chance, [one, ...steps].join(' ')];
}
