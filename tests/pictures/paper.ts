import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { convert } from '../libreoffice.ts';

/** Pixels of the longer side of a page. */
const longer = 780;

/** The first printed page of a workbook that holds a text, as a PNG; LibreOffice prints, Poppler finds and draws it. */
export function printedPage(workbook: Uint8Array, text: string): Uint8Array {
  const folder = mkdtempSync(join(tmpdir(), 'paper-'));
  try {
    const file = join(folder, 'printed.xlsx');
    writeFileSync(file, workbook);
    const pdf = convert(file, 'pdf', folder);
    const pages = execFileSync('pdftotext', ['-layout', pdf, '-'], { encoding: 'utf8' }).split('\f');
    const page = pages.findIndex((content) => content.includes(text)) + 1;
    if (page === 0) throw new Error(`No printed page holds “${text}”`);
    const only = ['-f', String(page), '-l', String(page), '-singlefile', '-scale-to', String(longer)];
    execFileSync('pdftoppm', ['-png', ...only, pdf, join(folder, 'page')]);
    return readFileSync(join(folder, 'page.png'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
