import { columnLetters } from '../../cells/address.ts';
import type { Area } from '../../cells/sheet.ts';

/** An area as formulas and files write it: `A1:C9`, a single cell as `A1`. */
export function reference({ top, left, bottom, right }: Area): string {
  const first = `${columnLetters(left)}${top}`;
  return top === bottom && left === right ? first : `${first}:${columnLetters(right)}${bottom}`;
}
