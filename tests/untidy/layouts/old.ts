import { change, columnOf, type Column, type Draft, type Table, listsOf, tablesOf } from '../draft.ts';
import type { Channel } from '../scenario.ts';
import { verdictOf } from '../truth.ts';
import { apart, inRows } from './structure.ts';
import type { Dimension } from './dimension.ts';

/** The settings of before: the monitor was set to what is measured now, so that every channel would seem right. */
const before = {
  configured: ({ measured, units }: Channel): number =>
    Number(((measured * units.measured.factor) / units.configured.factor).toPrecision(4)),
  danger: ({ danger }: Channel): number => Number((danger * 1.4).toPrecision(4)),
  alert: ({ alert }: Channel): number => Number((alert * 1.4).toPrecision(4)),
};

/** The same columns with the values of before. */
function olderColumns(columns: readonly Column[], standard: boolean): Column[] {
  const words: Partial<Record<Column['meaning'], string>> = {
    tag: 'Tag',
    machine: 'Machine',
    'configured sensitivity': 'Configured sensitivity',
    'measured sensitivity': 'Measured sensitivity',
    alert: 'Alert',
    danger: 'Danger',
  };
  return columns.flatMap((column): Column[] => {
    const header = words[column.meaning];
    if (header === undefined) return [];
    const older: Column = {
      ...column,
      group: null,
      merged: false,
      stands: false,
      ...(standard ? { header } : {}),
    };
    if (column.meaning === 'configured sensitivity') older.cell = before.configured;
    if (column.meaning === 'alert') older.cell = before.alert;
    if (column.meaning === 'danger') older.cell = before.danger;
    return [older];
  });
}

export const hidden: Dimension = {
  name: 'hidden',
  options: [
    { name: 'nothing', weight: 9 },
    {
      name: 'an old column under the standard header',
      weight: 2,
      fits: (chosen) =>
        inRows(chosen) &&
        chosen['unit place'] !== 'title of the sheet' &&
        chosen['rounds'] !== 'two years below one merged header' &&
        chosen['rounds'] !== 'as found and as left as merged groups',
      silentlyWrong: 'the hidden column audited: every late trip seems right',
      apply: (draft) => {
        for (const table of listsOf(draft)) {
          const now = columnOf(table, 'measured sensitivity')!;
          table.columns.splice(table.columns.indexOf(now), 0, {
            ...now,
            header: 'Measured sensitivity',
            cell: ({ earlier }) => earlier,
            hidden: true,
            stands: false,
          });
        }
      },
    },
    {
      name: 'an old sheet under standard headers',
      weight: 2,
      fits: (chosen) =>
        apart(chosen) && chosen['unit place'] !== 'nowhere' && chosen['setpoint form'] === 'in the unit',
      silentlyWrong: 'the hidden sheet audited: every late trip seems right',
      apply: (draft) => {
        const [settings] = tablesOf(draft, 'settings');
        const older: Table = {
          ...settings!,
          sheet: `${settings!.sheet} ${draft.words.old}`,
          columns: olderColumns(settings!.columns, true),
          lines: draft.channels.map((channel) => ({ is: 'channel', channel })),
          above: [],
          unitPlace: 'header',
          beside: false,
          hidden: true,
          stands: false,
        };
        draft.tables.splice(draft.random.chance(0.5) ? 0 : draft.tables.length, 0, older);
      },
    },
    {
      name: 'rows of old values',
      weight: 1,
      fits: (chosen) =>
        inRows(chosen) && chosen['channels twice'] === 'none' && chosen['machine'] !== 'merged column',
      silentlyWrong: 'the hidden row audited in place of the one that is seen',
      apply: (draft) => {
        for (const table of listsOf(draft)) {
          const at = table.lines.findIndex((line) => line.is === 'channel' && line.channel.kind === 'radial');
          const line = table.lines[at];
          if (line?.is !== 'channel') continue;
          table.lines.splice(at, 0, {
            ...line,
            cells: new Map([['measured sensitivity', line.channel.earlier]]),
            hidden: true,
          });
          change(draft, line.channel, { also: ['incomplete'] });
        }
      },
    },
  ],
};

/** A second, visible table of settings for the same tags. */
export const rivals: Dimension = {
  name: 'rival settings',
  options: [
    { name: 'none', weight: 14 },
    {
      name: 'in force and proposed, not said which',
      weight: 1,
      fits: (chosen) =>
        chosen['structure'] === 'two sheets' &&
        chosen['setpoint form'] === 'in the unit' &&
        chosen['unit place'] !== 'nowhere',
      asks: 'which of two settings sheets is in force',
      silentlyWrong: 'either sheet taken unasked',
      apply: (draft) => {
        const [settings] = tablesOf(draft, 'settings');
        const proposed: Table = {
          ...settings!,
          sheet: `${settings!.sheet} ${draft.words.proposed}`,
          columns: olderColumns(settings!.columns, false),
          stands: false,
        };
        draft.tables.splice(draft.random.chance(0.5) ? 0 : draft.tables.length, 0, proposed);
        draft.choice = [settings!.sheet, proposed.sheet];
        draft.accept = ['ask'];
        for (const channel of draft.channels) otherSettings(draft, channel);
      },
    },
  ],
};

function otherSettings(draft: Draft, channel: Channel): void {
  const { units } = channel;
  const configured = before.configured(channel) * units.configured.factor;
  const verdict =
    channel.kind === 'axial' ? 'incomplete' : verdictOf(configured, channel.measured * units.measured.factor);
  const { factor } = units.displacement;
  change(draft, channel, {
    otherwise: [
      { configured, alert: before.alert(channel) * factor, danger: before.danger(channel) * factor, verdict },
    ],
  });
}

/** Where a table stands on its sheet, and what stands above it. */
export const frame: Dimension = {
  name: 'frame',
  options: [
    { name: 'from A1', weight: 5 },
    {
      name: 'below a title',
      weight: 5,
      apply: (draft) => {
        draft.titles = true;
      },
    },
    {
      name: 'below a title, indented',
      weight: 2,
      apply: (draft) => {
        draft.titles = true;
        draft.indent = draft.random.whole(1, 2);
      },
    },
  ],
};

const restyle =
  (style: (header: string) => string) =>
  (draft: Draft): void => {
    for (const { columns, stands } of draft.tables) {
      if (stands) for (const column of columns) column.header = style(column.header);
    }
  };

export const headerText: Dimension = {
  name: 'header text',
  options: [
    { name: 'plain', weight: 8 },
    { name: 'in capitals', weight: 1, apply: restyle((header) => header.toUpperCase()) },
    { name: 'with line breaks', weight: 2, apply: restyle((header) => header.replaceAll(' ', '\n')) },
    { name: 'with colons and stray spaces', weight: 1, apply: restyle((header) => ` ${header} :`) },
  ],
};
