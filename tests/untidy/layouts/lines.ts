import { type Cell, ErrorCell } from '../../../src/cells/cell.ts';
import { change, type Draft, type Line, type Meaning, listsOf } from '../draft.ts';
import type { Channel } from '../scenario.ts';
import { verdictOf } from '../truth.ts';
import type { Chosen, Dimension } from './dimension.ts';
import { inRows } from './structure.ts';

const rowsOnly = inRows;

/** Puts lines in behind the middle one, or at the end, of each table. */
function into(draft: Draft, where: 'middle' | 'end', ...lines: Line[]): void {
  for (const table of draft.tables.filter(({ lies }) => lies === 'rows')) {
    const channels = table.lines.flatMap((line, index) => (line.is === 'channel' ? [index] : []));
    const middle = channels[Math.ceil(channels.length / 2)] ?? table.lines.length;
    table.lines.splice(where === 'end' ? table.lines.length : middle, 0, ...lines);
  }
}

export const rows: Dimension = {
  name: 'rows',
  options: [
    { name: 'channels alone', weight: 7 },
    {
      name: 'blank rows between',
      weight: 2,
      fits: rowsOnly,
      silentlyWrong: 'all below the first blank row dropped',
      apply: (draft) => {
        into(draft, 'middle', { is: 'blank' });
      },
    },
    {
      name: 'mean and count at the end',
      weight: 2,
      fits: rowsOnly,
      silentlyWrong: 'a mean judged as a channel',
      apply: (draft) => {
        into(
          draft,
          'end',
          { is: 'summary', label: draft.words.mean, of: 'mean' },
          { is: 'summary', label: draft.words.total, of: 'count' },
        );
      },
    },
    {
      name: 'spare places',
      weight: 1,
      fits: rowsOnly,
      silentlyWrong: 'a spare place counted as a channel',
      apply: (draft) => {
        into(draft, 'end', { is: 'summary', label: draft.words.spare, of: 'nothing' });
        draft.mayBeIncomplete.push(draft.words.spare);
      },
    },
    {
      name: 'headers repeated',
      weight: 1,
      fits: (chosen) => rowsOnly(chosen) && chosen['machine'] !== 'merged column',
      silentlyWrong: 'all below the repeated headers dropped, or they taken for a channel',
      apply: (draft) => {
        into(draft, 'middle', { is: 'header again' });
      },
    },
  ],
};

/** Writes another text in place of one channel's value. */
function overwrite(draft: Draft, channel: Channel, meaning: Meaning, cell: Cell): void {
  for (const table of draft.tables.filter(({ stands }) => stands)) {
    if (!table.columns.some((column) => column.meaning === meaning && column.stands)) continue;
    table.lines = table.lines.map((line) =>
      line.is === 'channel' && line.channel === channel
        ? { ...line, cells: new Map([...(line.cells ?? []), [meaning, cell]]) }
        : line,
    );
  }
}

const plainCells = (name: string): { name: string; fits: (chosen: Chosen) => boolean } => ({
  name,
  fits: (chosen) => inRows(chosen) && chosen['unit place'] !== 'in the cells',
});

function remark(
  name: string,
  weight: number,
  text: (channel: Channel) => Cell,
  asNumber: boolean,
  silentlyWrong: string,
) {
  return {
    ...plainCells(name),
    weight,
    silentlyWrong,
    apply: (draft: Draft): void => {
      const channel = draft.random.pick(draft.channels.filter(({ kind }) => kind === 'radial'));
      overwrite(draft, channel, 'measured sensitivity', text(channel));
      change(
        draft,
        channel,
        asNumber ? { also: ['incomplete'] } : { measured: null, verdict: 'incomplete', asLeftVerdict: null },
      );
    },
  };
}

