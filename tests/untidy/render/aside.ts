import { columnLetters } from '../../../src/cells/address.ts';
import type { Cell } from '../../../src/cells/cell.ts';
import type { Channel } from '../scenario.ts';
import { type Column, type Draft, type Meaning, type Table } from '../draft.ts';
import { type Canvas, merge, put } from './canvas.ts';
import { headerText, written } from './texts.ts';
import { nothingPlaced, type Placed } from './places.ts';

const channelsOf = (table: Table): Channel[] =>
  table.lines.flatMap((line) => (line.is === 'channel' ? [line.channel] : []));

/** Labels below each other and a channel in each column; the unit beside its label where units have a column. */
export function renderColumns(on: Canvas, table: Table, draft: Draft, top: number, left: number): Placed {
  const placed = nothingPlaced();
  const beside = table.unitPlace === 'column';
  const from = left + (beside ? 2 : 1);
  table.columns.forEach((column, index) => {
    const row = top + index;
    put(on, row, left, headerText(column, table));
    if (beside && column.unit !== null) put(on, row, left + 1, column.unit);
    channelsOf(table).forEach((channel, place) => {
      put(on, row, from + place, written(column.cell(channel), column, table, draft));
    });
    if (column.stands)
      placed.fields.push({ meaning: column.meaning, sheet: table.sheet, row, header: column.header });
  });
  channelsOf(table).forEach((channel, index) => {
    placed.channels.push({ channel, place: { sheet: table.sheet, column: columnLetters(from + index) } });
  });
  placed.bottom = top + table.columns.length - 1;
  placed.right = from + channelsOf(table).length - 1;
  return placed;
}

/** A form for each channel, labels with their values beside, one form below the other. */
export function renderForms(on: Canvas, table: Table, draft: Draft, top: number, left: number): Placed {
  const placed = nothingPlaced();
  let row = top;
  for (const channel of channelsOf(table)) {
    placed.channels.push({
      channel,
      place: {
        sheet: table.sheet,
        row,
        column: columnLetters(left + 1),
        headerRows: [row, row + table.columns.length - 1],
      },
    });
    for (const column of table.columns) {
      put(on, row, left, headerText(column, table));
      put(on, row, left + 1, written(column.cell(channel), column, table, draft));
      if (table.unitPlace === 'column' && column.unit !== null) put(on, row, left + 2, column.unit);
      if (column.stands)
        placed.fields.push({ meaning: column.meaning, sheet: table.sheet, row, header: column.header });
      row += 1;
    }
    row += 1;
  }
  placed.bottom = row - 2;
  placed.right = left + 2;
  return placed;
}

/** What each of the two probes of a bearing has for itself. */
const ofOneProbe: readonly Meaning[] = [
  'configured sensitivity',
  'measured sensitivity',
  'as-left sensitivity',
  'gap voltage',
  'bypass',
];

/** A bearing a row, its two probes below X and Y of merged headers; what has no X and Y holds for both. */
export function renderPairs(on: Canvas, table: Table, draft: Draft, top: number, left: number): Placed {
  const placed = nothingPlaced();
  const channels = channelsOf(table);
  const bearings = [...new Set(channels.map(({ bearing }) => bearing))];
  let at = left;
  for (const column of table.columns.filter(({ meaning }) => meaning !== 'location')) {
    const own = ofOneProbe.includes(column.meaning);
    const directions = own ? (['X', 'Y'] as const) : ([null] as const);
    put(on, top, at, headerText(column, table));
    merge(on, top, at, own ? top : top + 1, own ? at + 1 : at);
    for (const direction of directions) {
      if (direction !== null) put(on, top + 1, at, direction);
      bearings.forEach((bearing, index) => {
        const channel = channels.find(
          (one) => one.bearing === bearing && (direction === null || one.direction === direction),
        )!;
        put(on, top + 2 + index, at, pairCell(column, channel, table, draft));
      });
      placed.fields.push({
        meaning: column.meaning,
        sheet: table.sheet,
        column: columnLetters(at),
        header: column.header,
      });
      at += 1;
    }
  }
  channels.forEach((channel) => {
    placed.channels.push({
      channel,
      place: {
        sheet: table.sheet,
        row: top + 2 + bearings.indexOf(channel.bearing),
        headerRows: [top, top + 1],
      },
    });
  });
  placed.bottom = top + 1 + bearings.length;
  placed.right = at - 1;
  return placed;
}

function pairCell(column: Column, channel: Channel, table: Table, draft: Draft): Cell {
  return column.meaning === 'tag' ? channel.bearing : written(column.cell(channel), column, table, draft);
}
