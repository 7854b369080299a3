import { type Column, type Draft, type Line, type Table, insertAfter } from '../draft.ts';
import type { Channel, UnitSystem } from '../scenario.ts';
import type { Chosen, Dimension } from './dimension.ts';
import { headersOf } from './columns.ts';

/** A person or a reader lays the tables out: which sheets, which blocks, and how the channels lie in them. */
export const structure: Dimension = {
  name: 'structure',
  options: [
    {
      name: 'one table',
      weight: 3,
      fits: notPerMachine,
      apply: (draft) => {
        oneTable(draft, 'rows');
      },
    },
    {
      name: 'two sheets',
      weight: 6,
      fits: notPerMachine,
      apply: (draft) => {
        twoTables(draft, 'sheets');
      },
    },
    {
      name: 'two tables below each other',
      weight: 2,
      fits: notPerMachine,
      silentlyWrong: 'the second table read by the headers of the first',
      apply: (draft) => {
        twoTables(draft, 'below');
      },
    },
    {
      name: 'two tables side by side',
      weight: 2,
      fits: notPerMachine,
      silentlyWrong: 'a channel judged by the settings of the row beside it, which are those of another',
      apply: (draft) => {
        twoTables(draft, 'beside');
      },
    },
    {
      name: 'a sheet a machine',
      weight: 4,
      fits: perMachine,
      silentlyWrong: 'one sheet audited and nothing said of the others',
      apply: (draft) => {
        machineTables(draft, 'sheets');
      },
    },
    {
      name: 'a settings sheet a rack',
      weight: 3,
      fits: (chosen) => notPerMachine(chosen) && chosen['tags'] !== 'told apart by the machine',
      silentlyWrong: 'channels of the other racks said to have no settings, without a word of their sheets',
      apply: rackSheets,
    },
    {
      name: 'blocks below each other',
      weight: 3,
      fits: (chosen) => chosen['machine'] === 'label above',
      silentlyWrong: 'the second block dropped or read in the units of the first',
      apply: (draft) => {
        machineTables(draft, 'below');
      },
    },
    {
      name: 'blocks side by side',
      weight: 2,
      fits: (chosen) => chosen['machine'] === 'label above',
      silentlyWrong: 'the second block dropped or read in the units of the first',
      apply: (draft) => {
        machineTables(draft, 'beside');
      },
    },
    {
      name: 'channels as columns',
      weight: 3,
      fits: (chosen) => notPerMachine(chosen) && chosen['machine'] === 'column',
      silentlyWrong: 'a row read as a channel',
      apply: (draft) => {
        oneTable(draft, 'columns');
      },
    },
    {
      name: 'a form a channel',
      weight: 3,
      fits: (chosen) => notPerMachine(chosen) && chosen['machine'] === 'column',
      silentlyWrong: 'the first form audited and nothing said of the others',
      apply: (draft) => {
        oneTable(draft, 'forms');
      },
    },
    {
      name: 'X and Y in one row',
      weight: 3,
      fits: (chosen) =>
        notPerMachine(chosen) &&
        chosen['machine'] === 'column' &&
        chosen['tags'] === 'unique' &&
        chosen['kinds'] === 'radial',
      silentlyWrong: 'only X read, or the measured X judged by the configured Y',
      apply: (draft) => {
        oneTable(draft, 'pairs');
      },
    },
  ],
};

function perMachine(chosen: Chosen): boolean {
  return chosen['machine'] === 'label above' || chosen['machine'] === 'sheet name';
}

function notPerMachine(chosen: Chosen): boolean {
  return !perMachine(chosen) && chosen['units'] !== 'another in each block';
}

/** Structures in which each row is a channel, below one row of headers or several. */
export function inRows(chosen: Chosen): boolean {
  return !['channels as columns', 'a form a channel', 'X and Y in one row'].includes(
    chosen['structure'] ?? '',
  );
}

/** Structures with the channel list and the settings in tables of their own. */
export function apart(chosen: Chosen): boolean {
  return [
    'two sheets',
    'two tables below each other',
    'two tables side by side',
    'a settings sheet a rack',
  ].includes(chosen['structure'] ?? '');
}

function table(
  sheet: string,
  part: Table['part'],
  columns: Column[],
  lines: Line[],
  more: Partial<Table> = {},
): Table {
  return {
    sheet,
    part,
    columns,
    lines,
    above: [],
    lies: 'rows',
    beside: false,
    unitPlace: 'header',
    hidden: false,
    stands: true,
    machine: null,
    ...more,
  };
}