export const cells: Dimension = {
  name: 'cells',
  options: [
    { name: 'plain', weight: 10 },
    remark(
      'about (~)',
      1,
      ({ measured }) => `~${measured}`,
      true,
      'an approximate value judged without a word',
    ),
    remark(
      'see note',
      1,
      ({ measured }) => `${measured} (see note 3)`,
      true,
      'a value with a reservation judged without a word',
    ),
    remark('an error value', 1, () => new ErrorCell('#N/A'), false, 'an error read as a number or a blank'),
    {
      ...plainCells('another unit in one cell'),
      weight: 1,
      silentlyWrong: 'a number in its own unit read in that of the header',
      apply: (draft: Draft): void => {
        const channel = draft.random.pick(draft.channels.filter(({ kind }) => kind === 'radial'));
        const { text, factor } = channel.units.measured;
        const other = text === 'mV/mil' ? 'mV/µm' : 'mV/mil';
        const value = Number(((channel.measured * factor) / (other === 'mV/µm' ? 25.4 : 1)).toPrecision(6));
        overwrite(draft, channel, 'measured sensitivity', `${String(value)} ${other}`);
        change(draft, channel, { also: ['incomplete'] });
      },
    },
    remark('a bound', 1, ({ measured }) => `<${measured}`, false, 'a bound taken for the value'),
    remark('to be confirmed', 1, () => 'TBC', false, 'the row dropped'),
    remark(
      'two readings',
      1,
      ({ measured, earlier }) => `${measured} / ${earlier}`,
      false,
      'either of two readings taken',
    ),
    {
      ...plainCells('danger not entered'),
      weight: 1,
      silentlyWrong: 'the alert or nothing in place of a danger that is not known',
      apply: (draft) => {
        const channel = draft.random.pick(draft.channels);
        overwrite(draft, channel, 'danger', 'TBC');
        change(draft, channel, { danger: null, verdict: 'incomplete', asLeftVerdict: null });
      },
    },
  ],
};

const blankWords = ['n/a', '-', 'TBC', 'none'] as const;

export const optionalBlanks: Dimension = {
  name: 'optional cells',
  options: [
    { name: 'all filled', weight: 8 },
    {
      name: 'words for nothing',
      weight: 2,
      fits: (chosen) =>
        ['gap, date, full scale', 'voting and bypass', 'limit and place'].includes(
          chosen['quantities'] ?? '',
        ) &&
        chosen['setpoint form'] === 'in the unit' &&
        inRows(chosen),
      silentlyWrong: 'a danger not judged because an optional cell says n/a',
      apply: (draft) => {
        const meaning: Meaning = draft.wish.quantities.has('limit') ? 'limit' : 'full scale';
        const key = meaning === 'limit' ? 'limit' : 'fullScale';
        draft.channels.forEach((channel, index) => {
          if (index % 3 !== 0) return;
          overwrite(draft, channel, meaning, draft.random.pick(blankWords));
          change(draft, channel, { optional: { [key]: null } });
        });
      },
    },
  ],
};

/** One channel stands twice in the list, each time measured otherwise. */
export const twice: Dimension = {
  name: 'channels twice',
  options: [
    { name: 'none', weight: 14 },
    {
      name: 'with another value',
      weight: 1,
      fits: (chosen) => inRows(chosen) && chosen['cells'] === 'plain',
      asks: 'which of two rows of one channel holds',
      silentlyWrong: 'the first or the last of two rows taken',
      apply: (draft) => {
        const [table] = listsOf(draft);
        const line = table!.lines.find((one) => one.is === 'channel' && one.channel.kind === 'radial');
        if (line?.is !== 'channel') return;
        const { channel } = line;
        table!.lines.splice(table!.lines.lastIndexOf(line) + 2, 0, {
          ...line,
          cells: new Map([...(line.cells ?? []), ['measured sensitivity', channel.earlier]]),
        });
        const configured = channel.configured * channel.units.configured.factor;
        const measured = channel.earlier * channel.units.measured.factor;
        change(draft, channel, {
          mustAsk: true,
          also: ['incomplete'],
          otherwise: [{ measured, verdict: verdictOf(configured, measured) }],
        });
      },
    },
  ],
};

export const numberForm: Dimension = {
  name: 'numbers',
  options: [
    { name: 'numbers', weight: 8 },
    {
      name: 'texts',
      weight: 1,
      apply: (draft) => {
        draft.numbers = 'text';
      },
    },
    {
      name: 'texts with a decimal comma',
      weight: 2,
      silentlyWrong: '7,12 read as 712 or as 7',
      apply: (draft) => {
        draft.numbers = 'text with comma';
      },
    },
  ],
};
