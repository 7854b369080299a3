import { expect, it } from 'vitest';
import {
  correctFirstLine,
  correctionsOfAll,
  machineSentences,
} from '../../src/audit/advise/machineSentences.ts';
import { correctableTags, whatIf } from '../../src/audit/advise/whatIf.ts';
import { audit } from '../../src/audit/audit.ts';
import type { MachineChance } from '../../src/audit/model/report.ts';
import { book } from './book.ts';

/** Channels with 3 % of uncertainty, danger 5 mil at 200 mV/mil: tag, machine, group, voting, measured sensitivity. */
function machinesOf(...rows: readonly (readonly [string, string, string, string, number])[]) {
  return audit(
    book(
      [
        'Channels',
        [
          ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Uncertainty (%)'],
          ...rows.map(([tag, machine, , , measured]) => [tag, machine, measured, 3]),
        ],
      ],
      [
        'Monitor',
        [
          ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Group', 'Voting'],
          ...rows.map(([tag, , group, voting]) => [tag, 200, 3, 5, group, voting]),
        ],
      ],
    ),
    {},
  ).machines;
}

function only(machines: readonly MachineChance[]): MachineChance {
  const [machine] = machines;
  if (!machine) throw new Error('no machine');
  return machine;
}

const twoOfThree = only(
  machinesOf(['A', 'K', 'g', '2oo3', 150], ['B', 'K', 'g', '2oo3', 150], ['C', 'K', 'g', '2oo3', 150]),
);

it('where all of a 2oo3 are late for certain no single correction helps: the pair is said', () => {
  // By hand: with one corrected two late ones of three are left, which make the vote late; with two corrected one.
  expect(twoOfThree.corrections.singly).toEqual([]);
  expect(correctFirstLine(twoOfThree)).toBe(
    'No single correction makes a late trip less likely; these two together do: A and B.',
  );
  expect(whatIf(twoOfThree, new Set(['A']))?.any).toBeCloseTo(1, 9);
  // Late is one of three once A and B are right, each at the limit 5/0.95 with Φ(−0.05/0.015) by itself; both in time is needed.
  const late = 0.00042906; // Φ(−10/3), tables of the normal distribution (from memory), five digits
  expect(whatIf(twoOfThree, new Set(['A', 'B']))?.any).toBeCloseTo(2 * late, 5);
});

it('what if without a tick is what the report says, and all ticked leaves least', () => {
  const now = whatIf(twoOfThree, new Set());
  expect(now).toEqual({ any: twoOfThree.any, all: twoOfThree.all, expected: twoOfThree.expected });
  const all = whatIf(twoOfThree, new Set(correctableTags(twoOfThree)));
  expect(all?.any ?? 1).toBeLessThan(0.01);
});

it('the best set for two is what what-if says of it, and stands in the order of what each helps', () => {
  const machine = only(
    machinesOf(
      ['3X', 'K', 'one', '1oo1', 187],
      ['1Y', 'K', 'two', '1oo1', 170],
      ['2Z', 'K', 'three', '1oo1', 199],
    ),
  );
  const two = machine.corrections.best.find(({ budget }) => budget === 2);
  expect(whatIf(machine, new Set(two?.tags))?.any).toBeCloseTo(two?.left ?? NaN, 12);
  expect(correctFirstLine(machine)).toBe('If you can correct only two: 1Y, then 3X.');
});

it('the latest channel is not first where the votes of its group do not hang on it, and that is said', () => {
  // L is the latest by far, in a 1oo2 whose other member is right; M alone decides its group.
  const machine = only(
    machinesOf(
      ['L', 'K', 'pair', '1oo2', 140],
      ['R', 'K', 'pair', '1oo2', 200],
      ['M', 'K', 'lone', '1oo1', 185],
    ),
  );
  expect(machine.corrections.latest?.tag).toBe('L');
  expect(machine.corrections.singly[0]?.tag).toBe('M');
  expect(machineSentences(machine).join(' ')).toContain('Not just the latest first: L is the latest');
});

it('machines compare by the fall of the expected number of late groups, which adds up', () => {
  const machines = machinesOf(
    ['A', 'K-1', 'g', '1oo1', 187],
    ['B', 'K-2', 'h', '1oo1', 170],
    ['C', 'K-2', 'i', '1oo1', 200],
  );
  const all = correctionsOfAll(machines);
  expect(all.map(({ tag, machine }) => `${machine} ${tag}`)).toEqual(['K-2 B', 'K-1 A']);
  for (const machine of machines)
    for (const { tag, fall } of machine.corrections.expected)
      expect(machine.expected - (whatIf(machine, new Set([tag]))?.expected ?? NaN)).toBeCloseTo(fall, 12);
});

it('a third correction that takes nothing more off is not advised', () => {
  // The third channel is as configured: there is nothing to correct.
  const machine = only(
    machinesOf(
      ['1Y', 'K', 'one', '1oo1', 170],
      ['2Z', 'K', 'two', '1oo1', 200],
      ['3X', 'K', 'three', '1oo1', 187],
    ),
  );
  const [chance, advice] = machineSentences(machine);
  expect(chance).toMatch(/^More than 99\.9 % that at least one of its 3 danger groups/u);
  expect(advice).toMatch(/If you can correct only one: 1Y .* Only two: 1Y, then 3X /u);
  expect(advice).not.toContain('Only three');
});
