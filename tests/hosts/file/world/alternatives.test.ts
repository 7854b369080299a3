// Markup compatibility: ECMA-376 part 3, section 9. Grade: published standard, cited from memory.
import { describe, expect, it } from 'vitest';
import { PercentCell } from '../../../../src/cells/cell.ts';
import { patchWorkbook } from '../../../../src/hosts/file/patch/patchWorkbook.ts';
import { readWorkbook } from '../../../../src/hosts/file/read/workbook.ts';
import { viewWorkbook } from '../../../../src/hosts/file/view/viewWorkbook.ts';
import { addSheets } from '../../../../src/hosts/file/write/addSheets.ts';
import { collect } from '../../../../src/hosts/file/zip/collect.ts';
import { bookParts, zip } from '../read/book.ts';
import { resultSheet } from '../write/model.ts';
import { partText } from '../write/parts.ts';

const mc = 'xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006"';
const own = 'xmlns:own="urn:office-suite:spreadsheet:8"';
const x14 = 'xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main"';

/** A foreign choice and its fallback, in place of one element. */
const foreign = (choice: string, fallback: string): string =>
  `<mc:AlternateContent ${mc}><mc:Choice Requires="own" ${own}>${choice}</mc:Choice><mc:Fallback>${fallback}</mc:Fallback></mc:AlternateContent>`;
const font = '<font><sz val="11"/><name val="Calibri"/></font>';
const format = (numFmtId: number, fontId = 0): string =>
  `<xf numFmtId="${numFmtId}" fontId="${fontId}" fillId="0" borderId="0" xfId="0"/>`;
const styles = [
  `<fonts count="2">${foreign(`${font}<own:mark/>`, font)}<font><b/><sz val="11"/><name val="Calibri"/></font></fonts>`,
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>',
  '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>',
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>',
  `<cellXfs count="3">${format(0)}${foreign(format(2), format(2))}${format(10, 1)}</cellXfs>`,
  '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>',
].join('');
const data = '<row r="1"><c r="A1" s="2"><v>0.03</v></c><c r="B1" s="1"><v>0.03</v></c></row>';
const book = (): Uint8Array => zip(bookParts({ sheets: [{ name: 'S', data }], styles }));
const read = (bytes: Uint8Array) => readWorkbook('a.xlsx', bytes).sheets[0]?.rows[0];

describe('alternatives inside fonts and cell formats', () => {
  it('count as the one entry that stands for them: 3 % is 3 %', () => {
    expect(read(book())).toEqual([new PercentCell(3), 0.03]);
    const view = viewWorkbook('a.xlsx', book());
    const [first, second] = view.sheets[0]?.rows[0]?.cells ?? [];
    expect(view.styles[first?.style ?? -1]).toMatchObject({ numberFormat: '0.00%', bold: true });
    expect(view.styles[second?.style ?? -1]).toMatchObject({ numberFormat: '0.00' });
  });

  it('are counted alike where sheets and looks are added, and stay', () => {
    const copy = addSheets(book(), [resultSheet()]).bytes;
    expect(read(copy)).toEqual([new PercentCell(3), 0.03]);
    const fresh = addSheets(zip(bookParts({ sheets: [{ name: 'S', data }] })), [resultSheet()]).bytes;
    expect(readWorkbook('a.xlsx', copy).sheets[1]?.rows).toEqual(
      readWorkbook('a.xlsx', fresh).sheets[1]?.rows,
    );
    expect(partText(copy, 'xl/styles.xml')).toContain('<own:mark/>');

    const { sink, bytes } = collect();
    const looks = [{ row: 1, column: 1, change: { italic: true } }];
    patchWorkbook(book(), [{ sheet: 'S', cells: [], looks }], [], sink);
    expect(read(bytes())).toEqual([new PercentCell(3), 0.03]);
    const view = viewWorkbook('a.xlsx', bytes());
    const style = view.styles[view.sheets[0]?.rows[0]?.cells[0]?.style ?? -1];
    expect(style).toMatchObject({ numberFormat: '0.00%', bold: true, italic: true });
  });
});

