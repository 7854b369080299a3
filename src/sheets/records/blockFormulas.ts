import { letters, type PointColumn } from './columns.ts';
import type { BlockPlaces } from './places.ts';
import type { PointSpan } from './shown.ts';

/** Rows of the key figures below the first: in the left list (value in column D) and in the right one (column H). */
export const leftFigures = {
  average: 0,
  averageUncertainty: 1,
  intercept: 2,
  interceptUncertainty: 3,
  residual: 4,
  correlation: 5,
  fitFrom: 6,
  fitTo: 7,
} as const;
export const rightFigures = {
  rated: 0,
  tolerance: 1,
  deviation: 2,
  ratedIntercept: 3,
  linearFrom: 4,
  linearTo: 5,
  gapVoltage: 6,
  operatingGap: 7,
} as const;

/** The formulas of a block, without the leading `=`; `{r}` is the row's own number. */
export type BlockFormulas = ReturnType<typeof blockFormulas>;

/**
 * Formulas of a block from its own cells alone, so that its numbers can be checked line by line. 1E-9 is the slack for
 * floating-point noise of the method's own linear range. `points` counts the record's points.
 */
export function blockFormulas({ figures, firstPoint }: BlockPlaces, fitted: PointSpan) {
  const { gap, volts, step, ratedDeviation, offset } = letters;
  const left = (figure: keyof typeof leftFigures) => `$D$${figures + leftFigures[figure]}`;
  const right = (figure: keyof typeof rightFigures) => `$H$${figures + rightFigures[figure]}`;
  const down = (letter: string, from: number, to: number) => `$${letter}$${from}:$${letter}$${to}`;
  const fit = { from: firstPoint + fitted.first, to: firstPoint + fitted.last };
  const line = `${down(volts, fit.from, fit.to)},${down(gap, fit.from, fit.to)}`;
  const offsets = down(offset, fit.from, fit.to);
  const cell = (column: PointColumn) => `${letters[column]}{r}`;
  const stepFits = `IF(${cell('step')}="",TRUE,ABS(${cell('step')}-${right('rated')})<=${right('tolerance')}*${right('rated')}*(1+1E-9))`;
  const pointFits = `ABS(${ratedDeviation}{r})<=${right('deviation')}*(1+1E-9)`;
  return {
    average: `-1000*SLOPE(${line})`,
    averageUncertainty: `1000*INDEX(LINEST(${line},TRUE,TRUE),2,1)`,
    intercept: `INTERCEPT(${line})`,
    interceptUncertainty: `INDEX(LINEST(${line},TRUE,TRUE),2,2)`,
    residual: `1000*STEYX(${line})`,
    correlation: `CORREL(${down(gap, fit.from, fit.to)},${down(volts, fit.from, fit.to)})`,
    fitFrom: `${gap}${fit.from}`,
    fitTo: `${gap}${fit.to}`,
    ratedIntercept: `(MIN(${offsets})+MAX(${offsets}))/2`,
    ratedLine: `${right('ratedIntercept')}-${right('rated')}*${gap}{r}/1000`,
    fittedLine: `${left('intercept')}-${left('average')}*${gap}{r}/1000`,
    stepError: `${step}{r}/${right('rated')}-1`,
    ratedDeviation: `1000*(${volts}{r}-${cell('ratedLine')})/${right('rated')}`,
    fittedDeviation: `1000*(${volts}{r}-${cell('fittedLine')})/${left('average')}`,
    verdict: `IF(${stepFits},IF(${pointFits},"within","deviation out"),IF(${pointFits},"step out","both out"))`,
    leastStep: `${right('rated')}*(1-${right('tolerance')})`,
    mostStep: `${right('rated')}*(1+${right('tolerance')})`,
    leastDeviation: `-${right('deviation')}`,
    mostDeviation: right('deviation'),
    offset: `${volts}{r}+${right('rated')}*${gap}{r}/1000`,
    simple: 'B{r}*C{r}*D{r}/E{r}+IF(K{r}="",0,K{r})',
    difference: 'IF(OR(F{r}="",G{r}=""),"",G{r}/F{r}-1)',
  } as const;
}

/** Formulas of the steps that end in a row: from the point above it. */
export function stepFormulas(row: number): { readonly step: string; readonly middle: string } {
  const { gap, volts } = letters;
  const above = row - 1;
  return {
    step: `1000*(${volts}${above}-${volts}${row})/(${gap}${row}-${gap}${above})`,
    middle: `(${gap}${above}+${gap}${row})/2`,
  };
}
