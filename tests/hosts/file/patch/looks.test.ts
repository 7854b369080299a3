import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, describe, expect, it } from 'vitest';
import { patchWorkbook } from '../../../../src/hosts/file/patch/patchWorkbook.ts';
import type { StyleChange, SheetEdits } from '../../../../src/hosts/file/patch/types.ts';
import { viewWorkbook } from '../../../../src/hosts/file/view/viewWorkbook.ts';
import { collect } from '../../../../src/hosts/file/zip/collect.ts';
import { FileRefused } from '../../../../src/hosts/file/zip/refused.ts';
import { everythingParts } from '../../../fixtures/workbooks/everything.ts';
import { zipParts } from '../../../fixtures/workbooks/package.ts';
import { prefixed, smallParts, strictParts } from '../../../fixtures/workbooks/small.ts';
import { convert, describeWithLibreOffice } from '../../../libreoffice.ts';
import { resultSheet } from '../write/model.ts';
import { partText } from '../write/parts.ts';
import { objections } from '../write/validator.ts';
import { changedParts } from './patched.ts';

const original = zipParts(everythingParts());
const sheetPart = 'xl/worksheets/sheet1.xml';
const stylesPart = 'xl/styles.xml';

function copy(
  edits: Omit<SheetEdits, 'sheet' | 'cells'> & Partial<SheetEdits>,
  bytes = original,
  sheets = [] as Parameters<typeof patchWorkbook>[2],
): { bytes: Uint8Array; notes: readonly string[] } {
  const collected = collect();
  const { notes } = patchWorkbook(
    bytes,
    [{ sheet: 'Channels', cells: [], ...edits }],
    sheets,
    collected.sink,
  );
  return { bytes: collected.bytes(), notes };
}

const look = (row: number, column: number, change: StyleChange) => ({ row, column, change });

/** How a cell looks, by the reader of looks, which is held to LibreOffice by tests of its own. */
function looks(bytes: Uint8Array, row: number, column: number): unknown {
  const { sheets, styles } = viewWorkbook('x.xlsx', bytes);
  const cell = sheets[0]?.rows.find((one) => one.row === row)?.cells.find((one) => one.column === column);
  return cell && styles[cell.style];
}

const allChanged: StyleChange = {
  numberFormat: '0.000',
  font: 'Georgia',
  size: 14,
  bold: true,
  italic: true,
  underline: true,
  strike: true,
  color: '112233',
  fill: 'FFEE00',
  align: 'right',
  valign: 'top',
  wrap: true,
};

