import { cellAddress } from '../../../../cells/address.ts';
import type { ColumnMap } from '../../../model/columnMap.ts';
import { tagKey } from '../../tables/tagKey.ts';
import { laneKey, laneSaid } from '../answers/places.ts';
import { mergeMaps } from '../answers/merge.ts';
import type { MeaningId } from '../meanings/meaning.ts';
import type { ReadChannel } from '../readings/channel.ts';
import { conceptsIn } from '../vocabulary/lexicon.ts';
import type { TableRead } from '../tables/tableRead.ts';
import type { Option, Question } from './question.ts';

/** Questions about whole lists and their channels: which holds, of what machine, how tags are spelled, what a cell says. */
export function listQuestions(tables: readonly TableRead[], channels: readonly ReadChannel[]): Question[] {
  return [...rivals(channels), ...machines(tables, channels), ...nearNames(channels), ...doubtful(channels)];
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
      if (trouble.is !== 'rival tables') continue;
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
  return [...byTables.values()].map(({ tables, meanings, tags }): Question => {
    const base = {
      needed: true,
      records: tags.size,
      evidence: tables.flatMap(({ series }) => (series ? [{ is: 'series', ...series } as const] : [])),
      id: [
        'list',
        ...tables.map(({ lane }) => laneKey(lane)),
        [...meanings].join(),
      ].join(' '),
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
    return {
      ...base,
      subject: { is: 'list in force', meanings: [...meanings], tags: [...tags] },
      options: sorted.map((chosen): Option => ({
        field: null,
        text: chosen.lane.block.sheet.name,
        answer: useAnswer(tables, chosen),
      })),
    };
  });
}

function seriesAnswer(tables: readonly TableRead[], left: TableRead): ColumnMap {
  return {
    tables: tables.map((table) => ({
      ...laneSaid(table.lane),
      series: table === left ? ('as left' as const) : ('as found' as const),
    })),
  };
}

function useAnswer(tables: readonly TableRead[], chosen: TableRead): ColumnMap {
  return { tables: tables.map((table) => ({ ...laneSaid(table.lane), use: table === chosen })) };
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

/** Lists whose channels can't be told apart until their machine is said. */
function machines(tables: readonly TableRead[], channels: readonly ReadChannel[]): Question[] {
  const unsaid = new Map<TableRead, Set<string>>();
  for (const { tag, troubles } of channels) {
    for (const trouble of troubles) {
      if (trouble.is !== 'machine not said') continue;
      for (const table of trouble.tables) unsaid.set(table, (unsaid.get(table) ?? new Set()).add(tag));
    }
  }
  for (const table of tables)
    if (table.part === 'channels' && table.machine?.standing === 'proposed' && !unsaid.has(table))
      unsaid.set(table, new Set());
  const names = [...new Set(channels.map(({ machine }) => machine).filter((name) => name !== ''))];
  return [...unsaid].flatMap(([table, tags]): Question[] => {
    const proposed = table.machine ? [table.machine.name] : [];
    const choices = [...new Set([...proposed, ...names])];
    if (choices.length === 0) return [];
    return [
      {
        id: `machine ${laneKey(table.lane)}`,
        needed: tags.size > 0,
        records: tags.size,
        subject: { is: 'machine', sheet: table.lane.block.sheet.name },
        evidence: table.machine ? [table.machine.evidence] : [],
        options: choices.map((text): Option => ({
          field: null,
          text,
          answer: { tables: [{ ...laneSaid(table.lane), machine: text }] },
        })),
      },
    ];
  });
}

/** Tags of probes and settings without each other that are the same but for spaces, dashes, and O for 0. */
function nearNames(channels: readonly ReadChannel[]): Question[] {
  const lone = (id: MeaningId, other: MeaningId) =>
    channels.filter(
      ({ lines }) =>
        lines.some(({ table }) => table.claims.has(id)) &&
        !lines.some(({ table }) => table.claims.has(other)),
    );
  const settings = new Map<string, ReadChannel[]>();
  for (const channel of lone('configured', 'measured')) {
    const key = squeezed(channel.tag);
    settings.set(key, [...(settings.get(key) ?? []), channel]);
  }
  const pairs: (readonly [string, string])[] = [];
  for (const channel of lone('measured', 'configured')) {
    const fitting = settings.get(squeezed(channel.tag)) ?? [];
    const [only] = fitting;
    if (only && fitting.length === 1 && tagKey(only.tag) !== tagKey(channel.tag))
      pairs.push([only.tag, channel.tag]);
  }
  const joined = new Set(pairs.map(([written]) => written));
  if (pairs.length === 0 || joined.size < pairs.length) return [];
  const answer: ColumnMap = { names: Object.fromEntries(pairs) };
  return [
    {
      id: `names ${pairs.map(([written]) => written).join()}`,
      needed: true,
      records: pairs.length,
      subject: { is: 'names', pairs },
      evidence: [],
      options: [{ field: null, text: '', answer }],
    },
  ];
}

function squeezed(tag: string): string {
  return tagKey(tag)
    .replace(/[^\p{L}\p{N}]/gu, '')
    .replace(/o/gu, '0')
    .replace(/[il]/gu, '1');
}

/** Cells whose number a person has to confirm. */
function doubtful(channels: readonly ReadChannel[]): Question[] {
  const found: Question[] = [];
  for (const { tag, notes } of channels) {
    for (const { note, meaning: id, place } of notes) {
      if (note.is !== 'needs a person' || note.value === null) continue;
      const address = `${place.sheet}!${cellAddress(place.row, place.column)}`;
      found.push({
        id: `value ${address}`,
        needed: true,
        records: 1,
        subject: { is: 'value', meaning: id, tag, place, text: note.word },
        evidence: [],
        options: [{ field: null, text: String(note.value), answer: { cells: { [address]: note.value } } }],
      });
    }
  }
  return found;
}

/** The answers to the proposals of questions, all accepted. */
export function acceptedAnswers(questions: readonly Question[]): ColumnMap {
  return questions.reduce<ColumnMap>((map, { options }) => mergeMaps(map, options[0]?.answer ?? {}), {});
}
