// How parts hang together: ECMA-376 part 1, section 18.2 and 18.5.1.2, and part 2 (open packaging). Grade: open
// standard, cited from memory.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { DateCell, PercentCell } from '../../../../src/cells/cell.ts';
import type { Workbook } from '../../../../src/cells/sheet.ts';
import { readWorkbook } from '../../../../src/hosts/file/read/workbook.ts';
import { convert, describeWithLibreOffice } from '../../../libreoffice.ts';
import { bookParts, links, oneSheet, type Parts, zip } from './book.ts';

const one = '<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1"><v>5</v></c></row>';
const strings = '<si><t>VT-1</t></si>';
const plain = (): Parts => bookParts({ sheets: [{ name: 'Channels', data: one }], strings });
const rowsOf = (book: Workbook): unknown => book.sheets.map((sheet) => [sheet.name, sheet.rows]);
const expected = [['Channels', [['VT-1', 5]]]];

describe('workbook', () => {
  it('is named after the file without its folders', () => {
    expect(readWorkbook('some/where/plant.xlsx', zip(plain())).name).toBe('plant.xlsx');
    expect(readWorkbook('C:\\data\\plant.xlsx', zip(plain())).name).toBe('plant.xlsx');
  });

  it('keeps the order of sheets, says which are hidden and leaves chart sheets out', () => {
    const parts = bookParts({
      sheets: [
        { name: 'Z &amp; A', data: one },
        { name: 'H', data: '', state: 'hidden' },
        { name: 'V', data: '', state: 'veryHidden' },
        { name: 'Chart', data: '' },
      ],
      strings,
    });
    const rels = String(parts['xl/_rels/workbook.xml.rels']);
    parts['xl/_rels/workbook.xml.rels'] = rels.replace(
      /worksheet"( Target="worksheets\/sheet4)/,
      'chartsheet"$1',
    );
    const { sheets } = readWorkbook('a.xlsx', zip(parts));
    expect(sheets.map(({ name, hidden }) => [name, hidden])).toEqual([
      ['Z & A', false],
      ['H', true],
      ['V', true],
    ]);
  });

  it('says which rows are hidden or flattened to nothing', () => {
    const data =
      '<row r="1" hidden="1"><c r="A1"><v>1</v></c></row><row r="2" hidden="0"/><row r="3" ht="0" customHeight="1"/><row r="4" hidden="true"/>';
    expect([...readWorkbook('a.xlsx', oneSheet(data)).sheets[0]!.hiddenRows]).toEqual([1, 3, 4]);
  });

  it('says which columns are hidden or have no width, and which areas are merged', () => {
    const parts = bookParts({
      sheets: [{ name: 'Channels', data: one, after: '<mergeCells><mergeCell ref="B1:D2"/></mergeCells>' }],
      strings,
    });
    const columns =
      '<cols><col min="2" max="3" hidden="1"/><col min="5" max="5" width="0"/><col min="6" max="6" width="9"/></cols>';
    const part = String(parts['xl/worksheets/sheet1.xml']);
    parts['xl/worksheets/sheet1.xml'] = part.replace('<sheetData>', `${columns}<sheetData>`);
    const [sheet] = readWorkbook('a.xlsx', zip(parts)).sheets;
    expect([...(sheet!.hiddenColumns ?? [])]).toEqual([2, 3, 5]);
    expect(sheet!.merged).toEqual([{ top: 1, left: 2, bottom: 2, right: 4 }]);
  });

  it('never follows a link out of the file', () => {
    const parts = plain();
    const out =
      '<Relationship Id="rIdOut" Type="x/sharedStrings" Target="http://example.org/s.xml" TargetMode="External"/>';
    const rels = String(parts['xl/_rels/workbook.xml.rels']);
    parts['xl/_rels/workbook.xml.rels'] = rels.replace(/(?=<Relationship )/, out);
    expect(rowsOf(readWorkbook('a.xlsx', zip(parts)))).toEqual(expected);
  });

  it('finds the tables of a sheet', () => {
    const table = (attributes: string): string =>
      `<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" ${attributes}><autoFilter ref="A1:A1"/></table>`;
    const tables = [
      table('name="t" displayName="Channels" ref="B2:D9" totalsRowCount="1"'),
      table('name="t2" displayName="Bare" ref="F2:F3" headerRowCount="0"'),
    ];
    const { sheets } = readWorkbook('a.xlsx', zip(bookParts({ sheets: [{ name: 'S', data: '', tables }] })));
    expect(sheets[0]!.tables).toEqual([
      { name: 'Channels', area: { top: 2, left: 2, bottom: 9, right: 4 }, headerRow: true, totalsRow: true },
      { name: 'Bare', area: { top: 2, left: 6, bottom: 3, right: 6 }, headerRow: false, totalsRow: false },
    ]);
  });

  it('tells how far it is, from above 0 up to 1', () => {
    const heard: number[] = [];
    readWorkbook('a.xlsx', zip(plain()), { onProgress: (fraction) => heard.push(fraction) });
    expect(heard.length).toBeGreaterThan(1);
    expect(heard).toEqual([...heard].sort((a, b) => a - b));
    expect(heard.at(-1)).toBe(1);
  });
});

