import type { Points } from '../oracle/facts.ts';
import type { Dice } from '../records/plan.ts';
import type { PlannedChannel } from './plan.ts';
import { chainColumns, percent } from './chainColumns.ts';
import type { Slipped } from './slips.ts';

export type PlainCell = string | number | boolean | null;

/** A sheet as its rows. */
export interface Page {
  readonly name: string;
  readonly rows: readonly (readonly PlainCell[])[];
}

type Measure = 'level' | 'sensitivity' | 'volts' | 'percent' | 'current' | 'length';
type Side = 'list' | 'settings';

export interface Column {
  readonly header: string;
  readonly side: Side;
  readonly value: (channel: PlannedChannel) => PlainCell;
  readonly measure?: Measure;
  /** Columns by which a table is known stay in it. */
  readonly fixed?: true;
  /** Without it there is no such table. */
  readonly needed?: true;
  /** Of a level that states a detection of its own. */
  readonly detection?: (channel: PlannedChannel) => string;
}

const fixedUnits: Readonly<Partial<Record<Measure, string>>> = { volts: 'V', current: 'mA', length: 'm' };
const setpoint = { measure: 'level', detection: (c: PlannedChannel) => c.detection } as const;

const columns: readonly Column[] = [
  { header: 'Machine', side: 'list', value: (c) => c.cells.machine },
  { header: 'Location', side: 'list', value: () => 'Bearing' },
  { header: 'Kind', side: 'list', value: (c) => (c.cells.kind === 'radial' ? null : c.cells.kind) },
  {
    header: 'Measured sensitivity',
    needed: true,
    side: 'list',
    fixed: true,
    measure: 'sensitivity',
    value: (c) => c.cells.found.sensitivity,
  },
  {
    header: 'Uncertainty',
    side: 'list',
    measure: 'percent',
    value: (c) => percent(c.cells.found.uncertainty),
  },
  { header: 'Coverage factor', side: 'list', value: (c) => c.cells.coverage },
  { header: 'Gap voltage', side: 'list', measure: 'volts', value: (c) => c.cells.found.gapVoltage },
  { header: 'Measured zero voltage', side: 'list', measure: 'volts', value: (c) => c.cells.found.zero },
  { header: 'Positive direction', side: 'list', value: (c) => c.cells.direction },
  {
    header: 'Limit',
    side: 'list',
    measure: 'level',
    value: (c) => c.limit?.value ?? null,
    detection: (c) => c.limit?.detection ?? '',
  },
  {
    header: 'Present reading',
    side: 'list',
    measure: 'level',
    value: (c) => c.reading?.value ?? null,
    detection: (c) => c.reading?.detection ?? '',
  },
  {
    header: 'As-left sensitivity',
    side: 'list',
    fixed: true,
    measure: 'sensitivity',
    value: (c) => c.cells.left?.sensitivity ?? null,
  },
  {
    header: 'As-left uncertainty',
    side: 'list',
    measure: 'percent',
    value: (c) => percent(c.cells.left?.uncertainty),
  },
  {
    header: 'As-left gap voltage',
    side: 'list',
    measure: 'volts',
    value: (c) => c.cells.left?.gapVoltage ?? null,
  },
  {
    header: 'As-left zero voltage',
    side: 'list',
    measure: 'volts',
    value: (c) => c.cells.left?.zero ?? null,
  },
  {
    header: 'Configured sensitivity',
    needed: true,
    side: 'settings',
    fixed: true,
    measure: 'sensitivity',
    value: (c) => c.cells.configured,
  },
  { header: 'Alert', side: 'settings', fixed: true, needed: true, ...setpoint, value: (c) => c.cells.alert },
  {
    header: 'Danger',
    side: 'settings',
    fixed: true,
    needed: true,
    ...setpoint,
    value: (c) => c.cells.danger,
  },
  {
    header: 'Full scale',
    side: 'settings',
    measure: 'level',
    value: (c) => c.fullScale?.value ?? null,
    detection: (c) => c.fullScale?.detection ?? '',
  },
  { header: 'Set-point multiplier', side: 'settings', value: (c) => c.cells.multiplier },
  {
    header: 'Configured zero voltage',
    side: 'settings',
    measure: 'volts',
    value: (c) => c.cells.zeroConfigured,
  },
  { header: 'Counter alert', side: 'settings', ...setpoint, value: (c) => c.cells.counterAlert },
  { header: 'Counter danger', side: 'settings', ...setpoint, value: (c) => c.cells.counterDanger },
  { header: 'Fault limit high', side: 'settings', measure: 'volts', value: (c) => c.cells.faultHigh },
  { header: 'Fault limit low', side: 'settings', measure: 'volts', value: (c) => c.cells.faultLow },
  { header: 'Resolution', side: 'settings', ...setpoint, value: (c) => c.cells.resolution },
  ...chainColumns,
  { header: 'Voting group', side: 'settings', value: (c) => c.cells.group },
  { header: 'Voting', side: 'settings', value: (c) => c.cells.voting },
  { header: 'Bypass', side: 'settings', value: (c) => (c.cells.bypass === true ? 'yes' : null) },
];

