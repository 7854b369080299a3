import type { Attention, GroupResult, Report } from '../../audit/model/report.ts';
import type { LinkTarget } from '../model.ts';
import { sheetNames } from '../titles.ts';

/** Row of the headers of the groups sheet. */
export const headerRow = 4;

/** What the list says of a group, and where it first does. */
interface Said {
  readonly place: number;
  readonly entries: Attention[];
}

interface WorstFirst {
  readonly groups: readonly GroupResult[];
  readonly actionOf: (group: GroupResult) => readonly Attention[];
}

/** Groups in the order in which the list of what needs action names them, then the others; and what it says of each. */
export function worstFirst({ groups, attention }: Report): WorstFirst {
  const said = new Map<string, Said>();
  for (const [place, entry] of attention.entries()) {
    const { machine, group, threshold, multiplier } = entry.subject;
    if (group === null) continue;
    const key = keyOf(machine, group, threshold, multiplier);
    const there = said.get(key);
    if (there) there.entries.push(entry);
    else said.set(key, { place, entries: [entry] });
  }
  const saidOf = new Map<GroupResult, Said>();
  for (const group of groups) {
    const { machine, name, threshold, multiplier } = group;
    const own = said.get(keyOf(machine, name, threshold, multiplier));
    if (own) saidOf.set(group, own);
  }
  const named = [...saidOf].toSorted(([, one], [, other]) => one.place - other.place);
  return {
    groups: [...named.map(([group]) => group), ...groups.filter((group) => !saidOf.has(group))],
    actionOf: (group) => saidOf.get(group)?.entries ?? [],
  };
}

function keyOf(...parts: readonly (string | number | null)[]): string {
  return JSON.stringify(parts);
}

/** Leads from what needs action of a group to its line of the groups sheet; `undefined` for what is of no group. */
export function groupPlaces(report: Report): (one: Attention) => LinkTarget | undefined {
  const { groups, actionOf } = worstFirst(report);
  const rows = new Map<Attention, number>();
  for (const [index, group] of groups.entries())
    for (const one of actionOf(group)) rows.set(one, headerRow + 1 + index);
  return (one) => {
    const row = rows.get(one);
    return row === undefined ? undefined : { sheet: sheetNames.groups, ours: true, row, column: 'A' };
  };
}
