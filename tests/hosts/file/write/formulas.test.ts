import { describe, expect, it } from 'vitest';
import { rowFormula } from '../../../../src/hosts/formats/rowFormula.ts';
import { newWorkbook } from '../../../../src/hosts/file/write/newWorkbook.ts';
import { sheetOf } from './model.ts';
import { partText } from './parts.ts';

const none = new Map<string, string>();

describe('a formula template', () => {
  it('stands in each row with that row’s number', () => {
    expect(rowFormula('I{r}*J{r}/$K$4', none).at(17)).toBe('I17*J17/$K$4');
  });

  it('leads to a sheet of the run by the name it got', () => {
    const given = new Map([['Audit summary', "Boss's summary (2)"]]);
    expect(rowFormula('{Audit summary}!$C$5+A{r}', given).at(3)).toBe("'Boss''s summary (2)'!$C$5+A3");
  });

  it('cannot lead to a sheet that is not written', () => {
    expect(() => rowFormula('{Nowhere}!A1', none)).toThrow('"Nowhere"');
  });

  it('keeps array constants as they are', () => {
    expect(rowFormula('SUM({1,2,3})*A{r}', none).at(2)).toBe('SUM({1,2,3})*A2');
  });

  // Sharing shifts every row reference without `$` (ECMA-376 part 1, 18.3.1.40).
  it.each(['I{r}*J{r}', '$I{r}+$K$4', 'IF(I{r}="A5",LOG10(J{r}),SUM(A:A))', 'SUM(A$2:A{r})', 'iso_7+I{r}'])(
    'can be shared: %s',
    (template) => {
      expect(rowFormula(template, none).shareable).toBe(true);
    },
  );

  it.each([
    'I{r}+J5',
    'I{r}+$J5',
    '{r}*2',
    'I${r}',
    '5:5+I{r}',
    'Other!A1+I{r}',
    'A$1',
    'SUM(A{r}:B9)',
    'T[x]+A{r}',
    'LOG{r}(2)',
  ])('cannot be shared: %s', (template) => {
    expect(rowFormula(template, none).shareable).toBe(false);
  });
});

describe('a column of a formula', () => {
  const rows = [1, 2, 3].map((value) => [
    value,
    { value, formula: 0 },
    { value, formula: 0 },
    { value, formula: 1 },
  ]);
  const sheet = partText(
    newWorkbook([sheetOf('S', rows, { formulas: ['A{r}', 'A1'] })]),
    'xl/worksheets/sheet1.xml',
  );
  const formulas = Array.from(
    sheet.matchAll(/<c r="(\w+)"[^>]*>(<f.*?(?:\/>|<\/f>))/g),
    ([, cell, formula]) => [cell, formula],
  );

  it('is stored once, the first cell being the master of all below, each column by itself', () => {
    expect(formulas.filter(([cell]) => !cell!.startsWith('D'))).toEqual([
      ['B1', '<f t="shared" ref="B1:B3" si="0">A1</f>'],
      ['C1', '<f t="shared" ref="C1:C3" si="1">A1</f>'],
      ['B2', '<f t="shared" si="0"/>'],
      ['C2', '<f t="shared" si="1"/>'],
      ['B3', '<f t="shared" si="0"/>'],
      ['C3', '<f t="shared" si="1"/>'],
    ]);
  });

  it('is stored cell by cell where rows do not shift it', () => {
    expect(formulas.filter(([cell]) => cell!.startsWith('D')).map(([, formula]) => formula)).toEqual(
      Array(3).fill('<f>A1</f>'),
    );
  });
});
