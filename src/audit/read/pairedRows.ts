import { convert } from '../../units/unit.ts';
import type { Place } from '../model/findings.ts';
import { channelRowReader, type ChannelRow } from './rows/channelRow.ts';
import { placeOf } from './rows/diagnostic.ts';
import type { Amount } from './rows/rowReader.ts';
import { settingsRowReader, type SettingsRow } from './rows/settingsRow.ts';
import { channelColumns } from './tables/channelColumns.ts';
import type { Tables } from './tables/found.ts';
import { settingsColumns } from './tables/settingsColumns.ts';
import type { TableKind } from './tables/vocabulary.ts';

/** A quantity of which both tables say something, and not the same. */
interface Contradiction {
  /** Id of its column in the vocabulary. */
  readonly column: string;
  readonly inChannels: { readonly text: string; readonly place: Place };
  readonly inSettings: { readonly text: string; readonly place: Place };
}

/** All that the workbook says of one channel: its rows of both tables, each quantity from whichever table holds it. */
export interface PairedRows {
  readonly row: ChannelRow;
  readonly settings: SettingsRow;
  readonly contradictions: readonly Contradiction[];
  /** Where a quantity stands for this channel, or where it would belong; `table` is the one it usually stands in. */
  readonly place: (table: TableKind, column: string) => Place;
}

/** Reads the rows of both tables that belong together. */
export function pairReader(tables: Tables): {
  /** A row of the channel list that is joined with none of the settings. */
  readonly channelRow: (row: number) => ChannelRow;
  /** A row of the settings that is joined with no channel. */
  readonly settingsRow: (row: number) => SettingsRow;
  readonly pair: (channelRow: number, settingsRow: number) => PairedRows;
} {
  const channelRow = channelRowReader(tables.channels);
  const settingsRow = settingsRowReader(tables.settings);
  const ofOther = {
    channels: holdsAny(tables, 'settings', channelColumns) ? channelRowReader(tables.settings) : null,
    settings: holdsAny(tables, 'channels', settingsColumns) ? settingsRowReader(tables.channels) : null,
  };
  return {
    channelRow,
    settingsRow,
    pair(inChannels, inSettings) {
      const rows = { channels: inChannels, settings: inSettings };
      const taken = new Set<string>();
      const contradictions: Contradiction[] = [];
      const place = (table: TableKind, column: string): Place => {
        const other = table === 'channels' ? 'settings' : 'channels';
        const at =
          taken.has(column) || (!tables[table].columns.has(column) && tables[other].columns.has(column))
            ? other
            : table;
        return placeOf(tables[at], rows[at], column);
      };
      const at = <T extends ChannelRow | SettingsRow>(read: T, table: TableKind): T => ({
        ...read,
        diagnostics: read.diagnostics.map((one) => ({
          ...one,
          place: placeOf(tables[table], rows[table], one.column),
        })),
      });
      const both = <T extends ChannelRow | SettingsRow>(own: T, other: T | null, table: TableKind): T => {
        if (!other) return own;
        const [mine, others] = [at(own, table), at(other, table === 'channels' ? 'settings' : 'channels')];
        return merged(mine, others, taken, (column, here, there) => {
          const [one, two] = table === 'channels' ? [here, there] : [there, here];
          contradictions.push({
            column,
            inChannels: { text: one, place: placeOf(tables.channels, inChannels, column) },
            inSettings: { text: two, place: placeOf(tables.settings, inSettings, column) },
          });
        });
      };
      const row = both(channelRow(inChannels), ofOther.channels?.(inSettings) ?? null, 'channels');
      const settings = both(settingsRow(inSettings), ofOther.settings?.(inChannels) ?? null, 'settings');
      return { row, settings, contradictions, place };
    },
  };
}

function holdsAny(tables: Tables, table: TableKind, columns: Readonly<Record<string, unknown>>): boolean {
  return Object.keys(columns).some((id) => id !== 'tag' && tables[table].columns.has(id));
}

/** Texts that help to find a channel, of which a second one contradicts nothing; marks of bypass are looked at apart. */
const free = new Set([
  'row',
  'tag',
  'location',
  'coverage',
  'rowCoverage',
  'asLeftCoverage',
  'diagnostics',
  'bypass',
]);

/** A row with what another reading of the same channel adds to it; the own value counts where both have one. */
function merged<T extends ChannelRow | SettingsRow>(
  own: T,
  other: T,
  taken: Set<string>,
  contradicts: (column: string, here: string, there: string) => void,
): T {
  const result = { ...own } as Record<string, unknown>;
  for (const [id, there] of Object.entries(other)) {
    if (id === 'diagnostics' || id === 'row' || id === 'tag' || isNothing(there)) continue;
    const here = result[id];
    if (isNothing(here)) {
      result[id] = there;
      taken.add(id);
    } else if (!free.has(id) && !isSame(here, there, id === 'machine')) {
      contradicts(id, textOf(here), textOf(there));
      // Neither value is used; a name still tells which channel it is.
      if (id !== 'machine' && id !== 'group' && id !== 'voting') result[id] = null;
    }
  }
  if ('uncertainty' in own && 'uncertainty' in other)
    for (const [uncertainty, coverage] of [
      ['uncertainty', 'coverage'],
      ['asLeftUncertainty', 'asLeftCoverage'],
    ] as const) {
      // What a column's header says of coverage is said of that column alone.
      if (isNothing(own[uncertainty]) && !isNothing(other[uncertainty]))
        result[coverage] = other[coverage] ?? own.rowCoverage;
    }
  const diagnostics = [...own.diagnostics, ...other.diagnostics];
  for (const { column, severity } of other.diagnostics) if (severity !== 'note') taken.add(column);
  if ('bypass' in own && 'bypass' in other) {
    const [here, there] = [own.bypass, other.bypass];
    const apart = here !== null && there !== null && here !== there;
    if (apart && own.bypassMarked && other.bypassMarked) contradicts('bypass', textOf(here), textOf(there));
    // Marks that contradict each other, or that are not understood in either table, leave it open.
    if (here === null || there === null || (apart && own.bypassMarked && other.bypassMarked))
      result['bypass'] = null;
  }
  return { ...result, diagnostics } as unknown as T;
}

/** Nothing stands there; a bypass that is not set counts as nothing, so that the other table's mark holds. */
function isNothing(value: unknown): boolean {
  return value === null || value === '' || value === false;
}

/** `loosely`: a text that is a part of the other says the same, as `K-101` and `Compressor K-101` do. */
function isSame(here: unknown, there: unknown, loosely: boolean): boolean {
  if (isAmount(here) && isAmount(there)) {
    const known = here.unit !== null && there.unit !== null;
    const level = known ? convert(there.value, there.unit, here.unit) : there.value;
    if (here.unit?.detection !== there.unit?.detection && here.unit?.detection && there.unit?.detection)
      return false;
    return Math.abs(level - here.value) <= 1e-9 * Math.max(Math.abs(level), Math.abs(here.value));
  }
  if (typeof here === 'string' && typeof there === 'string') {
    const [one, two] = [here.trim().toLowerCase(), there.trim().toLowerCase()];
    return one === two || (loosely && (one.includes(two) || two.includes(one)));
  }
  return here === there;
}

function isAmount(value: unknown): value is Amount {
  return typeof value === 'object' && value !== null && 'value' in value;
}

function textOf(value: unknown): string {
  if (isAmount(value))
    return [value.value, value.unit?.text, value.unit?.detection]
      .filter((part) => part !== undefined)
      .join(' ');
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return String(value);
}
