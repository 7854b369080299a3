import { bestCorrections } from '../../../method/corrections/bestCorrections.ts';
import { type CorrectableGroup, objectiveOf } from '../../../method/corrections/corrected.ts';
import { expectedFalls } from '../../../method/corrections/expectedFalls.ts';
import { type Objective, SAME, rankCorrections } from '../../../method/corrections/rankCorrections.ts';
import { machineLate } from '../../../method/late/machineLate.ts';
import type { CorrectionsFirst, GroupWorking, MachineChance } from '../../model/report.ts';

/** A danger group of a machine, as its chances are worked out, and where its members would act once corrected. */
export interface MachineGroup {
  readonly machine: string;
  readonly group: CorrectableGroup;
  /** Whether an uncertainty of its members is known; without, they count as exact. */
  readonly uncertain: boolean;
}

/** Budgets for which the best set is sought, each with the most channels among which it is. */
const budgets = [
  { budget: 2, most: Infinity },
  { budget: 3, most: 12 },
];

/**
 * The chances of each machine's danger groups together, and which correction takes most off them; of machines where an
 * uncertainty is known.
 */
export function machineChances(groups: readonly MachineGroup[]): MachineChance[] {
  const byMachine = new Map<string, { readonly machine: string; readonly own: CorrectableGroup[] }>();
  const uncertain = new Set(groups.filter((one) => one.uncertain).map(({ machine }) => keyOf(machine)));
  for (const { machine, group } of groups) {
    if (!uncertain.has(keyOf(machine))) continue;
    const key = keyOf(machine);
    const there = byMachine.get(key);
    if (there) there.own.push(group);
    else byMachine.set(key, { machine, own: [group] });
  }
  return [...byMachine.values()].flatMap(({ machine, own }): MachineChance[] => {
    const late = machineLate(own);
    if (!late) return [];
    const known = (value: number): number | null => (Number.isNaN(value) ? null : value);
    return [
      {
        machine,
        groups: own.length,
        any: known(late.any),
        all: known(late.all),
        expected: late.expected,
        corrections: Number.isNaN(late.any)
          ? { ...none, expected: expectedFalls(own) }
          : correctionsOf(own, late.any),
        working: own.map(workingOf),
      },
    ];
  });
}

function keyOf(machine: string): string {
  return machine.trim().toLowerCase();
}

/** Below it nothing is worth a correction. */
const NOTHING = 1e-9;

function correctionsOf(groups: readonly CorrectableGroup[], now: number): CorrectionsFirst {
  const tags = groups.flatMap(({ members }) =>
    members.filter(({ threshold }) => threshold !== Infinity).map(({ tag }) => tag),
  );
  if (now < NOTHING || tags.length === 0) return none;
  const objective = objectiveOf(groups, 'any');
  const singly = rankCorrections(tags, objective).filter(({ gain }) => gain > SAME);
  const count = new Set(tags).size;
  const best = budgets
    .filter(({ budget, most }) => budget <= count && count <= most)
    .map(({ budget }) => ({ budget, ...bestCorrections(tags, budget, objective) }));
  return { singly, latest: latestOf(groups, objective), expected: expectedFalls(groups), best };
}

const none: CorrectionsFirst = { singly: [], latest: null, expected: [], best: [] };

/** The channel that acts latest, as a part of where it is meant to, with what its correction alone leaves. */
function latestOf(groups: readonly CorrectableGroup[], objective: Objective): CorrectionsFirst['latest'] {
  let [tag, most]: [string | null, number] = [null, 1 + 1e-9];
  for (const { members } of groups) {
    for (const { tag: own, threshold, corrected } of members) {
      const ratio = threshold / corrected.threshold;
      if (threshold !== Infinity && ratio > most) [tag, most] = [own, ratio];
    }
  }
  return tag === null ? null : { tag, left: objective(new Set([tag])) };
}

/** A group as the report keeps it: what cannot act is `null`. */
function workingOf({ m, limit, members }: CorrectableGroup): GroupWorking {
  const finite = (level: number): number | null => (Number.isFinite(level) ? level : null);
  return {
    m,
    limit,
    members: members.map(({ tag, threshold, corrected, shared, own, offset = 0, both = 0, batch }) => ({
      tag,
      threshold: finite(threshold),
      corrected: finite(corrected.threshold),
      shared,
      own,
      offset,
      both,
      batch,
    })),
  };
}
