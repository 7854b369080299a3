import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';

/** Where each workbook's report waits, as JSON, until all can be written as one. */
export interface Reports {
  /** Path of the report of a workbook, counted from 0. */
  readonly of: (index: number) => string;
  readonly remove: () => void;
}

/** A temporary folder for reports; gone when it is removed or this process ends. */
export function openReports(): Reports {
  const folder = mkdtempSync(join(tmpdir(), 'tripdrift-fleet-'));
  const clear = (): void => {
    rmSync(folder, { recursive: true, force: true });
  };
  process.on('exit', clear);
  return {
    of: (index) => join(folder, `${index}.json`),
    remove: () => {
      clear();
      process.off('exit', clear);
    },
  };
}
