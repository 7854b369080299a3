import type { Cell } from '../../src/cells/cell.ts';
import type { Random } from './random.ts';
import type { Channel, UnitSystem } from './scenario.ts';
import type { ChannelTruth } from './truth.ts';
import type { Words } from './layouts/words.ts';

export type Meaning =
  | 'tag'
  | 'machine'
  | 'location'
  | 'kind'
  | 'measured sensitivity'
  | 'as-left sensitivity'
  | 'gap voltage'
  | 'calibrated on'
  | 'limit'
  | 'configured sensitivity'
  | 'alert'
  | 'danger'
  | 'full scale'
  | 'voting group'
  | 'voting'
  | 'bypass'
  | 'other';

export interface Column {
  meaning: Meaning;
  header: string;
  /** As it is written, detection included; `null` where the quantity has none. */
  unit: string | null;
  /** Merged header above it and its neighbours of the same group. */
  group: string | null;
  /** The unit stands in the group's header, not in its own. */
  unitInGroup?: boolean;
  cell: (channel: Channel) => Cell;
  hidden?: boolean;
  /** Whether it is where the meaning stands, not an old, rival or foreign column. */
  stands: boolean;
  /** Cells of equal neighbours are merged downwards. */
  merged?: boolean;
}

export type Line =
  | {
      readonly is: 'channel';
      readonly channel: Channel;
      readonly cells?: ReadonlyMap<Meaning, Cell>;
      readonly hidden?: boolean;
    }
  | { readonly is: 'blank' }
  | { readonly is: 'heading'; readonly text: string }
  | { readonly is: 'summary'; readonly label: string; readonly of: 'mean' | 'count' | 'nothing' }
  | { readonly is: 'header again' };

export type UnitPlace = 'header' | 'brackets' | 'words' | 'row' | 'column' | 'cell' | 'elsewhere';

export interface Table {
  sheet: string;
  part: 'channels' | 'settings' | 'both';
  columns: Column[];
  lines: Line[];
  /** Lines of cells right above its headers. */
  above: Cell[][];
  lies: 'rows' | 'columns' | 'forms' | 'pairs';
  /** Begins right of the table before it on its sheet, not below. */
  beside: boolean;
  unitPlace: UnitPlace;
  hidden: boolean;
  /** Whether it holds what is true, not old or proposed values. */
  stands: boolean;
  machine: string | null;
}

/** What the drawn layouts want of the scenario and of every table; read when the tables are built. */
interface Wish {
  unitsOf: (machine: number) => UnitSystem;
  machines: number;
  bearings: number;
  repeatedTags: boolean;
  percent: 'no' | 'number' | 'percent cell';
  axial: boolean;
  setpoints: readonly [alert: string, danger: string];
  machinePlace: 'column' | 'merged column' | 'headings' | 'label above' | 'sheet name';
  quantities: Set<Meaning>;
  detection: string;
}

interface PlainSheet {
  readonly name: string;
  readonly rows: readonly (readonly Cell[])[];
  readonly hidden: boolean;
  readonly first: boolean;
}

/** A workbook as the layouts make it, one after the other, with what they know of its truth. */
export interface Draft {
  readonly random: Random;
  readonly words: Words;
  readonly chosen: Readonly<Record<string, string>>;
  readonly wish: Wish;
  channels: readonly Channel[];
  tables: Table[];
  sheets: PlainSheet[];
  numbers: 'numbers' | 'text' | 'text with comma';
  titles: boolean;
  indent: number;
  accept: ('read' | 'ask')[];
  choice: string[];
  mayBeIncomplete: string[];
  traps: string[];
  /** What a layout knows of a channel's truth otherwise than its numbers say. */
  changes: Map<Channel, Partial<ChannelTruth>>;
}

export function change(draft: Draft, channel: Channel, more: Partial<ChannelTruth>): void {
  draft.changes.set(channel, { ...draft.changes.get(channel), ...more });
}

/** Tables of a part: `both` is either. */
export function tablesOf(draft: Draft, part: 'channels' | 'settings'): Table[] {
  return draft.tables.filter((table) => table.stands && (table.part === part || table.part === 'both'));
}

/** Tables in which the sensitivity as found stands. */
export function listsOf(draft: Draft): Table[] {
  return tablesOf(draft, 'channels').filter((table) => columnOf(table, 'measured sensitivity') !== undefined);
}

export function columnOf(table: Table, meaning: Meaning): Column | undefined {
  return table.columns.find((column) => column.meaning === meaning && column.stands);
}

/** Puts columns right behind the one with this meaning, or at the end. */
export function insertAfter(table: Table, meaning: Meaning, ...columns: Column[]): void {
  const at = table.columns.findIndex((column) => column.meaning === meaning);
  table.columns.splice(at < 0 ? table.columns.length : at + 1, 0, ...columns);
}
