// Number formats: ECMA-376 part 1, sections 18.8.30 and 18.8.31. Grade: published standard, cited from memory.
import { describe, expect, it } from 'vitest';
import { type Cell, DateCell, PercentCell } from '../../../../src/cells/cell.ts';
import { patchWorkbook } from '../../../../src/hosts/file/patch/patchWorkbook.ts';
import { readWorkbook } from '../../../../src/hosts/file/read/workbook.ts';
import { viewWorkbook } from '../../../../src/hosts/file/view/viewWorkbook.ts';
import { addSheets } from '../../../../src/hosts/file/write/addSheets.ts';
import { collect } from '../../../../src/hosts/file/zip/collect.ts';
import { bookParts, zip } from '../read/book.ts';
import { sheetOf } from '../write/model.ts';

/** A workbook that gives format ids codes of its own; its cell styles have `used`, the first one that of plain cells. */
function book(formats: Readonly<Record<number, string>>, used: readonly number[]): Uint8Array {
  const entries = Object.entries(formats).map(
    ([id, code]) => `<numFmt numFmtId="${id}" formatCode="${code}"/>`,
  );
  const styles = [
    `<numFmts count="${entries.length}">${entries.join('')}</numFmts><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders>`,
    `<cellXfs count="${used.length}">${used.map((id) => `<xf numFmtId="${id}" fontId="0" fillId="0" borderId="0"/>`).join('')}</cellXfs>`,
  ].join('');
  const cells = used.map((_, index) => `<c s="${index}"><v>0.03</v></c>`);
  return zip(bookParts({ sheets: [{ name: 'S', data: `<row r="1">${cells.join('')}</row>` }], styles }));
}

const row = (bytes: Uint8Array, sheet = 0): readonly Cell[] | undefined =>
  readWorkbook('a.xlsx', bytes).sheets[sheet]?.rows[0];

const codes = [
  'General',
  '0',
  '0.00',
  '#,##0',
  '#,##0.00',
  '0%',
  '0.00%',
  '0.00E+00',
  '@',
  '0.0%',
  undefined,
];
const added = sheetOf(
  'New',
  [codes.map((_, index) => ({ value: 0.5, style: `s${index}` })).concat([{ value: 0.5, style: '' }])],
  {
    styles: Object.fromEntries(
      codes.map((numberFormat, index) => [`s${index}`, numberFormat === undefined ? {} : { numberFormat }]),
    ),
  },
);
const half = codes.map((code): Cell => (code?.includes('%') ? new PercentCell(50) : 0.5)).concat(0.5);

describe('built-in formats that a file gives codes of its own', () => {
  const own = {
    0: '0%',
    1: '0.00%',
    2: 'yyyy\\-mm\\-dd',
    4: '0%',
    9: '0.0',
    10: '0',
    49: '0%',
    163: '0.00%',
  };
  const used = [2, 9, 10, 163, 0];

  it('are read as the file has them', () => {
    const read = [new DateCell(0.03 - 25568), 0.03, 0.03, new PercentCell(3), new PercentCell(3)];
    expect(row(book(own, used))).toEqual(read);
    const { styles } = viewWorkbook('a.xlsx', book(own, used));
    expect(styles.map(({ numberFormat }) => numberFormat)).toEqual([
      'yyyy\\-mm\\-dd',
      '0.0',
      '0',
      '0.00%',
      '0%',
    ]);
  });

  it.each([
    ['a date', 2],
    ['a percentage', 0],
    ['a plain number', 9],
    ['as they are', 3],
  ])('are not used by sheets that are added, where plain cells show %s', (_, first) => {
    const bytes = book(own, [first, ...used]);
    const copy = addSheets(bytes, [added]).bytes;
    expect(row(copy, 1)).toEqual(half);
    expect(row(copy)).toEqual(row(bytes));
    const view = viewWorkbook('a.xlsx', copy);
    const shown = view.sheets[1]?.rows[0]?.cells.map(({ style }) => view.styles[style]?.numberFormat);
    expect(shown).toEqual([...codes.slice(0, -1), 'General', 'General']);
  });

  it('are not used for looks that are changed', () => {
    const { sink, bytes } = collect();
    const looks = [
      { row: 1, column: 1, change: { numberFormat: '0%' } },
      { row: 1, column: 2, change: { numberFormat: '0.00' } },
      { row: 1, column: 3, change: { numberFormat: '0.00%' } },
    ];
    patchWorkbook(
      book({ 2: '0.0%', 9: '0.00', 10: '0.0' }, [0, 0, 0]),
      [{ sheet: 'S', cells: [], looks }],
      [],
      sink,
    );
    expect(row(bytes())).toEqual([new PercentCell(3), 0.03, new PercentCell(3)]);
    const { styles, sheets } = viewWorkbook('a.xlsx', bytes());
    const shown = sheets[0]?.rows[0]?.cells.map(({ style }) => styles[style]?.numberFormat);
    expect(shown).toEqual(['0%', '0.00', '0.00%']);
  });

  it('leave a free id to a new code, however great those of the file are', () => {
    const copy = addSheets(book({ 164: '0.000', 4294967295: '0.0000' }, [0]), [added]).bytes;
    expect(row(copy, 1)).toEqual(half);
  });
});
