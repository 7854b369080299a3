import type { Cell } from '../../../src/cells/cell.ts';
import type { Workbook } from '../../../src/cells/sheet.ts';
import { book, type Rows } from '../book.ts';
import type { Dice, PlannedChannel, PlannedRecord } from './plan.ts';

/** µm per unit: mil = 25.4 µm and inch = 25.4 mm exactly, NIST SP 811 App. B.8. */
export const lengths: Readonly<Record<string, number>> = { mil: 25.4, µm: 1, mm: 1000, in: 25_400 };
const voltages: Readonly<Record<string, number>> = { V: 1, mV: 0.001 };

/** A workbook, and the gap unit that each tag's records were written in. */
export interface LaidOut {
  readonly workbook: Workbook;
  readonly units: ReadonlyMap<string, string>;
}

export const layouts = [
  'long',
  'long below long',
  'beside the list',
  'across',
  'below',
  'below the list',
  'below the settings',
] as const;
export type Layout = (typeof layouts)[number];

interface Written {
  readonly gap: string;
  readonly volts: string;
}

const gapHeaders = ['Gap', 'probe gap', 'Micrometer reading', 'GAP'];
const voltsHeaders = ['Output', 'Volts', 'Gap voltage', 'dc voltage'];

/** Lays channels out as a workbook with their records in the given way. */
export function layOut(channels: readonly PlannedChannel[], layout: Layout, dice: Dice): LaidOut {
  const { pick } = dice;
  const units = new Map<string, string>();
  const unitsOf = (some: readonly PlannedChannel[]): Written => {
    const written = { gap: pick(Object.keys(lengths)), volts: pick(Object.keys(voltages)) };
    for (const { tag } of some) units.set(tag, written.gap);
    return written;
  };
  const long = (some: readonly PlannedChannel[]): Rows =>
    longTable(
      some.flatMap(({ records }) => records),
      unitsOf(some),
      dice,
    );
  const blocks = (): Rows[] =>
    channels.flatMap((channel) => {
      const written = unitsOf([channel]);
      return channel.records.map((record) => block(record, written, dice));
    });
  const half = Math.ceil(channels.length / 2);
  const list = listOf(channels);
  const monitor = settingsOf(channels);
  const under = (): Rows =>
    pick([
      () => [...pick([[], [[]], [[], []]]), ...long(channels)],
      () => [[], ...blocks().flatMap((one) => [...one, ...pick([[], [[]]])])],
      () => [[], ...beside(blocks(), pick([0, 1, 2]))],
    ])();
  const recordRows: Readonly<Record<Layout, () => Rows>> = {
    long: () => [...titles(dice), ...long(channels)],
    'long below long': () => [
      ...long(channels.slice(0, half)),
      ...(half < channels.length ? [...pick([[], [[]]]), ['Others'], ...long(channels.slice(half))] : []),
    ],
    'beside the list': () => beside([list, long(channels)], 1),
    across: () => [...titles(dice), ...beside(blocks(), pick([0, 1, 2]))],
    below: () => blocks().flatMap((one) => [...one, ...pick([[], [[]]])]),
    'below the list': () => [...list, ...under()],
    'below the settings': () => [...monitor, ...under()],
  };
  const rows = recordRows[layout]();
  const ofList = layout === 'beside the list' || layout === 'below the list';
  const ofMonitor = layout === 'below the settings';
  return {
    units,
    workbook: book(
      ['Channels', ofList ? rows : list],
      ['Monitor', ofMonitor ? rows : monitor],
      ...(ofList || ofMonitor ? [] : [['Records', rows] as const]),
      ['Shaker', shaker(channels, dice)],
    ),
  };
}

function titles({ pick }: Dice): Rows {
  return pick<Rows>([
    [],
    [['Probe records'], []],
    [['Workshop', 7], ['Gap of each probe against its output']],
  ]);
}

/** Tables beside each other, their first rows level, that many blank columns between. */
function beside(tables: readonly Rows[], between: number): Rows {
  const height = Math.max(...tables.map(({ length }) => length));
  const widths = tables.map((table) => Math.max(...table.map(({ length }) => length)) + between);
  return Array.from({ length: height }, (_, row) =>
    tables.flatMap((table, at) => {
      const cells: Cell[] = [...(table[row] ?? [])];
      while (cells.length < widths[at]!) cells.push(null);
      return cells;
    }),
  );
}

function inUnits([gap, volts]: readonly [number, number], written: Written): [number, number] {
  return [gap / lengths[written.gap]!, volts / voltages[written.volts]!];
}

