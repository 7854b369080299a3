import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { afterAll, expect, it } from 'vitest';
import { DateCell, type Cell } from '../../../../src/cells/cell.ts';
import type { Workbook } from '../../../../src/cells/sheet.ts';
import { readWorkbook } from '../../../../src/hosts/file/read/workbook.ts';
import { addSheets } from '../../../../src/hosts/file/write/addSheets.ts';
import { newWorkbook } from '../../../../src/hosts/file/write/newWorkbook.ts';
import type { SheetModel } from '../../../../src/sheets/model.ts';
import { everythingParts } from '../../../fixtures/workbooks/everything.ts';
import { zipParts } from '../../../fixtures/workbooks/package.ts';
import { prefixed, smallParts, strictParts } from '../../../fixtures/workbooks/small.ts';
import { convert, describeWithLibreOffice } from '../../../libreoffice.ts';
import { resultSheet, sheetOf } from './model.ts';
import { partText } from './parts.ts';
import { objections } from './validator.ts';

const folder = mkdtempSync(join(tmpdir(), 'written-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});
let files = 0;

/** The workbook as LibreOffice understands it: loaded there, saved again and read back. */
function throughLibreOffice(bytes: Uint8Array, extension = 'xlsx'): Workbook {
  const path = join(folder, `book${++files}.${extension}`);
  writeFileSync(path, bytes);
  const out = mkdtempSync(join(folder, 'out-'));
  return readWorkbook('out.xlsx', readFileSync(convert(path, 'xlsx', out)));
}

/** The same workbook without the results stored beside formulas, so that whoever opens it must calculate them. */
function withoutResults(bytes: Uint8Array): Uint8Array {
  const parts = unzipSync(bytes);
  for (const [name, part] of Object.entries(parts)) {
    if (!/worksheets\/[^/]*\.xml$/i.test(name)) continue;
    const stripped = strFromU8(part).replace(
      /<c r="([A-Z]+\d+)"((?: s="\d+")?)(?: t="(?:str|b)")?>(<f[^>]*\/>|<f[^>]*>[^<]*<\/f>)<v>[^<]*<\/v>/g,
      '<c r="$1"$2>$3',
    );
    parts[name] = strToU8(stripped);
  }
  return zipSync(parts);
}

function modelCells(model: SheetModel): (Cell | undefined)[][] {
  return Array.from(model.rows(), (row) => row.cells.map((cell) => cell?.value));
}

function sheetCells(book: Workbook, name: string): readonly (readonly Cell[])[] {
  const sheet = book.sheets.find((entry) => entry.name === name);
  if (!sheet) throw new Error(`no sheet ${name} among ${book.sheets.map((entry) => entry.name).join(', ')}`);
  return sheet.rows;
}

function expectEqual(
  actual: readonly (readonly Cell[])[],
  wanted: readonly (readonly (Cell | undefined)[])[],
): void {
  wanted.forEach((row, rowIndex) => {
    row.forEach((value, column) => {
      const found = actual[rowIndex]?.[column] ?? null;
      const place = `row ${rowIndex + 1}, column ${column + 1}`;
      if (typeof value === 'number') expect(found, place).toBeCloseTo(value, 12);
      else expect(found, place).toBe(value ?? null);
    });
  });
}

// Source: LibreOffice's own reading and calculating of the file. Grade: an independent peer.
describeWithLibreOffice('LibreOffice opens the copy and calculates what is stored in it', () => {
  it.each([
    ['one of nearly everything', zipParts(everythingParts()), 'xlsx'],
    ['macros', zipParts(everythingParts({ macros: true })), 'xlsm'],
    ['the strict dialect', zipParts(strictParts()), 'xlsx'],
    [
      'prefixed elements',
      zipParts(prefixed(smallParts(), ['xl/workbook.xml', 'xl/styles.xml', 'xl/_rels/workbook.xml.rels'])),
      'xlsx',
    ],
    ['no styles', zipParts(smallParts({ styles: false })), 'xlsx'],
  ])('for a workbook with %s', (_, original, extension) => {
    const copy = addSheets(original, [resultSheet("Operator's sheet"), resultSheet('Channels')]);
    const names = copy.sheetNames.map(({ given }) => given);
    expect(names).toEqual(["Operator's sheet", 'Channels (2)']);
    const calculated = throughLibreOffice(withoutResults(copy.bytes), extension);
    for (const name of names) expectEqual(sheetCells(calculated, name), modelCells(resultSheet()));
  });

  it('for a workbook LibreOffice wrote itself', () => {
    const csv = join(folder, 'plain.csv');
    writeFileSync(csv, 'Tag,Configured\nP-1X,200\n');
    const original = readFileSync(convert(csv, 'xlsx', folder));
    const copy = addSheets(original, [resultSheet()]).bytes;
    expect(objections(copy)).toEqual(objections(original));
    const calculated = throughLibreOffice(withoutResults(copy));
    expectEqual(sheetCells(calculated, 'Audit results'), modelCells(resultSheet()));
    expectEqual(sheetCells(calculated, 'plain'), [
      ['Tag', 'Configured'],
      ['P-1X', 200],
    ]);
  });

  it('for formulas shared down a column with gaps, and others that must not be shared', () => {
    const rows = Array.from({ length: 40 }, (_, index) => {
      const row = index + 1;
      const shared = row % 7 === 0 ? undefined : { value: row * 2 + 1, formula: 0 };
      const other = row % 3 === 0 ? { value: row + 1, formula: 1 } : { value: 2 + row, formula: 2 };
      return [row, shared, other, { value: row, formula: 3 }, { value: 1, formula: 4 }];
    });
    const model = sheetOf('Shared', rows, {
      formulas: ['$A{r}*A$2+A$1', 'A{r}+A1', 'A2+A{r}', '{r}', 'LOG10(10)*SUM($A$1:A$1)'],
    });
    expectEqual(
      sheetCells(throughLibreOffice(withoutResults(newWorkbook([model]))), 'Shared'),
      modelCells(model),
    );
  });

  it('with merges, filter, shades, widths and page settings', () => {
    const path = join(folder, `book${++files}.xlsx`);
    writeFileSync(path, newWorkbook([resultSheet()]));
    const saved = readFileSync(convert(path, 'xlsx', mkdtempSync(join(folder, 'out-'))));
    const sheet = partText(saved, 'xl/worksheets/sheet1.xml');
    expect(sheet).toContain('<mergeCell ref="A5:C5"/>');
    expect(sheet).toContain('<autoFilter ref="A1:G4"');
    expect(sheet).toMatch(
      /<conditionalFormatting sqref="E2:E4"><cfRule type="cellIs" priority="2" operator="equal"/,
    );
    expect(sheet).toContain('<formula>&quot;say &quot;&quot;early&quot;&quot;&quot;</formula>');
    expect(sheet).toMatch(/<pageSetup[^>]*fitToWidth="1" fitToHeight="0"[^>]*orientation="landscape"/);
    expect(sheet).toContain('Advisory only &amp;&amp; not a calibration&amp;RPage &amp;P of &amp;N');
    expect(Number(/<col [^>]*width="([\d.]+)"/.exec(sheet)![1])).toBeCloseTo(14.71, 1);
    const workbook = partText(saved, 'xl/workbook.xml');
    expect(workbook.replaceAll('&apos;', "'")).toMatch(/_xlnm\.Print_Titles"[^>]*>'Audit results'!\$1:\$1</);
  });

  it('with every text as text and every number as it was', () => {
    const texts = [
      '=1+1',
      '+x',
      '@x',
      '-1',
      '007',
      '1-2',
      '  two  spaces ',
      'a\nb',
      'a\tb',
      '_x0041_',
      '<&>"\'',
      '€𝒳',
      "'quoted",
    ];
    const numbers = [
      0.1 + 0.2,
      5e-324,
      1.7976931348623157e308,
      -0.000001234567890123456,
      123456789012345680000,
      1 / 3,
    ];
    const model = sheetOf('Values', [texts, numbers, [true, false]]);
    const rows = sheetCells(throughLibreOffice(newWorkbook([model])), 'Values');
    expect(rows[0]).toEqual(texts);
    // LibreOffice saves 15 significant digits.
    numbers.forEach((value, index) => {
      expect(Number(rows[1]![index]) / value).toBeCloseTo(1, 13);
    });
    expect(rows[2]).toEqual([true, false]);
  });

  it('with dates where they were, whichever year the workbook counts from', () => {
    // 1 January 2020 is day 43831 of the 1900 system; from 1970-01-01 it is day 18262 (ISO 8601 calendar: 2020-01-01).
    const model = sheetOf('Dates', [[{ value: 43831, style: 'date' }]], {
      styles: { date: { numberFormat: 'yyyy-mm-dd' } },
    });
    for (const workbookHead of ['', '<workbookPr date1904="1"/>']) {
      const copy = addSheets(zipParts(smallParts({ workbookHead })), [model]).bytes;
      const cell = sheetCells(throughLibreOffice(copy), 'Dates')[0]![0];
      expect(cell).toEqual(new DateCell(Date.UTC(2020, 0, 1) / 86_400_000));
    }
  });
});