describe('changed looks of cells', () => {
  it('make a style from the cell’s own one and the change', () => {
    const { bytes } = copy({ looks: [look(2, 3, { fill: 'FFEE00', wrap: true })] });
    // The cell had style 1 of the file: bold Arial of 10 points in a format of the file’s own.
    expect(looks(bytes, 2, 3)).toEqual({
      numberFormat: '0.0" mV"',
      font: 'Arial',
      size: 10,
      bold: true,
      fill: 'FFEE00',
      wrap: true,
    });
    expect(looks(bytes, 3, 3)).toEqual(looks(original, 3, 3));
  });

  it('hold for every property, and are taken back', () => {
    const first = copy({ looks: [look(2, 1, allChanged)] }).bytes;
    expect(looks(first, 2, 1)).toEqual(allChanged);
    const plain: StyleChange = {
      numberFormat: 'General',
      font: 'Arial',
      size: 10,
      bold: false,
      italic: false,
      underline: false,
      strike: false,
      color: null,
      fill: null,
      align: null,
      valign: 'bottom',
      wrap: false,
    };
    const second = copy({ looks: [look(2, 1, plain)] }, first).bytes;
    expect(looks(second, 2, 1)).toEqual({ numberFormat: 'General', font: 'Arial', size: 10 });
  });

  it('leave what the cell holds, its element’s place and all other parts as they were', () => {
    const { bytes } = copy({ looks: [look(2, 3, { bold: false })] });
    expect(changedParts(original, bytes)).toEqual([stylesPart, sheetPart].sort());
    const [before, after] = [partText(original, sheetPart), partText(bytes, sheetPart)];
    expect(after).toBe(before.replace('<c r="C2" s="1">', '<c r="C2" s="2">'));
    const [styles, added] = [partText(original, stylesPart), partText(bytes, stylesPart)];
    expect(added).toContain('<cellXfs count="3">');
    // Taking out what was added leaves the style sheet as it was.
    const back = added
      .replace(/<font>(?:(?!<\/font>).)*<\/font><\/fonts>/, '</fonts>')
      .replace(/<xf [^>]*\/><\/cellXfs>/, '</cellXfs>')
      .replace('<fonts count="3"', '<fonts count="2"')
      .replace('<cellXfs count="3"', '<cellXfs count="2"');
    expect(back).toBe(styles);
  });

  it('go with a new value, a blank cell, a row the file has not, and take a style of the file', () => {
    const { bytes } = copy({
      cells: [{ row: 2, column: 3, value: 7 }],
      looks: [
        look(2, 3, { italic: true }),
        look(2, 9, { bold: true }),
        look(40, 2, { fill: '00FF00' }),
        { row: 3, column: 1, style: 1 },
      ],
    });
    expect(looks(bytes, 2, 3)).toMatchObject({ bold: true, italic: true, numberFormat: '0.0" mV"' });
    expect(looks(bytes, 2, 9)).toMatchObject({ bold: true, font: 'Arial' });
    expect(looks(bytes, 40, 2)).toMatchObject({ fill: '00FF00' });
    expect(looks(bytes, 3, 1)).toEqual(looks(original, 2, 3));
    expect(partText(bytes, sheetPart)).toContain('<dimension ref="A1:I40"/>');
    expect(objections(bytes)).toEqual([]);
  });

  it('make one style for all cells that become alike', () => {
    const { bytes } = copy({ looks: [2, 3, 4].map((row) => look(row, 3, { color: 'FF0000' })) });
    expect(partText(bytes, stylesPart)).toContain('<cellXfs count="3">');
  });

  it('stand beside new sheets and their looks', () => {
    const { bytes } = copy({ looks: [look(2, 3, { fill: 'FFEE00' })] }, original, [resultSheet()]);
    expect(looks(bytes, 2, 3)).toMatchObject({ fill: 'FFEE00', bold: true });
    expect(objections(bytes)).toEqual([]);
  });

  it('are said where the file has no place for them', () => {
    const plain = zipParts(smallParts({ styles: false }));
    const { bytes, notes } = copy({ looks: [look(1, 1, { bold: true })] }, plain);
    expect(changedParts(plain, bytes)).toEqual([]);
    expect(notes.join()).toContain('not in the copy');
  });
});

