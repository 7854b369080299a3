import { availableParallelism, totalmem } from 'node:os';
import process from 'node:process';

/** How many processes audit at once, and what each may take. */
export interface Limits {
  readonly processes: number;
  /** MB of heap of each. */
  readonly memory: number;
  /** Milliseconds for one workbook. */
  readonly time: number;
}

/** Minutes after which a workbook is given up. One of 100,000 channels takes less than a minute (measured). */
export const usualMinutes = 15;

/** Least and most heap of a process, MB. A workbook of 100,000 channels is audited and copied in 512 (measured). */
const leastMemory = 1024;
const mostMemory = 4096;
/** Part of the machine's memory that all processes together may take as heap. */
const share = 0.75;

/**
 * Limits for this machine: a process for each core, fewer where there is not enough memory for each.
 * `minutes` for one workbook, above 0.
 */
export function limitsFor(workbooks: number, minutes: number): Limits {
  const all = (share * machineMemory()) / 2 ** 20;
  const processes = Math.max(1, Math.min(workbooks, availableParallelism(), Math.floor(all / leastMemory)));
  const memory = Math.floor(Math.min(mostMemory, Math.max(leastMemory, all / processes)));
  return { processes, memory, time: minutes * 60_000 };
}

/** Bytes of memory of the machine, or of the container that bounds it. */
function machineMemory(): number {
  const bound = process.constrainedMemory();
  return bound > 0 ? Math.min(bound, totalmem()) : totalmem();
}
