import type { Bench } from '../bench.ts';

/** Hands the user a copy of the workbook as a file; what to know about it. */
export function saveCopy(_bench: Bench): string {
  throw new Error('Saving is not built yet.');
}
