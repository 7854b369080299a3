import type { ColumnMap } from '../../../model/columnMap.ts';
import { laneKey, mappedTableOfLane } from '../answers/places.ts';
import { mergeMaps } from '../answers/merge.ts';
import type { ReadChannel } from '../readings/channel.ts';
import type { Evidence } from '../standing/evidence.ts';
import type { TableRead } from '../tables/tableRead.ts';
import type { Option, Question } from './question.ts';

/** Of what machine lists are: one question for all that a heading or a name proposes, one for each that nothing does. */
export function machineQuestions(tables: readonly TableRead[], channels: readonly ReadChannel[]): Question[] {
  const unsaid = new Map<TableRead, Set<string>>();
  for (const { tag, troubles } of channels) {
    for (const trouble of troubles) {
      if (trouble.is !== 'machine not said') continue;
      for (const table of trouble.tables) unsaid.set(table, (unsaid.get(table) ?? new Set()).add(tag));
    }
  }
  const proposed = tables.filter(
    ({ part, leftOut, machine, headings }) =>
      part === 'channels' && !leftOut && (machine?.standing === 'proposed' || headings.length > 0),
  );
  const bare = [...unsaid].filter(([table]) => !proposed.includes(table));
  const names =
    bare.length > 0 ? [...new Set(channels.map(({ machine }) => machine).filter((name) => name !== ''))] : [];
  return [
    ...(proposed.length > 0 ? [together(proposed, unsaid)] : []),
    ...bare.flatMap(([table, tags]) => (names.length > 0 ? [ofOne(table, tags.size, names)] : [])),
  ];
}

function together(
  tables: readonly TableRead[],
  unsaid: ReadonlyMap<TableRead, ReadonlySet<string>>,
): Question {
  const [first] = tables;
  const records = tables.reduce((sum, table) => sum + (unsaid.get(table)?.size ?? 0), 0);
  const names = tables.flatMap(({ machine, headings }) =>
    headings.length > 0 ? headings.map(({ text }) => text) : [machine?.name ?? ''],
  );
  return {
    id: `machine ${tables.map(({ lane }) => laneKey(lane)).join(' ')}`,
    needed: records > 0,
    records,
    subject: { is: 'machine', sheet: first?.lane.block.sheet.name ?? '' },
    evidence: tables.flatMap(({ machine, headings }): Evidence[] =>
      headings.length > 0 ? [...headings] : machine ? [machine.evidence] : [],
    ),
    sheets: [...new Set(tables.map(({ lane }) => lane.block.sheet.name))],
    options: [
      {
        field: null,
        text: names.join(', '),
        answer: tables.reduce<ColumnMap>((map, table) => mergeMaps(map, answerOf(table)), {}),
      },
      { field: null, text: '', answer: {} },
    ],
  };
}

function answerOf({ lane, machine, headings }: TableRead): ColumnMap {
  return {
    tables: [
      {
        ...mappedTableOfLane(lane),
        ...(headings.length > 0
          ? { machineFrom: 'headings' as const }
          : machine
            ? { machine: machine.name }
            : {}),
      },
    ],
  };
}

function ofOne(table: TableRead, records: number, names: readonly string[]): Question {
  const { name } = table.lane.block.sheet;
  return {
    id: `machine ${laneKey(table.lane)}`,
    needed: true,
    records,
    subject: { is: 'machine', sheet: name },
    evidence: [],
    sheets: [name],
    options: names.map((text): Option => ({
      field: null,
      text,
      answer: { tables: [{ ...mappedTableOfLane(table.lane), machine: text }] },
    })),
  };
}
