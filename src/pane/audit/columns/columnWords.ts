/** Texts of the columns part. */
export const columnWords = {
  title: 'Columns, as understood',
  intro: 'Correct what was misunderstood. In Excel, corrections are kept in the workbook.',
  notUsed: '(left alone)',
  meaningOf: (column: string) => `Meaning of column ${column}`,
  unitOf: (column: string) => `Unit of column ${column}`,
  unitUnknown: 'No unit known here. Write one such as mV/mil, mil, V or s.',
  rest: (count: number) => `${count} more ${count === 1 ? 'column is' : 'columns are'} left alone`,
  place: 'Another sheet or row',
  sheet: 'Sheet',
  anySheet: '(found by its headers)',
  headerRow: 'Row of the headers',
  headerRowHint: 'Empty: found by itself.',
  headerRowWrong: 'Write a row number such as 5.',
  apply: 'Use these',
  at: (sheet: string, row: number) => `Sheet ${sheet}, headers in row ${row}`,
  missing: (names: readonly string[]) =>
    `Still needed: ${names.join(', ')}. Choose the column that holds it below.`,
  clash: (names: readonly string[]) =>
    `More than one column could be: ${names.join(', ')}. Choose the right one below.`,
  none: 'No row with a header “tag” was found. Name the sheet and row below.',
  reset: 'Forget all corrections',
} as const;