describe('changed widths, heights and merged cells', () => {
  const frame = {
    columns: [{ first: 2, last: 3, width: 20.5, hidden: false }],
    rows: [
      { row: 2, height: 33 },
      { row: 30, height: 12.75, hidden: true },
    ],
    merges: [{ top: 8, left: 1, bottom: 9, right: 3 }],
  };

  it('are read back', () => {
    const { bytes } = copy(frame);
    const [sheet] = viewWorkbook('x.xlsx', bytes).sheets;
    // 20.5 digits of seven pixels are 143 (ECMA-376 part 1, section 18.3.1.13).
    expect(sheet?.columns).toEqual([{ first: 2, last: 3, width: 143 }]);
    expect(sheet?.rows.find(({ row }) => row === 2)?.height).toBe(33);
    expect(sheet?.rows.find(({ row }) => row === 30)).toEqual({
      row: 30,
      height: 12.75,
      hidden: true,
      cells: [],
    });
    expect(sheet?.merges).toEqual(frame.merges);
    expect(changedParts(original, bytes)).toEqual([sheetPart]);
    expect(objections(bytes)).toEqual([]);
  });

  it('cut a run of columns where some of it changes, and keep what else it says', () => {
    const parts = smallParts();
    parts[sheetPart] = String(parts[sheetPart]).replace(
      '<sheetData>',
      '<cols><col min="1" max="5" width="9" style="1" customWidth="1" outlineLevel="1"/></cols><sheetData>',
    );
    const { bytes } = copy({ columns: [{ first: 2, last: 7, width: 30, hidden: true }] }, zipParts(parts));
    const columns = [...partText(bytes, sheetPart).matchAll(/<col (.*?)\/>/g)].map(([, found]) => found);
    expect(columns).toEqual([
      'min="1" max="1" width="9" style="1" customWidth="1" outlineLevel="1"',
      'min="2" max="5" style="1" outlineLevel="1" width="30" customWidth="1" hidden="1"',
      'min="6" max="7" width="30" customWidth="1" hidden="1"',
    ]);
  });

  it('lose merged cells that are none any more, with their list', () => {
    const merged = copy(frame).bytes;
    const { bytes } = copy({ merges: [] }, merged);
    expect(partText(bytes, sheetPart)).not.toContain('mergeCell');
  });

  it('are refused where merged cells reach into a table', () => {
    const inTable = { merges: [{ top: 2, left: 1, bottom: 3, right: 1 }] };
    expect(() => copy(inTable)).toThrow(FileRefused);
    expect(() => copy(inTable)).toThrow(/“Channels”.*A2:A3.*“ChannelTable”.*Unmerge/);
  });
});

// Source: the schema and semantic checks of the Open XML SDK. Grade: as for added sheets.
describe('the Open XML SDK accepts changed looks of', () => {
  it.each([
    ['a small workbook', smallParts()],
    ['a strict one', strictParts()],
    ['one with prefixed elements', prefixed(smallParts(), [sheetPart, stylesPart])],
  ])('%s', (_, parts) => {
    const before = zipParts(parts);
    expect(objections(before)).toEqual([]);
    const { bytes } = copy(
      {
        looks: [look(1, 1, allChanged), look(50, 3, { bold: true, align: 'center' })],
        columns: [{ first: 1, last: 2, width: 30, hidden: false }],
        rows: [{ row: 1, height: 40 }],
        merges: [{ top: 60, left: 1, bottom: 61, right: 2 }],
      },
      before,
    );
    expect(objections(bytes)).toEqual([]);
    expect(looks(bytes, 1, 1)).toEqual(allChanged);
  });
});

describeWithLibreOffice('changed looks in LibreOffice', () => {
  const folder = mkdtempSync(join(tmpdir(), 'looks-'));
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  it('are there', () => {
    const { bytes } = copy({
      looks: [look(2, 3, { fill: 'FFEE00', italic: true, color: '0000FF', numberFormat: '0.000' })],
      rows: [{ row: 2, height: 33 }],
      merges: [{ top: 8, left: 1, bottom: 9, right: 3 }],
    });
    const path = join(folder, 'looks.xlsx');
    writeFileSync(path, bytes);
    const through = readFileSync(convert(path, 'xlsx', join(folder, 'out')));
    expect(looks(through, 2, 3)).toMatchObject({
      numberFormat: '0.000',
      bold: true,
      italic: true,
      color: '0000FF',
      fill: 'FFEE00',
    });
    const [sheet] = viewWorkbook('x.xlsx', through).sheets;
    expect(sheet?.merges).toEqual([{ top: 8, left: 1, bottom: 9, right: 3 }]);
    expect(sheet?.rows.find(({ row }) => row === 2)?.height).toBeCloseTo(33, 0);
    expect(strFromU8(unzipSync(through)['xl/workbook.xml']!)).toContain('Channels');
  });
});
