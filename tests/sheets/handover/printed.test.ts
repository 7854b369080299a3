import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect } from 'vitest';
import { audit } from '../../../src/audit/audit.ts';
import { readWorkbook } from '../../../src/hosts/file/read/workbook.ts';
import { handoverSheets } from '../../../src/sheets/handover/handoverSheets.ts';
import type { Report } from '../../../src/audit/model/report.ts';
import type { ModelCell, SheetModel } from '../../../src/sheets/model.ts';
import { describeWithLibreOffice } from '../../libreoffice.ts';
import { testWithTool } from '../../tool.ts';
import type { Listed } from '../tables.ts';
import { overlaps, printedPages, type PrintedPage } from './pdf.ts';
import { isPage, printedRows, reportOf } from './read.ts';
import { randomReports } from './stations.ts';

const folder = mkdtempSync(join(tmpdir(), 'handover-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const station = join(import.meta.dirname, '../../../workbooks/harbour-station.xlsx');
const late: Listed = { tag: 'V-1', machine: 'M', measured: 160, configured: 200, alert: 3, danger: 5 };

/** One channel, forty, long texts, wide letters, and texts that can't be broken. */
const odd: readonly Listed[] = [
  ...Array.from({ length: 40 }, (_, index): Listed => ({
    ...late,
    tag: `31-VT-${4100 + index}`,
    machine: 'Forty',
    location: `bearing ${index}, 45° left`,
    measured: 150 + 2 * index,
    uncertainty: 3,
    reading: 2,
    resolution: 0.1,
    growth: 0.01,
    group: `Train ${index >> 1}`,
    voting: '1oo2',
  })),
  { ...late, machine: 'One channel' },
  {
    ...late,
    tag: 'TAG-'.repeat(60),
    machine: 'A machine with a very long name '.repeat(5),
    location: 'somewhere over there '.repeat(20),
    group: 'a group of many words '.repeat(10),
    voting: '1oo1',
    reading: 4.8,
    resolution: 0.1,
  },
  {
    ...late,
    tag: 'MWMW'.repeat(40),
    machine: 'MAMMOTH WORKS WWW '.repeat(5),
    location: 'WMWM'.repeat(30),
    group: 'WM'.repeat(60),
    voting: '1oo1',
  },
];

const cases = [
  ['the demo station', () => handoverSheets(audit(readWorkbook('station.xlsx', readFileSync(station))))],
  ['few, many and long texts', () => handoverSheets(reportOf(odd))],
  ['random stations', () => randomReports(14).flatMap(pagesOfOne)],
] as const;
// Letter 8.5 in × 11 in, A4 210 mm × 297 mm (ISO 216), in points of 1/72 in.
const papers = [
  ['Letter', 612, 792],
  ['A4', (210 / 25.4) * 72, (297 / 25.4) * 72],
] as const;

/** Margins at the sides, 0.4 in, less a point for rounding. */
const margin = 0.4 * 72 - 1;

const squeezed = (text: string) => text.replace(/\s+/gu, '');

describeWithLibreOffice('hand-over sheets on paper', () => {
  describe.each(cases)('%s', (_, models) => {
    for (const [paper, width, height] of papers) {
      testWithTool('pdftotext', `stand on ${paper} with nothing cut off`, () => {
        const sheets = models();
        const pages = printedPages(
          sheets.map((model) => ({ ...model, print: { ...model.print, paper } })),
          folder,
        );
        for (const page of pages) {
          expect(Math.abs(page.width - width) + Math.abs(page.height - height)).toBeLessThan(2);
          expect(page.words.filter(({ left, right }) => left < margin || right > width - margin)).toEqual([]);
          expect(overlaps(page)).toEqual([]);
          expect(page.text).not.toContain('###');
        }
        let at = 0;
        for (const model of sheets) {
          // A page for the control room is one; an annex has one where it says that it does, and nowhere else.
          const count = isPage(model) ? 1 : countOf(model, pages.slice(at));
          const own = pages.slice(at, at + count);
          at += count;
          const text = squeezed(own.map((page) => page.text).join(' '));
          for (const wanted of textsOf(model)) expect(text).toContain(squeezed(wanted));
          expect(own[0]!.text).toContain('Tripdrift audit');
          if (isPage(model)) expect(smallest(own[0]!)).toBeGreaterThan(leastHeight);
        }
        expect(pages).toHaveLength(at);
      });
    }
  });
});

// The checks themselves: rows made too low must be noticed.
describeWithLibreOffice('a hand-over sheet with rows too low for their texts', () => {
  testWithTool('pdftotext', 'would be seen', () => {
    const sheets = cases[0][1]().slice(2, 3);
    const low = sheets.map((model) => ({
      ...model,
      rows: () => [...model.rows()].map((row) => ({ ...row, height: Math.min(row.height ?? 15, 15) })),
    }));
    const pages = printedPages(low, folder);
    const text = squeezed(pages.map((page) => page.text).join(' '));
    const missing = low.flatMap(textsOf).filter((wanted) => !text.includes(squeezed(wanted)));
    expect(missing.length + pages.flatMap(overlaps).length).toBeGreaterThan(0);
  });
});

/** Pages of a sheet: an annex breaks where it says, the list where a page is full. */
function countOf({ print }: SheetModel, rest: readonly PrintedPage[]): number {
  if (print.newPages !== undefined) return print.newPages.length + 1;
  const next = rest.slice(1).findIndex(({ text }) => text.includes('What still trips the machine'));
  return next < 0 ? rest.length : next + 1;
}

/** Points from top to bottom of the smallest words of a page, which are read close by. */
const leastHeight = 4;

function smallest({ words }: PrintedPage): number {
  return Math.min(...words.map(({ top, bottom }) => bottom - top));
}

/** The pages for the control room of a report, named apart from those of other reports. */
function pagesOfOne(report: Report, index: number): SheetModel[] {
  const pages = handoverSheets(report).filter(isPage).slice(0, 3);
  return pages.map((model, at): SheetModel => ({
    ...model,
    name: `Page ${index} ${at}`,
    // Without its annex a page has no cells to take its numbers from.
    formulas: [],
    rows: () => [...model.rows()].map((row) => ({ ...row, cells: row.cells.map(withoutFormula) })),
  }));
}

function withoutFormula(cell: ModelCell | undefined): ModelCell | undefined {
  if (!cell) return undefined;
  const { value, style } = cell;
  return style === undefined ? { value } : { value, style };
}

function textsOf(model: SheetModel): string[] {
  return printedRows(model).flatMap((cells) =>
    cells.flatMap((cell) => (typeof cell?.value === 'string' ? cell.value : [])),
  );
}
