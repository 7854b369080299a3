import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { objectionsTo } from '../../../openXmlValidator.ts';

/** What the Open XML SDK's validator objects to in a workbook, one line an error. */
export function objections(bytes: Uint8Array, extension = 'xlsx'): readonly string[] {
  const folder = mkdtempSync(join(tmpdir(), 'workbook-'));
  try {
    const path = join(folder, `book.${extension}`);
    writeFileSync(path, bytes);
    return objectionsTo(path);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
