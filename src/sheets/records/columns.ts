/** Letters of the columns of a block; from `middle` on they are for the charts only and are not printed. */
export const letters = {
  gap: 'A',
  volts: 'B',
  ratedLine: 'C',
  fittedLine: 'D',
  step: 'E',
  stepError: 'F',
  ratedDeviation: 'G',
  fittedDeviation: 'H',
  verdict: 'I',
  middle: 'K',
  leastStep: 'L',
  mostStep: 'M',
  leastDeviation: 'N',
  mostDeviation: 'O',
  offset: 'P',
} as const;

export type PointColumn = keyof typeof letters;

/** Number of a column from its letter, A to Z. */
export function columnOf(column: PointColumn): number {
  return letters[column].charCodeAt(0) - 64;
}

/** Columns that go on paper. */
export const printedColumns = columnOf('verdict');
