import type { LateMember } from '../../method/late/member.ts';
import { effectiveThreshold } from '../../method/vibration/threshold.ts';
import { type FunctionError, refused } from '../functionError.ts';

type Cells = readonly (number | null)[];

/** The ranges of a group's members. */
export interface VoterCells {
  readonly setpoints: Cells;
  readonly configured: Cells;
  readonly measured: Cells;
  readonly shared: Cells;
  readonly own: Cells;
  readonly batches: readonly (string | null)[];
}

const numeric = ['setpoints', 'configured', 'measured', 'shared', 'own'] as const;

/** More members than a voting can have. */
const MOST = 99;

/**
 * Members paired by their place; a range of one cell serves all. A place that is blank in all longer ranges is left out;
 * `NaN` in setpoints or measured is a member that cannot act.
 */
export function votersOf(cells: VoterCells, votes: number, multiplier: number): LateMember[] | FunctionError {
  const count = Math.max(cells.batches.length, ...numeric.map((name) => cells[name].length));
  for (const name of [...numeric, 'batches'] as const) {
    const { length } = cells[name];
    if (length !== count && length > 1)
      return refused(
        `${titled(name)} has ${length} cells beside ${count} members: select as many cells in each.`,
      );
  }
  const members: LateMember[] = [];
  for (let at = 0; at < count; at++) {
    const cell = (name: (typeof numeric)[number]): number | null =>
      cells[name][cells[name].length === 1 ? 0 : at] ?? null;
    if (numeric.every((name) => cells[name].length === 1 || cell(name) === null) && count > 1) {
      if (numeric.some((name) => cells[name].length > 1)) continue;
    }
    const missing = numeric.find((name) => cell(name) === null);
    if (missing !== undefined)
      return refused(`${titled(missing)} ${at + 1} is blank: enter it, or clear the line of that member.`);
    const threshold = effectiveThreshold(
      cell('setpoints') ?? NaN,
      cell('configured') ?? NaN,
      cell('measured') ?? NaN,
      multiplier,
    );
    members.push({
      threshold: Number.isNaN(threshold) ? Infinity : threshold,
      shared: cell('shared') ?? NaN,
      own: cell('own') ?? NaN,
      batch: cells.batches[cells.batches.length === 1 ? 0 : at] ?? null,
    });
  }
  if (members.length > MOST)
    return refused(
      `Setpoints has ${members.length} members: select the members of one group, ${MOST} at most.`,
    );
  if (votes > members.length)
    return refused(`Votes is ${votes} with ${members.length} members: enter how many of them must act.`);
  return members;
}

function titled(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1);
}
