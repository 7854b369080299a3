import { type Column, change, columnOf, insertAfter, type Draft, type Table, listsOf } from '../draft.ts';
import { verdictOf } from '../truth.ts';
import { apart, inRows } from './structure.ts';
import type { Dimension } from './dimension.ts';

const listsAlone = (draft: Draft): Table[] => listsOf(draft);

function measured(table: Table): Column {
  return columnOf(table, 'measured sensitivity')!;
}

/** Says of every channel that it was measured again. */
function leftToo(draft: Draft): void {
  for (const channel of draft.channels) {
    const asLeft = channel.left * channel.units.measured.factor;
    change(draft, channel, {
      asLeft,
      asLeftVerdict: verdictOf(channel.configured * channel.units.configured.factor, asLeft),
    });
  }
}

/** A measurement of an earlier year, right of or left of the one that holds. */
function earlier(column: Column, header: string): Column {
  return { ...column, header, cell: ({ earlier: value }) => value, stands: false };
}

/** How often the chain was measured, and what says which time. */
export const rounds: Dimension = {
  name: 'rounds',
  options: [
    { name: 'once', weight: 9 },
    {
      name: 'as left in its own words',
      weight: 2,
      fits: ({ kinds }) => kinds === 'radial',
      silentlyWrong: 'as left audited as found, or left out unsaid',
      apply: (draft) => {
        const header = draft.random.pick(draft.words.asLeft);
        for (const table of listsAlone(draft)) {
          insertAfter(table, 'measured sensitivity', {
            ...measured(table),
            meaning: 'as-left sensitivity',
            header,
            cell: ({ left }) => left,
          });
        }
        leftToo(draft);
      },
    },
    {
      name: 'as found and as left as merged groups',
      weight: 2,
      fits: (chosen) => inRows(chosen) && chosen['kinds'] === 'radial',
      silentlyWrong:
        'the merged header taken for that of its first column, so that as left is audited as found or lost',
      apply: (draft) => {
        const header = draft.random.pick(draft.words.sensitivity);
        for (const table of listsAlone(draft)) {
          const found = measured(table);
          const gap = columnOf(table, 'gap voltage');
          table.columns = table.columns.filter((column) => column !== gap);
          found.header = header;
          found.group = draft.words.found;
          const left: Column = {
            ...found,
            meaning: 'as-left sensitivity',
            group: draft.words.left,
            cell: ({ left: value }) => value,
          };
          insertAfter(
            table,
            'measured sensitivity',
            ...(gap ? [{ ...gap, group: draft.words.found }] : []),
            left,
          );
        }
        leftToo(draft);
      },
    },
    {
      name: 'as found and as left as sheets',
      weight: 2,
      fits: (chosen) =>
        ['two sheets', 'a settings sheet a rack'].includes(chosen['structure'] ?? '') &&
        chosen['kinds'] === 'radial',
      silentlyWrong: 'the as-left sheet audited as found: a trip that was late seems right',
      apply: (draft) => {
        const [list] = listsAlone(draft);
        const found = list!;
        const left: Table = {
          ...found,
          sheet: draft.words.left,
          above: found.above.map((cells) => [...cells]),
          columns: found.columns.map((column) =>
            column.meaning === 'measured sensitivity'
              ? { ...column, meaning: 'as-left sensitivity', cell: ({ left: value }) => value }
              : { ...column, stands: false },
          ),
        };
        found.sheet = draft.words.found;
        const at = draft.tables.indexOf(found);
        draft.tables.splice(draft.random.chance(0.5) ? at : at + 1, 0, left);
        leftToo(draft);
      },
    },
    {
      name: 'two years in their own columns',
      weight: 1,
      fits: (chosen) => chosen['structure'] !== 'X and Y in one row',
      silentlyWrong: 'the older year audited',
      apply: (draft) => {
        for (const table of listsAlone(draft)) {
          const now = measured(table);
          const then = earlier(now, `${now.header} 03/2023`);
          now.header = `${now.header} 03/2025`;
          table.columns.splice(table.columns.indexOf(now), 0, then);
        }
      },
    },
    {
      name: 'two years below one merged header',
      weight: 1,
      fits: inRows,
      silentlyWrong: 'the merged header taken for that of the first year',
      apply: (draft) => {
        for (const table of listsAlone(draft)) {
          const now = measured(table);
          now.group = now.header;
          now.unitInGroup = true;
          const then = earlier(now, '2023');
          now.header = '2025';
          table.columns.splice(table.columns.indexOf(now), 0, then);
        }
      },
    },
    {
      name: 'two readings without a word',
      weight: 0.5,
      fits: (chosen) => chosen['structure'] !== 'X and Y in one row',
      asks: 'which of two measured sensitivities holds',
      silentlyWrong: 'either of two like columns taken unasked',
      apply: (draft) => {
        for (const table of listsAlone(draft)) {
          const now = measured(table);
          const then = earlier(now, `${now.header} (2)`);
          table.columns.splice(table.columns.indexOf(now) + 1, 0, then);
        }
        for (const channel of draft.channels) {
          const other = channel.earlier * channel.units.measured.factor;
          const verdict =
            channel.kind === 'axial'
              ? 'incomplete'
              : verdictOf(channel.configured * channel.units.configured.factor, other);
          change(draft, channel, { otherwise: [{ measured: other, verdict }] });
        }
        draft.accept = ['ask'];
      },
    },
  ],
};

/** Merged groups above the settings and the field's columns of one table. */
export const headerDepth: Dimension = {
  name: 'header depth',
  options: [
    { name: 'one row', weight: 8 },
    {
      name: 'groups above',
      weight: 3,
      fits: (chosen) =>
        inRows(chosen) &&
        !apart(chosen) &&
        ['once', 'as left in its own words'].includes(chosen['rounds'] ?? ''),
      silentlyWrong: 'the group taken for the header of its first column',
      apply: (draft) => {
        const monitor = draft.random.pick(draft.words.monitor);
        const field = draft.random.pick(draft.words.field);
        for (const table of draft.tables) {
          for (const column of table.columns) {
            if (['configured sensitivity', 'alert', 'danger', 'full scale'].includes(column.meaning))
              column.group = monitor;
            if (
              ['measured sensitivity', 'as-left sensitivity', 'gap voltage', 'calibrated on'].includes(
                column.meaning,
              )
            ) {
              column.group = field;
            }
          }
          table.columns = byGroup(table.columns);
        }
      },
    },
  ],
};

/** Columns of one group beside each other, in the order in which the groups begin. */
function byGroup(columns: readonly Column[]): Column[] {
  const groups = [...new Set(columns.map(({ group }) => group))];
  return groups.flatMap((group) => columns.filter((column) => column.group === group));
}

/** Both sensitivities under one and the same word, told apart by the company that they keep. */
export const roleWords: Dimension = {
  name: 'role words',
  options: [
    { name: 'measured and configured said', weight: 8 },
    {
      name: 'told by their company',
      weight: 2,
      fits: (chosen) =>
        (apart(chosen) || chosen['header depth'] === 'groups above') &&
        ['gap and date', 'gap, date, full scale'].includes(chosen['quantities'] ?? '') &&
        chosen['rounds'] === 'once',
      silentlyWrong: 'measured and configured exchanged: late becomes early',
      apply: (draft) => {
        const bare = draft.random.pick(draft.words.sensitivity);
        for (const table of draft.tables) {
          for (const column of table.columns) {
            if (column.meaning === 'measured sensitivity' || column.meaning === 'configured sensitivity')
              column.header = bare;
          }
        }
      },
    },
  ],
};
