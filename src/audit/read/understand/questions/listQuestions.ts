import { columnLetters } from '../../../../cells/address.ts';
import type { ColumnMap, MappedTable } from '../../../model/columnMap.ts';
import { laneKey, mappedTableOfLane } from '../answers/places.ts';
import { core, meaning, type MeaningId } from '../meaning.ts';
import type { ReadChannel } from '../readings/channel.ts';
import { conceptsIn } from '../vocabulary/lexicon.ts';
import type { TableRead } from '../tables/tableRead.ts';
import type { Option, Question } from './question.ts';

/** Questions about lists and lines that say different things of the same channels: which holds. */
export function listQuestions(channels: readonly ReadChannel[]): Question[] {
  return [...rivals(channels), ...linesTwice(channels)];
}

interface Rivalry {
  readonly tables: readonly TableRead[];
  readonly meanings: Set<MeaningId>;
  readonly tags: Set<string>;
}

function rivals(channels: readonly ReadChannel[]): Question[] {
  const byTables = new Map<string, Rivalry>();
  for (const { tag, troubles } of channels) {
    for (const trouble of troubles) {
      if (trouble.is !== 'rival tables' || !trouble.meanings.some((id) => core.includes(id))) continue;
      const key = trouble.tables
        .map(({ lane }) => lane.id)
        .toSorted((a, b) => a - b)
        .join();
      const there = byTables.get(key) ?? {
        tables: trouble.tables,
        meanings: new Set<MeaningId>(),
        tags: new Set<string>(),
      };
      byTables.set(key, there);
      for (const id of trouble.meanings) there.meanings.add(id);
      there.tags.add(tag);
    }
  }
  return [...byTables.values()].map(questionFor);
}

function questionFor({ tables, meanings, tags }: Rivalry): Question {
  const base = {
    needed: true,
    records: tags.size,
    evidence: tables.flatMap(({ series }) => (series ? [{ is: 'series', ...series } as const] : [])),
    sheets: [...new Set(tables.map(({ lane }) => lane.block.sheet.name))],
    id: ['list', ...tables.map(({ lane }) => laneKey(lane)), [...meanings].join()].join(' '),
  };
  const isReadings = [...meanings].every((id) => id === 'measured' || id === 'asLeftSensitivity');
  const left = tables.find(({ series }) => series?.series === 'as left');
  if (isReadings && tables.length === 2 && left) {
    const options = [left, ...tables.filter((table) => table !== left)].map((last): Option => ({
      field: null,
      text: last.lane.block.sheet.name,
      answer: seriesAnswer(tables, last),
    }));
    return { ...base, subject: { is: 'found or left', tags: [...tags] }, options };
  }
  const sorted = tables.toSorted((one, other) => aside(one) - aside(other) || year(other) - year(one));
  const inForce = sorted.map((chosen): Option => ({
    field: null,
    text: chosen.lane.block.sheet.name,
    answer: useAnswer(tables, chosen, meanings),
  }));
  if (areMachines(tables))
    return {
      ...base,
      subject: { is: 'machine', sheet: base.sheets[0] ?? '' },
      options: [{ field: null, text: base.sheets.join(', '), answer: machinesAnswer(tables) }, ...inForce],
    };
  return {
    ...base,
    subject: { is: 'list in force', meanings: [...meanings], tags: [...tags] },
    options: inForce,
  };
}

/** Whether lists can be those of machines each: whole ones on sheets of their own, with nothing said that sets one aside. */
function areMachines(tables: readonly TableRead[]): boolean {
  const sheets = new Set(tables.map(({ lane }) => lane.block.sheet.name));
  return (
    sheets.size === tables.length &&
    tables.every(
      (table) =>
        table.claims.has('measured') &&
        (table.claims.has('configured') || table.claims.has('danger')) &&
        table.machine === null &&
        !table.claims.has('machine') &&
        table.series === null &&
        aside(table) === 0 &&
        year(table) === 0,
    )
  );
}

function machinesAnswer(tables: readonly TableRead[]): ColumnMap {
  return {
    tables: tables.map(({ lane }) => ({ ...mappedTableOfLane(lane), machine: lane.block.sheet.name })),
  };
}

function seriesAnswer(tables: readonly TableRead[], left: TableRead): ColumnMap {
  return {
    tables: tables.map((table) => ({
      ...mappedTableOfLane(table.lane),
      series: table === left ? ('as left' as const) : ('as found' as const),
    })),
  };
}

/** The others are not read, or, where they hold more than what is asked, not for that. */
function useAnswer(
  tables: readonly TableRead[],
  chosen: TableRead,
  meanings: ReadonlySet<MeaningId>,
): ColumnMap {
  return {
    tables: tables.map((table): MappedTable => {
      if (table === chosen) return { ...mappedTableOfLane(table.lane), use: true };
      const holdsMore = core.some((id) => table.claims.has(id) && !meanings.has(id));
      return holdsMore
        ? {
            ...mappedTableOfLane(table.lane),
            columns: Object.fromEntries([...meanings].map((id) => [meaning(id).name, null])),
          }
        : { ...mappedTableOfLane(table.lane), use: false };
    }),
  };
}

/** Words around a list that speak against its being in force. */
function aside({ lane }: TableRead): number {
  const texts = [lane.block.sheet.name, ...lane.context.titles.map(({ text }) => text)];
  const said = texts.map(conceptsIn);
  const score = said.some((concepts) => concepts.has('old') || concepts.has('proposed')) ? 2 : 0;
  return score + (lane.block.sheet.hidden ? 4 : 0);
}

function year({ lane }: TableRead): number {
  const texts = [lane.block.sheet.name, ...lane.context.titles.map(({ text }) => text)].join(' ');
  return Math.max(0, ...[...texts.matchAll(/(?<!\d)20\d\d(?!\d)/gu)].map(([digits]) => Number(digits)));
}

/** Which of the lines holds that one table has of one channel: the last tested is proposed, else the first. */
function linesTwice(channels: readonly ReadChannel[]): Question[] {
  return channels.flatMap(({ tag, machine, troubles, lines }): Question[] => {
    const asked = new Map<string, Question>();
    for (const trouble of troubles) {
      if (trouble.is !== 'twice') continue;
      const id = `line ${trouble.places.map(({ sheet, row, column }) => `${sheet} ${row} ${column}`).join(' ')}`;
      if (asked.has(id)) continue;
      const own = lines.filter(({ place }) => trouble.places.includes(place));
      const sorted = own.toSorted((one, other) => (other.day ?? 0) - (one.day ?? 0));
      asked.set(id, {
        id,
        needed: true,
        records: 1,
        subject: { is: 'line in force', tag, machine, places: sorted.map(({ place }) => place) },
        evidence: [],
        sheets: [...new Set(trouble.places.map(({ sheet }) => sheet))],
        options: sorted.map((chosen): Option => ({
          field: null,
          text: lineName(chosen),
          answer: {
            notOfAudit: own.filter((line) => line !== chosen).map((line) => lineSaid(line)),
          },
        })),
      });
    }
    return [...asked.values()];
  });
}

type ChannelLine = ReadChannel['lines'][number];

function lineSaid({ table, place }: ChannelLine): { sheet: string; row?: number; column?: string } {
  return table.lane.block.lies === 'columns'
    ? { sheet: place.sheet, column: columnLetters(place.column) }
    : table.lane.context.hasBeside
      ? { sheet: place.sheet, row: place.row, column: columnLetters(place.column) }
      : { sheet: place.sheet, row: place.row };
}

function lineName(line: ChannelLine): string {
  const { row, column } = lineSaid(line);
  return String(row ?? column);
}
