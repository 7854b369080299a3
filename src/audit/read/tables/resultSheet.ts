import type { Sheet } from '../../../cells/sheet.ts';

/** First words of cell A1 of every sheet that an audit writes. */
export const resultSheetMark = 'Tripdrift audit';

/** Whether a sheet is the result of an earlier audit, and so no input of this one. */
export function isResultSheet(sheet: Sheet): boolean {
  const first = sheet.rows[0]?.[0];
  return typeof first === 'string' && first.startsWith(resultSheetMark);
}
