import { budgetRows, levelRow, resultRow } from './budgetPlaces.ts';

const { first, last } = budgetRows;
const down = (letter: string): string => `${letter}$${first}:${letter}$${last}`;
const standard = `$E$${resultRow.standard}`;
const freedom = `$E$${resultRow.freedom}`;
const level = `$E$${levelRow}`;
const whole = `INT(MIN(${freedom},1E9))`;
const tOf = (degrees: string): string => `T.INV.2T(1-${level},${degrees})`;

/**
 * The formulas of the budget, without the leading `=`. A part with a value and no distribution that is known is `#N/A`,
 * and so is all that follows from it. Divisors: JCGM 100:2008 4.3.3, 4.3.7, 4.3.9; combined: 5.1.2, all coefficients 1;
 * degrees of freedom: eq. (G.2b), those left blank unlimited; k between whole degrees of freedom by interpolation, G.4.1.
 */
export const budgetFormulas = {
  divisor:
    'IF(B{r}="","",IF(C{r}="normal",2,IF(C{r}="rectangular",SQRT(3),IF(C{r}="triangular",SQRT(6),IF(C{r}="standard",1,NA())))))',
  standard: 'IF(B{r}="","",IF(B{r}<0,NA(),B{r}/D{r}))',
  share: `IF(OR(B{r}="",N(${standard})=0),"",(E{r}/${standard})^2)`,
  freedomTerm: 'IF(OR(B{r}="",F{r}=""),"",IF(F{r}>0,E{r}^4/F{r},NA()))',
  combined: `IF(COUNT(${down('$B')})=0,"",SQRT(SUMSQ(${down('$E')})))`,
  freedom: `IF(${standard}="","",IF(SUM(${down('$H')})=0,"unlimited",${standard}^4/SUM(${down('$H')})))`,
  factor: `IF(${standard}="","",IF(${freedom}="unlimited",NORM.S.INV((1+${level})/2),${tOf(whole)}+(MIN(${freedom},1E9)-${whole})*(${tOf(`${whole}+1`)}-${tOf(whole)})))`,
  expanded: `IF(${standard}="","",${standard}*$E$${resultRow.factor})`,
} as const;

export type BudgetFormula = keyof typeof budgetFormulas;

const order = Object.keys(budgetFormulas) as readonly BudgetFormula[];

/** Place of a formula among the sheet's. */
export function placeOf(formula: BudgetFormula): number {
  return order.indexOf(formula);
}
