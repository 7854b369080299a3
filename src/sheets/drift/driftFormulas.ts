import { DAYS_PER_YEAR } from '../../method/drift/driftPerYear.ts';
import { letterOf } from './driftColumns.ts';

/** Where the policy's tolerance and the level of confidence stand. */
export const tolerancePlace = { row: 5, column: 8, address: '$H$5' } as const;
export const levelPlace = { row: 5, column: 11, address: '$K$5' } as const;

/** Columns of the readings below: their values and their days from the first that counts. */
export const readingColumn = { sensitivity: 'H', days: 'I' } as const;

/**
 * The formulas of a channel's line from its own readings, which stand in rows `first` to `last`, without the leading `=`;
 * `{r}` is the line's own row. The scatter is summed from the residuals, which keeps its digits where STEYX loses them.
 */
export function driftFormulas(first: number, last: number): Readonly<Record<string, string>> {
  const down = (letter: string) => `$${letter}$${first}:$${letter}$${last}`;
  const [y, x] = [down(readingColumn.sensitivity), down(readingColumn.days)];
  const own = (id: Parameters<typeof letterOf>[0]) => `${letterOf(id)}{r}`;
  const [slope, intercept] = [`SLOPE(${y},${x})`, `INTERCEPT(${y},${x})`];
  return {
    count: `COUNT(${y})`,
    perYear: `${slope}*${DAYS_PER_YEAR}`,
    fraction: `${own('perYear')}/${own('configured')}`,
    coverage: `TINV(1-${levelPlace.address},${own('count')}-2)`,
    scatter: `SQRT(SUMPRODUCT((${y}-${intercept}-${slope}*${x})^2)/(${own('count')}-2))`,
    expanded: `${own('coverage')}*${own('scatter')}/SQRT(DEVSQ(${x}))*${DAYS_PER_YEAR}`,
    correlation: `CORREL(${y},${x})`,
    limit: `${own('configured')}*(1+SIGN(${own('perYear')})*${tolerancePlace.address})`,
    days: `(${own('limit')}-${intercept})/${slope}`,
  };
}
