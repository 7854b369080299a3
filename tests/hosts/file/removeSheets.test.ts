import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { referencesTo } from '../../../src/hosts/file/remove/references.ts';
import { removeSheets, sheetsWithMore } from '../../../src/hosts/file/remove/removeSheets.ts';
import { readWorkbook } from '../../../src/hosts/file/read/workbook.ts';
import { addSheets } from '../../../src/hosts/file/write/addSheets.ts';
import type { SheetModel } from '../../../src/sheets/model.ts';
import { everythingParts } from '../../fixtures/workbooks/everything.ts';
import { zipParts } from '../../fixtures/workbooks/package.ts';
import { prefixed, smallParts, strictParts } from '../../fixtures/workbooks/small.ts';
import { chartedSheets } from './write/chartedModel.ts';
import { resultSheet, sheetOf } from './write/model.ts';
import { partText } from './write/parts.ts';
import { objections } from './write/validator.ts';

const charts = chartedSheets().map(({ name }) => name);
const names = ['Audit results', 'Audit list'];
const list: SheetModel = sheetOf('Audit list', [['Tag'], ['P-1']], {
  table: { name: 'TripdriftList', area: { top: 1, left: 1, bottom: 2, right: 1 } },
  inFront: true,
});

describe('sheets that were added and removed again', () => {
  it.each([
    ['a workbook with one of nearly everything', everythingParts()],
    ['the same with macros', everythingParts({ macros: true })],
    ['a strict workbook', strictParts()],
    ['prefixed parts', prefixed(smallParts(), ['xl/workbook.xml', 'xl/_rels/workbook.xml.rels'])],
  ])('leave %s with the parts it had', (_, parts) => {
    const original = zipParts(parts);
    const added = addSheets(original, [resultSheet(), list, ...chartedSheets()]).bytes;
    const copy = removeSheets(added, [...names, ...charts]);
    const [before, after] = [unzipSync(original), unzipSync(copy)];
    const chain = Object.keys(before).filter((name) => /calcChain/u.test(name));
    expect(Object.keys(after).toSorted()).toEqual(
      Object.keys(before)
        .filter((name) => !chain.includes(name))
        .toSorted(),
    );
    const macros = 'xl/vbaProject.bin' in before;
    expect(objections(copy, macros ? 'xlsm' : 'xlsx')).toEqual([]);
    const sheetsOf = (bytes: Uint8Array) => readWorkbook('book.xlsx', bytes).sheets;
    expect(sheetsOf(copy)).toEqual(sheetsOf(original));
    const definitions = /<(?:x:)?definedNames>.*<\/(?:x:)?definedNames>/su;
    expect(definitions.exec(partText(copy, 'xl/workbook.xml'))?.[0]).toBe(
      definitions.exec(partText(original, 'xl/workbook.xml'))?.[0],
    );
  });

  it('leave names and views of sheets behind them with the places these have then', () => {
    const original = zipParts(
      smallParts({
        sheetNames: ['One', 'Two', 'Three'],
        workbookHead: '<bookViews><workbookView firstSheet="1" activeTab="2"/></bookViews>',
        workbookTail:
          '<definedNames><definedName name="Own" localSheetId="2">Three!$A$1</definedName><definedName name="Own" localSheetId="0">One!$A$1</definedName></definedNames>',
      }),
    );
    const text = partText(removeSheets(original, ['One']), 'xl/workbook.xml');
    expect(text).toContain('firstSheet="0" activeTab="1"');
    expect(text).toContain(
      '<definedName name="Own" localSheetId="1">Three!$A$1</definedName></definedNames>',
    );
    expect(text).not.toContain('One');
  });

  it('must not be all that can be seen', () => {
    const original = zipParts(smallParts({ sheetNames: ['One'] }));
    expect(() => removeSheets(original, ['One'])).toThrow(/no other sheet to be seen/u);
  });

  it('are none where none has the name', () => {
    const original = zipParts(smallParts());
    expect(removeSheets(original, names)).toBe(original);
  });
});

describe('what refers to a sheet', () => {
  const withFormula = (formula: string, rest = '') => {
    const parts = smallParts({ workbookTail: rest });
    const sheet = (parts['xl/worksheets/sheet1.xml'] as string).replace(
      '</row>',
      `<c r="B1" t="str"><f>${formula}</f><v>'Audit results'!A1</v></c></row>`,
    );
    return addSheets(zipParts({ ...parts, 'xl/worksheets/sheet1.xml': sheet }), [resultSheet(), list]).bytes;
  };

  it.each([
    ["'Audit results'!A1*2", 'Audit results'],
    ['SUM(&apos;AUDIT RESULTS&apos;!$G$2:$G$4)', 'Audit results'],
    ["SUM('Channels:Audit list'!A1)", 'Audit list'],
    ['COUNTA(TripdriftList[Tag])', 'Audit list'],
  ])('is told with its cell: %s', (formula, sheet) => {
    expect(referencesTo(withFormula(formula), names)).toEqual([{ where: "'Channels'!B1", sheet }]);
  });

  it('is told with its name', () => {
    const tail =
      '<definedNames><definedName name="Worst">\'Audit results\'!$A$1</definedName></definedNames>';
    expect(referencesTo(withFormula('1+1', tail), names)).toEqual([
      { where: 'name Worst', sheet: 'Audit results' },
    ]);
  });

  it('is nothing where only a text or a sheet that goes too names it', () => {
    expect(referencesTo(withFormula('1+1'), names)).toEqual([]);
  });
});

describe('a sheet that holds more than it was written with', () => {
  it('is told by its links', () => {
    const everything = zipParts(everythingParts());
    expect(sheetsWithMore(everything, ['Channels'])).toEqual(['Channels']);
    const added = addSheets(everything, [list, ...chartedSheets()]).bytes;
    expect(sheetsWithMore(added, ['Audit list', ...charts])).toEqual([]);
  });
});
