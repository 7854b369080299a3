/** Codes that have a fixed id in every workbook (ECMA-376 part 1, 18.8.30), those the same in all languages. */
const builtIn = new Map([
  ['General', 0],
  ['0', 1],
  ['0.00', 2],
  ['#,##0', 3],
  ['#,##0.00', 4],
  ['0%', 9],
  ['0.00%', 10],
  ['0.00E+00', 11],
  ['@', 49],
]);

/** The id every workbook gives this code; `undefined` where a workbook must define it. */
export function builtInFormat(code: string): number | undefined {
  return builtIn.get(code);
}

/** The id from which workbooks number their own formats. */
export const firstCustomId = 164;
