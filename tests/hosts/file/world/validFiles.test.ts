// Dates, times and durations: ECMA-376 part 1, sections 18.17.4 and 18.18.11, and ISO 8601. Grade: standards, cited from memory.
import { describe, expect, it } from 'vitest';
import { type Cell, DateCell } from '../../../../src/cells/cell.ts';
import { patchWorkbook } from '../../../../src/hosts/file/patch/patchWorkbook.ts';
import { readWorkbook } from '../../../../src/hosts/file/read/workbook.ts';
import { viewWorkbook } from '../../../../src/hosts/file/view/viewWorkbook.ts';
import { addSheets } from '../../../../src/hosts/file/write/addSheets.ts';
import { collect } from '../../../../src/hosts/file/zip/collect.ts';
import { FileRefused } from '../../../../src/hosts/file/zip/refused.ts';
import { bookParts, links, oneSheet, type Parts, zip } from '../read/book.ts';
import { resultSheet, sheetOf } from '../write/model.ts';

const rows = (bytes: Uint8Array): readonly (readonly Cell[])[] | undefined =>
  readWorkbook('a.xlsx', bytes).sheets[0]?.rows;
const shown = (bytes: Uint8Array) =>
  viewWorkbook('a.xlsx', bytes).sheets[0]?.rows.map(({ cells }) => cells.map(({ value }) => value));
const row = '<row r="1"><c r="A1"><v>5</v></c></row>';

describe('times of day and durations of strict files', () => {
  const cellOf = (text: string, properties = ''): Uint8Array =>
    oneSheet(`<row r="1"><c r="A1" t="d"><v>${text}</v></c></row>`, { properties });
  // Serial 0.5625 is 13:30 of 1899-12-31 where the 1900 system counts a 29 February 1900.
  const half = new DateCell(0.5625 - 25568);
  it.each<[string, Cell, number]>([
    ['13:30', half, 0.5625],
    ['T13:30:00', half, 0.5625],
    ['13:30:00.000Z', half, 0.5625],
    ['1899-12-30T13:30:00', half, 0.5625],
    ['1899-12-31T13:30:00', half, 0.5625],
    ['1900-01-01', new DateCell(1 - 25568), 1],
    ['24:00:00', new DateCell(1 - 25568), 1],
    ['PT36H', 1.5, 1.5],
    ['P1DT12H0M0.0S', 1.5, 1.5],
    ['P2W', 14, 14],
    ['-PT6H', -0.25, -0.25],
    ['2026-03-01T06:00:00', new DateCell(20513.25), 46082.25],
  ])('%s', (text, cell, serial) => {
    expect(rows(cellOf(text))).toEqual([[cell]]);
    expect(shown(cellOf(text))).toEqual([[serial]]);
  });

  it('count from 1904 where the workbook does', () => {
    expect(shown(cellOf('13:30', 'date1904="1"'))).toEqual([[0.5625]]);
  });

  it.each(['25:00', '13:60', 'P', 'PT', 'P1M', 'P1Y', 'PT1.2.3H', '24:00:01', '13'])('%s is none', (text) => {
    expect(() => rows(cellOf(text))).toThrow(`cell A1 holds “${text}” where a date should be`);
    expect(() => shown(cellOf(text))).toThrow(`cell A1 holds “${text}” where a date should be`);
  });
});

describe('packages of other programs', () => {
  const plain = (): Parts => bookParts({ sheets: [{ name: 'S', data: row }] });
  const added = (bytes: Uint8Array): Uint8Array => addSheets(bytes, [resultSheet()]).bytes;

  it('with a sheet that has no part, as macro modules of the 1990s', () => {
    const parts = plain();
    parts['xl/workbook.xml'] = (parts['xl/workbook.xml'] as string).replace(
      '<sheets>',
      '<sheets><sheet name="Module1" sheetId="9" r:id=""/>',
    );
    expect(readWorkbook('a.xlsx', zip(parts)).sheets.map(({ name }) => name)).toEqual(['S']);
    expect(viewWorkbook('a.xlsx', zip(parts)).sheets.map(({ name }) => name)).toEqual(['S']);
    expect(rows(added(zip(parts)))).toEqual([[5]]);
  });

  it('with backslashes in the names of parts and in links', () => {
    const parts = Object.fromEntries(
      Object.entries(plain()).map(([name, part]) => [name.replaceAll('/', '\\'), part]),
    );
    parts['_rels\\.rels'] = links(['rId1', 'officeDocument', 'xl\\workbook.xml']);
    parts['xl\\_rels\\workbook.xml.rels'] = links(
      ['rId1', 'worksheet', '\\xl\\worksheets\\..\\worksheets\\sheet1.xml'],
      ['rIdStyles', 'styles', 'styles.xml'],
    );
    expect(rows(zip(parts))).toEqual([[5]]);
    expect(shown(zip(parts))).toEqual([[5]]);
    const copy = readWorkbook('a.xlsx', added(zip(parts)));
    expect(copy.sheets.map(({ name }) => name)).toEqual(['S', 'Audit results']);
    const { sink, bytes } = collect();
    patchWorkbook(zip(parts), [{ sheet: 'S', cells: [{ row: 1, column: 1, value: 6 }] }], [], sink);
    expect(rows(bytes())).toEqual([[6]]);
  });

  it('with links from the root, through other folders and with codes for characters', () => {
    const parts = plain();
    parts['xl/work sheets/a%20b.xml'] = parts['xl/worksheets/sheet1.xml'] ?? '';
    for (const target of ['/xl/work sheets/a%20b.xml', '../xl/./work%20sheets/a%20b.xml']) {
      parts['xl/_rels/workbook.xml.rels'] = links(['rId1', 'worksheet', target]);
      if (target.includes('%20s')) parts['xl/work sheets/a b.xml'] = parts['xl/worksheets/sheet1.xml'] ?? '';
      expect(rows(zip(parts))).toEqual([[5]]);
    }
  });

  it('with a link to styles that are not there; new ones are not taken for the ones that cells name', () => {
    const { ['xl/styles.xml']: gone, ...parts } = bookParts({
      sheets: [{ name: 'S', data: '<row r="1"><c r="A1" s="4"><v>0.03</v></c></row>' }],
    });
    expect(gone).toBeDefined();
    expect(rows(zip(parts))).toEqual([[0.03]]);
    expect(shown(zip(parts))).toEqual([[0.03]]);
    const percents = Array.from({ length: 9 }, (_, index) => [
      `p${index}`,
      { numberFormat: `0.${'0'.repeat(index + 1)}%` },
    ]);
    const copy = addSheets(zip(parts), [
      sheetOf('New', [[{ value: 0.5, style: 'p3' }]], { styles: Object.fromEntries(percents) as never }),
    ]).bytes;
    expect(rows(copy)).toEqual([[0.03]]);
    expect(readWorkbook('a.xlsx', copy).sheets[1]?.rows).toEqual([[{ percent: 50 }]]);
  });
});

