import { type FunctionError, refused } from '../functionError.ts';
import { short } from '../record/arguments.ts';

type Cells = readonly (number | null)[];

/** A range by the name of its argument. */
export interface NamedCells {
  readonly name: string;
  readonly cells: Cells;
  /** Whether a range of one cell serves every place. */
  readonly oneForAll?: boolean;
}

/** One place of ranges that are read together: from 1, and a number from each. */
export interface Place {
  readonly place: number;
  readonly values: readonly number[];
}

/**
 * Ranges read together, paired by their place and sorted by the first, which may hold no value twice. A place that is
 * blank in all longer ranges is left out; `NaN` stands as it is.
 */
export function pairedBy(
  ranges: readonly [NamedCells, ...NamedCells[]],
  least: number,
): Place[] | FunctionError {
  const [key] = ranges;
  const places = placesOf(ranges);
  if (!Array.isArray(places)) return places;
  if (places.length < least)
    return refused(`${key.name} has ${places.length} filled cells: enter ${least} or more.`);
  places.sort((one, other) => (one.values[0] ?? 0) - (other.values[0] ?? 0));
  const again = places.find(({ values }, at) => at > 0 && values[0] === places[at - 1]?.values[0]);
  if (again)
    return refused(
      `${key.name} ${again.place} repeats ${short(again.values[0] ?? null)}: keep one of the two.`,
    );
  return places;
}

/** The same in the order given, values twice and all. */
function placesOf(ranges: readonly [NamedCells, ...NamedCells[]]): Place[] | FunctionError {
  const [key] = ranges;
  const { length } = key.cells;
  for (const { name, cells, oneForAll } of ranges) {
    if (cells.length === length || (oneForAll === true && cells.length === 1)) continue;
    return cells.length < length
      ? refused(`${name} ends before ${key.name}: select as many cells in each.`)
      : refused(`${key.name} ends before ${name}: select as many cells in each.`);
  }
  const places: Place[] = [];
  for (let at = 0; at < length; at++) {
    const along = ranges.filter(({ cells }) => cells.length === length);
    if (along.every(({ cells }) => cells[at] === null)) continue;
    const values: number[] = [];
    for (const { name, cells } of ranges) {
      const value = cells[cells.length === length ? at : 0] ?? null;
      if (value === null) return refused(`${name} ${at + 1} is blank: enter it, or clear the line.`);
      values.push(value);
    }
    places.push({ place: at + 1, values });
  }
  return places;
}
