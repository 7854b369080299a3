import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** Sizes that a first start may fetch of our own files, in kB (1000 bytes) packed with gzip. Source: our own aim. */
export const LIMITS = { functions: 125, pane: 430 } as const;

export interface PackedSizes {
  /** Script and description of the worksheet functions. */
  readonly functions: number;
  /** Page, scripts and styles of the pane. */
  readonly pane: number;
  /** Office.js for Excel on Windows, in English; the same for every add-in. */
  readonly office: number;
}

/** Measures a built folder as a web server would pack it, in kB. */
export function packedSizes(folder: string): PackedSizes {
  const packed = (files: readonly string[]) =>
    files.reduce((sum, file) => sum + gzipSync(readFileSync(join(folder, file))).length, 0) / 1000;
  const metadata = readdirSync(folder).filter((file) => /^functions\..*json$/.test(file));
  const assets = readdirSync(join(folder, 'assets')).map((file) => `assets/${file}`);
  return {
    functions: packed(['functions.js', ...metadata]),
    pane: packed(['taskpane.html', ...assets]),
    office: packed(['office/office.js', 'office/excel-win32-16.01.js', 'office/en-us/office_strings.js']),
  };
}