describe('alternatives', () => {
  const cell = (value: number): string => `<c r="A1"><v>${value}</v></c>`;
  const inRow = (alternatives: string): Uint8Array =>
    zip(bookParts({ sheets: [{ name: 'S', data: `<row r="1">${alternatives}</row>` }] }));
  const choice = (requires: string, declared: string, inside: string): string =>
    `<mc:Choice Requires="${requires}" ${declared}>${inside}</mc:Choice>`;
  const wrapped = (inside: string): string => `<mc:AlternateContent ${mc}>${inside}</mc:AlternateContent>`;
  const fallback = `<mc:Fallback>${cell(9)}</mc:Fallback>`;

  it.each([
    ['an understood choice', wrapped(choice('x14', x14, cell(1)) + fallback), 1],
    ['the first of two', wrapped(choice('x14', x14, cell(1)) + choice('x14', x14, cell(2)) + fallback), 1],
    ['not one that needs more', wrapped(choice('x14 own', `${x14} ${own}`, cell(1)) + fallback), 9],
    [
      'not one of a prefix that means something else',
      wrapped(choice('x14', 'xmlns:x14="urn:x"', cell(1)) + fallback),
      9,
    ],
    ['not one that needs nothing said', wrapped(choice('', x14, cell(1)) + fallback), 9],
    [
      'one within another',
      wrapped(
        choice('x14', x14, wrapped(choice('own', own, cell(1)) + `<mc:Fallback>${cell(5)}</mc:Fallback>`)) +
          fallback,
      ),
      5,
    ],
  ])('of cells: %s', (_, markup, value) => {
    expect(read(inRow(markup))).toEqual([value]);
    expect(viewWorkbook('a.xlsx', inRow(markup)).sheets[0]?.rows[0]?.cells).toMatchObject([{ value }]);
  });

  it('of cells without a fallback, none of which is understood, are nothing', () => {
    expect(read(inRow(wrapped(choice('own', own, cell(1)))))).toBeUndefined();
  });

  it('of shared texts, sheets and merged areas', () => {
    const parts = bookParts({
      sheets: [
        {
          name: 'S',
          data: '<row r="1"><c r="A1" t="s"><v>1</v></c></row><row r="2"><c r="B2"><v>5</v></c></row>',
          after: foreign(
            '<mergeCells><mergeCell ref="A1:B9"/></mergeCells>',
            '<mergeCells><mergeCell ref="A1:A2"/></mergeCells>',
          ),
        },
      ],
      strings: `${foreign('<si><t>a</t></si><si><t>b</t></si>', '<si><t>c</t></si>')}<si><t>d</t></si>`,
    });
    const text = parts['xl/workbook.xml'] as string;
    const [sheet = ''] = /<sheet [^>]*>/.exec(text) ?? [];
    parts['xl/workbook.xml'] = text.replace(sheet, foreign(sheet.replace('"S"', '"T"'), sheet));
    const { sheets } = readWorkbook('a.xlsx', zip(parts));
    expect(sheets.map(({ name, rows }) => [name, rows])).toEqual([['S', [['d'], ['d', 5]]]]);
    expect(viewWorkbook('a.xlsx', zip(parts)).sheets.map(({ name }) => name)).toEqual(['S']);
    const copy = addSheets(zip(parts), [resultSheet()]).bytes;
    expect(readWorkbook('a.xlsx', copy).sheets.map(({ name }) => name)).toEqual(['S', 'Audit results']);
  });

  it('of rows are not changed, which would hold in some programs only', () => {
    const edit = { sheet: 'S', cells: [{ row: 1, column: 1, value: 7 }] };
    const bytes = inRow(foreign(cell(1), cell(2)));
    expect(() => patchWorkbook(bytes, [edit], [], () => undefined)).toThrow(/Sheet “S”.*two versions/);
  });

  it('and elements of other namespaces are not taken for the format’s own', () => {
    const row = `<own:c ${own} r="A1"><v>7</v></own:c><c r="B1"><v>8</v></c>`;
    expect(read(inRow(row))).toEqual([null, 8]);
  });
});
