import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { formulaOf, formulaTokens } from '../../../src/hosts/formats/formulaTokens.ts';
import { shownFormula, storedFormula, storedPrefix } from '../../../src/hosts/formats/storedFormula.ts';

/** Stored and shown forms; how files store add-in functions is common practice, no source. */
const pairs: readonly (readonly [stored: string, shown: string])[] = [
  ['_xldudf_TRIPDRIFT_SHIFT(A1,200)', 'TRIPDRIFT.SHIFT(A1,200)'],
  [
    '1+_xldudf_TRIPDRIFT_SHIFT(_xldudf_TRIPDRIFT_EFFECTIVE(1,2,3),2)',
    '1+TRIPDRIFT.SHIFT(TRIPDRIFT.EFFECTIVE(1,2,3),2)',
  ],
  [
    'IF(A1="_xldudf_TRIPDRIFT_SHIFT(","x",\'TRIPDRIFT.SHIFT(\'!B2)',
    'IF(A1="_xldudf_TRIPDRIFT_SHIFT(","x",\'TRIPDRIFT.SHIFT(\'!B2)',
  ],
  [
    '"say ""TRIPDRIFT.SHIFT(1)"""&_xlfn.CONCAT("_xlfn.",A1)',
    '"say ""TRIPDRIFT.SHIFT(1)"""&CONCAT("_xlfn.",A1)',
  ],
  ['_xlfn._xlws.FILTER(A1:B9,_xlfn.XOR(C1,D1))', 'FILTER(A1:B9,XOR(C1,D1))'],
  ['_xlfn.LET(_xlpm.x,2,_xlpm.x*_xlpm.x+x1)', 'LET(x,2,x*x+x1)'],
  [
    '_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.v,_xldudf_TRIPDRIFT_SHIFT(_xlpm.v,2)))',
    'MAP(A1:A3,LAMBDA(v,TRIPDRIFT.SHIFT(v,2)))',
  ],
  ["SUM(_xlfn.ANCHORARRAY('My sheet'!$B$2))", "SUM('My sheet'!$B$2#)"],
  [
    "Map[[#This Row],[TRIPDRIFT.SHIFT(]]+SUM(Map[a '[b'] c])",
    "Map[[#This Row],[TRIPDRIFT.SHIFT(]]+SUM(Map[a '[b'] c])",
  ],
  ['SUM(A:A,1:3,{1,2;3,4},1E5)-#REF!', 'SUM(A:A,1:3,{1,2;3,4},1E5)-#REF!'],
];

describe('formulas as files store them', () => {
  it.each(pairs)('%s', (stored, shown) => {
    expect(shownFormula(stored)).toBe(shown);
    expect(storedFormula(shown)).toBe(stored);
    expect(storedFormula(stored)).toBe(stored);
    expect(shownFormula(shown)).toBe(shown);
  });

  it.each([
    ['[2]!_xldudf_TRIPDRIFT_SHIFT(1,2)', 'TRIPDRIFT.SHIFT(1,2)'],
    ['_XLDUDF_tripdrift_shift(1,2)', 'TRIPDRIFT.SHIFT(1,2)'],
    ['_XLFN.XLOOKUP(1,A:A,B:B)', 'XLOOKUP(1,A:A,B:B)'],
    ['[2]!Other(1)+[1]Sheet1!A1', '[2]!Other(1)+[1]Sheet1!A1'],
    ['_xldudf_OTHER_SHIFT(1)', '_xldudf_OTHER_SHIFT(1)'],
    ['[2]!Other(1)', '[2]!Other(1)'],
  ])('shows %s', (stored, shown) => {
    expect(shownFormula(stored)).toBe(shown);
  });

  it.each([
    ['tripdrift.shift (1,2)', '_xldudf_TRIPDRIFT_SHIFT (1,2)'],
    ['Map[@Tag]&Map[@[Full name]]', 'Map[[#This Row],[Tag]]&Map[[#This Row],[Full name]]'],
    ['@A1:A9+TRIPDRIFT.RATE', 'A1:A9+TRIPDRIFT.RATE'],
    ['xlookup(1,A:A,B:B)', '_xlfn.xlookup(1,A:A,B:B)'],
  ])('stores %s', (shown, stored) => {
    expect(storedFormula(shown)).toBe(stored);
  });

  it('marks the functions that XlsxWriter documents as newer than the format', () => {
    // A sample over the list in XlsxWriter's documentation, "Formulas added in Excel 2010 and later" (read).
    const newer =
      'ACOT AGGREGATE BETA.DIST BINOM.DIST.RANGE CEILING.MATH CHISQ.DIST.RT CONCAT DAYS F.INV.RT FORECAST.ETS.CONFINT IFNA IFS ISOWEEKNUM LET MAXIFS NORM.S.INV PERCENTILE.EXC QUARTILE.INC RANK.EQ SKEW.P STDEV.S SWITCH T.DIST.2T TEXTJOIN UNICODE VAR.P XLOOKUP XMATCH XOR Z.TEST BYROW SEQUENCE SORTBY UNIQUE VSTACK';
    for (const name of newer.split(' ')) expect([name, storedPrefix(name)]).toEqual([name, '_xlfn.']);
    for (const name of ['FILTER', 'SORT']) expect(storedPrefix(name)).toBe('_xlfn._xlws.');
    for (const name of ['SUM', 'NETWORKDAYS.INTL', 'WORKDAY.INTL', 'ECMA.CEILING', 'IFERROR', 'STDEV']) {
      expect([name, storedPrefix(name)]).toEqual([name, '']);
    }
  });

  it('takes any text apart and together again', () => {
    const text = fc.string({
      unit: fc.constantFrom(
        '"',
        "'",
        '[',
        ']',
        '(',
        'A',
        '1',
        '.',
        '$',
        '!',
        '_xlfn.',
        'LET(',
        ',',
        '#',
        '@',
        ' ',
        'é',
      ),
    });
    fc.assert(
      fc.property(text, (formula) => {
        expect(formulaOf(formulaTokens(formula))).toBe(formula);
        const stored = storedFormula(formula);
        expect(storedFormula(stored)).toBe(stored);
        shownFormula(formula);
      }),
      { numRuns: 3000 },
    );
  });
});
