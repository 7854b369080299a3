import { HostRefused } from '../port/port.ts';

/** Why Excel refuses, and what to do next, by its error codes (Excel.ErrorCodes of the public reference, and some of its overview of errors). */
const reasons: Readonly<Record<string, string>> = {
  AccessDenied:
    'A sheet or the workbook is protected, or open for reading only. Remove the protection on the Review tab, or work in a copy, then try again.',
  ActivityLimitReached: 'Excel has more to do than it accepts at once. Wait a minute, then try again.',
  ApiNotFound: 'This version of Excel is too old for it. Update Excel, then try again.',
  BadPassword:
    'A sheet or the workbook is protected by a password. Remove the protection on the Review tab, then try again.',
  ConnectionFailure:
    'The connection to Excel broke. See that the workbook is still open and the network is there, then look at the workbook and try again.',
  Conflict: 'Someone else changed the same cells at the same time. Look at the sheet, then try again.',
  FilteredRangeConflict: 'A filter lies across the cells. Clear the filter, then try again.',
  FormulaLengthExceedsLimit: 'A formula is longer than the 8,192 characters a cell takes.',
  GeneralException:
    'Excel broke off and gave no reason. Save the workbook, try again, and restart Excel if it stays.',
  InactiveWorkbook: 'Another workbook is in front. Click into this workbook, then try again.',
  InsertDeleteConflict: 'Another change to rows or columns is under way. Wait a moment, then try again.',
  InvalidArgument:
    'Excel did not accept one of the values or cells it was given. Nothing you did wrong; try again, and report it if it stays.',
  InvalidObjectPath:
    'The workbook, or the sheet worked on, is no longer open. Open it, look at what it holds, then try again.',
  InvalidOperation:
    'Excel does not allow it on these cells, for example on part of an array or of a merged area. Choose other cells, then try again.',
  InvalidOperationInCellEditMode:
    'A cell is being edited. Press Enter or Esc to leave the cell, then try again.',
  InvalidReference: 'A cell or name that is referred to no longer exists. Look at the sheet, then try again.',
  InvalidSelection:
    'The selection is not one single area of cells. Select one cell or one area, then try again.',
  ItemAlreadyExists: 'Something of that name was added at the same moment. Try again.',
  ItemNotFound:
    'The sheet or range no longer exists; it may have been renamed or deleted. Look at the workbook, then try again.',
  MergedRangeConflict: 'Merged cells are in the way. Unmerge them or choose other cells, then try again.',
  NotImplemented: 'This version of Excel can’t do that. Update Excel, then try again.',
  OpenWorkbookLinksBlocked:
    'Links to other workbooks are blocked. Allow them or remove them, then try again.',
  OperationCellsExceedLimit:
    'It touches more cells than Excel allows at once. Split the sheet, then try again.',
  PivotTableRangeConflict: 'A pivot table is in the way. Choose other cells, then try again.',
  RangeExceedsLimit:
    'The sheets hold more cells than Excel hands over. Delete rows and columns that are not needed, then try again.',
  RequestAborted: 'Excel broke the work off while it ran. Try again.',
  RequestPayloadSizeLimitExceeded:
    'It is more than Excel accepts at once. Split the sheet or shorten its texts, then try again.',
  ResponsePayloadSizeLimitExceeded:
    'It is more than Excel hands over at once. Split the sheet or shorten its texts, then try again.',
  ServiceNotAvailable: 'Excel does not answer at the moment. Wait a minute, then try again.',
  UnsupportedFeature:
    'The sheet is of a kind that has no cells to work on. Choose another sheet, then try again.',
  UnsupportedOperation:
    'This version of Excel does not support it here. Open the workbook in Excel for Windows, Mac or the web, then try again.',
  UnsupportedSheet:
    'The sheet is of a kind that has no cells to work on. Choose another sheet, then try again.',
};

const tooLarge = new Set([
  'RangeExceedsLimit',
  'RequestPayloadSizeLimitExceeded',
  'ResponsePayloadSizeLimitExceeded',
]);

/**
 * What a person is told where Excel refuses: `failed`, a sentence without its full stop, then why and what to do, and
 * `left`, what may be half done. An error
 * that is no refusal of Excel's is a fault of the program and is returned as it is.
 */
export function refusalOf(error: unknown, failed: string, left = ''): unknown {
  const code = codeOf(error);
  if (code === undefined) return error;
  const reason =
    reasons[code] ??
    `Excel gave a reason that this add-in does not know (“${code}”). Save the workbook, try again, and restart Excel if it stays.`;
  return new HostRefused([`${failed}. ${reason}`, left].filter((part) => part !== '').join(' '), {
    cause: error,
  });
}

/** Whether Excel refused because of the amount asked for at once, so that asking for less may help. */
export function isTooLarge(error: unknown): boolean {
  return tooLarge.has(codeOf(error) ?? '');
}

/** The code of an error that Excel or its library gave; undefined for any other. */
export function codeOf(error: unknown): string | undefined {
  if (typeof error !== 'object' || error === null || !('code' in error) || !('debugInfo' in error))
    return undefined;
  return typeof error.code === 'string' ? error.code : undefined;
}
