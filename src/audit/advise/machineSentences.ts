import type { CorrectionsFirst, MachineChance } from '../model/report.ts';
import { capital, listed, percent } from '../model/wording.ts';

/** Less than this is said as such. */
const LEAST = 1e-9;

/** A probability as people read it, rounded but never to certainty. */
export function chanceWords(probability: number): string {
  if (probability < LEAST) return 'less than 1 in 1,000,000,000';
  return probability > 0.9995 ? 'more than 99.9 %' : percent(probability);
}

/** What a probability of this kind leaves out; it stands beside each. */
export const ofMeasurement = 'by the measurement alone; wiring, logic and relays are not counted';

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
  const chance = `${capital(chanceWords(any))} that ${count} later than its limit${more}; ${ofMeasurement}.`;
  return [chance, ...correctFirst(corrections, any)];
}

const numbers = ['no', 'one', 'two', 'three'] as const;

/** Which corrections come first, why that is not just the latest, and the pair where none helps by itself. */
function correctFirst(corrections: CorrectionsFirst, now: number): readonly string[] {
  const { singly, best, latest } = corrections;
  const [first] = singly;
  const order = new Map(singly.map(({ tag }, at) => [tag, at]));
  // A further correction that takes nothing more off is not worth a visit.
  let least = first?.left ?? now;
  const steps = best
    .filter(({ left }) => {
      const isLess = left < least * (1 - 1e-9);
      least = Math.min(least, left);
      return isLess;
    })
    .map(({ budget, tags, left, how }) => {
      const sorted = tags.toSorted(
        (one, other) => (order.get(one) ?? Infinity) - (order.get(other) ?? Infinity),
      );
      return `Only ${numbers[budget] ?? budget}: ${inTurn(sorted)} (leaves ${chanceWords(left)}${how === 'every set' ? '' : ', chosen one after the other'}).`;
    });
  if (!first && steps.length === 0) return [];
  const one = first
    ? `If you can correct only one: ${first.tag} (leaves ${chanceWords(first.left)}).`
    : 'No single correction makes it less likely.';
  const why =
    first && latest && latest.tag !== first.tag
      ? [
          `Not just the latest first: ${latest.tag} is the latest, but correcting it alone leaves ${chanceWords(latest.left)}, as the votes of its group do not depend on it alone.`,
        ]
      : [];
  return [[one, ...steps].join(' '), ...why];
}

/** `1Y, then 3X`. */
function inTurn(tags: readonly string[]): string {
  return tags.join(', then ');
}

/**
 * The one line for a page or a list: what to correct first of a machine, without a number; `null` where nothing helps. With a
 * budget of two where that leaves less than one.
 */
export function correctFirstLine({ any, corrections }: MachineChance): string | null {
  const { singly, best } = corrections;
  const [first] = singly;
  const two = best.find(({ budget }) => budget === 2);
  if (any === null) return null;
  if (two && two.left < (first?.left ?? any)) {
    const order = new Map(singly.map(({ tag }, at) => [tag, at]));
    const sorted = two.tags.toSorted(
      (one, other) => (order.get(one) ?? Infinity) - (order.get(other) ?? Infinity),
    );
    return first
      ? `If you can correct only two: ${inTurn(sorted)}.`
      : `No single correction makes a late trip less likely; these two together do: ${listed(sorted)}.`;
  }
  return first ? `If you can correct only one: ${first.tag}.` : null;
}

/** A correction in the order for all machines together. */
export interface FleetCorrection {
  readonly machine: string;
  readonly tag: string;
  /** What it takes off the expected number of late danger groups. */
  readonly fall: number;
}

/** Corrections of all machines, what takes most off the expected number of late danger groups first; equal ones by tag. */
export function correctionsOfAll(machines: readonly MachineChance[]): FleetCorrection[] {
  return machines
    .flatMap(({ machine, corrections }) =>
      corrections.expected.map(({ tag, fall }): FleetCorrection => ({ machine, tag, fall })),
    )
    .sort(
      (one, other) =>
        Math.round((other.fall - one.fall) * 1e12) ||
        (one.tag < other.tag ? -1 : Number(one.tag > other.tag)),
    );
}

/** How the order of `correctionsOfAll` is made, beside every list of it. */
export const orderOfCorrections = `First stands the correction that most lowers the expected number of danger groups acting later than their limit, ${ofMeasurement}. It is not always the latest channel: where others of its group vote in time, a late channel changes little.`;
