import type { Workbook } from './sheet.ts';

/** Whether two readings of a workbook say the same: every cell of every sheet, and all that is known of the sheets beside cells. */
export function sameWorkbook(one: Workbook, other: Workbook): boolean {
  return same(one, other);
}

function same(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one)) {
    return (
      Array.isArray(other) &&
      one.length === other.length &&
      one.every((part, index) => same(part, other[index]))
    );
  }
  if (Object.getPrototypeOf(one) !== Object.getPrototypeOf(other)) return false;
  if (one instanceof Set && other instanceof Set) return same([...one], [...other]);
  const [parts, others] = [Object.entries(one), new Map<string, unknown>(Object.entries(other))];
  return (
    parts.length === others.size &&
    parts.every(([key, part]) => others.has(key) && same(part, others.get(key)))
  );
}
