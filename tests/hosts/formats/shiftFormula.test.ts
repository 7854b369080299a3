import { describe, expect, it } from 'vitest';
import { shiftedCopies } from '../../../src/hosts/formats/shiftFormula.ts';

/** What copying a formula two rows down and one column right gives (rules of ECMA-376 part 1, 18.3.1.40, worked out by hand). */
describe('copies of a shared formula', () => {
  it.each([
    ['A1+$A1+A$1+$A$1', 'B3+$A3+B$1+$A$1'],
    ['SUM(A1:B2,C:D,$C:D,3:4,$3:4)', 'SUM(B3:C4,D:E,$C:E,5:6,$3:6)'],
    ["Sheet1!A1+'A1 B2'!A1+[1]S!Z9", "Sheet1!B3+'A1 B2'!B3+[1]S!AA11"],
    ['LOG10(A1)&"A1"&Map[A1]&A1.b&x_A1', 'LOG10(B3)&"A1"&Map[A1]&A1.b&x_A1'],
    ['1E5+2.5+XFD1+A1048576', '1E5+2.5+#REF!+#REF!'],
    ['XFE1+ABCD1+A0', 'XFE1+ABCD1+A0'],
    ['IF(A1>1,TRUE,#N/A)', 'IF(B3>1,TRUE,#N/A)'],
  ])('%s', (formula, copy) => {
    expect(shiftedCopies(formula)(2, 1)).toBe(copy);
    expect(shiftedCopies(formula)(0, 0)).toBe(formula);
  });
});
