import { describe, expect, it } from 'vitest';
import type { EditedCell } from '../../../../src/hosts/file/patch/types.ts';
import { partText } from '../write/parts.ts';
import { cellsOf, patched, withRows } from './patched.ts';

const shared =
  '<row r="1" spans="1:3"><c r="A1"><v>1</v></c><c r="B1" s="0"><f t="shared" ref="B1:C3" si="0">A1*$A$1&amp;"&lt;"</f><v>1</v></c><c r="C1"><f t="shared" si="0"/><v>1</v></c></row>' +
  '<row r="2"><c r="A2"><v>2</v></c><c r="B2"><f t="shared" si="0"/><v>2</v></c></row>' +
  '<row r="3" ht="20"/>';

const array =
  '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A3">_xlfn.SEQUENCE(3)</f><v>1</v></c></row><row r="2"><c r="A2"><v>2</v></c></row><row r="3"><c r="A3"><v>3</v></c></row>';

function rowsOf(bytes: Uint8Array): string {
  return /<sheetData>(.*)<\/sheetData>/s.exec(partText(bytes, 'xl/worksheets/sheet1.xml'))?.[1] ?? '';
}

function rowsAfter(rows: string, ...cells: EditedCell[]): string {
  return rowsOf(patched(withRows(rows), 'Channels', cells));
}

describe('shared formulas', () => {
  it('stay as they are while they are only recalculated', () => {
    const copy = rowsAfter(shared, { row: 1, column: 2, value: 9, formula: 'a1*$A$1 & "<"' });
    expect(copy).toBe(shared.replace('&lt;"</f><v>1</v>', '&lt;"</f><v>9</v>'));
  });

  it('are written in full where the one that holds them changes', () => {
    const copy = patched(withRows(shared), 'Channels', [{ row: 1, column: 2, value: 5 }]);
    expect(cellsOf(copy)).toMatchObject({
      B1: { value: 5 },
      C1: { formula: 'B1*$A$1&"<"', value: 1 },
      B2: { formula: 'A2*$A$1&"<"', value: 2 },
    });
    expect(rowsOf(copy)).not.toContain('shared');
  });

  it('are written in full in one that is recalculated at the same time', () => {
    const copy = rowsAfter(
      shared,
      { row: 1, column: 2, value: 5 },
      { row: 2, column: 2, value: 7, formula: 'A2*$A$1&"<"' },
    );
    expect(copy).toContain('<c r="B2"><f>A2*$A$1&amp;&quot;&lt;&quot;</f><v>7</v></c>');
    expect(copy).not.toContain('shared');
  });

  it('go on without one that changes', () => {
    const copy = patched(withRows(shared), 'Channels', [{ row: 2, column: 2, value: 5 }]);
    expect(cellsOf(copy)).toMatchObject({
      B2: { value: 5 },
      B1: { formula: 'A1*$A$1&"<"' },
      C1: { formula: 'B1*$A$1&"<"' },
    });
    expect(rowsOf(copy)).toContain('si="0"/><v>1</v></c>');
  });
});

describe('array formulas', () => {
  it('are refused where a part of them changes', () => {
    for (const edit of [
      { row: 1, column: 1, value: 4 },
      { row: 2, column: 1, value: 4 },
      { row: 1, column: 1, value: 4, formula: 'SEQUENCE(4)' },
    ]) {
      expect(() => rowsAfter(array, edit)).toThrow(
        /Sheet “Channels”, cell A[12] belongs to the array formula in A1, which fills A1:A3/,
      );
    }
    const inTheWay: EditedCell[] = [
      { row: 1, column: 1, value: '#SPILL!', error: true, formula: 'SEQUENCE(3)' },
      { row: 2, column: 1, value: 'typed' },
    ];
    expect(() => rowsAfter(array, ...inTheWay)).toThrow(/can only be changed as a whole/);
  });

  it('take new results, and a new extent', () => {
    const copy = rowsAfter(
      array,
      {
        row: 1,
        column: 1,
        value: 8,
        formula: 'SEQUENCE(3)',
        array: { top: 1, left: 1, bottom: 4, right: 1 },
      },
      { row: 2, column: 1, value: 9 },
      { row: 4, column: 1, value: 10 },
    );
    expect(copy).toContain('<c r="A1" cm="1"><f t="array" ref="A1:A4">_xlfn.SEQUENCE(3)</f><v>8</v></c>');
    expect(copy).toContain('<row r="4"><c r="A4"><v>10</v></c></row>');
  });

  it('are replaced as a whole', () => {
    const copy = rowsAfter(array, ...[1, 2, 3].map((row): EditedCell => ({ row, column: 1, value: null })));
    expect(copy).toBe('<row r="1"><c r="A1"/></row><row r="2"><c r="A2"/></row><row r="3"><c r="A3"/></row>');
  });

  it('may not fill what another one fills', () => {
    const edit = {
      row: 3,
      column: 2,
      value: 1,
      formula: 'X',
      array: { top: 3, left: 1, bottom: 3, right: 2 },
    };
    expect(() => rowsAfter(array, edit)).toThrow(/where another one stands/);
  });
});

describe('other refusals', () => {
  it('data tables', () => {
    const rows =
      '<row r="1"><c r="A1"><f t="dataTable" ref="A1:A2" dt2D="0" dtr="0" r1="C1"/><v>1</v></c></row>';
    expect(() => rowsAfter(rows, { row: 2, column: 1, value: 1 })).toThrow(/data table in A1:A2/);
  });

  it('text and formulas longer than a cell holds, and sheets that are not there', () => {
    expect(() => rowsAfter(shared, { row: 9, column: 2, value: 'x'.repeat(32_768) })).toThrow(
      /cell B9: the text is longer/,
    );
    expect(() => rowsAfter(shared, { row: 9, column: 2, value: 1, formula: '1+'.repeat(5000) })).toThrow(
      /cell B9: the formula is longer/,
    );
    expect(() => patched(withRows(shared), 'Nowhere', [])).toThrow(/no sheet “Nowhere”/);
    expect(() => rowsAfter(shared, { row: 0, column: 2, value: 1 })).toThrow(/row 0/);
  });
});

describe('new cells', () => {
  it('stand in order, with the looks of their row or column', () => {
    const rows = '<row r="2" s="1" customFormat="1" spans="2:2"><c r="B2"><v>2</v></c></row><row r="5"/>';
    const before = '<cols><col min="4" max="4" width="9" style="1"/></cols>';
    const copy = patched(withRows(rows, { before }), 'Channels', [
      { row: 5, column: 4, value: 54 },
      { row: 2, column: 2, value: 22 },
      { row: 2, column: 1, value: 21 },
      { row: 2, column: 3, value: 23 },
      { row: 9, column: 1, value: 91 },
      { row: 1, column: 1, value: 11 },
      { row: 7, column: 1, value: null },
    ]);
    expect(rowsOf(copy)).toBe(
      '<row r="1"><c r="A1"><v>11</v></c></row><row r="2" s="1" customFormat="1"><c r="A2" s="1"><v>21</v></c><c r="B2"><v>22</v></c><c r="C2" s="1"><v>23</v></c></row><row r="5"><c r="D5" s="1"><v>54</v></c></row><row r="9"><c r="A9"><v>91</v></c></row>',
    );
  });

  it('stand in a sheet without rows', () => {
    const copy = rowsAfter('', { row: 3, column: 2, value: true });
    expect(copy).toBe('<row r="3"><c r="B3" t="b"><v>1</v></c></row>');
  });
});
