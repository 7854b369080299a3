import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Workbook } from '../../src/cells/sheet.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import type { BookTruth } from './truth.ts';

/** An invented workbook as plants keep them, from a file, with its truth. */
export interface OwnWorkbook {
  readonly file: string;
  readonly workbook: Workbook;
  readonly truth: BookTruth;
}

const folder = new URL('workbooks/', import.meta.url);

/** The workbooks in the folder beside, as the reader of workbook files delivers them. */
export function ownWorkbooks(): OwnWorkbook[] {
  const listed = JSON.parse(readFileSync(new URL('truth.json', folder), 'utf8')) as {
    file: string;
    truth: BookTruth;
  }[];
  return listed.map(({ file, truth }) => ({
    file,
    truth,
    workbook: readWorkbook(file, readFileSync(fileURLToPath(new URL(file, folder)))),
  }));
}
