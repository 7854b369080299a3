import type { Cell } from '../../../cells/cell.ts';
import { channelColumns } from '../tables/channelColumns.ts';
import { headerKey, looksLikeUnit, parseHeader, unitWord, type Header } from '../tables/header.ts';
import { tagWords } from '../tables/tagKey.ts';
import { offsetAtOf } from '../../../method/replay/localTime.ts';

/** One column of readings of a wide table. */
interface TrendColumn {
  /** Its header without what stands in brackets: the tag. */
  readonly tag: string;
  readonly column: number;
  /** Unit that its header names, known or not. */
  readonly unit: string | null;
  /** Column with the quality of its readings. */
  readonly quality: number | null;
}

/** Columns of a long table: one reading a row. */
interface LongColumns {
  readonly tag: number;
  readonly machine: number | null;
  readonly reading: number;
  /** Unit that the header of the readings names, known or not. */
  readonly unit: string | null;
  readonly unitColumn: number | null;
  readonly quality: number | null;
}

/** The header row of a table of recorded readings. Rows and columns count from 1. */
export interface TrendHead {
  readonly row: number;
  readonly time: number;
  /** Column of dates, where the day stands apart from the time of day. */
  readonly date: number | null;
  /** Zone that the header of the times names. */
  readonly zone: string | null;
  readonly long: LongColumns | null;
  /** Of a wide table; empty for a long one. */
  readonly columns: readonly TrendColumn[];
}

const keys = (words: readonly string[]): ReadonlySet<string> => new Set(words.map(headerKey));

const timeWords = keys([
  'time',
  'times',
  'timestamp',
  'time stamp',
  'date time',
  'date and time',
  'sample time',
  'recorded at',
  'time of reading',
  'Zeit',
  'Zeitstempel',
  'Datum und Uhrzeit',
  'horodatage',
  'fecha y hora',
  'data e hora',
]);
const dateWords = keys(['date', 'day', 'Datum', 'fecha']);
const tagKeys = keys(['tag', ...tagWords]);
const machineWords = keys([channelColumns.machine.name, ...channelColumns.machine.also, 'asset']);
const readingWords = keys([
  'reading',
  'value',
  'vibration',
  'amplitude',
  'level',
  'indicated',
  'measurement',
  'overall',
  'displacement',
  'Wert',
  'Messwert',
  'valeur',
  'valor',
]);
const qualityWords = keys(['quality', 'status', 'validity', 'Qualität', 'Güte', 'qualité', 'calidad']);
const behindTag = /[ _.-](?:quality|status|validity)$/iu;

interface Headed {
  readonly column: number;
  readonly header: Header;
}

/** Reads a row as the header of a table of recorded readings; `undefined` where it has no column of times, or nothing else. */
function trendHead(cells: readonly Cell[], row: number): TrendHead | undefined {
  const headed: Headed[] = [];
  for (const [index, cell] of cells.entries())
    if (typeof cell === 'string' && cell.trim() !== '' && cell.length <= 250)
      headed.push({ column: index + 1, header: parseHeader(cell, () => false) });
  const named = (words: ReadonlySet<string>): Headed | undefined =>
    headed.find(({ header }) => words.has(header.key));
  const time = named(timeWords);
  if (!time || time.header.unit || headed.length < 2) return undefined;
  const date = named(dateWords);
  const [tag, reading, quality] = [named(tagKeys), named(readingWords), named(qualityWords)];
  const unitColumn = headed.find(({ header }) => unitWord.test(header.key) && !header.unit);
  const zone = time.header.remarks.find((remark) => offsetAtOf(remark) !== null) ?? null;
  const head = { row, time: time.column, date: date?.column ?? null, zone };
  if (tag && reading) {
    const long: LongColumns = {
      tag: tag.column,
      machine: named(machineWords)?.column ?? null,
      reading: reading.column,
      unit: unitIn(reading.header),
      unitColumn: unitColumn?.column ?? null,
      quality: quality?.column ?? null,
    };
    return { ...head, long, columns: [] };
  }
  if (tag) return undefined;
  const own = new Set([time, date, quality].flatMap((one) => one?.column ?? []));
  const rest = headed.filter(({ column }) => !own.has(column));
  const qualities = new Map(
    rest.flatMap(({ column, header: { name } }) =>
      behindTag.test(name) ? [[name.replace(behindTag, '').toLowerCase(), column] as const] : [],
    ),
  );
  const ofQuality = new Set(qualities.values());
  const columns = rest
    .filter(({ column }) => !ofQuality.has(column))
    .map(({ column, header }) => ({
      tag: header.name,
      column,
      unit: unitIn(header),
      quality: qualities.get(header.name.toLowerCase()) ?? quality?.column ?? null,
    }));
  return columns.length === 0 ? undefined : { ...head, long: null, columns };
}

/** What a header says of its unit, detection and all: one that is not known here as it stands, so that nobody takes it for another. */
function unitIn({ unit, remarks }: Header): string | null {
  if (!unit) return remarks.find(looksLikeUnit) ?? null;
  return unit.detection ? `${unit.text} ${unit.detection}` : unit.text;
}

/** Rows in which the header of such a table is looked for. */
export const headRows = 20;

/** The first row of a table that heads recorded readings. */
export function findTrendHead(rows: Iterable<readonly Cell[]>): TrendHead | undefined {
  let row = 0;
  for (const cells of rows) {
    if (++row > headRows) return undefined;
    const head = trendHead(cells, row);
    if (head) return head;
  }
  return undefined;
}
