import { describe, expect, it } from 'vitest';
import { plainFormula } from '../../src/bench/grid/tables/nameTables.ts';
import type { NamedTable } from '../../src/bench/grid/tables/plainReference.ts';

const sales: NamedTable = {
  name: 'DeptSales',
  sheet: 'Sales',
  area: { top: 1, left: 1, bottom: 8, right: 5 },
  headerRow: true,
  totalsRow: true,
  titles: ['Sales Person', 'Region', 'Sales Amount', '% Commission', 'Commission Amount'],
};

function plain(formula: string, table: Partial<NamedTable> = {}): string {
  return plainFormula(formula, new Map([['deptsales', { ...sales, ...table }]]));
}

/** Without the sheet and the signs that fix rows and columns. */
function place(formula: string): string {
  return plain(formula).replaceAll("'Sales'!", '').replaceAll('$', '');
}

describe('names of tables in formulas', () => {
  // The department's sales in A1:E8 and the ranges that names lead to: Microsoft's article “Using structured references with
  // Excel tables”, read second-hand; those with two parts from memory of it.
  it.each([
    ['DeptSales', 'A2:E7'],
    ['DeptSales[]', 'A2:E7'],
    ['DeptSales[#All]', 'A1:E8'],
    ['DeptSales[#Data]', 'A2:E7'],
    ['DeptSales[#Headers]', 'A1:E1'],
    ['DeptSales[#Totals]', 'A8:E8'],
    ['DeptSales[[Sales Person]:[Region]]', 'A2:B7'],
    ['DeptSales[Sales Amount],DeptSales[Commission Amount]', 'C2:C7,E2:E7'],
    ['DeptSales[[Sales Person]:[Sales Amount]] DeptSales[[Region]:[% Commission]]', 'A2:C7 B2:D7'],
    ['DeptSales[[#All],[Sales Amount]]', 'C1:C8'],
    ['DeptSales[[#Headers],[% Commission]]', 'D1:D1'],
    ['DeptSales[[#Totals],[Region]]', 'B8:B8'],
    ['DeptSales[[#All],[Sales Amount]:[% Commission]]', 'C1:D8'],
    ['DeptSales[[#Data],[% Commission]:[Commission Amount]]', 'D2:E7'],
    ['DeptSales[[#Headers],[#Data],[% Commission]]', 'D1:D7'],
    ['DeptSales[[#Data],[#Totals]]', 'A2:E8'],
    ['deptsales[ [#totals] , [region] ]', 'B8:B8'],
    ['DeptSales[[Commission Amount]:[Region]]', 'B2:E7'],
  ])('%s is %s', (name, range) => {
    expect(place(name)).toBe(range);
  });

  it.each([
    ['DeptSales[[#This Row],[Sales Amount]]', 'INDEX(C2:C7,ROW()-1)'],
    ['DeptSales[@Sales Amount]', 'INDEX(C2:C7,ROW()-1)'],
    ['DeptSales[@[Sales Amount]]', 'INDEX(C2:C7,ROW()-1)'],
    ['DeptSales[@[Region]:[Sales Amount]]', 'INDEX(B2:C7,ROW()-1,0)'],
    ['DeptSales[@]', 'INDEX(A2:E7,ROW()-1,0)'],
  ])('%s is the cell of the row it stands in', (name, cell) => {
    expect(place(name)).toBe(cell);
  });

  it('knows titles with signs that mean something in formulas', () => {
    const titles = ['Danger (mil)', 'Loop #1 [mA]', "Owner's, or “-”", 'A1', 'Net:gross\nvalue'];
    const named = (brackets: string) => plain(`DeptSales${brackets}`, { titles, sheet: "Unit's" });
    expect(named('[Danger (mil)]')).toBe("'Unit''s'!$A$2:$A$7");
    expect(named("[[Loop '#1 '[mA']]]")).toBe("'Unit''s'!$B$2:$B$7");
    expect(named("[[Owner''s, or “-”]]")).toBe("'Unit''s'!$C$2:$C$7");
    expect(named('[A1]')).toBe("'Unit''s'!$D$2:$D$7");
    expect(named('[[Net:gross\nvalue]]')).toBe("'Unit''s'!$E$2:$E$7");
  });

  it.each([
    'DeptSales[Nothing]',
    'DeptSales[[Region]:[Nothing]]',
    'DeptSales[[Region],[Sales Amount]]',
    'DeptSales[[Region],[#Totals]]',
    'DeptSales[[#All]:[Region]]',
    'DeptSales[[Region]:[Sales Amount]:[% Commission]]',
    'DeptSales[#Sums]',
    'DeptSales[[Region]',
    'DeptSales[[Region]x]',
    'DeptSales[@[#Totals]]',
    'DeptSales[[#This Row],[#Totals]]',
  ])('%s is an error that depends on the titles', (name) => {
    expect(place(name)).toBe('(COUNTA(A1:E1)+#REF!)');
  });

  it('knows the parts that a table has', () => {
    const gone = (range: string) => `(COUNTA(${range})+#REF!)`;
    const without = (formula: string, table: Partial<NamedTable>) =>
      plain(formula, table).replaceAll("'Sales'!", '').replaceAll('$', '');
    expect(without('DeptSales', { headerRow: false, titles: [] })).toBe('A1:E7');
    expect(without('DeptSales[#Headers]', { headerRow: false, titles: [] })).toBe(gone('A1:E8'));
    expect(without('DeptSales[Region]', { headerRow: false, titles: [] })).toBe(gone('A1:E8'));
    expect(without('DeptSales', { totalsRow: false })).toBe('A2:E8');
    expect(without('DeptSales[[#Totals],[Region]]', { totalsRow: false })).toBe(gone('A1:E1'));
  });

  it.each([
    '="DeptSales[Region]"',
    "='DeptSales'!A1",
    '=DeptSales!A1',
    '=DeptSales(1)',
    '=MyDeptSales[Region]+DeptSales2+$DeptSales$1+DeptSales.x',
    '=A1:DeptSales',
    "='[DeptSales]Other'!A1+[1]Other!A1+Unknown[DeptSales]",
  ])('leaves %s as it is', (formula) => {
    expect(plain(formula)).toBe(formula);
  });
});
