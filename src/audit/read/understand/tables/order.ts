import { convert } from '../../../../units/convert.ts';
import type { Sheet } from '../../../../cells/sheet.ts';
import { recordsOf } from '../blocks/block.ts';
import { cellOfBlock } from '../fields/valueFacts.ts';
import { cellValue } from '../readings/cellValue.ts';
import { numberStyleOf } from '../readings/numberStyle.ts';
import type { Claim } from './claim.ts';
import type { Lane } from './lane.ts';

const none: ReadonlyMap<string, Sheet> = new Map();

/** Shares of full scale lie below it as long as they are no more than 100 %. */
function ofScale({ field: { values } }: Claim): { records: number; holds: boolean } {
  return { records: values.numbers, holds: values.greatest <= 100 && values.least >= -100 };
}

/** Whether the numbers of one field lie below those of another in every record that has both; `undefined` where none has. */
export function orderOf(
  lane: Lane,
  low: Claim,
  high: Claim,
): { records: number; holds: boolean } | undefined {
  const { block } = lane;
  const style = numberStyleOf(block.sheet);
  const [from, to] = [low.unit.fixed?.unit, high.unit.fixed?.unit];
  if (low.unit.fixed?.ofScale && high.unit.fixed?.ofScale === false) return ofScale(low);
  if (low.unit.fixed?.ofScale !== high.unit.fixed?.ofScale) return undefined;
  const comparable = from && to && from.dimension === to.dimension && from.factor !== to.factor;
  let records = 0;
  for (const record of recordsOf(block)) {
    const one = cellValue(cellOfBlock(block, none, low.field.place, record), style);
    const other = cellValue(cellOfBlock(block, none, high.field.place, record), style);
    if (one.is !== 'number' || other.is !== 'number' || one.unit?.unit?.factor !== other.unit?.unit?.factor)
      continue;
    records++;
    const below = comparable ? convert(one.value, from, to) : one.value;
    if (Math.abs(below) > Math.abs(other.value)) return { records, holds: false };
  }
  return records > 0 ? { records, holds: true } : undefined;
}