describe('the many ways to write the same workbook', () => {
  const rewrite = (change: (text: string) => string): Parts =>
    Object.fromEntries(Object.entries(plain()).map(([name, part]) => [name, change(String(part))]));

  it('with namespace prefixes', () => {
    const parts = plain();
    for (const name of [
      'xl/workbook.xml',
      'xl/worksheets/sheet1.xml',
      'xl/sharedStrings.xml',
      'xl/styles.xml',
    ]) {
      parts[name] = String(parts[name])
        .replace(/<(\/?)(?=[a-z])/g, '<$1x:')
        .replace('xmlns=', 'xmlns:x=');
    }
    expect(String(parts['xl/worksheets/sheet1.xml'])).toContain('<x:sheetData><x:row r="1"><x:c');
    expect(rowsOf(readWorkbook('a.xlsx', zip(parts)))).toEqual(expected);
  });

  it('in strict OOXML', () => {
    const strict = rewrite((text) =>
      text
        .replaceAll(
          'http://schemas.openxmlformats.org/spreadsheetml/2006/main',
          'http://purl.oclc.org/ooxml/spreadsheetml/main',
        )
        .replaceAll(
          'http://schemas.openxmlformats.org/officeDocument/2006/',
          'http://purl.oclc.org/ooxml/officeDocument/',
        ),
    );
    expect(rowsOf(readWorkbook('a.xlsx', zip(strict)))).toEqual(expected);
  });

  it('with absolute targets, other folders and part names in other case', () => {
    const parts = plain();
    parts['XL/Workbook.XML'] = parts['xl/workbook.xml'] ?? '';
    parts['xl/_rels/workbook.xml.rels'] = links(
      ['rId1', 'worksheet', '/data/Table%201.xml'],
      ['rId2', 'sharedStrings', '../texts.xml'],
    );
    parts['Data/table 1.XML'] = parts['xl/worksheets/sheet1.xml'] ?? '';
    parts['texts.xml'] = parts['xl/sharedStrings.xml'] ?? '';
    for (const old of ['xl/workbook.xml', 'xl/worksheets/sheet1.xml', 'xl/sharedStrings.xml']) {
      Reflect.deleteProperty(parts, old);
    }
    expect(rowsOf(readWorkbook('a.xlsx', zip(parts)))).toEqual(expected);
  });

  it('in UTF-16 of either byte order, and UTF-8 with a byte order mark', () => {
    const utf16 = (text: string, littleEndian: boolean, mark: boolean): Uint8Array => {
      const units = Array.from((mark ? '\ufeff' : '') + text, (unit) => unit.charCodeAt(0));
      return new Uint8Array(
        units.flatMap((unit) => (littleEndian ? [unit & 255, unit >> 8] : [unit >> 8, unit & 255])),
      );
    };
    for (const encode of [
      (text: string) => utf16(text, true, true),
      (text: string) => utf16(text, false, true),
      (text: string) => utf16(text, true, false),
      (text: string) => utf16(text, false, false),
      (text: string) => `\ufeff${text}`,
    ]) {
      const parts = plain();
      const sheet = String(parts['xl/worksheets/sheet1.xml']).replace('encoding="UTF-8" ', '');
      parts['xl/worksheets/sheet1.xml'] = encode(sheet);
      expect(rowsOf(readWorkbook('a.xlsx', zip(parts)))).toEqual(expected);
    }
  });

  it('without styles, shared strings or a workbook folder', () => {
    const parts: Parts = {
      '_rels/.rels': links(['r', 'officeDocument', 'book.xml']),
      'book.xml': String(plain()['xl/workbook.xml']),
      '_rels/book.xml.rels': links(['rId1', 'worksheet', 'sheet.xml']),
      'sheet.xml':
        '<worksheet><dimension ref="A1:XFD1048576"/><sheetData><row><c><v>5</v></c></row></sheetData></worksheet>',
    };
    expect(rowsOf(readWorkbook('a.xlsx', zip(parts)))).toEqual([['Channels', [[5]]]]);
  });

  it('with letters cut by the pieces a part is read in', () => {
    const text = 'µ€😀'.repeat(9000);
    const texts = Array.from({ length: 40 }, (_, index) => `${index}${text}`);
    const data = texts.map((each) => `<row><c t="inlineStr"><is><t>${each}</t></is></c></row>`).join('');
    expect(readWorkbook('a.xlsx', oneSheet(data)).sheets[0]!.rows.map((row) => row[0])).toEqual(texts);
  });
});

describeWithLibreOffice('a workbook another program wrote', () => {
  it('reads as the table it was made from', () => {
    const folder = mkdtempSync(join(tmpdir(), 'read-workbook-'));
    try {
      const lines = [
        'Tag,Sensitivity,Checked,Note',
        'VT-1,7.874,2026-03-01,"line\nbreak, µm"',
        'VT-2,-0.5,1999-12-31,12%',
        ',,,',
      ];
      writeFileSync(join(folder, 'channels.csv'), lines.join('\n'));
      const input = join(folder, 'channels.csv');
      // Comma, double quote, UTF-8, from line 1, numbers such as 12% recognised.
      const path = convert(input, 'xlsx', folder, 'Text - txt - csv (StarCalc):44,34,76,1,,0,false,true');
      const book = readWorkbook(path, readFileSync(path));
      const day = (iso: string): DateCell => new DateCell(Date.parse(iso) / 86_400_000);
      expect(book.name).toBe('channels.xlsx');
      expect(book.sheets.map(({ name, hidden }) => [name, hidden])).toEqual([['channels', false]]);
      expect(book.sheets[0]!.rows).toEqual([
        ['Tag', 'Sensitivity', 'Checked', 'Note'],
        ['VT-1', 7.874, day('2026-03-01'), 'line\nbreak, µm'],
        ['VT-2', -0.5, day('1999-12-31'), new PercentCell(12)],
      ]);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
