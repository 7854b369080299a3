import { cellText, isBlank, type Cell } from '../../../../cells/cell.ts';
import { cellAt, type Sheet } from '../../../../cells/sheet.ts';
import { tagKey } from '../../tables/tagKey.ts';
import { placeIn, type Block, type FieldPlace, recordsOf } from '../blocks/block.ts';
import { shownAt } from '../blocks/shownCells.ts';
import { cellValue, type CellValue } from '../readings/cellValue.ts';
import { kindIn } from '../readings/kinds.ts';
import { numberStyleOf } from '../readings/numberStyle.ts';
import { statedUnit, type StatedUnit } from '../vocabulary/statedUnit.ts';
import type { ValueFacts } from './field.ts';

/** Numbers kept for a median, and cells by which it is told how they differ. */
const keptNumbers = 2_000;
const mostCompared = 2_000;
/** Texts whose reading is kept: those that come again in a field are few. */
const keptReadings = 400;
/** Texts of a field that are looked at word by word; of further ones that begin with a letter it is known what they are. */
const readInFull = 400;

/** What a place of a block shows; in a table on its side a merged cell stands for each of its columns. */
export function cellOfBlock(
  block: Block,
  sheets: ReadonlyMap<string, Sheet>,
  field: FieldPlace,
  record: number,
): Cell {
  const place = placeIn(block, field, record);
  if (!place) return null;
  const sheet = block.lies === 'forms' ? (sheets.get(place.sheet) ?? block.sheet) : block.sheet;
  return block.lies === 'columns'
    ? shownAt(sheet, place.row, place.column)
    : cellAt(sheet, place.row, place.column);
}

/**
 * Counts what the cells of a field hold. Of a long field whose header says nothing (`all` is not set) the first cells are
 * counted: what it could be hangs on shares alone.
 */
export function valueFacts(
  block: Block,
  sheets: ReadonlyMap<string, Sheet>,
  field: FieldPlace,
  all: boolean,
): ValueFacts {
  const style = numberStyleOf(block.sheet);
  const numbers: number[] = [];
  const distinct = new Set<string | number>();
  const readings = new Map<string, CellValue>();
  const cellUnits = new Map<string, StatedUnit>();
  const samples: { place: ReturnType<typeof placeIn> & object; text: string }[] = [];
  const count = {
    records: 0,
    filled: 0,
    numbers: 0,
    withUnit: 0,
    dates: 0,
    texts: 0,
    kinds: 0,
    units: 0,
    saidBlank: 0,
    odd: 0,
    compared: 0,
    lettered: 0,
  };
  let [least, greatest] = [Infinity, -Infinity];
  let counting = true;
  let before: number | null = null;
  const inOwnUnit: number[] = [];
  const addNumber = (value: number, kept = numbers): void => {
    count.numbers++;
    if (value < least) least = value;
    if (value > greatest) greatest = value;
    if (kept.length < keptNumbers) kept.push(value);
  };
  for (const record of recordsOf(block)) {
    count.records++;
    const cell =
      block.lies === 'rows'
        ? (block.sheet.rows[record - 1]?.[field.at - 1] ?? null)
        : cellOfBlock(block, sheets, field, record);
    if (cell === null || isBlank(cell)) continue;
    if (!all && count.filled >= mostCompared) break;
    count.filled++;
    if (samples.length < 3) {
      const place = placeIn(block, field, record);
      if (place) samples.push({ place, text: cellText(cell) });
    }
    if (typeof cell === 'number') {
      addNumber(cell);
      if (count.compared < mostCompared) {
        count.compared++;
        distinct.add(cell);
      }
      if (!Number.isInteger(cell) || (before !== null && cell !== before + 1)) counting = false;
      before = cell;
      continue;
    }
    if (typeof cell === 'object' && 'day' in cell) {
      count.dates++;
      continue;
    }
    const text = cellText(cell);
    if (count.compared < mostCompared) {
      count.compared++;
      distinct.add(tagKey(text));
      if (/\p{L}/u.test(text)) count.lettered++;
    }
    if (count.texts > readInFull && text.charCodeAt(0) > 64) {
      count.texts++;
      counting = false;
      continue;
    }
    let value = readings.get(text);
    if (!value) {
      value = cellValue(cell, style);
      if (readings.size < keptReadings) readings.set(text, value);
    }
    if (value.is === 'number') {
      addNumber(value.value, value.unit ? inOwnUnit : numbers);
      if (value.unit) {
        count.withUnit++;
        cellUnits.set(value.unit.text, value.unit);
      }
      if (!/^\d+$/u.test(text) || (before !== null && value.value !== before + 1)) counting = false;
      before = value.value;
    } else if (value.is === 'said blank') count.saidBlank++;
    else {
      count.texts++;
      counting = false;
      if (value.is !== 'text') count.odd++;
      else if (statedUnit(text)) count.units++;
      else if (kindIn(text)) count.kinds++;
    }
  }
  const compared = numbers.length > 0 ? numbers : inOwnUnit;
  compared.sort((one, other) => one - other);
  return {
    ...count,
    cellUnits,
    least,
    greatest,
    median: compared[Math.floor(compared.length / 2)] ?? NaN,
    distinct: distinct.size,
    counting: counting && count.numbers > 1 && count.texts === 0,
    samples,
  };
}
