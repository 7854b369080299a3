import { DateCell, PercentCell, type Cell } from '../../src/cells/cell.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import { book, listObject, sheet, type Rows } from './book.ts';
import type { PlannedChannel } from './oracle.ts';
import type { Plan } from './planned.ts';
import { detectionFactors, spellings, type Measured, type Spelling } from './spellings.ts';

/** A workbook and the units in which its report is expected: base units per unit, by tag. */
export interface LaidOut {
  readonly workbook: Workbook;
  readonly levels: ReadonlyMap<string, number>;
  readonly sensitivities: ReadonlyMap<string, number>;
  readonly what: string;
}

type Side = 'channels' | 'settings';
type Dice = (sides: number) => number;

/** A small generator of whole numbers (mulberry32), so that one number decides a layout. */
function diceOf(seed: number): Dice {
  let state = seed;
  return (sides) => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) % sides;
  };
}

interface Column {
  readonly header: string;
  readonly value: (channel: PlannedChannel) => number | string | boolean | null;
  /** What its numbers measure; none for words and pure numbers. */
  readonly measured?: Measured;
}

const channelColumns: readonly Column[] = [
  { header: 'tag', value: (c) => c.tag },
  { header: 'machine', value: () => 'Pump' },
  { header: 'location', value: () => 'Drive end' },
  { header: 'kind', value: (c) => (c.kind === 'radial' ? null : c.kind) },
  { header: 'measured sensitivity', value: (c) => c.measured, measured: 'sensitivity' },
  { header: 'uncertainty', value: (c) => c.uncertainty, measured: 'fraction' },
  { header: 'coverage factor', value: (c) => c.coverage },
  { header: 'gap voltage', value: (c) => c.gapVoltage, measured: 'voltage' },
  { header: 'measured zero voltage', value: (c) => c.zeroMeasured, measured: 'voltage' },
  { header: 'zero voltage uncertainty', value: (c) => c.zeroUncertainty, measured: 'voltage' },
  { header: 'positive direction', value: (c) => c.direction },
  { header: 'speed', value: (c) => c.speed, measured: 'speed' },
  { header: 'limit', value: (c) => c.limit, measured: 'level' },
  { header: 'present reading', value: (c) => c.reading, measured: 'level' },
  { header: 'growth per day', value: (c) => c.growth, measured: 'growth' },
  { header: 'doubling time', value: (c) => c.doubling, measured: 'days' },
  { header: 'as-left sensitivity', value: (c) => c.asLeft, measured: 'sensitivity' },
  { header: 'as-left uncertainty', value: (c) => c.asLeftUncertainty, measured: 'fraction' },
  { header: 'as-left gap voltage', value: (c) => c.asLeftGapVoltage, measured: 'voltage' },
];
const settingsColumns: readonly Column[] = [
  { header: 'tag', value: (c) => c.tag },
  { header: 'configured sensitivity', value: (c) => c.configured, measured: 'sensitivity' },
  { header: 'alert', value: (c) => c.alert, measured: 'level' },
  { header: 'danger', value: (c) => c.danger, measured: 'level' },
  { header: 'monitor gain', value: (c) => c.gain },
  { header: 'monitor gain uncertainty', value: (c) => c.gainUncertainty, measured: 'fraction' },
  { header: 'full scale', value: (c) => c.fullScale, measured: 'level' },
  { header: 'alert delay', value: (c) => c.alertDelay, measured: 'seconds' },
  { header: 'danger delay', value: (c) => c.dangerDelay, measured: 'seconds' },
  { header: 'set-point multiplier', value: (c) => c.multiplier },
  { header: 'configured zero voltage', value: (c) => c.zeroConfigured, measured: 'voltage' },
  { header: 'counter alert', value: (c) => c.counterAlert, measured: 'level' },
  { header: 'counter danger', value: (c) => c.counterDanger, measured: 'level' },
  { header: 'resolution', value: (c) => c.resolution, measured: 'level' },
  { header: 'voting group', value: (c) => c.group },
  { header: 'voting', value: (c) => c.voting },
  { header: 'bypass', value: (c) => (c.bypass ? 'yes' : null) },
];

const respell: readonly ((text: string) => string)[] = [
  (text) => text,
  (text) => text.toUpperCase(),
  (text) => text.replaceAll(/[ -]/g, '_'),
  (text) => ` ${text.replaceAll(' ', ' \n ')}:`,
  (text) => text.replaceAll('e', 'é').replaceAll('a', 'Á'),
  (text) => text.replaceAll(' ', '-').replaceAll('i', 'ï'),
];

