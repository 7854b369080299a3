import { isHiddenRecord } from '../blocks/block.ts';
import { tagKey } from '../../tables/tagKey.ts';
import { core, type MeaningId } from '../meaning.ts';
import type { ReadingProblem } from './channel.ts';
import type { Line } from './records.ts';

/** The lines of one channel, and what keeps it from being settled. */
export interface JoinedLines {
  readonly tag: string;
  readonly machine: string;
  readonly lines: readonly Line[];
  /** Lines that hold the same quantities: none of those is used. */
  readonly troubles: readonly ReadingProblem[];
  /** Lines of hidden lists that yield to visible ones. */
  readonly yielded: readonly Line[];
}

/** Whether two lines say the same of what both hold. */
export type LinesAgree = (one: Line, other: Line, meanings: readonly MeaningId[]) => boolean;

/** Joins the lines of all tables by tag, and by machine and tag where the tag alone does not tell them apart. */
export function* joinLines(
  lines: readonly Line[],
  nameOf: (tag: string) => string,
  same: LinesAgree,
): Generator<void, JoinedLines[], void> {
  const byTag = new Map<string, Line[]>();
  for (const line of lines) {
    const key = tagKey(nameOf(line.tag));
    const there = byTag.get(key);
    if (there) there.push(line);
    else byTag.set(key, [line]);
  }
  const joined: JoinedLines[] = [];
  let done = 0;
  for (const group of byTag.values()) {
    if (++done % 1_000 === 0) yield;
    joined.push(...joinTag(group, same));
  }
  return joined;
}

const none: readonly MeaningId[] = [];

/** Core meanings that more than one of some lines hold. */
function heldTwice(lines: readonly Line[]): readonly MeaningId[] {
  if (lines.length < 2) return none;
  return core.filter((id) => lines.filter(({ table }) => table.claims.has(id)).length > 1);
}

function joinTag(group: readonly Line[], same: LinesAgree): JoinedLines[] {
  const twice = heldTwice(group);
  if (twice.length === 0) return [settled(group, group, [], [])];
  const byMachine = new Map<string, Line[]>();
  for (const line of group) {
    const key = tagKey(line.machine);
    const there = byMachine.get(key);
    if (there) there.push(line);
    else byMachine.set(key, [line]);
  }
  const unsaid = byMachine.get('') ?? [];
  byMachine.delete('');
  if (byMachine.size < 2) return [oneMachine(group, group, same)];
  const meanings = [...new Set(unsaid.flatMap(({ table }) => core.filter((id) => table.claims.has(id))))];
  const tables = [...new Set(unsaid.map(({ table }) => table))];
  const trouble: ReadingProblem[] =
    unsaid.length > 0
      ? [{ is: 'machine not said', tables, places: unsaid.map(({ place }) => place), meanings }]
      : [];
  return [...byMachine.values()].map((lines) => {
    const own = oneMachine(lines, lines, same);
    return { ...own, troubles: [...own.troubles, ...trouble] };
  });
}

function oneMachine(all: readonly Line[], lines: readonly Line[], same: LinesAgree): JoinedLines {
  const twice = heldTwice(lines);
  if (twice.length === 0) return settled(all, lines, [], []);
  const hidden = lines.filter((line) => isHidden(line) && twice.some((id) => line.table.claims.has(id)));
  const visible = lines.filter((line) => !hidden.includes(line));
  if (hidden.length > 0 && twice.every((id) => visible.some(({ table }) => table.claims.has(id)))) {
    const rest = oneMachine(all, visible, same);
    return { ...rest, yielded: [...rest.yielded, ...hidden] };
  }
  const troubles: ReadingProblem[] = [];
  for (const id of twice) {
    const holders = lines.filter(({ table }) => table.claims.has(id));
    const [first, ...others] = holders;
    if (!first) continue;
    const tables = [...new Set(holders.map(({ table }) => table))];
    if (tables.length === 1)
      troubles.push({ is: 'twice', places: holders.map(({ place }) => place), meanings: [id] });
    else if (!others.every((other) => same(first, other, [id])))
      troubles.push({
        is: 'rival tables',
        tables,
        places: holders.map(({ place }) => place),
        meanings: [id],
      });
  }
  return settled(all, lines, troubles, []);
}

function isHidden({ table, record }: Line): boolean {
  const { block } = table.lane;
  return block.sheet.hidden || isHiddenRecord(block, record);
}

function settled(
  all: readonly Line[],
  lines: readonly Line[],
  troubles: readonly ReadingProblem[],
  yielded: readonly Line[],
): JoinedLines {
  const lists =
    lines.length < 2
      ? lines
      : lines.toSorted(
          (one, other) =>
            Number(other.table.claims.has('measured')) - Number(one.table.claims.has('measured')),
        );
  const [first] = lists;
  return {
    tag: first?.tag ?? all[0]?.tag ?? '',
    machine: lists.find(({ machine }) => machine !== '')?.machine ?? '',
    lines: lists,
    troubles,
    yielded,
  };
}