describe('cells', () => {
  it('stored twice, one of them blank, in any order', () => {
    for (const twice of [
      '<c r="A1" s="1"/><c r="A1"><v>5</v></c>',
      '<c r="A1"><v>5</v></c><c r="A1" s="1"/>',
      '<c r="A1"/><c r="A1"/><c r="A1"><v>5</v></c><c r="A1"/>',
    ]) {
      const bytes = oneSheet(`<row r="1">${twice}<c r="B1"><v>6</v></c></row>`);
      expect(rows(bytes)).toEqual([[5, 6]]);
      expect(shown(bytes)).toEqual([[5, 6]]);
      const { sink, bytes: copy } = collect();
      patchWorkbook(bytes, [{ sheet: 'S', cells: [{ row: 1, column: 1, value: 7 }] }], [], sink);
      expect(rows(copy())).toEqual([[7, 6]]);
    }
  });

  it('that name no style have the first one', () => {
    const styles = '<cellXfs count="1"><xf numFmtId="9"/></cellXfs>';
    expect(rows(oneSheet('<row><c><v>0.03</v></c></row>', { styles }))).toEqual([[{ percent: 3 }]]);
  });

  it('with a text beside the type that says it stands inside, and with nothing but white space', () => {
    const data =
      '<row><c t="inlineStr"><v>a</v></c><c><v> </v></c><c><f>1/1</f><v>\n</v></c><c><v>2</v></c></row>';
    expect(rows(oneSheet(data))).toEqual([['a', null, { code: 'no stored result' }, 2]]);
  });

  it('merged over whole columns and rows', () => {
    const data =
      '<row r="1"><c r="A1"><v>1</v></c></row><row r="3"><c r="B3"><v>3</v></c><c r="C3"><v>4</v></c></row>';
    const merged = (ref: string): Uint8Array =>
      oneSheet(data, { after: `<mergeCells><mergeCell ref="${ref}"/></mergeCells>` });
    expect(rows(merged('A:A'))).toEqual([[1], [1], [1, 3, 4]]);
    expect(rows(merged('3:3'))).toEqual([[1], [], [null, null, null]]);
    expect(rows(merged('$B$3:$C$3'))).toEqual([[1], [], [null, 3, null]]);
    const merges = viewWorkbook('a.xlsx', merged('A:A')).sheets[0]?.merges;
    expect(merges).toEqual([{ top: 1, left: 1, bottom: 1_048_576, right: 1 }]);
    for (const ref of ['A:XFE', '0:1', 'A:1', 'A:B:C', ':', 'A1:B']) {
      expect(() => rows(merged(ref))).toThrow('lies off the sheet');
      expect(() => shown(merged(ref))).toThrow('lies off the sheet');
    }
  });
});

it('is refused by the view as by the reader', () => {
  const after = (merge: string): string => `<mergeCells><mergeCell ref="${merge}"/></mergeCells>`;
  const filled = '<row r="1000000"><c r="B1000000"><v>1</v></c></row>';
  const books = [
    oneSheet('<row r="1"><c r="A1"><v>1</v></c><c r="A1"><v>2</v></c></row>'),
    oneSheet(row, { after: after('A0:B2') }),
    oneSheet(filled, { after: after('A1:A1048576').repeat(100) }),
    oneSheet('<row r="1"><c r="XFD1"><v>1</v></c></row>'.repeat(1300)),
    oneSheet(
      Array.from(
        { length: 1300 },
        (_, at) => `<row r="${at + 1}"><c r="XFD${at + 1}"><v>1</v></c></row>`,
      ).join(''),
    ),
  ];
  const refusalOf = (act: () => unknown): string => {
    try {
      act();
    } catch (error) {
      if (error instanceof FileRefused) return error.message;
      throw error;
    }
    return 'not refused';
  };
  for (const bytes of books) {
    const message = refusalOf(() => rows(bytes));
    expect(message).not.toBe('not refused');
    expect(refusalOf(() => shown(bytes))).toBe(message);
  }
  const parts = bookParts({ sheets: [{ name: 'S', data: row }] });
  parts['xl/theme/theme1.xml'] = '<broken';
  parts['xl/_rels/workbook.xml.rels'] = links(
    ['rId1', 'worksheet', 'worksheets/sheet1.xml'],
    ['rId2', 'theme', 'theme/theme1.xml'],
  );
  expect(shown(zip(parts))).toEqual([[5]]);
});