/** Lays a plan out as a workbook, in one of very many ways. */
export function layOut({ channels, unitsIn, layout }: Plan): LaidOut {
  const dice = diceOf(layout);
  const pick = <T>(all: readonly T[]): T => all[dice(all.length)]!;
  const shuffled = <T>(all: readonly T[]): T[] => {
    const left = [...all];
    return all.map(() => left.splice(dice(left.length), 1)[0]!);
  };
  const bracket = pick([
    (unit: string) => ` (${unit})`,
    (unit: string) => `[${unit}]`,
    (unit: string) => ` [${unit}] `,
  ]);
  const beside = unitsIn === 'columns' && dice(2) === 0;
  // Of sensors that count otherwise than peak to peak a detection is taken as it is stated: none is here.
  const counted = channels.every(({ kind }) => kind === 'radial' || kind === 'axial');
  const setpointDetection = counted ? pick(['', 'p-p', '0-p', 'pk']) : '';
  const levels = new Map<string, number>();
  const sensitivities = new Map<string, number>();
  const detectionOf = (column: Column): string =>
    ['alert', 'danger'].includes(column.header)
      ? setpointDetection
      : counted && ['limit', 'present reading', 'full scale'].includes(column.header)
        ? pick(['', 'pk-pk', '0-pk'])
        : '';

  /** A number as a cell of its own kind: mostly a number, now and then a text. */
  const cellOf = (value: number | string | boolean | null): Cell => {
    if (typeof value !== 'number' || dice(12) > 0) return value;
    const text = String(value);
    return /^-?\d{1,3}\.\d{3}$/.test(text) || dice(2) > 0 ? text : text.replace('.', ',');
  };

  /** Where every unit column is headed alike, a row has one unit for its levels and one for its sensitivities. */
  const ofRow = new Map<string, Spelling>();
  const unitOf = ({ tag, kind }: PlannedChannel, measured: Measured | undefined): Spelling => {
    if (!beside) return pick(spellings(measured, kind));
    const what = measured === 'growth' ? 'level' : measured;
    const key = `${tag} ${what ?? ''}`;
    const unit = ofRow.get(key) ?? pick(spellings(what, kind));
    ofRow.set(key, unit);
    return unit;
  };

  const table = (side: Side, columns: readonly Column[], rows: readonly PlannedChannel[]): Cell[][] => {
    const header: Cell[] = [];
    const cells: Cell[][] = rows.map(() => []);
    for (const column of columns) {
      const { measured } = column;
      const words = measured === 'level' ? detectionOf(column) : '';
      const own = words === '' ? setpointDetection : words;
      const inHeader = pick(spellings(measured, channels[0]?.kind ?? 'radial'));
      const hasColumn = unitsIn === 'columns' && ['level', 'sensitivity', 'growth'].includes(measured ?? '');
      const bare = measured === undefined || hasColumn || (inHeader.usual && dice(2) === 0);
      const text = words === '' ? inHeader.text : `${inHeader.text} ${words}`;
      const name = (column.header === 'tag' ? pick(respell.slice(0, 4)) : pick(respell))(column.header);
      header.push(name + (bare ? '' : bracket(text)));
      if (hasColumn)
        header.push(beside ? 'Unit' : `${pick(respell)(column.header)} ${pick(['unit', 'Units', 'UoM'])}`);
      rows.forEach((channel, index) => {
        const unit = hasColumn ? unitOf(channel, measured) : inHeader;
        const amplitude = measured === 'level' || measured === 'growth';
        const halved = channel.kind === 'axial' || !amplitude ? 1 : detectionFactors[own]!;
        const base = column.value(channel);
        const value = typeof base === 'number' && measured ? base / unit.factor / halved : base;
        if (column.header === 'danger') levels.set(channel.tag, unit.factor * halved);
        if (column.header === 'configured sensitivity') sensitivities.set(channel.tag, unit.factor);
        const percent = measured === 'fraction' && typeof value === 'number' && dice(3) === 0;
        const tag = column.header === 'tag' ? pick([` ${channel.tag} `, channel.tag.toLowerCase()]) : value;
        cells[index]!.push(
          percent
            ? new PercentCell(value)
            : column.header === 'tag' && side === 'settings'
              ? tag
              : cellOf(column.header === 'tag' ? channel.tag : value),
        );
        if (hasColumn) cells[index]!.push(words === '' ? unit.text : `${unit.text} ${words}`);
      });
    }
    return [header, ...cells];
  };

  const withJunk = (columns: readonly Column[]): Column[] =>
    shuffled([
      ...columns,
      { header: 'Cabinet', value: () => 7 },
      ...(dice(2) === 0 ? [{ header: 'Serviced by (initials)', value: () => 'n.n.' }] : []),
    ]);
  const titles = (): Cell[][] =>
    [['Protection channels'], [], ['Rev.', 3, new DateCell(20_000)]].slice(0, dice(4));
  const name = pick(['two sheets', 'spreadsheet tables', 'side by side', 'stacked', 'one table']);

  if (name === 'one table') {
    const columns = withJunk([...channelColumns, ...settingsColumns.slice(1)]);
    const rows = [...titles(), ...table('channels', columns, channels)];
    return { workbook: book(['All', rows]), levels, sensitivities, what: name };
  }
  const list = table('channels', withJunk(channelColumns), channels);
  const settings = table('settings', withJunk(settingsColumns), shuffled(channels));
  return { workbook: arranged(name, list, settings, titles), levels, sensitivities, what: name };
}

function arranged(name: string, list: Cell[][], settings: Cell[][], titles: () => Cell[][]): Workbook {
  const width = list[0]!.length;
  const top = titles();
  if (name === 'side by side') {
    const both: Rows = list.map((row, index) => [...row, null, ...settings[index]!]);
    return book(['Both', [...top, ...both]]);
  }
  if (name === 'stacked') return book(['Both', [...top, ...list, [], ...settings]]);
  if (name === 'two sheets')
    return book(
      ['Channels', [...top, ...list]],
      ['Cover', titles()],
      ['Monitor', [...titles(), ...settings]],
    );
  const both: Rows = list.map((row, index) => [...row, ...settings[index]!]);
  const [first, last] = [top.length + 1, top.length + list.length];
  return book(
    sheet('Tables', [...top, ...both], {
      tables: [
        listObject('Found', [first, 1, last, width]),
        listObject('Set', [first, width + 1, last, width + settings[0]!.length]),
      ],
    }),
  );
}
