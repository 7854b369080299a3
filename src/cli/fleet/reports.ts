import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { UsageRefused, inWords, isSystemError } from '../refused.ts';

/** Where each workbook's report waits, as JSON, until all can be written as one. */
export interface Reports {
  /** Path of the report of a workbook, counted from 0. */
  readonly of: (index: number) => string;
  readonly remove: () => void;
}

/**
 * A temporary folder for reports; gone when it is removed or this process ends.
 * @throws UsageRefused where there can be none.
 */
export function openReports(): Reports {
  const folder = temporaryFolder();
  const clear = (): void => {
    try {
      rmSync(folder, { recursive: true, force: true });
    } catch (error) {
      if (!isSystemError(error)) throw error;
    }
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

function temporaryFolder(): string {
  try {
    return mkdtempSync(join(tmpdir(), 'tripdrift-fleet-'));
  } catch (error) {
    throw new UsageRefused(`The folder for temporary files ${inWords(error, 'can not be used')}.`);
  }
}
