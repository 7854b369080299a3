import { describe, expect, it } from 'vitest';
import type { SheetView, ViewCell, ViewStyle, WorkbookView } from '../../../../src/hosts/file/view/types.ts';
import { viewWorkbook } from '../../../../src/hosts/file/view/viewWorkbook.ts';
import { everythingParts } from '../../../fixtures/workbooks/everything.ts';
import { zipParts } from '../../../fixtures/workbooks/package.ts';
import { smallParts } from '../../../fixtures/workbooks/small.ts';
import { styledWorkbook } from './styled.ts';

const view = viewWorkbook('C:\\folder\\styled.xlsx', styledWorkbook());
const looks = sheetOf(view, 'Looks');

function sheetOf(book: WorkbookView, name: string): SheetView {
  const sheet = book.sheets.find((candidate) => candidate.name === name);
  if (sheet === undefined) throw new Error(`no sheet ${name}`);
  return sheet;
}

function cellOf(sheet: SheetView, row: number, column: number): ViewCell | undefined {
  return sheet.rows.find((candidate) => candidate.row === row)?.cells.find((cell) => cell.column === column);
}

function styleOf(row: number, column: number): ViewStyle | undefined {
  return view.styles[cellOf(looks, row, column)?.style ?? -1];
}

describe('a workbook as a grid shows it', () => {
  it('has values as they are stored', () => {
    expect(looks.rows[0]?.cells.map(({ column, value, error }) => [column, value, error])).toEqual([
      [1, 1.5, undefined],
      [2, 'struck', undefined],
      [3, true, undefined],
      [4, '#N/A', true],
      [6, 0.25, undefined],
    ]);
  });

  it('has looks', () => {
    expect(styleOf(1, 1)).toMatchObject({
      numberFormat: '0.0" mV"',
      bold: true,
      italic: true,
      underline: true,
      size: 14,
      font: 'Arial',
    });
    expect(styleOf(1, 2)).toEqual({
      numberFormat: 'General',
      font: 'Arial',
      size: 10,
      strike: true,
      color: 'FF0000',
    });
    expect(styleOf(1, 3)).toMatchObject({ align: 'center', valign: 'top', wrap: true });
    expect(styleOf(1, 4)).toMatchObject({ align: 'right', valign: 'center' });
    expect(styleOf(1, 6)?.numberFormat).toBe('0.00%');
    expect(styleOf(2, 1)).toEqual({ numberFormat: 'General', font: 'Arial', size: 10, color: '000000' });
  });

  it('has tints as spreadsheet programs show them', () => {
    // "Blue, accent 1" 80 % and 40 % lighter, 25 % darker; "green, accent 6" 50 % darker; white 15 % darker: palette
    // values, from memory; programs that count in 240 steps of lightness differ by up to 3 in a channel.
    const palette = ['D9E1F2', '8EA9DB', '305496', '375623', 'D9D9D9'];
    palette.forEach((expected, index) => {
      const fill = styleOf(8, index + 1)?.fill ?? '';
      for (const at of [0, 2, 4]) {
        const [ours, theirs] = [fill, expected].map((rgb) => parseInt(rgb.slice(at, at + 2), 16));
        expect(Math.abs((ours ?? NaN) - (theirs ?? NaN)), `${fill} for ${expected}`).toBeLessThanOrEqual(3);
      }
    });
    expect([6, 7, 8, 9].map((column) => styleOf(8, column)?.fill)).toEqual([
      'ED7D31',
      '44546A',
      '123456',
      'FFFF00',
    ]);
  });

  it('has rows, columns, merges and frozen panes', () => {
    // A width of 20.7109375 is 20 digits and padding: 145 pixels (the example of ECMA-376 part 1, 18.3.1.13, worked by hand).
    expect(looks.columns).toEqual([
      { first: 2, last: 3, width: 145 },
      { first: 5, last: 5, width: 64, hidden: true },
    ]);
    expect(looks.rows.find(({ row }) => row === 2)?.height).toBe(30);
    expect(looks.rows.find(({ row }) => row === 3)?.hidden).toBe(true);
    expect(looks.merges).toEqual([{ top: 2, left: 4, bottom: 3, right: 5 }]);
    expect(looks.frozen).toEqual({ rows: 2, columns: 1 });
    expect(looks.defaultColumnWidth).toBe(64);
  });

  it('has formulas in full', () => {
    expect(cellOf(looks, 4, 3)?.formula).toBe('$A4*2+B$8&"A1"');
    expect(cellOf(looks, 6, 1)).toMatchObject({
      formula: 'A2:B2*1',
      array: { top: 6, left: 1, bottom: 6, right: 2 },
    });
    expect(cellOf(looks, 6, 2)?.formula).toBeUndefined();
  });

  it('has names and the sheet in front', () => {
    expect(view.names).toEqual([
      { name: 'Limit', refersTo: 'Looks!$A$2' },
      { name: 'Own', sheet: 'Front', refersTo: 'TRIPDRIFT.SHIFT(Looks!$A$2,2)' },
    ]);
    expect(view.activeSheet).toBe(1);
    expect(view.name).toBe('styled.xlsx');
  });

  it('passes over chart sheets and hidden sheets in front', () => {
    const everything = viewWorkbook('all.xlsm', zipParts(everythingParts({ macros: true })));
    expect(everything.sheets.map(({ name, hidden }) => [name, hidden])).toEqual([
      ['Channels', false],
      ['Pivot & more', true],
    ]);
    expect(cellOf(sheetOf(everything, 'Channels'), 7, 1)).toMatchObject({
      formula: 'TRIPDRIFT.EFFECTIVE(5,200,160)',
      value: 6.25,
    });
    expect(sheetOf(everything, 'Channels').rules).toEqual([
      {
        kind: 'cellIs',
        areas: [{ top: 2, left: 3, bottom: 5, right: 3 }],
        operator: 'lessThan',
        formulas: ['180'],
        shade: { color: '9C0006' },
        stops: false,
      },
    ]);
    expect(sheetOf(everything, 'Channels').tables.map(({ name }) => name)).toEqual(['ChannelTable']);
  });

  it('has the rules that a comparison, a stored formula or a count decides, in the order in which they apply', () => {
    const rule = (type: string, priority: number, inner: string): string =>
      `<cfRule type="${type}" dxfId="0" priority="${priority}">${inner}</cfRule>`;
    const rules = [
      rule('beginsWith', 3, '<formula>LEFT(A1,1)="P"</formula>'),
      rule('uniqueValues', 2, ''),
      rule('duplicateValues', 1, ''),
      rule('colorScale', 4, '<colorScale/>'),
      rule('constructor', 5, '<formula>1</formula>'),
      rule('cellIs', 6, ''),
    ].join('');
    const parts = smallParts();
    const name = 'xl/worksheets/sheet1.xml';
    parts[name] = String(parts[name]).replace(
      '</sheetData>',
      `</sheetData><conditionalFormatting sqref="A1:A4 C1">${rules}</conditionalFormatting>`,
    );
    parts['xl/styles.xml'] = String(parts['xl/styles.xml']).replace(
      '</styleSheet>',
      '<dxfs count="1"><dxf><font><b/></font></dxf></dxfs></styleSheet>',
    );
    const [sheet] = viewWorkbook('x.xlsx', zipParts(parts)).sheets;
    const areas = [
      { top: 1, left: 1, bottom: 4, right: 1 },
      { top: 1, left: 3, bottom: 1, right: 3 },
    ];
    const told = { areas, shade: { bold: true }, stops: false };
    expect(sheet?.rules).toEqual([
      { kind: 'duplicate', formulas: [], ...told },
      { kind: 'unique', formulas: [], ...told },
      { kind: 'expression', formulas: ['LEFT(A1,1)="P"'], ...told },
    ]);
  });

  it('keeps hostile text as text', () => {
    const text = '&lt;img src=x onerror=alert(1)&gt;_x000D_=1+1';
    const rows = `<row r="1"><c r="A1" t="inlineStr"><is><t>${text}</t></is></c><c r="B1" s="99"><f>1+</f></c></row>`;
    const parts = smallParts();
    const name = 'xl/worksheets/sheet1.xml';
    parts[name] = String(parts[name]).replace(/<row.*<\/row>/, rows);
    const [sheet] = viewWorkbook('x.xlsx', zipParts(parts)).sheets;
    expect(sheet?.rows[0]?.cells).toEqual([
      { column: 1, value: '<img src=x onerror=alert(1)>\r=1+1', style: 0 },
      { column: 2, value: null, uncalculated: true, formula: '1+', style: 0 },
    ]);
  });

  it('has the links that lead to its cells, and no others', () => {
    const sheet = `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData/><hyperlinks>
      <hyperlink ref="B2" location="'Shaft''s &quot;A&quot;'!$C$7" display="7"/>
      <hyperlink ref="A3:B4" location="Plain!D9:E10"/>
      <hyperlink ref="A5" location="SomeName"/><hyperlink ref="A6"/><hyperlink ref="XFE1" location="Plain!A1"/>
      </hyperlinks></worksheet>`;
    const bytes = zipParts({ ...smallParts(), 'xl/worksheets/sheet1.xml': sheet });
    const [shown] = viewWorkbook('links.xlsx', bytes).sheets;
    expect(shown!.links).toEqual([
      { area: { top: 2, left: 2, bottom: 2, right: 2 }, to: { sheet: 'Shaft\'s "A"', row: 7, column: 3 } },
      { area: { top: 3, left: 1, bottom: 4, right: 2 }, to: { sheet: 'Plain', row: 9, column: 4 } },
    ]);
  });
});
