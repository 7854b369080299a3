import { execFileSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { newWorkbook } from '../../../src/hosts/file/write/newWorkbook.ts';
import type { SheetModel } from '../../../src/sheets/model.ts';
import { convert } from '../../libreoffice.ts';

/** A word where it is printed, in points from the upper left corner of its page. */
interface Word {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface PrintedPage {
  readonly width: number;
  readonly height: number;
  readonly words: readonly Word[];
  readonly text: string;
}

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

/** The sheets as LibreOffice prints them, page by page; Poppler reads the pages. */
export function printedPages(models: readonly SheetModel[], folder: string): readonly PrintedPage[] {
  const own = mkdtempSync(join(folder, 'printed-'));
  const path = join(own, 'sheets.xlsx');
  writeFileSync(path, newWorkbook(models));
  const pdf = convert(path, 'pdf', own);
  const read = (...options: string[]) =>
    execFileSync('pdftotext', [...options, pdf, '-'], { encoding: 'utf8', maxBuffer: 1 << 28 });
  const texts = read('-raw').split('\f');
  return [...read('-bbox').matchAll(/<page width="([\d.]+)" height="([\d.]+)">(.*?)<\/page>/gsu)].map(
    ([, width, height, body], index) => ({
      width: Number(width),
      height: Number(height),
      words: [
        ...(body ?? '').matchAll(
          /<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)<\/word>/gu,
        ),
      ].map(([, left, top, right, bottom, text]) => ({
        text: (text ?? '').replace(/&(\w+);/gu, (all, name: string) => entities[name] ?? all),
        left: Number(left),
        top: Number(top),
        right: Number(right),
        bottom: Number(bottom),
      })),
      text: texts[index] ?? '',
    }),
  );
}

/** Pairs of words of a page that lie on each other by more than the room that letters have above and below. */
export function overlaps({ words }: PrintedPage): string[] {
  const found: string[] = [];
  const rows = words.toSorted((one, other) => one.top - other.top);
  rows.forEach((one, index) => {
    for (let next = index + 1; next < rows.length; next++) {
      const other = rows[next];
      if (!other || other.top > one.bottom) break;
      const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
      const down = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
      const height = Math.min(one.bottom - one.top, other.bottom - other.top);
      if (across > 1 && down > 0.4 * height) found.push(`${one.text} on ${other.text}`);
    }
  });
  return found;
}