/** Its columns in any order, with others between them; its rows in any order where the tag is in each. */
function longTable(records: readonly PlannedRecord[], written: Written, dice: Dice): Rows {
  const { pick, shuffled } = dice;
  const inHeader = pick([true, false]);
  const merged = pick([false, false, true]);
  const unit = (name: string): string => (inHeader ? pick([` (${name})`, `[${name}]`]) : '');
  const columns = shuffled([
    { header: pick(['Tag', 'Tag no.', 'channel', 'TAG NUMBER']), at: 0, unit: null },
    { header: 'Series', at: 1, unit: null },
    { header: pick(['Temperature', 'temp']), at: 2, unit: null },
    { header: pick(gapHeaders) + unit(written.gap), at: 3, unit: written.gap },
    { header: pick(voltsHeaders) + unit(written.volts), at: 4, unit: `[${written.volts}]` },
    { header: 'Remark', at: 5, unit: null },
    { header: 'Step', at: 6, unit: null },
  ]);
  const rows = records.flatMap(({ tag, series, temperature, points }) =>
    points.map((point, at): Cell[] => {
      const names = [pick([tag, ` ${tag.toLowerCase()}`]), pick([series, series.toUpperCase()]), temperature];
      const own = merged && at > 0 ? [null, null, null] : names.map((name) => (name === '' ? null : name));
      return [...own, ...inUnits(point, written), at === 2 ? 'ok' : null, at];
    }),
  );
  const inOrder = merged || pick([true, false]) ? rows : shuffled(rows);
  return [
    columns.map(({ header }) => header),
    ...(inHeader ? [] : [columns.map((column) => column.unit)]),
    ...inOrder.map((cells) => columns.map(({ at }) => cells[at]!)),
  ];
}

/** One record under its tag, in the forms in which a tag is accepted. */
function block({ tag, series, points }: PlannedRecord, written: Written, { pick }: Dice): Rows {
  const title = pick<Rows[number]>([
    ['Tag', tag],
    ['tag no.', tag],
    [`Tag: ${tag}`],
    [`Probe ${tag.toLowerCase()}`],
    [tag],
    [null, tag],
    ['Channel', tag],
  ]);
  const inHeader = pick([true, false]);
  const [gap, volts] = [pick(gapHeaders), pick(voltsHeaders)];
  // One label alone above blocks side by side would leave open whose it is.
  const label = series === '' ? 'As found' : series;
  return [
    [label],
    title,
    inHeader ? [`${gap} (${written.gap})`, `${volts} (${written.volts})`] : [gap, volts],
    ...(inHeader ? [] : [[written.gap, written.volts]]),
    ...points.map((point) => inUnits(point, written)),
  ];
}

function listOf(channels: readonly PlannedChannel[]): Rows {
  return [
    [
      'Tag',
      'Kind',
      'Measured sensitivity (mV/mil)',
      'Gap voltage (V)',
      'Measured zero voltage (V)',
      'Positive direction',
    ],
    ...channels.map(({ tag, axial, gapVoltage, zeroMeasured, sign }) => [
      tag,
      axial ? 'axial' : 'radial',
      200,
      gapVoltage,
      axial ? zeroMeasured : null,
      axial ? (sign > 0 ? 'toward' : 'away') : null,
    ]),
  ];
}

function settingsOf(channels: readonly PlannedChannel[]): Rows {
  return [
    [
      'Tag',
      'Configured sensitivity (mV/mil)',
      'Alert (mil)',
      'Danger (mil)',
      'Set-point multiplier',
      'Configured zero voltage (V)',
    ],
    ...channels.map(({ tag, axial, alert, danger, multiplier, zeroConfigured }) => [
      tag,
      190,
      alert,
      danger,
      multiplier,
      axial ? zeroConfigured : null,
    ]),
  ];
}

/** Of peak to peak: 0-p is half, rms 1/(2√2) of a sinusoid. */
const counted: Readonly<Record<string, number>> = { 'p-p': 1, '0-p': 0.5, rms: 1 / (2 * Math.SQRT2) };

function shaker(channels: readonly PlannedChannel[], { pick }: Dice): Rows {
  const [length, volts] = [pick(Object.keys(lengths)), pick(Object.keys(voltages))];
  const [of, ofOutput] = [pick(Object.keys(counted)), pick(Object.keys(counted))];
  return [
    ['Tag', `Displacement (${length} ${of})`, 'Frequency (Hz)', `Output (${volts} ${ofOutput})`],
    ...channels.flatMap(({ tag, levels }) =>
      levels.map(([level, output], at) => [
        at === 0 ? tag : pick([tag, null]),
        (level * counted[of]!) / lengths[length]!,
        60,
        (output * counted[ofOutput]!) / voltages[volts]!,
      ]),
    ),
  ];
}