const line = (channel: Channel): Line => ({ is: 'channel', channel });

/** With a heading a machine where that is how machines are said. */
function linesOf(draft: Draft, channels: readonly Channel[], headings: boolean): Line[] {
  if (!headings || draft.wish.machinePlace !== 'headings') return channels.map(line);
  return channels.flatMap((channel, index): Line[] =>
    channels[index - 1]?.machine === channel.machine
      ? [line(channel)]
      : [{ is: 'heading', text: channel.machine }, line(channel)],
  );
}

function unitsOf(channels: readonly Channel[]): UnitSystem {
  return channels[0]!.units;
}

function machineColumn(draft: Draft): boolean {
  return draft.wish.machinePlace === 'column' || draft.wish.machinePlace === 'merged column';
}

function oneTable(draft: Draft, lies: Table['lies']): void {
  const headers = headersOf(draft);
  const units = unitsOf(draft.channels);
  const settings = headers.settings(units).slice(1);
  const list = headers.list(units);
  const columns = draft.random.chance(0.5)
    ? [...list, ...settings]
    : [list[0]!, ...settings, ...list.slice(1)];
  const one = table(
    draft.random.pick(draft.words.monitor),
    'both',
    columns,
    linesOf(draft, draft.channels, true),
    {
      lies,
    },
  );
  if (machineColumn(draft)) insertAfter(one, 'tag', headers.machine());
  draft.tables.push(one);
}

function twoTables(draft: Draft, where: 'sheets' | 'below' | 'beside'): void {
  const { random, words, channels } = draft;
  const headers = headersOf(draft);
  const units = unitsOf(channels);
  const field = random.pick(words.field);
  const monitor = random.pick(words.monitor);
  const list = table(field, 'channels', headers.list(units), linesOf(draft, channels, true));
  const order = random.chance(0.7) ? random.shuffled(channels) : channels;
  const settings = table(
    where === 'sheets' ? monitor : field,
    'settings',
    headers.settings(units),
    order.map(line),
    {
      beside: where === 'beside',
    },
  );
  if (machineColumn(draft)) insertAfter(list, 'tag', headers.machine());
  if (draft.wish.repeatedTags) insertAfter(settings, 'tag', { ...headers.machine(), merged: false });
  draft.tables.push(...(where === 'sheets' && random.chance(0.3) ? [settings, list] : [list, settings]));
}

function machineTables(draft: Draft, where: 'sheets' | 'below' | 'beside'): void {
  const { random, words, channels } = draft;
  const headers = headersOf(draft);
  const name = random.pick(words.monitor);
  const machines = [...new Set(channels.map(({ machine }) => machine))];
  const label = headers.machine().header;
  machines.forEach((machine, index) => {
    const own = channels.filter((channel) => channel.machine === machine);
    const columns = [...headers.list(unitsOf(own)), ...headers.settings(unitsOf(own)).slice(1)];
    const ordered =
      where === 'sheets' && random.chance(0.5)
        ? [columns[0]!, ...random.shuffled(columns.slice(1))]
        : columns;
    const said = draft.wish.machinePlace === 'label above';
    draft.tables.push(
      table(
        where === 'sheets' ? (said ? `${name} ${index + 1}` : machine) : name,
        'both',
        ordered,
        own.map(line),
        {
          above: said ? [[label, machine]] : [],
          beside: where === 'beside' && index > 0,
          machine,
        },
      ),
    );
  });
}

function rackSheets(draft: Draft): void {
  const { random, words, channels } = draft;
  const headers = headersOf(draft);
  const units = unitsOf(channels);
  const list = table(
    random.pick(words.field),
    'channels',
    headers.list(units),
    linesOf(draft, channels, true),
  );
  if (machineColumn(draft)) insertAfter(list, 'tag', headers.machine());
  const monitor = random.pick(words.monitor);
  const machines = [...new Set(channels.map(({ machine }) => machine))];
  draft.tables.push(
    list,
    ...machines.map((machine, index) =>
      table(
        `${monitor} ${index + 1}`,
        'settings',
        headers.settings(units),
        random.shuffled(channels.filter((channel) => channel.machine === machine)).map(line),
      ),
    ),
  );
}
