import { convert } from '../../../../units/unit.ts';
import { cellText } from '../../../../cells/cell.ts';
import type { Sheet } from '../../../../cells/sheet.ts';
import { recordsOf } from '../blocks/block.ts';
import { cellOfBlock } from '../fields/valueFacts.ts';
import { cellValue } from '../readings/cellValue.ts';
import { numberStyleOf } from '../readings/numberStyle.ts';
import { statedUnit, type StatedUnit } from '../vocabulary/statedUnit.ts';
import type { Claim } from './claim.ts';
import type { Lane } from './lane.ts';

const none: ReadonlyMap<string, Sheet> = new Map();

/** Whether the numbers of one field lie below those of another in every record that has both; `undefined` where none has. */
export function orderOf(
  lane: Lane,
  low: Claim,
  high: Claim,
): { records: number; holds: boolean } | undefined {
  const { block } = lane;
  const style = numberStyleOf(block.sheet);
  let records = 0;
  for (const record of recordsOf(block)) {
    const one = cellValue(cellOfBlock(block, none, low.field.place, record), style);
    const other = cellValue(cellOfBlock(block, none, high.field.place, record), style);
    if (one.is !== 'number' || other.is !== 'number') continue;
    const [from, to] = [one.unit ?? unitAt(lane, low, record), other.unit ?? unitAt(lane, high, record)];
    // Shares of full scale lie below it as long as they are no more than 100 %.
    const top = from?.ofScale && to?.ofScale === false ? 100 : Math.abs(other.value);
    if (from?.ofScale === false && to?.ofScale) continue;
    const isOther = from?.unit && to?.unit && from.unit.factor !== to.unit.factor;
    if (isOther && from.unit.dimension !== to.unit.dimension) continue;
    records++;
    const below = isOther ? convert(one.value, from.unit, to.unit) : one.value;
    if (Math.abs(below) > top) return { records, holds: false };
  }
  return records > 0 ? { records, holds: true } : undefined;
}

/** The unit of a field in one record: that of all its numbers, or what stands beside. */
function unitAt({ block }: Lane, { unit }: Claim, record: number): StatedUnit | null {
  const [beside] = unit.beside;
  if (unit.fixed || !beside) return unit.fixed;
  return statedUnit(cellText(cellOfBlock(block, none, beside.place, record))) ?? null;
}
