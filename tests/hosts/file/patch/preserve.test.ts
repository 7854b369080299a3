import { describe, expect, it } from 'vitest';
import type { EditedCell } from '../../../../src/hosts/file/patch/types.ts';
import { openZip } from '../../../../src/hosts/file/zip/archive.ts';
import { defaultLimits } from '../../../../src/hosts/file/zip/limits.ts';
import { everythingParts } from '../../../fixtures/workbooks/everything.ts';
import { zipParts, type Parts } from '../../../fixtures/workbooks/package.ts';
import { prefixed, smallParts, strictParts } from '../../../fixtures/workbooks/small.ts';
import { resultSheet } from '../write/model.ts';
import { partText } from '../write/parts.ts';
import { objections } from '../write/validator.ts';
import { cellsOf, changedParts, patched } from './patched.ts';

const original = zipParts(everythingParts({ macros: true }));
const sheetPart = 'xl/worksheets/sheet1.xml';

const values: readonly EditedCell[] = [
  { row: 2, column: 3, value: 185.5 },
  { row: 2, column: 4, value: 371, formula: 'C2*2' },
  { row: 7, column: 1, value: 5.5, formula: 'TRIPDRIFT.EFFECTIVE(5,200,160)' },
  { row: 3, column: 2, value: 'Pump <1> & "co"' },
];
const formulas: readonly EditedCell[] = [
  ...values,
  { row: 3, column: 4, value: 12 },
  { row: 4, column: 4, value: 3, formula: 'XLOOKUP(1,A:A,B:B)' },
  { row: 4, column: 6, value: true },
  { row: 6, column: 2, value: 6.25, formula: 'TRIPDRIFT.EFFECTIVE(5,200,C3)' },
  { row: 6, column: 1, value: '#N/A', error: true },
  { row: 9, column: 9, value: 'below' },
];

/** A worksheet part without its rows and its extent. */
function around(text: string): string {
  return text.replace(/<sheetData>.*<\/sheetData>/s, '').replace(/<dimension[^>]*>/, '');
}

describe('a patched copy', () => {
  it('changes nothing but the sheet where no formula comes or goes', () => {
    const copy = patched(original, 'Channels', values);
    expect(changedParts(original, copy)).toEqual([sheetPart]);
  });

  it('takes over the packed bytes of all other parts', () => {
    const copy = openZip(patched(original, 'Channels', values), defaultLimits);
    for (const entry of openZip(original, defaultLimits).entries) {
      if (entry.name !== sheetPart) expect(copy.get(entry.name)?.raw).toEqual(entry.raw);
    }
  });

  it('leaves the list of formula cells out where one comes or goes, and nothing leads to it', () => {
    const copy = patched(original, 'Channels', formulas);
    expect(changedParts(original, copy)).toEqual(
      ['[Content_Types].xml', 'xl/_rels/workbook.xml.rels', 'xl/calcChain.xml', sheetPart].sort(),
    );
    expect(partText(copy, '[Content_Types].xml')).not.toContain('calcChain');
    expect(partText(copy, 'xl/_rels/workbook.xml.rels')).not.toContain('calcChain');
  });

  it('leaves all around the rows as it was, and every cell that was not edited', () => {
    const copy = partText(patched(original, 'Channels', formulas), sheetPart);
    const before = partText(original, sheetPart);
    expect(around(copy)).toBe(around(before));
    expect(copy).toContain('<dimension ref="A1:I9"/>');
    const untouched = before
      .match(/<c r="[^"]*"[^>]*>.*?<\/c>/gs)
      ?.filter((cell) => !/"(C2|D2|A7|B3|D3|D4)"/.test(cell));
    expect(untouched?.length).toBeGreaterThan(10);
    for (const cell of untouched ?? []) expect(copy).toContain(cell);
  });

  it('stores our calls and newer functions as spreadsheet programs do', () => {
    const copy = partText(patched(original, 'Channels', formulas), sheetPart);
    expect(copy).toContain('<c r="B6"><f>_xldudf_TRIPDRIFT_EFFECTIVE(5,200,C3)</f><v>6.25</v></c>');
    expect(copy).toContain('<f>_xlfn.XLOOKUP(1,A:A,B:B)</f>');
    expect(copy).toContain('<c r="C2" s="1"><v>185.5</v></c>');
    expect(copy).toContain('<c r="A7"><f>_xldudf_TRIPDRIFT_EFFECTIVE(5,200,160)</f><v>5.5</v></c>');
  });

  it('is read back with the edits in it, and new sheets behind', () => {
    const copy = patched(original, 'Channels', formulas, [resultSheet()]);
    const cells = cellsOf(copy);
    expect(cells['D3']).toEqual({ value: 12, style: 0 });
    expect(cells['B3']?.value).toBe('Pump <1> & "co"');
    expect(cells['A6']).toEqual({ value: '#N/A', error: true, style: 0 });
    expect(cells['I9']?.value).toBe('below');
    expect(Object.keys(cellsOf(copy, 'Audit results')).length).toBeGreaterThan(5);
  });
});

// Source: the schema and semantic checks of the Open XML SDK. Grade: as for added sheets.
describe('the Open XML SDK accepts a patched copy of', () => {
  const edits: readonly EditedCell[] = [
    { row: 1, column: 1, value: 'text' },
    { row: 1, column: 3, value: 2, formula: 'TRIPDRIFT.SHIFT(A1,2)' },
    { row: 3, column: 2, value: 1, formula: 'SORT(A1:A2)', array: { top: 3, left: 2, bottom: 4, right: 2 } },
    { row: 4, column: 2, value: 2 },
  ];
  const sheet = ['xl/worksheets/sheet1.xml'];
  const books: [string, Parts, readonly EditedCell[]][] = [
    ['a workbook with one of nearly everything', everythingParts(), formulas],
    ['a small one', smallParts(), edits],
    ['one without styles', smallParts({ styles: false }), edits],
    ['a strict one', strictParts(), edits],
    ['one with a prefixed sheet', prefixed(smallParts(), sheet), edits],
    [
      'one with a protected structure',
      smallParts({ workbookHead: '<workbookProtection lockStructure="1"/>' }),
      edits,
    ],
  ];

  it.each(books)('%s', (_, parts, cells) => {
    const before = zipParts(parts);
    expect(objections(before)).toEqual([]);
    expect(objections(patched(before, 'Channels', cells))).toEqual([]);
  });

  it('but not one whose list of formula cells was forgotten', () => {
    const { 'xl/calcChain.xml': chain, ...rest } = everythingParts();
    expect(chain).toBeDefined();
    expect(() => {
      const found = objections(zipParts(rest));
      if (found.length > 0) throw new Error(found[0]);
    }).toThrow();
  });
});
