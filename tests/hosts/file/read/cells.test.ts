// What each stored cell means: ECMA-376 part 1, sections 18.3.1.4 (c), 18.18.11 (ST_CellType), 22.9.2.19
// (ST_Xstring) and 18.4 (shared strings). Grade: open standard, cited from memory.
import { describe, expect, it } from 'vitest';
import { type Cell, DateCell, ErrorCell } from '../../../../src/cells/cell.ts';
import { readWorkbook } from '../../../../src/hosts/file/read/workbook.ts';
import { type Book, oneSheet } from './book.ts';

function rowsOf(data: string, more: Partial<Book> & { after?: string } = {}): readonly (readonly Cell[])[] {
  return readWorkbook('book.xlsx', oneSheet(data, more)).sheets[0]!.rows;
}

function cell(xml: string, more: Partial<Book> = {}): Cell | undefined {
  return rowsOf(`<row r="1">${xml}</row>`, more)[0]?.[0];
}

describe('values', () => {
  it('keeps numbers in full precision', () => {
    expect(cell('<c r="A1"><v>7.8740157480314963</v></c>')).toBe(7.8740157480314963);
    expect(cell('<c r="A1" t="n"><v>-1.5E-3</v></c>')).toBe(-0.0015);
  });

  it('reads booleans and errors', () => {
    expect(cell('<c r="A1" t="b"><v>1</v></c>')).toBe(true);
    expect(cell('<c r="A1" t="b"><v>0</v></c>')).toBe(false);
    expect(cell('<c r="A1" t="e"><v>#N/A</v></c>')).toEqual(new ErrorCell('#N/A'));
  });

  it('keeps texts that look like numbers', () => {
    expect(cell('<c r="A1" t="inlineStr"><is><t>007</t></is></c>')).toBe('007');
    expect(cell('<c r="A1" t="s"><v>0</v></c>', { strings: '<si><t>007</t></si>' })).toBe('007');
  });

  it('reads the stored result of a formula, and says so where none is stored', () => {
    expect(cell('<c r="A1"><f>1+1</f><v>2</v></c>')).toBe(2);
    expect(cell('<c r="A1" t="str"><f>"a"&amp;"b"</f><v>ab</v></c>')).toBe('ab');
    expect(cell('<c r="A1"><f>1+1</f></c>')).toEqual(new ErrorCell('no stored result'));
    expect(cell('<c r="A1"><f>1+1</f><v></v></c>')).toEqual(new ErrorCell('no stored result'));
    expect(cell('<c r="A1"><f>1+1</f><v/></c>')).toEqual(new ErrorCell('no stored result'));
  });

  it('takes an empty text for an empty cell', () => {
    expect(
      rowsOf('<row r="1"><c r="A1" t="str"><f>""</f><v></v></c><c r="B1"><v>1</v></c></row>')[0],
    ).toEqual([null, 1]);
  });

  it('reads ISO dates', () => {
    expect(cell('<c r="A1" t="d"><v>1970-01-02T12:00:00</v></c>')).toEqual(new DateCell(1.5));
    expect(cell('<c r="A1" t="d"><v>1970-02-01</v></c>')).toEqual(new DateCell(31));
  });
});

describe('texts', () => {
  it('joins formatted runs and leaves the phonetic guide out', () => {
    const si =
      '<si><r><rPr><b/></rPr><t xml:space="preserve">MP-</t></r><r><t>101</t></r><rPh sb="0" eb="1"><t>guide</t></rPh><phoneticPr fontId="0"/></si>';
    expect(cell('<c r="A1" t="s"><v>0</v></c>', { strings: si })).toBe('MP-101');
    expect(cell(`<c r="A1" t="inlineStr"><is>${si.slice(4, -5)}</is></c>`)).toBe('MP-101');
  });

  it('decodes character escapes once', () => {
    expect(cell('<c r="A1" t="inlineStr"><is><t>a_x000D__x000a_b</t></is></c>')).toBe('a\r\nb');
    expect(cell('<c r="A1" t="inlineStr"><is><t>_x005F_x000D_</t></is></c>')).toBe('_x000D_');
    expect(cell('<c r="A1" t="inlineStr"><is><t>size_x12_</t></is></c>')).toBe('size_x12_');
  });

  it('keeps markup, formulas and line breaks as text', () => {
    expect(cell('<c r="A1" t="inlineStr"><is><t>&lt;b&gt;=1+1&#10;µ</t></is></c>')).toBe('<b>=1+1\nµ');
    expect(cell('<c r="A1" t="inlineStr"><is><t><![CDATA[<i>&]]></t></is></c>')).toBe('<i>&');
  });
});

describe('places', () => {
  it('puts cells without an address next to the one before', () => {
    expect(
      rowsOf('<row><c><v>1</v></c><c/><c><v>3</v></c></row><row><c r="B2"><v>4</v></c><c><v>5</v></c></row>'),
    ).toEqual([
      [1, null, 3],
      [null, 4, 5],
    ]);
  });

  it('goes by the addresses of cells where the row has no number', () => {
    expect(rowsOf('<row><c r="A3"><v>1</v></c></row><row><c><v>2</v></c></row>')).toEqual([[], [], [1], [2]]);
  });

  it('sorts rows and cells that come out of order', () => {
    expect(
      rowsOf(
        '<row r="3"><c r="C3"><v>9</v></c><c r="A3"><v>7</v></c></row><row r="1"><c r="B1"><v>2</v></c></row>',
      ),
    ).toEqual([[null, 2], [], [7, null, 9]]);
  });

  it('joins the pieces of a row that is stored in two', () => {
    expect(rowsOf('<row r="1"><c r="A1"><v>1</v></c></row><row r="1"><c r="B1"><v>2</v></c></row>')).toEqual([
      [1, 2],
    ]);
  });

  it('ends rows and sheet at the last filled cell, and shares the empty rows', () => {
    const rows = rowsOf(
      '<row r="1"><c r="A1"><v>1</v></c><c r="XFD1" s="0"/></row><row r="1048575"><c r="A1048575"><v>2</v></c></row><row r="1048576"><c r="A1048576"/></row>',
    );
    expect(rows.length).toBe(1_048_575);
    expect(rows[0]).toEqual([1]);
    expect(new Set(rows).size).toBe(3);
  });
});

describe('merges', () => {
  const merged = (ref: string): string => `<mergeCells count="1"><mergeCell ref="${ref}"/></mergeCells>`;

  it('lets a merge one column wide stand in each of its rows', () => {
    const data =
      '<row r="1"><c r="A1" t="str"><v>Pump</v></c><c r="B1"><v>1</v></c></row><row r="2"><c r="A2"/><c r="B2"><v>2</v></c></row><row r="3"><c r="B3"><v>3</v></c></row>';
    expect(rowsOf(data, { after: merged('A1:A3') })).toEqual([
      ['Pump', 1],
      ['Pump', 2],
      ['Pump', 3],
    ]);
    expect(rowsOf(data, { after: merged('A1:A1048576') }).length).toBe(3);
  });

  it('keeps only the top left cell of any other merge', () => {
    const data =
      '<row r="1"><c r="A1"><v>1</v></c><c r="B1"><v>2</v></c></row><row r="2"><c r="A2"><v>3</v></c><c r="C2"><v>4</v></c></row>';
    expect(rowsOf(data, { after: merged('A1:B2') })).toEqual([
      [1, null],
      [null, null, 4],
    ]);
  });
});