/** A workbook of plain sheets that says what was planned, in one of many ways. */
export function writeStation(slipped: Slipped, dice: Dice): Page[] {
  const { pick, shuffled } = dice;
  const { station, secondPair } = slipped;
  const { channels } = station;
  const placed = columns
    .filter((column) => column.needed || channels.some((one) => cellOf(column, one) !== null))
    .map((column) => ({ column, sides: sidesOf(column, slipped, dice) }));
  const table = (side: Side, some: readonly PlannedChannel[]): PlainCell[][] => {
    const own = shuffled([
      tagColumn,
      ...placed.filter(({ sides }) => sides.includes(side)).map(({ column }) => column),
      ...(pick([true, false]) ? [{ header: 'Remarks', side, value: () => 'as agreed' }] : []),
    ]);
    const parts = own.map((column) => writeColumn(column, side, some, slipped));
    return Array.from({ length: some.length + 1 }, (_, row) => parts.flatMap((part) => part[row] ?? []));
  };
  const titles = (): PlainCell[][] => pick<PlainCell[][]>([[], [], [['Protection channels'], []]]);
  const pages: Page[] = [
    { name: 'Channels', rows: [...titles(), ...table('list', channels)] },
    { name: 'Monitor', rows: [...titles(), ...table('settings', shuffled(channels))] },
  ];
  if (secondPair) {
    const others = channels.slice(0, 2).map((one) => ({
      ...one,
      cells: { ...one.cells, tag: `${one.cells.tag}-B` },
    }));
    const spoilt = pick([
      (cell: PlainCell) => cell,
      (cell: PlainCell) => (typeof cell === 'string' ? cell.replace('sensitivity', 'sensitivty') : cell),
    ]);
    const again = (rows: PlainCell[][]): PlainCell[][] => rows.map((row) => row.map(spoilt));
    pages.push({ name: 'Channels 2', rows: again(table('list', others)) });
    pages.push({ name: 'Monitor 2', rows: again(table('settings', others)) });
  }
  return [...pages, ...recordPage(channels), ...checkPage(channels)];
}

const tagColumn: Column = { header: 'Tag', side: 'list', value: (c) => c.cells.tag };

/** Where a column stands: with its own table, with the other, or in both with the same values. */
function sidesOf(
  column: Column,
  { misspelled, contradictions, secondPair }: Slipped,
  { pick }: Dice,
): Side[] {
  const { side, header, fixed } = column;
  if (contradictions.some((one) => one.header === header)) return ['list', 'settings'];
  if (fixed || misspelled.has(header) || secondPair) return [side];
  const other = side === 'list' ? 'settings' : 'list';
  return pick<Side[]>([[side], [side], [side], [side], [other], ['list', 'settings']]);
}

function cellOf({ header, value }: Column, channel: PlannedChannel): PlainCell {
  return header in channel.written ? (channel.written[header] ?? null) : value(channel);
}

/** A column with its header, and beside it its unit column where units stand in columns. */
function writeColumn(
  column: Column,
  side: Side,
  channels: readonly PlannedChannel[],
  slipped: Slipped,
): PlainCell[][] {
  const { header, measure, detection } = column;
  const { station, misspelled, contradictions } = slipped;
  const name = misspelled.get(header) ?? header;
  const unitOf = (channel: PlannedChannel): string =>
    measure === 'sensitivity'
      ? channel.units.sensitivityUnit
      : `${channel.units.level} ${detection?.(channel) ?? ''}`.trim();
  const inColumns = station.unitsIn === 'columns' && (measure === 'level' || measure === 'sensitivity');
  const filled = channels.find((one) => cellOf(column, one) !== null) ?? channels[0];
  const fixed = measure && fixedUnits[measure];
  const unit = fixed ?? (filled === undefined ? '' : unitOf(filled));
  const k = header === 'Uncertainty' ? station.headerCoverage : null;
  const bracket =
    measure === 'percent' ? (k === null ? ' (%)' : ` (%, k=${k})`) : measure ? ` (${unit})` : '';
  const cells = channels.map((channel) => {
    const contradicted = contradictions.find((one) => one.header === header && one.tag === channel.cells.tag);
    return contradicted && side !== column.side ? contradicted.value : cellOf(column, channel);
  });
  if (!inColumns) return [[name + bracket], ...cells.map((cell) => [cell])];
  return [
    [name, `${name} unit`],
    ...cells.map((cell, at) => [cell, cell === null ? null : unitOf(channels[at]!)]),
  ];
}

function recordPage(channels: readonly PlannedChannel[]): Page[] {
  const rowsOf = (one: PlannedChannel, series: string, points: Points | null | undefined): PlainCell[][] => {
    const { points: most } = one.written;
    const kept = typeof most === 'number' ? points?.slice(0, most) : points;
    return (kept ?? []).map(([gap, volts]) => [one.cells.tag, series, gap, volts]);
  };
  const rows = channels.flatMap((one) => [
    ...rowsOf(one, 'as found', one.cells.found.record),
    ...rowsOf(one, 'as left', one.cells.left?.record),
  ]);
  const unit = channels.find(({ units }) => units.displacement)?.units.level ?? 'mil';
  return rows.length === 0
    ? []
    : [{ name: 'Probe records', rows: [['Tag', 'Series', `Gap (${unit})`, 'Output (V)'], ...rows] }];
}

function checkPage(channels: readonly PlannedChannel[]): Page[] {
  const rows = channels.flatMap(({ cells: { tag, found } }) =>
    (found.check ?? []).map(([displacement, output]) => [tag, displacement, output, 60]),
  );
  const unit = channels.find(({ units }) => units.displacement)?.units.level ?? 'mil';
  const header = ['Tag', `Displacement (${unit} p-p)`, 'Output (mV p-p)', 'Frequency (Hz)'];
  return rows.length === 0 ? [] : [{ name: 'Shaker', rows: [header, ...rows] }];
}
