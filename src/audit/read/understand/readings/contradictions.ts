import { convert } from '../../../../units/convert.ts';
import type { Amount } from '../../rows/rowReader.ts';
import { headerKey } from '../../tables/header.ts';
import { core, meaning, type MeaningId } from '../meanings/meaning.ts';
import type { TableRead } from '../tables/tableRead.ts';
import type { ReadValue, Trouble } from './channel.ts';

/** Texts of which two that differ contradict each other. */
const exclusive: readonly MeaningId[] = ['group', 'voting', 'bypass', 'direction'];

/** Meanings beside the needed ones of which several tables say different things: none of them is chosen. */
export function contradictions(
  holders: ReadonlyMap<MeaningId, readonly (readonly [TableRead, ReadValue])[]>,
): Trouble[] {
  const found: Trouble[] = [];
  for (const [id, held] of holders) {
    const [first, ...others] = held;
    if (!first || core.includes(id)) continue;
    if (others.every(([, value]) => isSame(id, first[1], value))) continue;
    found.push({
      is: 'rival tables',
      tables: [...new Set(held.map(([table]) => table))],
      places: held.map(([, { place }]) => place),
      meanings: [id],
    });
  }
  return found;
}

function isSame(id: MeaningId, one: ReadValue, other: ReadValue): boolean {
  if (meaning(id).holds === 'number') return sameValue(one.amount, other.amount);
  return !exclusive.includes(id) || headerKey(one.text) === headerKey(other.text);
}

/** Whether two numbers are the same in one unit; where one is missing they contradict nothing. */
export function sameValue(one: Amount | null | undefined, other: Amount | null | undefined): boolean {
  if (!one || !other) return true;
  if (one.unit?.dimension !== other.unit?.dimension) return false;
  const there = one.unit && other.unit ? convert(other.value, other.unit, one.unit) : other.value;
  return Math.abs(one.value - there) <= 1e-9 * Math.max(Math.abs(one.value), Math.abs(there));
}
