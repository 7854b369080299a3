import { change, tablesOf } from '../draft.ts';
import { apart } from './structure.ts';
import type { Dimension } from './dimension.ts';

export const machinePlace: Dimension = {
  name: 'machine',
  options: [
    { name: 'column', weight: 8 },
    {
      name: 'merged column',
      weight: 2,
      silentlyWrong: 'the machine of the rows below the first one lost',
      apply: ({ wish }) => {
        wish.machinePlace = 'merged column';
      },
    },
    {
      name: 'headings',
      weight: 1,
      silentlyWrong: 'a heading taken for a channel',
      apply: ({ wish }) => {
        wish.machinePlace = 'headings';
      },
    },
    {
      name: 'label above',
      weight: 4,
      apply: ({ wish }) => {
        wish.machinePlace = 'label above';
      },
    },
    {
      name: 'sheet name',
      weight: 2,
      apply: ({ wish }) => {
        wish.machinePlace = 'sheet name';
      },
    },
  ],
};

export const tags: Dimension = {
  name: 'tags',
  options: [
    { name: 'unique', weight: 6 },
    {
      name: 'told apart by the machine',
      weight: 3,
      fits: (chosen) => chosen['machine'] !== 'headings',
      silentlyWrong: "the first machine's settings used for all",
      apply: ({ wish }) => {
        wish.repeatedTags = true;
      },
    },
  ],
};

const nearly: readonly ((tag: string) => string)[] = [
  (tag) => tag.replace(/[ -]/u, ''),
  (tag) => tag.replace('-', ' '),
  (tag) => tag.replace(/([A-Z])(\d)/u, '$1-$2'),
  (tag) => tag.replace('0', 'O'),
];

/** Tags of the settings that differ by a dash, a space or a letter O from those of the list. */
export const nearTags: Dimension = {
  name: 'near tags',
  options: [
    { name: 'same tags', weight: 14 },
    {
      name: 'some spelled otherwise',
      weight: 1,
      fits: (chosen) => apart(chosen) && chosen['tags'] === 'unique',
      asks: 'whether the tags that differ by a sign are the same',
      silentlyWrong: 'near tags joined unasked, or left apart unsaid',
      apply: (draft) => {
        const spell = draft.random.pick(nearly);
        const wrong = draft.channels.filter(({ tag }, index) => index % 3 === 1 && spell(tag) !== tag);
        for (const channel of wrong) {
          change(draft, channel, { mustAsk: true, also: ['incomplete'] });
          draft.mayBeIncomplete.push(spell(channel.tag));
        }
        for (const table of tablesOf(draft, 'settings')) {
          table.lines = table.lines.map((line) =>
            line.is === 'channel' && wrong.includes(line.channel)
              ? { ...line, cells: new Map([...(line.cells ?? []), ['tag', spell(line.channel.tag)]]) }
              : line,
          );
        }
      },
    },
  ],
};

/** A running number in both tables under a word that may mean the tag, in another order in each. */
export const runningNumbers: Dimension = {
  name: 'running numbers',
  options: [
    { name: 'none', weight: 10 },
    {
      name: 'Channel 1 to n in every table',
      weight: 1,
      fits: (chosen) => chosen['tags'] === 'unique' && chosen['structure'] !== 'X and Y in one row',
      silentlyWrong: 'rows joined by their running number: each judged by the settings of another',
      apply: (draft) => {
        for (const table of draft.tables) {
          const order = table.lines.flatMap((line) => (line.is === 'channel' ? [line.channel] : []));
          table.columns.unshift({
            meaning: 'other',
            header: 'Channel',
            unit: null,
            group: null,
            cell: (channel) => order.indexOf(channel) + 1,
            stands: false,
          });
        }
      },
    },
  ],
};
