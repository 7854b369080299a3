import { reference } from '../../formats/reference.ts';
import type { Entry } from './entries.ts';
import { rectanglesByKey, areasAt } from './rectangles.ts';
import type { Job } from './requests.ts';
import type { EntryRow } from './rows.ts';
import { setStyle } from './styles.ts';

/** Bytes of a block; several make up a request, which they fill the better the smaller they are. */
const bytesPerBlock = 400_000;

/** Gathers rows into blocks that are each written by a few calls. `written` hears of the rows of a block when it stands. */
export function* blockJobs(
  sheet: Excel.Worksheet,
  rows: Iterable<EntryRow>,
  written: (rows: number) => void,
): Generator<Job> {
  let block: EntryRow[] = [];
  let bytes = 0;
  for (const row of rows) {
    block.push(row);
    bytes += row.bytes;
    if (bytes < bytesPerBlock) continue;
    yield blockJob(sheet, block, written);
    block = [];
    bytes = 0;
  }
  if (block.length > 0) yield blockJob(sheet, block, written);
}

function blockJob(sheet: Excel.Worksheet, rows: readonly EntryRow[], written: (rows: number) => void): Job {
  const middle = Math.ceil(rows.length / 2);
  return {
    bytes: rows.reduce((sum, row) => sum + row.bytes, 0),
    queue() {
      enter(sheet, rows);
      setLinks(sheet, rows);
      setNumberFormats(sheet, rows);
      setStyles(sheet, rows);
      setHeights(sheet, rows);
    },
    halves: () =>
      rows.length < 2
        ? []
        : [rows.slice(0, middle), rows.slice(middle)].map((half) => blockJob(sheet, half, written)),
    done() {
      written(rows.length);
    },
  };
}

function topOf(rows: readonly EntryRow[]): number {
  return rows[0]?.number ?? 1;
}

/** Constants and formulas go in by one call: what is no formula is entered as it is. */
function enter(sheet: Excel.Worksheet, rows: readonly EntryRow[]): void {
  const columns = rows.reduce((most, { entries }) => Math.max(most, entries.length), 0);
  if (columns === 0) return;
  const range = sheet.getRangeByIndexes(topOf(rows) - 1, 0, rows.length, columns);
  range.formulas = rows.map(({ entries }) => [
    ...entries,
    ...Array.from({ length: columns - entries.length }, (): Entry => null),
  ]);
}

/** Excel gives a linked cell the look of links, so looks come after; the text of the cell stays. */
function setLinks(sheet: Excel.Worksheet, rows: readonly EntryRow[]): void {
  for (const { number, links } of rows)
    for (const { column, reference } of links)
      sheet.getRangeByIndexes(number - 1, column - 1, 1, 1).hyperlink = { documentReference: reference };
}

/** Sets the formats of columns side by side by one call; columns that need none are left out. */
function setNumberFormats(sheet: Excel.Worksheet, rows: readonly EntryRow[]): void {
  const isFormatted: boolean[] = [];
  for (const { numberFormats } of rows) {
    numberFormats.forEach((format, column) => {
      if (format !== undefined) isFormatted[column] = true;
    });
  }
  for (let from = 0; from < isFormatted.length; from++) {
    if (isFormatted[from] !== true) continue;
    let to = from;
    while (isFormatted[to + 1] === true) to++;
    const range = sheet.getRangeByIndexes(topOf(rows) - 1, from, rows.length, to - from + 1);
    range.numberFormat = rows.map(({ numberFormats }) =>
      Array.from({ length: to - from + 1 }, (_, index) => numberFormats[from + index] ?? 'General'),
    );
    from = to;
  }
}

function setStyles(sheet: Excel.Worksheet, rows: readonly EntryRow[]): void {
  const looks = new Map(rows.flatMap(({ styles }) => styles.map(({ lookKey, look }) => [lookKey, look])));
  const keys = rows.map(({ styles }) => styles.map(({ lookKey }) => lookKey));
  for (const [key, areas] of rectanglesByKey(keys, topOf(rows))) {
    for (const range of areasAt(sheet, areas.map(reference))) setStyle(range.format, looks.get(key) ?? {});
  }
  for (const range of areasAt(sheet, rows.flatMap(underlined))) {
    const line = range.format.borders.getItem('EdgeBottom');
    line.style = 'Continuous';
    line.weight = 'Thin';
  }
}

/** Addresses of the underlined cells of a row; one row at a time, since only the last line of an area is its edge. */
function underlined({ styles, number }: EntryRow): string[] {
  const row = styles.map(({ underline }) => (underline ? 'underline' : undefined));
  return [...rectanglesByKey([row], number).values()].flat().map(reference);
}

function setHeights(sheet: Excel.Worksheet, rows: readonly EntryRow[]): void {
  const heights = rows.map(({ height }) => [height === undefined ? undefined : String(height)]);
  for (const [height, areas] of rectanglesByKey(heights, topOf(rows))) {
    const addresses = areas.map(({ top, bottom }) => `${top}:${bottom}`);
    for (const range of areasAt(sheet, addresses)) range.format.rowHeight = Number(height);
  }
}
